package kingpost.kernel.channels;

import java.lang.System.Logger;
import java.lang.System.Logger.Level;
import java.util.List;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import kingpost.kernel.message.Channel;
import kingpost.kernel.message.Inbox;
import kingpost.kernel.transport.Intake;
import kingpost.kernel.wire.Reading;
import kingpost.kernel.wire.WireFormat;
import org.zeromq.ZMQ;
import org.zeromq.ZMQException;

/** The thread of one ROUTER socket: hands verified requests to the inbox, sends the answers that others queue. */
final class RouterLoop implements Runnable {

    private static final int ROUND = 64;
    private static final long FULL_INBOX_MILLIS = 20;
    /** After this time without an event nothing waits, whatever was counted. */
    private static final long LOST_MESSAGES_MILLIS = 500;

    private final Channel channel;
    private final ZMQ.Socket socket;
    private final WireFormat wire;
    private final Inbox inbox;
    private final Intake intake;
    private final FrameReader reader;
    private final Refusals refusals;
    private final Logger log;
    private final ZMQ.Poller poller;
    private final ZMQ.Poller wakeOnly;
    private final WakeSignal wake;
    private final Queue<List<byte[]>> outgoing = new ConcurrentLinkedQueue<>();
    private volatile boolean stopping;

    RouterLoop(Channel channel, ZMQ.Context context, ZMQ.Socket socket, WireFormat wire, Inbox inbox,
               MessageLimits limits, Intake intake, Refusals refusals, Logger log) {
        this.channel = channel;
        this.socket = socket;
        this.poller = context.poller(2);
        this.wakeOnly = context.poller(1);
        this.wake = new WakeSignal(List.of(poller, wakeOnly));
        poller.register(socket, ZMQ.Poller.POLLIN);
        this.wire = wire;
        this.inbox = inbox;
        this.intake = intake;
        this.reader = new FrameReader(socket, limits, intake);
        this.refusals = refusals;
        this.log = log;
    }

    /** Queues frames for the client that the first of them name. */
    void send(List<byte[]> frames) {
        outgoing.add(frames);
        wake.raise();
    }

    /** Sends what is queued, then ends. */
    void stop() {
        stopping = true;
        wake.raise();
    }

    @Override
    public void run() {
        try (poller; wakeOnly; wake) {
            while (!stopping || !outgoing.isEmpty()) {
                round();
            }
        } finally {
            socket.close();
        }
    }

    /** One turn of the loop; nothing that one message does may end it. */
    private void round() {
        try {
            if (hasRoom()) {
                poller.poll(intake.waiting() == 0 ? -1 : LOST_MESSAGES_MILLIS);
            } else {
                wakeOnly.poll(FULL_INBOX_MILLIS);
            }
            wake.lower();
            sendQueued();
            receiveWaiting();
        } catch (ZMQException e) {
            stopping = stopping || e.getErrorCode() == ZMQ.Error.ETERM.getCode();
            log.log(Level.ERROR, "The socket of " + channel.label() + " failed", e);
        } catch (RuntimeException | Error e) {
            log.log(Level.ERROR, "A message on " + channel.label() + " could not be handled", e);
        }
    }

    /** Orders come in however many cells are queued. */
    private boolean hasRoom() {
        return channel != Channel.SHELL || inbox.hasRoom();
    }

    private void sendQueued() {
        for (List<byte[]> frames = outgoing.poll(); frames != null; frames = outgoing.poll()) {
            Multipart.send(socket, frames);
        }
    }

    private void receiveWaiting() {
        for (int i = 0; i < ROUND && hasRoom() && !stopping; i++) {
            FrameReader.Taken taken = reader.take();
            if (taken instanceof FrameReader.Taken.Nothing) {
                return;
            }
            if (taken instanceof FrameReader.Taken.Frames message) {
                judge(message.frames());
            } else {
                refusals.dropped(channel.label(), Reading.Reason.TOO_LARGE);
            }
        }
    }

    private void judge(List<byte[]> frames) {
        Reading reading = wire.read(frames);
        if (reading instanceof Reading.Accepted accepted) {
            inbox.received(channel, accepted.message());
        } else if (reading instanceof Reading.Refused refused) {
            refusals.dropped(channel.label(), refused.reason());
        }
    }
}
