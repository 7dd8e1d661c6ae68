package kingpost.kernel.evaluation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
import kingpost.kernel.display.MimeBundle;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Cells that do not end by themselves. The wait allowed is generous: the machine may be busy. */
@Timeout(120)
class InterruptIT {

    private static JShellEvaluator evaluator;

    private final RecordedOutput output = new RecordedOutput();

    @BeforeAll
    static void start() {
        // a machine that has other things to do must not end the calc VM because a thread stops late
        var standard = CalcOptions.standard();
        evaluator = JShellEvaluator.start(new CalcOptions(standard.java(), standard.classPath(), standard.flags(),
                Duration.ofSeconds(30)));
        evaluator.run(CellRequest.of("import java.util.concurrent.*; int kept = 5;"), NoOutput.INSTANCE);
    }

    @AfterAll
    static void stop() {
        evaluator.close();
    }

    private record Stopped(Outcome.Failed outcome, long millis) { }

    private Stopped interrupted(String code, long afterMillis) {
        return interrupted(evaluator, code, afterMillis);
    }

    private Stopped interrupted(JShellEvaluator evaluator, String code, long afterMillis) {
        var asked = new long[1];
        var other = new Thread(() -> {
            try {
                Thread.sleep(afterMillis);
            } catch (InterruptedException nobodyDoes) {
                return;
            }
            asked[0] = System.nanoTime();
            evaluator.interrupt();
        });
        other.start();
        Outcome outcome = evaluator.run(new CellRequest(code, false, true, Map.of()), output);
        long millis = TimeUnit.NANOSECONDS.toMillis(System.nanoTime() - asked[0]);
        System.out.println(code.lines().findFirst().orElse("") + " stopped after " + millis + " ms");
        return new Stopped(assertInstanceOf(Outcome.Failed.class, outcome, code), millis);
    }

    private String resultOf(String code) {
        var outcome = evaluator.run(CellRequest.of(code), output);
        var done = assertInstanceOf(Outcome.Completed.class, outcome, String.valueOf(outcome));
        return done.result().map(b -> (String) b.data().get(MimeBundle.PLAIN)).orElse("(none)");
    }

    @ParameterizedTest
    @ValueSource(strings = {
        "while (true) { }",
        "Thread.sleep(100_000);",
        "for (;;) { try { Thread.sleep(100_000); } catch (InterruptedException e) { } }",
        "for (;;) { try { Thread.sleep(1); } catch (Exception e) { } }",
        "new Object() { synchronized void forever() throws Exception { wait(); } }.forever()",
        "IntStream.iterate(0, i -> i + 1).parallel().forEach(i -> { });",
        "IntStream.range(0, 1_000_000).parallel().forEach(i -> { while (true) { } });",
        "Stream.iterate(1, i -> i + 1).filter(i -> i < 0).findFirst()",
        "System.in.read()",
        "new Scanner(System.in).nextLine()",
        "new CountDownLatch(1).await()",
        "new Semaphore(0).acquireUninterruptibly()",
        "new CompletableFuture<String>().get()",
        "new java.net.ServerSocket(0).accept()",
        "var s = new java.net.ServerSocket(0); new java.net.Socket(\"localhost\", s.getLocalPort()).getInputStream().read()",
        "new PipedInputStream(new PipedOutputStream()).read()",
        "new ProcessBuilder(\"sleep\", \"100\").start().waitFor()",
        "new ProcessBuilder(\"sleep\", \"100\").start().getInputStream().read()",
        "java.nio.channels.Selector.open().select()",
        "while (true) System.out.print(\"\");",
        "while (true) System.out.println(\"a line\");",
        "int deep(int n) { return deep(n + 1) + deep(n + 2); } while (true) try { deep(0); } catch (StackOverflowError e) { }",
        "new Object() { public String toString() { while (true) { } } }"
    })
    void stopsAndKeepsVariables(String endless) {
        Stopped stopped = interrupted(endless, 300);
        assertEquals(Outcome.Kind.INTERRUPTED, stopped.outcome.kind(), stopped.outcome.message());
        assertEquals("5", resultOf("kept"));
    }

    /** A busy virtual machine may not stop a thread that waits to enter a monitor in time; then it is replaced. */
    @Test
    void endsACellThatWaitsForALockOfAnotherThread() {
        try (var own = JShellEvaluator.start()) {
            assertInstanceOf(Outcome.Completed.class, own.run(CellRequest.of("""
                    int kept = 5;
                    Object monitor = new Object();
                    var holder = new Thread(() -> { synchronized (monitor) { while (true) { } } });
                    holder.setDaemon(true);
                    holder.start();
                    Thread.sleep(50);
                    """), output));
            Stopped stopped = interrupted(own, "synchronized (monitor) { System.out.println(\"never\"); }", 300);
            assertEquals("", output.stdout.toString());
            if (stopped.outcome.kind() == Outcome.Kind.INTERRUPTED) {
                var next = assertInstanceOf(Outcome.Completed.class, own.run(CellRequest.of("kept"), output));
                assertEquals("5", next.result().orElseThrow().data().get(MimeBundle.PLAIN));
            } else {
                assertEquals(Outcome.Kind.CALC_PROCESS_LOST, stopped.outcome.kind(), stopped.outcome.message());
                assertTrue(stopped.outcome.message().contains("Lost: "), stopped.outcome.message());
                assertTrue(stopped.outcome.message().contains("kept"), stopped.outcome.message());
                assertInstanceOf(Outcome.Completed.class, own.run(CellRequest.of("1 + 1"), output));
            }
        }
    }

    @Test
    void runsNoFurtherStatementOfTheCell() {
        interrupted("Thread.sleep(100_000);\nSystem.out.println(\"never\");", 300);
        assertEquals("", output.stdout.toString());
    }

    @Test
    void doesNothingBetweenCells() {
        evaluator.interrupt();
        assertEquals("5", resultOf("kept"));
    }

    @Test
    void replacesACalcVmThatResists() {
        var own = JShellEvaluator.start();
        try (own) {
            own.run(CellRequest.of("int gone = 1; int twice(int x) { return 2 * x; }"), output);
            var asked = new long[1];
            new Thread(() -> {
                while (!output.stdout.toString().contains("begun")) {
                    LockSupport.parkNanos(10_000_000);
                }
                asked[0] = System.nanoTime();
                own.interrupt();
            }).start();
            var failed = assertInstanceOf(Outcome.Failed.class, own.run(CellRequest.of(
                    "for (int i = 0; ; i++) { try { if (i == 0) System.out.println(\"begun\"); while (true) { } }"
                            + " catch (Throwable t) { } }"), output));
            System.out.println("replaced after " + (System.nanoTime() - asked[0]) / 1_000_000 + " ms");
            assertEquals(Outcome.Kind.CALC_PROCESS_LOST, failed.kind());
            assertTrue(failed.message().contains("Lost: gone;"), failed.message());
            var next = assertInstanceOf(Outcome.Completed.class, own.run(CellRequest.of("twice(4)"), output));
            assertEquals("8", next.result().orElseThrow().data().get(MimeBundle.PLAIN));
        }
    }
}
