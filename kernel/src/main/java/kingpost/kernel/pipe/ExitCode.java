package kingpost.kernel.pipe;

/** Codes with which the calc VM ends itself, for when its last words no longer get through. */
public final class ExitCode {

    public static final int TOO_MANY_THREADS = 71;
    public static final int MEMORY_FULL = 72;

    private ExitCode() {
    }
}
