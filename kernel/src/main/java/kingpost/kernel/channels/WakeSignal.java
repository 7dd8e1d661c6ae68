package kingpost.kernel.channels;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.channels.Pipe;
import java.util.List;
import java.util.concurrent.atomic.AtomicBoolean;
import org.zeromq.ZMQ;

/**
 * Lets any thread wake the one that polls its socket. Signals that come before it wakes count as one.
 *
 * <p>A thread that is interrupted while it raises the signal closes the pipe under it: such is the rule for
 * channels. The closed pipe wakes the poller too, which then lays a new one.
 */
final class WakeSignal implements AutoCloseable {

    private final List<ZMQ.Poller> pollers;
    private final AtomicBoolean raised = new AtomicBoolean();
    private volatile Pipe pipe;

    /** A signal that these pollers watch; only their thread may lower it. */
    WakeSignal(List<ZMQ.Poller> pollers) {
        this.pollers = List.copyOf(pollers);
        lay();
    }

    void raise() {
        if (raised.compareAndSet(false, true)) {
            try {
                pipe.sink().write(ByteBuffer.wrap(new byte[1]));
            } catch (IOException e) {
                // closed: by an interrupt, which wakes the poller all the same, or because its thread has ended
                raised.set(true);
            }
        }
    }

    /** Takes the signal down; what was queued before it was raised is then visible to this thread. */
    void lower() {
        boolean intact = drain();
        if (!intact) {
            pollers.forEach(poller -> poller.unregister(pipe.source()));
            closePipe();
            lay();
        }
        raised.set(false);
    }

    @Override
    public void close() {
        closePipe();
    }

    private boolean drain() {
        ByteBuffer bytes = ByteBuffer.allocate(16);
        try {
            int read = pipe.source().read(bytes);
            while (read > 0) {
                bytes.clear();
                read = pipe.source().read(bytes);
            }
            return read == 0 && pipe.sink().isOpen();
        } catch (IOException e) {
            return false;
        }
    }

    private void lay() {
        try {
            Pipe fresh = Pipe.open();
            fresh.source().configureBlocking(false);
            fresh.sink().configureBlocking(false);
            pipe = fresh;
            pollers.forEach(poller -> poller.register(fresh.source(), ZMQ.Poller.POLLIN));
        } catch (IOException e) {
            throw new UncheckedIOException("no pipe for waking a thread", e);
        }
    }

    private void closePipe() {
        try {
            pipe.sink().close();
            pipe.source().close();
        } catch (IOException e) {
            throw new UncheckedIOException("the waking pipe cannot be closed", e);
        }
    }
}
