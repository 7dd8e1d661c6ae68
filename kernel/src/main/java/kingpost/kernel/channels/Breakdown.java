package kingpost.kernel.channels;

import java.lang.System.Logger;
import java.lang.System.Logger.Level;
import java.util.concurrent.CompletableFuture;
import java.util.function.Consumer;

/** The end of a thread without which clients cannot be served any more; told once, however many follow it. */
final class Breakdown implements Thread.UncaughtExceptionHandler {

    private final Logger log;
    private final CompletableFuture<String> reason = new CompletableFuture<>();

    Breakdown(Logger log) {
        this.log = log;
    }

    @Override
    public void uncaughtException(Thread thread, Throwable problem) {
        try {
            log.log(Level.ERROR, "The transport's thread " + thread.getName() + " has ended", problem);
        } finally {
            reason.complete("Transport: its thread " + thread.getName() + " has ended (" + problem + "), so that no client can be"
                    + " served any more; the kernel ends, start it again.");
        }
    }

    /** Hands over one line that says what has happened, once it has. */
    void then(Consumer<String> told) {
        reason.thenAccept(told);
    }

    boolean hasHappened() {
        return reason.isDone();
    }
}
