package kingpost.kernel.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kingpost.kernel.evaluation.CellRequest;
import kingpost.kernel.evaluation.Evaluator;
import kingpost.kernel.evaluation.Outcome;
import kingpost.kernel.message.Output;

/**
 * Runs cells in order through an evaluator without any client, and keeps what each put out, with the same limits,
 * joining of streams, display updates and clearing as for a front end.
 *
 * <pre>{@code
 * var session = new DirectSession(evaluator);
 * CellRun run = session.run("1 + 1");
 * run.outputs();     // one ExecuteResult
 * run.outcome();     // Completed or Failed
 * }</pre>
 *
 * <p>Cells cannot ask for input here. The evaluator is the caller's to close. Write a notebook's outputs after its
 * last cell: a later cell may update what an earlier one shows.
 */
public final class DirectSession {

    private final Evaluator evaluator;
    private final OutputLimits limits;
    private final List<CellRun> runs = new ArrayList<>();

    public DirectSession(Evaluator evaluator) {
        this(evaluator, OutputLimits.configured());
    }

    public DirectSession(Evaluator evaluator, OutputLimits limits) {
        this.evaluator = evaluator;
        this.limits = limits;
    }

    /** Runs one cell to its end. A blank cell takes no number and puts out nothing, as in a front end. */
    public CellRun run(String code) {
        CellRun run = begin(code);
        Output.Visitor<Void> recorder = run.recorder(this::update);
        OutputGate gate = new OutputGate(output -> output.accept(recorder), InputPrompt.NONE, limits,
                OutputGate.Pace.AT_ONCE);
        Outcome outcome = code.isBlank() ? new Outcome.Completed(Optional.empty(), Map.of(), List.of())
                : evaluator.run(CellRequest.of(code), gate);
        CellEnding.of(outcome, run.executionCount(), limits).ifPresentOrElse(gate::finish, gate::finish);
        run.ended(outcome);
        return run;
    }

    /** How many cells have taken a number so far. */
    public synchronized int executionCount() {
        return runs.size();
    }

    private synchronized CellRun begin(String code) {
        CellRun run = new CellRun(runs.size() + 1);
        if (!code.isBlank()) {
            runs.add(run);
        }
        return run;
    }

    private void update(Output.UpdateDisplayData update) {
        List<CellRun> shown;
        synchronized (this) {
            shown = List.copyOf(runs);
        }
        shown.forEach(run -> run.updated(update));
    }
}
