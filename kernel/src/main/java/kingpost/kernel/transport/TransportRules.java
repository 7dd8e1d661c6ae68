package kingpost.kernel.transport;

/**
 * How much a peer may send on a socket. One that sends more is cut off: these bounds lie above those at which a
 * message is only dropped.
 *
 * @param messageBytes   bytes of all frames of one message
 * @param messageFrames  frames of one message
 * @param lifetimeBytes  bytes of all frames that ever come over one connection
 * @param lifetimeFrames their number
 */
public record TransportRules(long messageBytes, long messageFrames, long lifetimeBytes, long lifetimeFrames) {

    public TransportRules {
        if (Math.min(Math.min(messageBytes, messageFrames), Math.min(lifetimeBytes, lifetimeFrames)) < 1) {
            throw new IllegalArgumentException("Transport rules: each bound must be at least 1");
        }
    }

    /** For requests: bounds for each message, none for the connection. */
    public static TransportRules ofMessages(long bytes, long frames) {
        return new TransportRules(bytes, frames, Long.MAX_VALUE, Long.MAX_VALUE);
    }
}
