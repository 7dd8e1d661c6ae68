package kingpost.kernel.recheck;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import kingpost.kernel.document.Cell;
import kingpost.kernel.document.Notebook;
import kingpost.kernel.document.NotebookRun;
import kingpost.kernel.document.RunEvent;

/**
 * Compares a notebook as it was saved with a run of it from clean. Numbers are compared to a tolerance, text without
 * regard to spaces, figures by their words and shapes. Hidden state shows too: a cell that was run out of order, or
 * that works only with what a later cell makes.
 */
public final class Recheck {

    /** A tag on a cell whose outputs may differ from run to run. */
    public static final String VARIES = "varies";

    private static final Pattern UNKNOWN_NAME = Pattern.compile(
            "cannot find (?:symbol|variable|method|class|name)[:\\s]*(?:variable |method |class )?['\"]?([A-Za-z_$][\\w$]*)");

    private final Notebook saved;
    private final OutputComparison comparison;

    public Recheck(Notebook saved, Tolerance tolerance) {
        this.saved = saved;
        this.comparison = new OutputComparison(tolerance);
    }

    /** What differs, in the order of the cells. */
    public List<Drift> compare(NotebookRun.Report now) {
        List<Cell.Code> before = codeCells(saved);
        List<Cell.Code> after = codeCells(now.notebook());
        Map<Integer, RunEvent.Failed> failures = new HashMap<>();
        now.failures().forEach(failure -> failures.put(failure.place().number(), failure));
        List<Drift> drifts = new ArrayList<>();
        if (before.size() > 1 && before.stream().noneMatch(Recheck::hasRun)) {
            return List.of(new Drift(1, "was never run when the notebook was saved, nor was any other cell; run the notebook and"
                    + " save it first"));
        }
        for (int number = 1; number <= before.size(); number++) {
            Cell.Code cell = before.get(number - 1);
            for (String message : messages(cell, after.get(number - 1), Optional.ofNullable(failures.get(number)), number)) {
                drifts.add(new Drift(number, message));
            }
        }
        return drifts;
    }

    private List<String> messages(Cell.Code cell, Cell.Code now, Optional<RunEvent.Failed> failure, int number) {
        List<String> messages = new ArrayList<>();
        outOfOrder(number).ifPresent(messages::add);
        if (failure.isPresent()) {
            if (!failedWhenSaved(cell)) {
                messages.add(failed(failure.get(), number));
            }
        } else if (failedWhenSaved(cell) && !cell.isTagged(Cell.MAY_FAIL)) {
            messages.add("was saved with an error, now it runs");
        } else if (hasRun(cell) && !cell.isTagged(VARIES) && !cell.isTagged(Cell.SKIP)) {
            messages.addAll(comparison.differences(cell.outputs(), now.outputs()));
        } else if (!hasRun(cell) && !cell.source().isBlank() && !cell.isTagged(Cell.SKIP)) {
            messages.add("was never run when the notebook was saved");
        }
        return messages;
    }

    private static boolean hasRun(Cell.Code cell) {
        return cell.executionCount().isPresent();
    }

    private static boolean failedWhenSaved(Cell.Code cell) {
        return cell.outputs().stream().anyMatch(output -> "error".equals(output.get("output_type")));
    }

    /** A count below that of a cell further up. */
    private Optional<String> outOfOrder(int number) {
        List<Cell.Code> cells = codeCells(saved);
        Cell.Code cell = cells.get(number - 1);
        if (!hasRun(cell)) {
            return Optional.empty();
        }
        for (int above = number - 1; above >= 1; above--) {
            Cell.Code other = cells.get(above - 1);
            if (hasRun(other) && other.executionCount().getAsLong() > cell.executionCount().getAsLong()) {
                return Optional.of("was last run before cell " + above + " above it (counts "
                        + cell.executionCount().getAsLong() + " and " + other.executionCount().getAsLong() + ")");
            }
        }
        return Optional.empty();
    }

    private String failed(RunEvent.Failed failure, int number) {
        String message = failure.failure().name() + ": " + failure.failure().message();
        Matcher unknown = UNKNOWN_NAME.matcher(failure.failure().message());
        String later = unknown.find() ? madeLater(unknown.group(1), number) : "";
        return "fails when the notebook runs from top to bottom (" + message + ")" + later;
    }

    private String madeLater(String name, int number) {
        Pattern making = Pattern.compile("\\b" + Pattern.quote(name) + "\\s*(=[^=]|\\()|\\b(class|record|enum|interface)\\s+"
                + Pattern.quote(name) + "\\b");
        List<Cell.Code> cells = codeCells(saved);
        for (int below = number + 1; below <= cells.size(); below++) {
            if (making.matcher(cells.get(below - 1).source()).find()) {
                return "; " + name + " is made only in cell " + below + ", further down";
            }
        }
        return "; " + name + " is made nowhere in the notebook";
    }

    private static List<Cell.Code> codeCells(Notebook notebook) {
        return notebook.cells().stream().filter(Cell.Code.class::isInstance).map(Cell.Code.class::cast).toList();
    }
}
