package kingpost.kernel.evaluation;

/**
 * Whether the calc VM still says anything while a call runs. It is asked at every look, and its reading thread
 * answers, which no cell can hold up; a VM whose memory is so full that this thread is gone stays silent.
 */
final class LifeSigns {

    /** Between two looks. */
    static final long LOOK_MILLIS = 3_000;
    /** So many looks in a row may find it silent; longer than any pause of the garbage collector. */
    private static final int SILENT_LOOKS = 10;

    private volatile boolean taking;
    private volatile int silent;

    /** A frame has come, which may take a while to take. */
    void begin() {
        taking = true;
    }

    /** The frame has been taken. */
    void end() {
        silent = 0;
        taking = false;
    }

    /** Looks once; true when it has been silent for too long. */
    boolean areMissing() {
        if (!taking) {
            silent++;
        }
        return silent > SILENT_LOOKS;
    }

    /** A new call begins. */
    void reset() {
        silent = 0;
    }
}
