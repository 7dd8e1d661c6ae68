package kingpost.kernel.transport;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/**
 * Follows the bytes of one peer and finds the first that does not belong to the transport protocol, or that announces
 * more than the rules allow. Knows nothing of signatures: it keeps a peer from harming the library behind it, whose
 * decoder takes a length above 2<sup>63</sup> for a negative one and never recovers. For one thread.
 *
 * <p>Shape: a greeting of 64 bytes (protocol 3, mechanism NULL); a READY command; then frames of a flag byte, a length
 * of one or eight bytes, and a body. Flags: 1 more frames follow, 2 eight-byte length, 4 command.
 *
 * <p>Source: ZMTP 3.0 (RFC 23), "Greeting", "Framing", "The NULL security mechanism"; ZMTP 3.1 (RFC 37), "Commands".
 */
final class FrameScanner {

    private static final int GREETING = 64;
    private static final int MECHANISM = 12;
    private static final byte[] NULL_MECHANISM = "NULL".getBytes(StandardCharsets.US_ASCII);
    private static final int MECHANISM_LENGTH = 20;
    private static final int MORE = 1;
    private static final int LARGE = 2;
    private static final int COMMAND = 4;
    private static final int LONGEST_COMMAND = 2_048;
    /** So much of a message needs no budget. */
    private static final long SMALL = 65_536;

    private enum State { GREETING, FLAGS, LENGTH, BODY, COMMAND_BODY }

    private final Intake intake;
    private State state = State.GREETING;
    private int greeted;
    private int flags;
    private int lengthBytes;
    private long length;
    private long left;
    private ByteBuffer command = ByteBuffer.allocate(0);
    private boolean ready;
    private long messageBytes;
    private long messageFrames;
    private long lifetimeBytes;
    private long lifetimeFrames;
    private long budgeted;

    FrameScanner(Intake intake) {
        this.intake = intake;
    }

    /** What is wrong with these bytes, which follow those of the calls before; nothing when they may pass. */
    Optional<String> scan(ByteBuffer bytes) {
        Optional<String> fault = Optional.empty();
        while (fault.isEmpty() && bytes.hasRemaining()) {
            fault = switch (state) {
                case GREETING -> greeting(bytes.get());
                case FLAGS -> flags(bytes.get());
                case LENGTH -> length(bytes.get());
                case BODY -> body(bytes);
                case COMMAND_BODY -> command(bytes);
            };
        }
        return fault;
    }

    /** The peer is gone; what it began is no longer held. */
    void end() {
        release();
    }

    /** Whether the peer has said READY. */
    boolean isReady() {
        return ready;
    }

    private Optional<String> greeting(byte next) {
        int at = greeted++;
        boolean fits = switch (at) {
            case 0 -> next == (byte) 0xff;
            case 9 -> (next & 1) == 1;
            case 10 -> next >= 3;
            default -> at < MECHANISM || at >= MECHANISM + MECHANISM_LENGTH || next == mechanism(at - MECHANISM);
        };
        if (greeted == GREETING) {
            state = State.FLAGS;
        }
        return fits ? Optional.empty() : Optional.of("no greeting of transport protocol 3 without encryption");
    }

    private static byte mechanism(int index) {
        return index < NULL_MECHANISM.length ? NULL_MECHANISM[index] : 0;
    }

    private Optional<String> flags(byte next) {
        flags = next;
        boolean command = (flags & COMMAND) != 0;
        if ((flags & ~(MORE | LARGE | COMMAND)) != 0 || command && (flags & MORE) != 0 || !command && !ready) {
            return Optional.of("a frame that does not belong here");
        }
        length = 0;
        lengthBytes = (flags & LARGE) != 0 ? Long.BYTES : 1;
        state = State.LENGTH;
        return Optional.empty();
    }

    private Optional<String> length(byte next) {
        length = length << Byte.SIZE | next & 0xff;
        if (--lengthBytes > 0) {
            return Optional.empty();
        }
        left = length;
        boolean isCommand = (flags & COMMAND) != 0;
        Optional<String> fault = length < 0 ? Optional.of("a frame with an impossible length")
                : isCommand ? announceCommand() : announceFrame();
        state = isCommand ? State.COMMAND_BODY : State.BODY;
        if (fault.isEmpty() && length == 0) {
            fault = isCommand ? Optional.of("an empty command") : endOfFrame();
        }
        return fault;
    }

    private Optional<String> announceCommand() {
        if (length > LONGEST_COMMAND) {
            return Optional.of("a command that is too long");
        }
        command = ByteBuffer.allocate((int) length);
        return countLifetime();
    }

    private Optional<String> announceFrame() {
        TransportRules rules = intake.rules();
        messageFrames++;
        if (messageFrames > rules.messageFrames() || length > rules.messageBytes() - messageBytes) {
            return Optional.of("a message far larger than the limit");
        }
        messageBytes += length;
        Optional<String> fault = countLifetime();
        return fault.isEmpty() && !reserve() ? Optional.of("too many large messages begun at once") : fault;
    }

    private Optional<String> countLifetime() {
        lifetimeFrames++;
        lifetimeBytes += length;
        boolean within = lifetimeFrames <= intake.rules().lifetimeFrames()
                && lifetimeBytes >= 0 && lifetimeBytes <= intake.rules().lifetimeBytes();
        return within ? Optional.empty() : Optional.of("more than this socket is for");
    }

    private boolean reserve() {
        long wanted = Math.max(0, weight() - SMALL) - budgeted;
        if (wanted > 0 && !intake.budget().take(wanted)) {
            return false;
        }
        budgeted += Math.max(0, wanted);
        return true;
    }

    private long weight() {
        return messageBytes + messageFrames * Intake.FRAME_OVERHEAD;
    }

    private Optional<String> body(ByteBuffer bytes) {
        int step = (int) Math.min(left, bytes.remaining());
        bytes.position(bytes.position() + step);
        left -= step;
        return left == 0 ? endOfFrame() : Optional.empty();
    }

    private Optional<String> endOfFrame() {
        state = State.FLAGS;
        if ((flags & MORE) == 0) {
            intake.arrived(weight());
            release();
            messageBytes = 0;
            messageFrames = 0;
        }
        return Optional.empty();
    }

    private void release() {
        intake.budget().giveBack(budgeted);
        budgeted = 0;
    }

    private Optional<String> command(ByteBuffer bytes) {
        int step = (int) Math.min(left, bytes.remaining());
        command.put(bytes.slice().limit(step));
        bytes.position(bytes.position() + step);
        left -= step;
        if (left > 0) {
            return Optional.empty();
        }
        state = State.FLAGS;
        boolean fits = ready ? TransportCommand.isOfAConversation(command.flip()) : TransportCommand.isReady(command.flip());
        ready = true;
        return fits ? Optional.empty() : Optional.of("a damaged or unknown command");
    }
}
