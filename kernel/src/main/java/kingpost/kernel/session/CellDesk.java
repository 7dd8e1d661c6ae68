package kingpost.kernel.session;

import java.lang.System.Logger;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kingpost.kernel.display.MimeBundle;
import kingpost.kernel.evaluation.CellRequest;
import kingpost.kernel.evaluation.Evaluator;
import kingpost.kernel.evaluation.Outcome;
import kingpost.kernel.message.Announcement;
import kingpost.kernel.message.Output;
import kingpost.kernel.message.Reply;
import kingpost.kernel.message.Request;

/**
 * Runs cells, one at a time: number, input, outputs, result or error, reply. One number stands in all messages about
 * a cell; a cell that is not stored shows the number of the last stored one.
 */
final class CellDesk {

    private static final Logger LOG = System.getLogger("kingpost.session");
    private static final Outcome INTERRUPTED_BEFORE = new Outcome.Failed(Outcome.Kind.INTERRUPTED, "Interrupted",
            "The cell was interrupted before it began.", List.of("Interrupted: The cell was interrupted before it began."), 0);

    private final EvaluatorSlot evaluator;
    private final InputDesk input;
    private final CellStop stop;
    private final ShellQueue queue;
    private final HistoryStore history;
    private final OutputLimits limits;
    private final OutputGate.Pace pace;
    private int executionCount;

    CellDesk(EvaluatorSlot evaluator, InputDesk input, CellStop stop, ShellQueue queue, HistoryStore history,
             OutputLimits limits, OutputGate.Pace pace) {
        this.evaluator = evaluator;
        this.input = input;
        this.stop = stop;
        this.queue = queue;
        this.history = history;
        this.limits = limits;
        this.pace = pace;
    }

    /** Handles an execute request; called from the shell thread only. */
    Optional<Reply> execute(Exchange exchange) {
        Request.Execute request = Request.Execute.of(exchange.fields());
        if (queue.isAborted(exchange)) {
            return Optional.of(new Reply.Aborted());
        }
        boolean counts = request.storeHistory() && !request.code().isBlank();
        if (counts) {
            history.add(++executionCount, request.code());
        }
        if (!request.silent()) {
            exchange.publish(new Announcement.ExecuteInput(request.code(), executionCount));
        }
        Outcome outcome = run(exchange, request);
        if (counts && outcome instanceof Outcome.Completed completed) {
            completed.result().ifPresent(bundle -> history.setOutput(executionCount, plainText(bundle)));
        }
        return Optional.of(reply(request, outcome));
    }

    /** Where output of a request that is no cell goes. */
    OutputGate gate(Exchange exchange, InputPrompt prompt) {
        return new OutputGate(exchange::publish, prompt, limits, pace);
    }

    private Outcome run(Exchange exchange, Request.Execute request) {
        InputPrompt prompt = request.allowStdin()
                ? (question, password) -> input.ask(exchange, question, password) : InputPrompt.NONE;
        OutputGate gate = gate(exchange, prompt);
        input.cellBegan(exchange);
        Outcome outcome = stop.isMeant(exchange) ? INTERRUPTED_BEFORE : evaluate(exchange, request, gate);
        input.cellEnded();
        Optional<Output> last = request.silent() ? Optional.empty()
                : CellEnding.of(outcome, executionCount, limits);
        last.ifPresentOrElse(gate::finish, gate::finish);
        return outcome;
    }

    private Outcome evaluate(Exchange exchange, Request.Execute request, OutputGate gate) {
        if (request.code().isBlank() && request.userExpressions().isEmpty()) {
            return new Outcome.Completed(Optional.empty(), Map.of(), List.of());
        }
        try {
            Evaluator ready = evaluator.get(); // which may have taken a while
            return stop.isMeant(exchange) ? INTERRUPTED_BEFORE : ready.run(new CellRequest(request.code(),
                    request.silent(), request.allowStdin(), request.userExpressions()), gate);
        } catch (RuntimeException | Error e) {
            Trouble.log(LOG, "A cell could not be run", e);
            String message = "the kernel could not run this cell: " + e.getMessage() + "; its log has the details";
            return new Outcome.Failed(Outcome.Kind.EXCEPTION, "KernelError", message,
                    List.of("KernelError: " + message), 0);
        }
    }

    private Reply reply(Request.Execute request, Outcome outcome) {
        if (outcome instanceof Outcome.Failed failed) {
            boolean interrupted = failed.kind() == Outcome.Kind.INTERRUPTED;
            if (interrupted || request.stopOnError() && !request.silent()) {
                queue.abortCells();
            }
            return new Reply.ExecuteError(executionCount,
                    new Output.Error(failed.name(), failed.message(), failed.traceback()));
        }
        Outcome.Completed completed = (Outcome.Completed) outcome;
        Map<String, Object> expressions = new LinkedHashMap<>();
        completed.expressions().forEach((name, value) -> expressions.put(name, expression(value)));
        return new Reply.ExecuteOk(executionCount, completed.payload(), expressions);
    }

    private Map<String, Object> expression(Outcome.ExpressionValue value) {
        if (value instanceof Outcome.ExpressionValue.Shown shown) {
            MimeBundle bundle = BundleCap.within(limits, shown.bundle());
            return Map.of("status", "ok", "data", bundle.data(), "metadata", bundle.metadata());
        }
        Outcome.ExpressionValue.Failed failed = (Outcome.ExpressionValue.Failed) value;
        return Map.of("status", "error", "ename", failed.name(), "evalue", failed.message(),
                "traceback", failed.traceback());
    }

    private static String plainText(MimeBundle bundle) {
        return String.valueOf(bundle.data().getOrDefault(MimeBundle.PLAIN, ""));
    }
}
