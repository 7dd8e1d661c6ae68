package kingpost.kernel.evaluation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import kingpost.kernel.display.MimeBundle;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Cells that are right by themselves and only too large for a class file: they are refused, and later cells work. */
@Timeout(120)
class HalfMadeIT {

    private static JShellEvaluator evaluator;

    @BeforeAll
    static void start() {
        evaluator = JShellEvaluator.start();
    }

    @AfterAll
    static void stop() {
        evaluator.close();
    }

    static Stream<Arguments> tooLarge() {
        String text = "\"" + "x".repeat(70_000) + "\"";
        String numbers = IntStream.range(0, 12_000).mapToObj(Integer::toString).collect(Collectors.joining(", "));
        String sums = "sum += sum * sum + sum; ".repeat(9_000);
        return Stream.of(Arguments.of("String made = " + text + ";", "65,535"),
                Arguments.of(text + ".length()", "65,535"),
                Arguments.of("if (" + text + ".isEmpty()) { }", "65,535"),
                Arguments.of("String made() { return " + text + "; }", "65,535"),
                Arguments.of("class Made { String text = " + text + "; }", "65,535"),
                Arguments.of("int[] made = { " + numbers + " };", "split it"),
                Arguments.of("int made() { int sum = 0; " + sums + " return sum; }", "split it"),
                Arguments.of("Object made" + "[]".repeat(300) + " = null;", "too many dimensions"));
    }

    /** Names on which the frame around every cell relies. */
    @ParameterizedTest
    @ValueSource(strings = { "class Object { }", "record String(int n) { }", "int java = 5;", "class REPL { }", "enum java { A }" })
    void isRefusedWhenItTakesTheNameOfEveryCell(String code) {
        var output = new RecordedOutput();
        var failed = assertInstanceOf(Outcome.Failed.class, evaluator.run(CellRequest.of(code), output), code);
        assertTrue(failed.message().endsWith("is used by every cell; give another"), failed.message());
        assertInstanceOf(Outcome.Completed.class, evaluator.run(CellRequest.of("record Kept(int n) { }"), output));
        var next = assertInstanceOf(Outcome.Completed.class, evaluator.run(CellRequest.of(
                "var kept = new ArrayList<Kept>(List.of(new Kept(7))); kept.get(0).n()"), output));
        assertEquals("7", next.result().orElseThrow().data().get(MimeBundle.PLAIN));
    }

    @ParameterizedTest
    @MethodSource("tooLarge")
    void isRefusedAlone(String code, String told) {
        var output = new RecordedOutput();
        Outcome outcome = evaluator.run(CellRequest.of(code), output);
        var failed = assertInstanceOf(Outcome.Failed.class, outcome, "it cannot have worked");
        assertTrue(failed.message().contains(told), failed.message());
        assertEquals("", output.stderr.toString());
        for (int i = 0; i < 3; i++) {
            var next = assertInstanceOf(Outcome.Completed.class, evaluator.run(CellRequest.of("int made = " + i + "; made"), output));
            assertEquals(String.valueOf(i), next.result().orElseThrow().data().get(MimeBundle.PLAIN));
        }
        assertFalse(failed.message().contains("REPL"), failed.message());
    }
}
