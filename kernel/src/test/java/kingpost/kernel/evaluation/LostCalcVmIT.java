package kingpost.kernel.evaluation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.concurrent.TimeUnit;
import kingpost.kernel.display.MimeBundle;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** Cells that take the calc VM with them, or nearly. */
@Timeout(120)
class LostCalcVmIT {

    private final JShellEvaluator evaluator = JShellEvaluator.start(CalcOptions.standard().plusFlag("-Xmx128m"));
    private final RecordedOutput output = new RecordedOutput();

    @AfterEach
    void stop() {
        evaluator.close();
    }

    private Outcome run(String code) {
        return evaluator.run(CellRequest.of(code), output);
    }

    private Outcome.Failed failureOf(String code) {
        var failed = assertInstanceOf(Outcome.Failed.class, run(code));
        System.out.println(code + "\n  -> " + failed);
        return failed;
    }

    private String resultOf(String code) {
        var outcome = run(code);
        var done = assertInstanceOf(Outcome.Completed.class, outcome, String.valueOf(outcome));
        return done.result().map(b -> (String) b.data().get(MimeBundle.PLAIN)).orElse("(none)");
    }

    private void declare() {
        resultOf("""
                import java.text.*;
                int x = 5;
                int y() { return x; }
                int twice(int n) { return 2 * n; }
                record P(int a) { int b() { return twice(a); } }
                enum E { ONE, TWO }
                interface I { default int i() { return 3; } }
                class C implements I { static int n = 7; }
                """);
    }

    private void checkThatDeclarationsAreBack() {
        assertEquals("P[a=8]", resultOf("new P(twice(4))"));
        assertEquals("16", resultOf("new P(twice(4)).b()"));
        assertEquals("[ONE, TWO]", resultOf("E.values()"));
        assertEquals("10", resultOf("new C().i() + C.n"));
        assertEquals("true", resultOf("new DecimalFormat(\"0.0\") != null"));
    }

    @Test
    void goesOnAfterExitAndNamesWhatIsLost() {
        declare();
        var failed = failureOf("System.exit(3)");
        assertEquals(Outcome.Kind.CALC_PROCESS_LOST, failed.kind());
        assertTrue(failed.message().contains("exit code 3"), failed.message());
        assertTrue(failed.message().contains("Lost: x;"), failed.message());
        checkThatDeclarationsAreBack();
        assertTrue(failureOf("x + 1").message().contains("x"), "x is lost");
        assertEquals("6", resultOf("int x = 6; y()"));
    }

    @Test
    void goesOnAfterHalt() {
        declare();
        assertEquals(Outcome.Kind.CALC_PROCESS_LOST, failureOf("Runtime.getRuntime().halt(0)").kind());
        checkThatDeclarationsAreBack();
    }

    @Test
    void goesOnAfterKill() {
        declare();
        var failed = failureOf("Thread.sleep(200); ProcessHandle.current().info(); "
                + "new ProcessBuilder(\"kill\", \"-9\", \"\" + ProcessHandle.current().pid()).start(); "
                + "Thread.sleep(10_000);");
        assertEquals(Outcome.Kind.CALC_PROCESS_LOST, failed.kind());
        assertTrue(failed.message().contains("signal 9"), failed.message());
        checkThatDeclarationsAreBack();
    }

    @Test
    void goesOnAfterAKillBetweenCells() throws Exception {
        declare();
        long pid = Long.parseLong(resultOf("ProcessHandle.current().pid()"));
        ProcessHandle calc = ProcessHandle.of(pid).orElseThrow();
        calc.destroyForcibly();
        calc.onExit().get(30, TimeUnit.SECONDS);
        Thread.sleep(500);
        // on a busy machine the loss may be noticed only by the cell
        Outcome next = evaluator.run(CellRequest.of("new P(twice(4)).b()"), output);
        String told = output.stderr + (next instanceof Outcome.Failed failed ? failed.message() : "");
        assertTrue(told.contains("Lost: x;"), told);
        assertEquals("16", resultOf("new P(twice(4)).b()"));
    }

    @Test
    void doesNotWaitForAShutdownHookWithoutEnd() {
        declare();
        var failed = failureOf("Runtime.getRuntime().addShutdownHook(new Thread(() -> { while (true) { } })); System.exit(3);");
        assertTrue(failed.message().contains("shutdown hook did not end"), failed.message());
        assertEquals("exit code 4", failureOf("Runtime.getRuntime().addShutdownHook(new Thread(() -> { })); System.exit(4);")
                .message().replaceFirst(".*(exit code \\d+).*", "$1"));
        checkThatDeclarationsAreBack();
    }

    @Test
    void survivesHeapExhaustion() {
        declare();
        var failed = failureOf("var hoard = new ArrayList<byte[]>(); while (true) hoard.add(new byte[1 << 20]);");
        assertTrue(failed.message().contains("memory"), failed.message());
        assertEquals("16", resultOf("new P(twice(4)).b()"));
    }

    @Test
    void survivesHeapExhaustionBySmallObjects() {
        declare();
        var failed = failureOf("var hoard = new LinkedList<Object>(); while (true) hoard.add(new Object());");
        assertTrue(failed.message().contains("memory"), failed.message());
        assertEquals("16", resultOf("new P(twice(4)).b()"));
    }

    @Test
    void survivesStackOverflow() {
        declare();
        var failed = failureOf("int down(int n) { return down(n + 1) + 1; }\ndown(0)");
        assertEquals("StackOverflowError", failed.name());
        assertTrue(failed.traceback().size() < 30, failed.traceback().toString());
        assertEquals("5", resultOf("x"));
    }

    @Test
    void survivesAThreadBomb() {
        declare();
        var failed = failureOf("while (true) new Thread(() -> { try { Thread.sleep(100_000); } catch (Exception e) { } }).start();");
        assertTrue(failed.message().contains("thread"), failed.message());
        assertEquals("16", resultOf("new P(twice(4)).b()"));
    }
}
