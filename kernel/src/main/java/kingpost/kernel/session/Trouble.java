package kingpost.kernel.session;

import java.lang.System.Logger;
import java.lang.System.Logger.Level;

/** Logs a failure of the kernel's own, and never fails itself: the memory may be full, and a line of service must go on. */
final class Trouble {

    private Trouble() {
    }

    static void log(Logger log, String what, Throwable failure) {
        try {
            log.log(Level.ERROR, what, failure);
        } catch (RuntimeException | Error noRoom) {
            // the failure itself is answered all the same
        }
    }
}
