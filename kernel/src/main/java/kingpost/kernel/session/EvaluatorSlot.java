package kingpost.kernel.session;

import java.lang.System.Logger;
import java.lang.System.Logger.Level;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.Supplier;
import kingpost.kernel.evaluation.Evaluator;

/** Holds the evaluator, which is made on a thread of its own while clients are answered already. */
final class EvaluatorSlot {

    private static final Logger LOG = System.getLogger("kingpost.session");

    private final CompletableFuture<Evaluator> future = new CompletableFuture<>();
    private volatile boolean closed;

    EvaluatorSlot(Supplier<? extends Evaluator> maker) {
        Thread thread = new Thread(() -> make(maker), "kingpost-evaluator-start");
        thread.setDaemon(true);
        thread.start();
    }

    /**
     * The evaluator; waits for it.
     *
     * @throws IllegalStateException when it could not be made
     */
    Evaluator get() {
        try {
            return future.get();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("interrupted while the cells' process was starting", e);
        } catch (ExecutionException e) {
            throw new IllegalStateException("the process for cells could not be started: "
                    + e.getCause().getMessage(), e.getCause());
        }
    }

    /** The evaluator if it exists within this time. */
    Optional<Evaluator> within(long millis) {
        try {
            return Optional.of(future.get(millis, TimeUnit.MILLISECONDS));
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return Optional.empty();
        } catch (ExecutionException | TimeoutException e) {
            return Optional.empty();
        }
    }

    /** The evaluator if it exists. */
    Optional<Evaluator> ifReady() {
        return future.isDone() && !future.isCompletedExceptionally() ? Optional.of(future.join()) : Optional.empty();
    }

    /** Closes it, also when it comes into being only later. */
    void close() {
        closed = true;
        ifReady().ifPresent(Evaluator::close);
    }

    private void make(Supplier<? extends Evaluator> maker) {
        try {
            Evaluator evaluator = maker.get();
            future.complete(evaluator);
            if (closed) {
                evaluator.close();
            }
        } catch (RuntimeException | Error e) {
            LOG.log(Level.ERROR, "The process for cells could not be started", e);
            future.completeExceptionally(e);
        }
    }
}
