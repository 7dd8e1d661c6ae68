package kingpost.kernel.agent;

/** A call returned, but its value could not be shown, for this cause. */
final class Unshown extends Exception {

    private static final long serialVersionUID = 1L;

    Unshown(Throwable cause) {
        super(null, cause, false, false);
    }
}
