package kingpost.kernel.agent;

/**
 * Ends this VM also when its memory is full: the first call of the JDK's own end needs a little memory itself, and
 * throws when there is none.
 */
final class LastResort {

    /** Given up at the end; large enough for whatever the JDK links then. */
    private static volatile byte[] reserve = new byte[1 << 20];

    private LastResort() {
    }

    /** Makes the reserve while there is room. */
    static void prepare() {
        // loading this class does it
    }

    /** Ends the VM with this code, now, and does not return. */
    static void halt(int code) {
        reserve = null;
        while (true) {
            try {
                Runtime.getRuntime().halt(code);
            } catch (Throwable noRoom) {
                Thread.onSpinWait();
            }
        }
    }
}
