package kingpost.kernel.session;

/**
 * How much output one cell may send to its clients.
 *
 * @param streamChars characters of stdout and stderr together; what comes after is counted, not sent, but for a tail
 * @param displays    values shown with {@code display}; updates of a shown value do not count
 * @param bundleChars characters of one shown value, all its forms together
 */
public record OutputLimits(int streamChars, int displays, int bundleChars) {

    /** System property for {@link #streamChars}. */
    public static final String STREAM_PROPERTY = "kingpost.streamLimit";
    /** System property for {@link #displays}. */
    public static final String DISPLAYS_PROPERTY = "kingpost.displayLimit";
    /** System property for {@link #bundleChars}. */
    public static final String BUNDLE_PROPERTY = "kingpost.valueLimit";

    /** One million characters of text, a thousand displays, eight million characters for a value. */
    public static final OutputLimits STANDARD = new OutputLimits(1_000_000, 1_000, 8_000_000);

    public OutputLimits {
        if (streamChars < 1 || displays < 1 || bundleChars < 1) {
            throw new IllegalArgumentException("Output limits: " + streamChars + ", " + displays + ", " + bundleChars
                    + " given; each must be at least 1");
        }
    }

    /** The limits that the system properties ask for; the standard ones where a property is absent or no number. */
    public static OutputLimits configured() {
        return new OutputLimits(
                Math.max(1, Integer.getInteger(STREAM_PROPERTY, STANDARD.streamChars)),
                Math.max(1, Integer.getInteger(DISPLAYS_PROPERTY, STANDARD.displays)),
                Math.max(1, Integer.getInteger(BUNDLE_PROPERTY, STANDARD.bundleChars)));
    }
}
