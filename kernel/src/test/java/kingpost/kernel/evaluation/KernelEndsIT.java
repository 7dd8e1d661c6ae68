package kingpost.kernel.evaluation;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import kingpost.kernel.display.MimeBundle;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** What is left when the VM that owns an evaluator ends in one way or another. */
@Timeout(60)
class KernelEndsIT {

    /** Owns an evaluator, tells the calc VM's process id, and waits in a cell. */
    public static final class Owner {
        public static void main(String[] args) {
            var evaluator = JShellEvaluator.start();
            evaluator.run(CellRequest.of("new ProcessBuilder(\"sleep\", \"1000\").start();"), NoOutput.INSTANCE);
            var pid = (Outcome.Completed) evaluator.run(CellRequest.of("ProcessHandle.current().pid()"), NoOutput.INSTANCE);
            System.out.println(pid.result().orElseThrow().data().get(MimeBundle.PLAIN));
            evaluator.run(CellRequest.of("while (true) { }"), NoOutput.INSTANCE);
        }
    }

    private static boolean endsWithin(ProcessHandle process, long seconds) throws InterruptedException {
        for (long i = 0; i < 20 * seconds && process.isAlive(); i++) {
            Thread.sleep(50);
        }
        return !process.isAlive();
    }

    @Test
    void killedKernelLeavesNoCalcVmAndNoChildOfIt() throws Exception {
        Process owner = new ProcessBuilder(Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-cp",
                System.getProperty("java.class.path"), Owner.class.getName()).redirectErrorStream(true).start();
        var lines = new BufferedReader(new InputStreamReader(owner.getInputStream(), StandardCharsets.UTF_8));
        String line = lines.readLine();
        while (!line.matches("\\d+")) {
            line = lines.readLine();
        }
        ProcessHandle calc = ProcessHandle.of(Long.parseLong(line)).orElseThrow();
        ProcessHandle sleeper = calc.descendants().findFirst().orElseThrow();
        owner.destroyForcibly().waitFor(10, TimeUnit.SECONDS);
        assertTrue(endsWithin(calc, 20), "the calc VM outlives the kernel");
        assertTrue(endsWithin(sleeper, 20), "a child process outlives the kernel");
    }

    @Test
    void closingEndsTheCalcVm() throws Exception {
        var evaluator = JShellEvaluator.start();
        var outcome = (Outcome.Completed) evaluator.run(CellRequest.of("ProcessHandle.current().pid()"), NoOutput.INSTANCE);
        long pid = Long.parseLong((String) outcome.result().orElseThrow().data().get(MimeBundle.PLAIN));
        evaluator.close();
        assertTrue(ProcessHandle.of(pid).isEmpty() || endsWithin(ProcessHandle.of(pid).get(), 20));
    }

    @Test
    void closingEndsARunningCell() throws Exception {
        var evaluator = JShellEvaluator.start();
        evaluator.run(CellRequest.of("1 + 1"), NoOutput.INSTANCE);
        var run = new Thread(() -> evaluator.run(CellRequest.of("while (true) { }"), NoOutput.INSTANCE));
        run.start();
        Thread.sleep(300);
        evaluator.close();
        run.join(30_000);
        assertFalse(run.isAlive(), "the cell still runs");
    }
}
