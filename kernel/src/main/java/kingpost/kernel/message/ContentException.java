package kingpost.kernel.message;

/** A field of a message is absent or of the wrong kind; the message says which. */
public final class ContentException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    public ContentException(String message) {
        super(message);
    }
}
