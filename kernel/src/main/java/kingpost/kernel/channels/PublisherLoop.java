package kingpost.kernel.channels;

import java.lang.System.Logger;
import java.lang.System.Logger.Level;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import kingpost.kernel.message.Inbox;
import kingpost.kernel.transport.Intake;
import kingpost.kernel.transport.TransportRules;
import org.zeromq.ZMQ;
import org.zeromq.ZMQException;

/**
 * The thread of the iopub socket: publishes in the order of the queue, and reports who subscribes.
 *
 * <p>No message is lost for a subscriber that reads. One that does not read while its queue is full holds the others
 * up for at most {@value #PATIENCE_MILLIS} milliseconds; then messages are left out for it alone, until it reads
 * again.
 */
final class PublisherLoop implements Runnable {

    private static final int PATIENCE_MILLIS = 2_000;
    private static final int QUEUED_PER_SUBSCRIBER = 1_000;
    private static final int LONGEST_TOPIC = 1_024;
    /** Subscriptions are kept in memory as long as their connection lives. */
    private static final TransportRules SUBSCRIPTIONS = new TransportRules(LONGEST_TOPIC + 1, 4, 8_192, 2_000);

    private final ZMQ.Socket socket;
    private final Intake intake;
    private final Inbox inbox;
    private final Logger log;
    private final ZMQ.Poller poller;
    private final WakeSignal wake;
    private final PublishQueue queue;
    private volatile boolean stopping;

    PublisherLoop(ZMQ.Context context, ZMQ.Socket socket, Intake intake, Inbox inbox, Logger log) {
        this.socket = socket;
        this.intake = intake;
        this.poller = context.poller(2);
        this.wake = new WakeSignal(List.of(poller));
        this.queue = new PublishQueue(wake::raise);
        poller.register(socket, ZMQ.Poller.POLLIN);
        this.inbox = inbox;
        this.log = log;
    }

    /** How much a client may say about what it wants to hear. */
    static TransportRules rules() {
        return SUBSCRIPTIONS;
    }

    /** Before the socket is bound. */
    static void prepare(ZMQ.Socket socket) {
        socket.setXpubVerbose(true);
        socket.setXpubNoDrop(true);
        socket.setSndHWM(QUEUED_PER_SUBSCRIBER);
        socket.setSendTimeOut(PATIENCE_MILLIS);
    }

    /** Queues a message; waits while too much is queued. */
    void publish(List<byte[]> frames) {
        queue.put(frames);
    }

    /** Sends what is queued, then ends. */
    void stop() {
        stopping = true;
        queue.open();
        wake.raise();
    }

    @Override
    public void run() {
        try (poller; wake) {
            while (!stopping || !queue.isEmpty()) {
                round();
            }
        } finally {
            queue.open();
            socket.close();
        }
    }

    private void round() {
        try {
            poller.poll(-1);
            wake.lower();
            for (Optional<List<byte[]>> next = queue.take(); next.isPresent(); next = queue.take()) {
                send(next.get());
            }
            greet();
        } catch (ZMQException e) {
            stopping = stopping || e.getErrorCode() == ZMQ.Error.ETERM.getCode();
            log.log(Level.ERROR, "The socket of iopub failed", e);
        } catch (RuntimeException | Error e) {
            log.log(Level.ERROR, "A message could not be published", e);
        }
    }

    private void send(List<byte[]> frames) {
        if (!Multipart.send(socket, frames)) {
            log.log(Level.WARNING, "A client has not read for " + PATIENCE_MILLIS
                    + " ms; messages are left out for it until it reads again");
            socket.setXpubNoDrop(false);
            Multipart.send(socket, frames);
            socket.setXpubNoDrop(true);
        }
    }

    private void greet() {
        for (byte[] event = socket.recv(ZMQ.DONTWAIT); event != null; event = socket.recv(ZMQ.DONTWAIT)) {
            topic(event).ifPresent(inbox::subscribed);
        }
        intake.nothingWaits();
    }

    /** The topic of a subscription; nothing for the end of one, or for bytes that are no text. */
    private static Optional<String> topic(byte[] event) {
        if (event.length < 1 || event.length > LONGEST_TOPIC || event[0] != 1) {
            return Optional.empty();
        }
        try {
            return Optional.of(StandardCharsets.UTF_8.newDecoder()
                    .decode(ByteBuffer.wrap(event, 1, event.length - 1)).toString());
        } catch (CharacterCodingException e) {
            return Optional.empty();
        }
    }
}
