package kingpost.kernel.pipe;

/** Codes with which the calc VM ends itself, for when its last words no longer get through. */
public final class ExitCode {

    /** The other VM is gone, or something without which there is no going on has ended. */
    public static final int BROKEN = 70;
    public static final int TOO_MANY_THREADS = 71;
    public static final int MEMORY_FULL = 72;
    /** A shutdown hook of a cell did not end. */
    public static final int HOOK_WITHOUT_END = 73;

    private ExitCode() {
    }
}
