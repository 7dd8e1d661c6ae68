package kingpost.kernel.agent;

/**
 * The stream or socket in whose native code the cell thread waits: the kernel finds it on the thread's stack through
 * the debug interface and leaves it here; closing it wakes the thread.
 */
final class Blocker {

    /** Written from outside only. */
    private static volatile Object found;

    private Blocker() {
    }

    static void forget() {
        found = null;
    }

    /** Closes what was found, on a thread of its own, because closing may wait as well. */
    static void closeFound() {
        if (found instanceof AutoCloseable open) {
            forget();
            var closing = new Thread(() -> {
                try {
                    open.close();
                } catch (Exception failed) {
                    // the next try is to end the VM
                }
            }, "close");
            closing.setDaemon(true);
            closing.start();
        }
    }
}
