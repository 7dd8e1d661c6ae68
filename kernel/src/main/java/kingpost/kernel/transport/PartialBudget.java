package kingpost.kernel.transport;

/**
 * Memory that large messages may take before they are complete, for all peers together: many peers that each announce
 * a large message and never finish it must not fill the heap. Safe for several threads.
 */
public final class PartialBudget {

    private long left;

    public PartialBudget(long bytes) {
        this.left = bytes;
    }

    synchronized boolean take(long bytes) {
        if (bytes > left) {
            return false;
        }
        left -= bytes;
        return true;
    }

    synchronized void giveBack(long bytes) {
        left += bytes;
    }
}
