package kingpost.kernel.evaluation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Cells so deep that the compiler runs out of stack, at a depth that differs from run to run. Each works, or is refused
 * in plain words and leaves nothing half declared behind.
 */
@Timeout(180)
class DeepNestingIT {

    /** A fresh compiler after each that is refused costs seconds, so there are few. */
    private static final List<Integer> DEPTHS = List.of(400, 1_500, 3_000);

    private static JShellEvaluator evaluator;

    @BeforeAll
    static void start() {
        evaluator = JShellEvaluator.start();
    }

    @AfterAll
    static void stop() {
        evaluator.close();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', value = {
        "int deep =            | (      | 1   | )   | ;",
        "int deep = 0; class Deep { int d = | 1+( | 1 | ) | ; }",
        "int deep = 1;         | if (deep > 0) | deep++; | ` ` | ;"
    })
    void runOrAreRefused(String before, String open, String inside, String close, String after) {
        for (int depth : DEPTHS) {
            Outcome outcome = run(before + " " + open.repeat(depth) + inside + close.repeat(depth) + after);
            if (outcome instanceof Outcome.Failed failed) {
                assertTrue(failed.message().endsWith("split it into several statements"), failed.toString());
            }
            var next = assertInstanceOf(Outcome.Completed.class, run("6 * 7"), "after depth " + depth);
            assertEquals("42", next.result().orElseThrow().data().get("text/plain"));
            // what is half declared would fail to link
            if (run("deep") instanceof Outcome.Failed unknown) {
                assertTrue(unknown.message().startsWith("cannot find "), unknown.toString());
            }
        }
    }

    private static Outcome run(String code) {
        return evaluator.run(CellRequest.of(code), NoOutput.INSTANCE);
    }
}
