package kingpost.kernel.session;

/** The history file cannot be used; the message says why. */
final class HistoryException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    HistoryException(String message, Throwable cause) {
        super(message, cause);
    }
}
