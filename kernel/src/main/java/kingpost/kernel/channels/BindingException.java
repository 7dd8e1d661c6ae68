package kingpost.kernel.channels;

/** A socket cannot listen where the connection file says; the message names the port and what to do. */
public final class BindingException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    public BindingException(String message, Throwable cause) {
        super(message, cause);
    }
}
