package kingpost.kernel.evaluation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import kingpost.kernel.display.MimeBundle;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Cells that end well or by their own fault, in a real calc VM. */
class CellIT {

    private static JShellEvaluator evaluator;

    @BeforeAll
    static void start() {
        evaluator = JShellEvaluator.start();
    }

    @AfterAll
    static void stop() {
        evaluator.close();
    }

    private final RecordedOutput output = new RecordedOutput();

    private Outcome run(String code) {
        return evaluator.run(CellRequest.of(code), output);
    }

    private String resultOf(String code) {
        var done = assertInstanceOf(Outcome.Completed.class, run(code));
        return done.result().map(b -> (String) b.data().get(MimeBundle.PLAIN)).orElse("(none)");
    }

    private Outcome.Failed failureOf(String code) {
        return assertInstanceOf(Outcome.Failed.class, run(code));
    }

    @Test
    void givesTheLastExpressionOnly() {
        assertEquals("3", resultOf("1 + 1; int three = 3; three"));
        assertEquals("(none)", resultOf("int x = 3;"));
        assertEquals("(none)", resultOf("var y = 3"));
        assertEquals("(none)", resultOf("1 + 1;"));
        assertEquals("(none)", resultOf("1 + 1; // hidden"));
        assertEquals("2", resultOf("1 + 1 // not hidden;"));
        assertEquals("(none)", resultOf("(Object) null"));
        assertEquals("(none)", resultOf("System.out.println(5)"));
        assertEquals("[1, 2]", resultOf("new int[] {1, 2}"));
        assertEquals("7", resultOf("three = 7"));
        assertEquals("7", resultOf("int f() { return three; }\n\nf()\n"));
        assertEquals("(none)", resultOf(""));
        assertEquals("(none)", resultOf("// nothing"));
    }

    @Test
    void keepsStreamsInOrder() {
        run("System.out.print(\"a\"); System.err.print(\"b\"); System.out.println(\"c\");");
        assertEquals("[stdout a, stderr b, stdout c\n]", output.events.toString());
    }

    @Test
    void stopsAtTheFirstError() {
        var failed = failureOf("System.out.println(\"first\");\nint q = 1 / 0;\nSystem.out.println(\"never\");");
        assertEquals("first\n", output.stdout.toString());
        assertEquals(2, failed.line());
        assertEquals("ArithmeticException", failed.name());
        System.err.println(String.join("\n", failed.traceback()));
    }

    @Test
    void showsCompileErrorsUnderTheCellsOwnLine() {
        var failed = failureOf("int a = 1;\n\nint b = lenght + 2;");
        assertEquals(3, failed.line());
        System.err.println(String.join("\n", failed.traceback()));
        var several = failureOf("int a = 1;\nvoid g() {\n   int s = \"x\";\n\tString t = 5;\n}");
        System.err.println(String.join("\n", several.traceback()));
        var open = failureOf("int a = 1;\nvoid g() {\n   int s = 1;");
        System.err.println(String.join("\n", open.traceback()));
        var wrong = failureOf("int a = 1;\nint b = = 3;");
        System.err.println(String.join("\n", wrong.traceback()));
        var deep = failureOf("""
            int inner(int x) {
                return 10 / x;
            }
            class K { int go() { return List.of(1).stream().map(x -> inner(0)).findFirst().get(); } }
            new K().go();
            """);
        System.err.println(String.join("\n", deep.traceback()));
    }

    @Test
    void evaluatesUserExpressions() {
        var done = assertInstanceOf(Outcome.Completed.class,
                evaluator.run(new CellRequest("int u = 4;", true, false, Map.of("a", "u * 2", "b", "nope")), output));
        assertEquals("8", ((Outcome.ExpressionValue.Shown) done.expressions().get("a")).bundle().data().get("text/plain"));
        assertTrue(done.expressions().get("b") instanceof Outcome.ExpressionValue.Failed);
    }
}
