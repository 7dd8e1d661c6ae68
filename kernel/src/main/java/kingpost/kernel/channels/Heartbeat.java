package kingpost.kernel.channels;

import java.util.List;
import org.zeromq.SocketType;
import org.zeromq.ZMQ;
import org.zeromq.ZMQException;

/**
 * Echoes every message, so that clients see the kernel alive. Has a context and a thread of its own: nothing else
 * that the kernel does can hold it up.
 */
final class Heartbeat implements Runnable {

    private final ZMQ.Context context = ZMQ.context(1);
    private final ZMQ.Socket socket;
    private final MessageLimits limits;

    /**
     * @throws BindingException when it cannot listen there
     */
    Heartbeat(String ip, int port, MessageLimits limits) {
        this.limits = limits;
        try {
            this.socket = new Binding(context, ip, limits).open(SocketType.REP, "heartbeat", port, socket -> { });
        } catch (BindingException e) {
            context.close();
            throw e;
        }
    }

    int port() {
        return Binding.port(socket);
    }

    @Override
    public void run() {
        FrameReader reader = new FrameReader(socket, limits);
        try (ZMQ.Poller poller = context.poller(1)) {
            poller.register(socket, ZMQ.Poller.POLLIN);
            while (poller.poll(-1) >= 0) {
                FrameReader.Taken taken = reader.take();
                if (taken instanceof FrameReader.Taken.Frames message) {
                    Multipart.send(socket, message.frames());
                } else if (taken instanceof FrameReader.Taken.TooLarge) {
                    Multipart.send(socket, List.of(new byte[0]));
                }
            }
        } catch (ZMQException e) {
            if (e.getErrorCode() != ZMQ.Error.ETERM.getCode()) {
                throw e;
            }
        } finally {
            socket.close();
        }
    }

    /** Ends the thread, if it was started, and waits for it. */
    void close() {
        context.term();
    }

    /** For a heartbeat whose thread never ran. */
    void closeUnstarted() {
        socket.close();
        context.term();
    }
}
