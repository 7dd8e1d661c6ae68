package kingpost.kernel.channels;

import java.util.ArrayDeque;
import java.util.List;
import java.util.Optional;
import java.util.Queue;

/** Messages that wait to be published, up to a number of bytes; who brings more waits. Order is kept. */
final class PublishQueue {

    private static final long CAPACITY_BYTES = 8L << 20;

    private final Queue<List<byte[]>> messages = new ArrayDeque<>();
    private final Runnable announce;
    private long bytes;
    private boolean open;

    PublishQueue(Runnable announce) {
        this.announce = announce;
    }

    /** Adds a message; a thread that is interrupted while it waits adds it at once and stays interrupted. */
    void put(List<byte[]> frames) {
        synchronized (this) {
            awaitRoom();
            messages.add(frames);
            bytes += size(frames);
        }
        announce.run();
    }

    synchronized Optional<List<byte[]>> take() {
        List<byte[]> next = messages.poll();
        if (next != null) {
            bytes -= size(next);
            notifyAll();
        }
        return Optional.ofNullable(next);
    }

    synchronized boolean isEmpty() {
        return messages.isEmpty();
    }

    /** From now on nobody waits. */
    synchronized void open() {
        open = true;
        notifyAll();
    }

    private void awaitRoom() {
        while (bytes > CAPACITY_BYTES && !open) {
            try {
                wait();
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
                return;
            }
        }
    }

    private static long size(List<byte[]> frames) {
        return frames.stream().mapToLong(frame -> frame.length).sum();
    }
}
