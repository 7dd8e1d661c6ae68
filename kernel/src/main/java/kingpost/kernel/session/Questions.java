package kingpost.kernel.session;

import java.lang.System.Logger;
import java.lang.System.Logger.Level;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Future;
import java.util.concurrent.SynchronousQueue;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import kingpost.kernel.evaluation.Evaluator;
import kingpost.kernel.message.Replies;
import kingpost.kernel.message.Reply;
import kingpost.kernel.message.Request;

/**
 * Answers questions about code: completion, inspection, completeness. An answer that takes too long is given up for
 * an empty one, so that a hanging analysis never hangs a client.
 */
final class Questions {

    private static final Logger LOG = System.getLogger("kingpost.session");
    private static final long LIMIT_MILLIS = 3_000;
    /** A console waits no longer than a quarter of a second before it decides for itself. */
    private static final long COMPLETENESS_LIMIT_MILLIS = 200;
    private static final int AT_ONCE = 4;

    private final EvaluatorSlot evaluator;
    private final OutputLimits limits;
    private final ExecutorService workers = new ThreadPoolExecutor(0, AT_ONCE, 5, TimeUnit.SECONDS,
            new SynchronousQueue<>(), Questions::worker, (task, pool) -> ((Future<?>) task).cancel(false));

    Questions(EvaluatorSlot evaluator, OutputLimits limits) {
        this.evaluator = evaluator;
        this.limits = limits;
    }

    Optional<Reply> complete(Exchange exchange) {
        Request.Complete request = Request.Complete.of(exchange.fields());
        int cursor = CodePoints.toUtf16(request.code(), request.cursor());
        Evaluator.Completion found = ask(() -> evaluator.get().complete(request.code(), cursor), LIMIT_MILLIS)
                .orElseGet(() -> new Evaluator.Completion(List.of(), cursor, cursor));
        List<Replies.Match> matches = found.proposals().stream()
                .map(proposal -> new Replies.Match(proposal.text(), proposal.type(), proposal.signature())).toList();
        return Optional.of(Replies.complete(matches, CodePoints.fromUtf16(request.code(), found.start()),
                CodePoints.fromUtf16(request.code(), found.end())));
    }

    /** The answer to a completion that a newer one has made pointless. */
    static Reply nothingToComplete(Exchange exchange) {
        Request.Complete request = Request.Complete.of(exchange.fields());
        return Replies.complete(List.of(), request.cursor(), request.cursor());
    }

    Optional<Reply> inspect(Exchange exchange) {
        Request.Inspect request = Request.Inspect.of(exchange.fields());
        int cursor = CodePoints.toUtf16(request.code(), request.cursor());
        int detail = Math.max(0, Math.min(1, request.detail()));
        return Optional.of(ask(() -> evaluator.get().inspect(request.code(), cursor, detail), LIMIT_MILLIS)
                .flatMap(found -> found).map(found -> BundleCap.within(limits, found))
                .map(found -> Replies.inspect(found.data(), found.metadata()))
                .orElseGet(() -> Replies.inspect(Map.of(), Map.of())));
    }

    Optional<Reply> isComplete(Exchange exchange) {
        Request.IsComplete request = Request.IsComplete.of(exchange.fields());
        Evaluator.Completeness found = ask(() -> evaluator.get().completeness(request.code()), COMPLETENESS_LIMIT_MILLIS)
                .orElseGet(() -> new Evaluator.Completeness(Evaluator.Completeness.Status.UNKNOWN, ""));
        return Optional.of(Replies.isComplete(found.status().name().toLowerCase(Locale.ROOT), found.indent()));
    }

    void close() {
        workers.shutdownNow();
    }

    private <T> Optional<T> ask(Callable<T> question, long limitMillis) {
        Future<T> answer = workers.submit(question);
        try {
            return answer.isCancelled() ? Optional.empty() : Optional.of(answer.get(limitMillis, TimeUnit.MILLISECONDS));
        } catch (TimeoutException e) {
            LOG.log(Level.WARNING, "A question about code was not answered in " + limitMillis + " ms");
            answer.cancel(true);
        } catch (ExecutionException e) {
            Trouble.log(LOG, "A question about code could not be answered", e.getCause());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        return Optional.empty();
    }

    private static Thread worker(Runnable task) {
        Thread thread = new Thread(task, "kingpost-question");
        thread.setDaemon(true);
        return thread;
    }
}
