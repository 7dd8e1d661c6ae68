package kingpost.kernel.document;

import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import kingpost.kernel.evaluation.Outcome;
import kingpost.kernel.message.Output;
import kingpost.kernel.session.CellRun;
import kingpost.kernel.session.DirectSession;

/**
 * Runs a notebook from top to bottom, each code cell once. A cell tagged {@link Cell#SKIP} is left as it is; the
 * failure of one tagged {@link Cell#MAY_FAIL} is part of the notebook. Any other failure stops the run, unless it is
 * told to keep going; cells after it lose their saved outputs, since these would not belong to this run.
 */
public final class NotebookRun {

    /**
     * What came of a run.
     *
     * @param notebook with the outputs of this run
     * @param failures the failures that were not expected, in order
     */
    public record Report(Notebook notebook, List<RunEvent.Failed> failures) {
        public Report {
            failures = List.copyOf(failures);
        }

        /** Whether every cell that was to run ran well. */
        public boolean succeeded() {
            return failures.isEmpty();
        }
    }

    private final DirectSession session;
    private final boolean keepGoing;
    private final RunEvent.Listener listener;
    private final Map<String, CellRun> runs = new HashMap<>();
    private final List<RunEvent.Failed> failures = new ArrayList<>();

    /**
     * @param session   runs the cells; should be fresh
     * @param keepGoing true: a failure does not stop the run
     * @param listener  told of each cell
     */
    public NotebookRun(DirectSession session, boolean keepGoing, RunEvent.Listener listener) {
        this.session = session;
        this.keepGoing = keepGoing;
        this.listener = listener;
    }

    /** Runs the cells and returns the notebook with their outputs. Call once. */
    public Report run(Notebook notebook) {
        List<Cell.Code> cells = notebook.cells().stream().filter(Cell.Code.class::isInstance)
                .map(Cell.Code.class::cast).toList();
        for (int i = 0; i < cells.size(); i++) {
            Cell.Code cell = cells.get(i);
            visit(cell, new RunEvent.Place(i + 1, cells.size(), firstLine(cell.source())));
        }
        List<Cell> after = notebook.cells().stream().map(this::withOutputs).toList();
        return new Report(notebook.withCells(after), failures);
    }

    private void visit(Cell.Code cell, RunEvent.Place place) {
        if (cell.isTagged(Cell.SKIP)) {
            listener.on(new RunEvent.Skipped(place, RunEvent.Skipped.Reason.TAGGED));
        } else if (!failures.isEmpty() && !keepGoing) {
            listener.on(new RunEvent.Skipped(place, RunEvent.Skipped.Reason.AFTER_FAILURE));
        } else if (cell.source().isBlank()) {
            listener.on(new RunEvent.Skipped(place, RunEvent.Skipped.Reason.BLANK));
        } else {
            run(cell, place);
        }
    }

    private void run(Cell.Code cell, RunEvent.Place place) {
        listener.on(new RunEvent.Started(place));
        long start = System.nanoTime();
        CellRun run = session.run(cell.source());
        Duration took = Duration.ofNanos(System.nanoTime() - start);
        runs.put(cell.id(), run);
        if (run.outcome() instanceof Outcome.Failed failure) {
            boolean expected = cell.isTagged(Cell.MAY_FAIL);
            RunEvent.Failed failed = new RunEvent.Failed(place, took, failure, expected);
            if (!expected) {
                failures.add(failed);
            }
            listener.on(failed);
        } else {
            listener.on(new RunEvent.Ended(place, took));
        }
    }

    private Cell withOutputs(Cell cell) {
        if (!(cell instanceof Cell.Code code) || code.isTagged(Cell.SKIP)) {
            return cell;
        }
        CellRun run = runs.get(code.id());
        return run == null ? code.withRun(OptionalLong.empty(), List.of())
                : code.withRun(OptionalLong.of(run.executionCount()),
                        run.outputs().stream().map(NotebookRun::saved).toList());
    }

    private static Map<String, Object> saved(Output output) {
        Map<String, Object> fields = new LinkedHashMap<>();
        fields.put("output_type", output.type());
        fields.putAll(output.fields());
        return fields;
    }

    private static String firstLine(String source) {
        return source.lines().map(String::strip).filter(line -> !line.isEmpty()).findFirst().orElse("");
    }
}
