package kingpost.kernel.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import kingpost.kernel.display.MimeBundle;
import kingpost.kernel.message.Output;
import org.junit.jupiter.api.Test;

class DirectSessionTest {

    private final ScriptedEvaluator evaluator = ScriptedEvaluator.withUsualCells();
    private final DirectSession session = new DirectSession(evaluator, new OutputLimits(40, 2, 100));

    @Test
    void numbersCellsAndKeepsTheirResults() {
        session.run("hello");
        CellRun second = session.run("1 + 1");
        assertEquals(2, second.executionCount());
        assertEquals(List.of(new Output.ExecuteResult(2, Map.of("text/plain", "2"), Map.of())), second.outputs());
    }

    @Test
    void joinsNeighbouringTextOfOneStream() {
        assertEquals(List.of(new Output.Stream("stdout", "hello, world\n")), session.run("hello").outputs());
    }

    @Test
    void endsAFailedCellWithItsError() {
        List<Output> outputs = session.run("fail").outputs();
        assertEquals(List.of(new Output.Error("ArithmeticException", "/ by zero",
                List.of("ArithmeticException: / by zero"))), outputs);
    }

    @Test
    void givesABlankCellNoNumber() {
        session.run("  \n");
        assertEquals(0, session.executionCount());
    }

    @Test
    void updatesWhatAnEarlierCellShows() {
        evaluator.on("show", (cell, out) -> {
            out.display(MimeBundle.plain("old"), Optional.of("d1"));
            return ScriptedEvaluator.nothing();
        }).on("update", (cell, out) -> {
            out.update(MimeBundle.plain("new"), "d1");
            return ScriptedEvaluator.nothing();
        });
        CellRun first = session.run("show");
        CellRun second = session.run("update");
        assertEquals(Map.of("text/plain", "new"), ((Output.DisplayData) first.outputs().get(0)).data());
        assertEquals(Map.of("data", Map.of("text/plain", "new"), "metadata", Map.of()), first.outputs().get(0).fields());
        assertEquals(List.of(), second.outputs());
    }

    @Test
    void clearsWhenTheNextOutputComes() {
        evaluator.on("redraw", (cell, out) -> {
            out.stream("stdout", "one");
            out.clear(true);
            out.stream("stdout", "two");
            out.clear(true);
            return ScriptedEvaluator.nothing();
        });
        assertEquals(List.of(new Output.Stream("stdout", "two")), session.run("redraw").outputs());
    }

    @Test
    void capsTextWithANoticeAndShowsItsEnd() {
        evaluator.on("flood", (cell, out) -> {
            for (int i = 0; i < 10_000; i++) {
                out.stream("stdout", "line " + i + "\n");
            }
            return ScriptedEvaluator.nothing();
        });
        List<Output> outputs = session.run("flood").outputs();
        assertEquals(2, outputs.size());
        assertEquals(40, ((Output.Stream) outputs.get(0)).text().length());
        String notice = ((Output.Stream) outputs.get(1)).text();
        assertTrue(notice.contains("longer than 40 characters") && notice.contains("characters left out")
                && notice.endsWith("line 9999\n"), notice);
    }

    @Test
    void capsTheNumberOfShownValues() {
        evaluator.on("many", (cell, out) -> {
            for (int i = 0; i < 50; i++) {
                out.display(MimeBundle.plain("v" + i), Optional.empty());
            }
            return ScriptedEvaluator.nothing();
        });
        List<Output> outputs = session.run("many").outputs();
        assertEquals(3, outputs.size());
        assertTrue(((Output.Stream) outputs.get(2)).text().contains("2 values"));
    }

    @Test
    void showsOnlyTheStartOfAHugeValue() {
        evaluator.on("huge", (cell, out) -> ScriptedEvaluator.value("x".repeat(5_000)));
        Output.ExecuteResult result = (Output.ExecuteResult) session.run("huge").outputs().get(0);
        String text = (String) result.data().get("text/plain");
        assertTrue(text.length() < 2_300 && text.contains("5010 characters"), text.substring(2_000));
    }

    @Test
    void keepsLateOutputWithItsOwnCell() {
        CellRun first = session.run("hello");
        var lateOutput = evaluator.lastOutput;
        session.run("1 + 1");
        lateOutput.stream("stdout", "late");
        assertEquals(List.of(new Output.Stream("stdout", "hello, world\nlate")), first.outputs());
    }
}
