package kingpost.kernel.channels;

import java.lang.System.Logger;
import java.util.List;
import kingpost.kernel.transport.Intake;
import kingpost.kernel.transport.PartialBudget;
import kingpost.kernel.transport.TransportRules;
import kingpost.kernel.wire.ConnectionFile;
import org.zeromq.SocketType;
import org.zeromq.ZMQ;
import org.zeromq.ZMQException;

/**
 * Echoes every message, so that clients see the kernel alive. Has contexts and a thread of its own: nothing else
 * that the kernel does can hold it up.
 */
final class Heartbeat implements Runnable {

    private static final MessageLimits LIMITS = new MessageLimits(65_536, 16);

    private final ZMQ.Context pollers = ZMQ.context(1);
    private final GuardedContext context;
    private final Intake intake;
    private final ZMQ.Socket socket;

    /**
     * @throws BindingException when it cannot listen there
     */
    Heartbeat(ConnectionFile file, Refusals refusals, Logger log, Breakdown breakdown) {
        this.context = new GuardedContext(log, breakdown);
        this.intake = new Intake(TransportRules.ofMessages(2 * LIMITS.bytes(), 2L * LIMITS.frames()),
                new PartialBudget(16 * LIMITS.bytes()), 16 * LIMITS.bytes(), why -> refusals.cut("heartbeat", why));
        try {
            this.socket = new Binding(context, file)
                    .open(SocketType.REP, "heartbeat", file.ports().heartbeat(), intake, socket -> { });
        } catch (BindingException e) {
            context.terminate();
            pollers.close();
            throw e;
        }
    }

    int port() {
        return Binding.port(socket);
    }

    @Override
    public void run() {
        FrameReader reader = new FrameReader(socket, LIMITS, intake);
        try (ZMQ.Poller poller = pollers.poller(1)) {
            poller.register(socket, ZMQ.Poller.POLLIN);
            while (poller.poll(-1) >= 0) {
                for (FrameReader.Taken taken = reader.take(); !(taken instanceof FrameReader.Taken.Nothing);
                     taken = reader.take()) {
                    Multipart.send(socket, taken instanceof FrameReader.Taken.Frames message ? message.frames()
                            : List.of(new byte[0]));
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
        context.terminate();
        pollers.term();
    }

    /** For a heartbeat whose thread never ran. */
    void closeUnstarted() {
        socket.close();
        close();
    }
}
