package kingpost.kernel.message;

import java.util.Locale;

/** The channels on which a client's messages arrive and are answered. */
public enum Channel {
    /** Cells and questions about code, in order of arrival. */
    SHELL,
    /** Interrupt, shutdown and state; never waits for a cell. */
    CONTROL,
    /** The kernel asks for a line, the client answers. */
    STDIN;

    /** The channel's name as log lines print it. */
    public String label() {
        return name().toLowerCase(Locale.ROOT);
    }
}
