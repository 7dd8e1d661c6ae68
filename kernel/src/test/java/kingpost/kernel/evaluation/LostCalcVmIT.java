package kingpost.kernel.evaluation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import kingpost.kernel.display.MimeBundle;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** Cells that take the calc VM with them, and cells that must be stopped. */
class LostCalcVmIT {

    private final JShellEvaluator evaluator = JShellEvaluator.start();
    private final RecordedOutput output = new RecordedOutput();

    @AfterEach
    void stop() {
        evaluator.close();
    }

    private Outcome run(String code) {
        return evaluator.run(CellRequest.of(code), output);
    }

    private String resultOf(String code) {
        var done = assertInstanceOf(Outcome.Completed.class, run(code));
        return done.result().map(b -> (String) b.data().get(MimeBundle.PLAIN)).orElse("(none)");
    }

    @Test
    void goesOnAfterExit() {
        run("import java.text.*; int x = 5; int twice(int n) { return 2 * n; } record P(int a) { }");
        var failed = assertInstanceOf(Outcome.Failed.class, run("System.exit(3)"));
        assertEquals(Outcome.Kind.CALC_PROCESS_LOST, failed.kind());
        System.err.println(failed.message());
        assertTrue(failed.message().contains("Lost: x;"));
        assertEquals("P[a=8]", resultOf("new P(twice(4))"));
        assertEquals("6", resultOf("int x = 6; x"));
    }

    @Test
    void stopsABusyLoopAndKeepsVariables() throws Exception {
        run("int kept = 5;");
        for (String endless : new String[] {"while (true) { }", "Thread.sleep(100000);",
            "new Object() { synchronized void w() throws Exception { wait(); } }.w()",
            "java.util.stream.IntStream.iterate(0, i -> i + 1).parallel().forEach(i -> { });",
            "System.in.read()",
            "new java.util.concurrent.CountDownLatch(1).await()", "while (true) System.out.print(\"\");"}) {
            new Thread(() -> {
                try {
                    Thread.sleep(500);
                } catch (InterruptedException e) {
                    return;
                }
                evaluator.interrupt();
            }).start();
            long start = System.nanoTime();
            var failed = assertInstanceOf(Outcome.Failed.class, evaluator.run(new CellRequest(endless, false, true, java.util.Map.of()), output));
            System.err.println(endless + " " + ((System.nanoTime() - start) / 1000000 - 500) + " ms " + failed.message());
            System.err.println(resultOf("kept"));
        }
    }
}
