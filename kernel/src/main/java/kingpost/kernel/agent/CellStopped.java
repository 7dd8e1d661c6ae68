package kingpost.kernel.agent;

/**
 * Thrown on the cell thread when the user stops a cell: by the agent itself where it waits, by the kernel through
 * the debug interface anywhere else. An {@code Error}, so that a cell's {@code catch (Exception e)} lets it pass.
 */
public final class CellStopped extends Error {

    private static final long serialVersionUID = 1L;

    /** The one the kernel throws into a thread from outside; found by name through the debug interface. */
    static final CellStopped FROM_OUTSIDE = new CellStopped("The cell was interrupted.");

    CellStopped(String message) {
        super(message, null, false, false);
    }

    /** The form in which a fork-join pool passes a failure on from another thread. */
    public CellStopped(Throwable cause) {
        super("The cell was interrupted.", cause, false, false);
    }

    /** Whether this failure, or one it was caused by, is a stop. */
    static boolean isIn(Throwable failure) {
        for (int depth = 0; failure != null && depth < 50; depth++) {
            if (failure instanceof CellStopped) {
                return true;
            }
            failure = causeOf(failure);
        }
        return false;
    }

    /** The getter may be a cell's own, and fail. */
    private static Throwable causeOf(Throwable failure) {
        try {
            return failure.getCause();
        } catch (RuntimeException | Error broken) {
            return broken instanceof CellStopped ? broken : null;
        }
    }
}
