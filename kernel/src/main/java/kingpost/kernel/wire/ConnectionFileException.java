package kingpost.kernel.wire;

/** The connection file cannot be used; the message says why and what to do, and never holds the key. */
public final class ConnectionFileException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    public ConnectionFileException(String message) {
        super(message);
    }
}
