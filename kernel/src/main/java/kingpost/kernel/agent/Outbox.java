package kingpost.kernel.agent;

import java.io.IOException;
import java.net.ProtocolException;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import kingpost.kernel.pipe.Frame;
import kingpost.kernel.pipe.Kind;
import kingpost.kernel.pipe.Pipe;

/**
 * Everything on its way to the kernel, in the order in which it was made. One thread of the agent's own sends, so
 * that a cell thread that is stopped never leaves half a frame behind. Printed text is joined into larger pieces;
 * when too much of it waits, the printing thread waits too, which bounds memory.
 *
 * <p>Guarded by its monitor and not by a lock object: a thread stopped in here from outside gives a monitor back.
 */
final class Outbox {

    /** Characters in one piece of text at most. */
    static final int PIECE = 1 << 14;
    /** Characters that may wait before the printing thread has to. */
    private static final int MOST_WAITING = 1 << 18;
    private static final int MOST_FRAMES = 64;
    private static final long LINGER_MILLIS = 5;

    private final Deque<Object> waiting = new ArrayDeque<>();
    private int waitingText;
    private int waitingFrames;

    /** Adds printed text; waits while too much is waiting. */
    synchronized void text(int cell, String name, CharSequence text, StopSign stop) {
        for (int from = 0; from < text.length(); ) {
            awaitRoom(stop);
            int to = pieceEnd(text, from);
            Text last = waiting.peekLast() instanceof Text open && open.takes(cell, name) ? open : null;
            if (last == null) {
                last = new Text(cell, name);
                waiting.addLast(last);
            }
            last.content.append(text, from, to);
            waitingText += to - from;
            from = to;
            notifyAll();
        }
    }

    /** Adds a frame; it goes after all text that is already here, and never waits. */
    synchronized void frame(Frame frame) {
        waiting.addLast(frame);
        waitingFrames++;
        notifyAll();
    }

    /** Adds a frame that may be large, once there is room. */
    synchronized void largeFrame(Frame frame, StopSign stop) {
        awaitRoom(stop);
        frame(frame);
    }

    /** Waits for room; a thread interrupted meanwhile keeps its interrupt for whoever waits next. */
    private void awaitRoom(StopSign stop) {
        boolean interrupted = false;
        while (waitingText > MOST_WAITING || waitingFrames > MOST_FRAMES) {
            stop.check();
            try {
                wait(20);
            } catch (InterruptedException later) {
                interrupted = true;
            }
        }
        if (interrupted) {
            Thread.currentThread().interrupt();
        }
    }

    private static int pieceEnd(CharSequence text, int from) {
        int to = Math.min(text.length(), from + PIECE);
        boolean splitsPair = to < text.length() && Character.isHighSurrogate(text.charAt(to - 1));
        return splitsPair && to - 1 > from ? to - 1 : to;
    }

    /** Sends until the pipe breaks. */
    void sendTo(Pipe pipe) throws IOException {
        while (true) {
            try {
                Object next = next();
                send(pipe, next instanceof Text text ? text.frame() : (Frame) next);
            } catch (InterruptedException byACell) {
                // cells can find this thread, but not make it stop
            }
        }
    }

    private void send(Pipe pipe, Frame frame) throws IOException {
        try {
            pipe.send(frame, more());
        } catch (ProtocolException unfit) {
            pipe.send(instead(frame, unfit.getMessage()), more());
        }
    }

    /** What is sent for a frame that cannot be sent: nobody must wait for it, and the reader is told. */
    private static Frame instead(Frame frame, String reason) {
        return switch (frame.kind()) {
            case ENDED -> Frame.of(Kind.ENDED, frame.number(0), "threw", List.of(Map.of("class",
                    "kingpost.Unshowable", "message", reason, "ours", true, "frames", List.of())));
            case ANSWER -> Frame.of(Kind.ANSWER, frame.number(0), null);
            default -> Frame.of(Kind.STREAM, frame.number(0), "stderr", "(Left out: " + reason + ")\n");
        };
    }

    private synchronized Object next() throws InterruptedException {
        while (waiting.isEmpty()) {
            wait();
        }
        if (waitingFrames == 0 && waitingText < PIECE) {
            wait(LINGER_MILLIS);
        }
        Object next = waiting.removeFirst();
        if (next instanceof Text text) {
            waitingText -= text.content.length();
        } else {
            waitingFrames--;
        }
        notifyAll();
        return next;
    }

    private synchronized boolean more() {
        return !waiting.isEmpty();
    }

    private static final class Text {
        private final int cell;
        private final String name;
        private final StringBuilder content = new StringBuilder();

        private Text(int cell, String name) {
            this.cell = cell;
            this.name = name;
        }

        private boolean takes(int otherCell, String otherName) {
            return cell == otherCell && name.equals(otherName) && content.length() < PIECE;
        }

        private Frame frame() {
            return Frame.of(Kind.STREAM, cell, name, content.toString());
        }
    }
}
