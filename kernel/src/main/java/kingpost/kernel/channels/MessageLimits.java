package kingpost.kernel.channels;

/**
 * How large a message may be that a client sends. A larger one is dropped and logged; one of more than twice the
 * limit ends the connection that it comes from, before memory is taken for it.
 *
 * @param bytes  all frames together
 * @param frames their number
 */
public record MessageLimits(long bytes, int frames) {

    /** System property for {@link #bytes}. */
    public static final String BYTES_PROPERTY = "kingpost.messageLimit";

    private static final long MEBIBYTE = 1L << 20;

    public MessageLimits {
        if (bytes < 1 || frames < 1) {
            throw new IllegalArgumentException("Message limits: " + bytes + " bytes, " + frames
                    + " frames given; each must be at least 1");
        }
    }

    /** The system property's bytes, or a tenth of the largest heap, from 4 to 64 MiB; 1,000 frames. */
    public static MessageLimits configured() {
        long byHeap = Math.max(4 * MEBIBYTE, Math.min(64 * MEBIBYTE, Runtime.getRuntime().maxMemory() / 10));
        return new MessageLimits(Math.max(1, Long.getLong(BYTES_PROPERTY, byHeap)), 1_000);
    }
}
