package kingpost.kernel.document;

import static kingpost.kernel.document.ScriptedEvaluator.failure;
import static kingpost.kernel.document.ScriptedEvaluator.value;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import kingpost.kernel.display.MimeBundle;
import kingpost.kernel.session.DirectSession;
import org.junit.jupiter.api.Test;

class NotebookRunTest {

    private final ScriptedEvaluator evaluator = new ScriptedEvaluator();
    private final List<String> told = new ArrayList<>();

    private NotebookRun.Report run(boolean keepGoing, Cell... cells) {
        Notebook notebook = new Notebook(5, Map.of("ours", 1L), List.of(cells), Map.of());
        return new NotebookRun(new DirectSession(evaluator), keepGoing,
                event -> told.add(event.getClass().getSimpleName() + " " + event.place().number())).run(notebook);
    }

    private static Cell.Code code(String source, String... tags) {
        Map<String, Object> stale = Map.of("output_type", "stream", "name", "stdout", "text", "stale");
        return new Cell.Code("id-" + source.hashCode(), Map.of("tags", List.of(tags)), source, OptionalLong.of(99),
                List.of(stale), Map.of());
    }

    private static Cell.Code cell(NotebookRun.Report report, int index) {
        return (Cell.Code) report.notebook().cells().get(index);
    }

    @Test
    void runsCodeCellsInOrderAndKeepsTheRest() {
        Cell.Markdown prose = new Cell.Markdown("p", Map.of(), "# Title", Map.of());
        NotebookRun.Report report = run(false, prose, code("a"), code("b"));
        assertEquals(List.of("a", "b"), evaluator.ran);
        assertEquals(prose, report.notebook().cells().get(0));
        assertEquals(Map.of("ours", 1L), report.notebook().metadata());
        assertEquals(OptionalLong.of(2), cell(report, 2).executionCount());
        assertEquals(List.of(Map.of("output_type", "execute_result", "execution_count", 2, "metadata", Map.of(), "data",
                Map.of("text/plain", "b"))), cell(report, 2).outputs());
        assertEquals(List.of("Started 1", "Ended 1", "Started 2", "Ended 2"), told);
        assertTrue(report.succeeded());
    }

    @Test
    void keepsStreamsAndFiguresInTheirOrder() {
        evaluator.on("show", output -> {
            output.stream("stdout", "one\n");
            output.stream("stdout", "two\n");
            output.display(MimeBundle.plain("figure"), Optional.of("f"));
            output.stream("stderr", "oops\n");
            return value("end");
        });
        List<Map<String, Object>> outputs = cell(run(false, code("show")), 0).outputs();
        assertEquals(List.of("stream", "display_data", "stream", "execute_result"),
                outputs.stream().map(output -> output.get("output_type")).toList());
        assertEquals("one\ntwo\n", outputs.get(0).get("text"));
        assertFalse(outputs.get(1).containsKey("transient"), "files do not store display ids");
    }

    @Test
    void storesWhatALaterCellMadeOfAFigure() {
        evaluator.on("show", output -> {
            output.display(MimeBundle.plain("before"), Optional.of("f"));
            return value("x");
        }).on("change", output -> {
            output.update(MimeBundle.plain("after"), "f");
            return value("y");
        });
        assertEquals(Map.of("text/plain", "after"),
                cell(run(false, code("show"), code("change")), 0).outputs().get(0).get("data"));
    }

    @Test
    void stopsAtTheFirstFailureAndDropsOutputsThatAreNotOfThisRun() {
        evaluator.on("bad", output -> failure("ArithmeticException", "/ by zero", 2));
        NotebookRun.Report report = run(false, code("a"), code("bad"), code("b"));
        assertEquals(List.of("a", "bad"), evaluator.ran);
        assertEquals(List.of("Started 1", "Ended 1", "Started 2", "Failed 2", "Skipped 3"), told);
        assertEquals("execute_result", cell(report, 0).outputs().get(0).get("output_type"));
        assertEquals(Map.of("output_type", "error", "ename", "ArithmeticException", "evalue", "/ by zero", "traceback",
                List.of("line 2")), cell(report, 1).outputs().get(0));
        assertEquals(List.of(), cell(report, 2).outputs());
        assertEquals(OptionalLong.empty(), cell(report, 2).executionCount());
        assertEquals(2, report.failures().get(0).place().number());
        assertEquals(2, report.failures().get(0).failure().line());
    }

    @Test
    void goesOnAfterAFailureIfAsked() {
        evaluator.on("bad", output -> failure("E", "m", 1));
        NotebookRun.Report report = run(true, code("bad"), code("b"));
        assertEquals(List.of("bad", "b"), evaluator.ran);
        assertEquals(1, report.failures().size());
    }

    @Test
    void takesAFailureForGrantedWhereTheTagSaysSo() {
        evaluator.on("bad", output -> failure("E", "m", 1));
        NotebookRun.Report report = run(false, code("bad", Cell.MAY_FAIL), code("b"));
        assertEquals(List.of("bad", "b"), evaluator.ran);
        assertTrue(report.succeeded());
        assertEquals("error", cell(report, 0).outputs().get(0).get("output_type"));
    }

    @Test
    void leavesATaggedCellAsItIs() {
        Cell.Code skipped = code("a", Cell.SKIP);
        NotebookRun.Report report = run(false, skipped, code("b"));
        assertEquals(List.of("b"), evaluator.ran);
        assertEquals(skipped, report.notebook().cells().get(0));
        assertEquals(OptionalLong.of(1), cell(report, 1).executionCount());
    }

    @Test
    void givesABlankCellNoNumber() {
        NotebookRun.Report report = run(false, code(" \n"), code("b"));
        assertEquals(List.of("b"), evaluator.ran);
        assertEquals(OptionalLong.empty(), cell(report, 0).executionCount());
        assertEquals(OptionalLong.of(1), cell(report, 1).executionCount());
    }
}
