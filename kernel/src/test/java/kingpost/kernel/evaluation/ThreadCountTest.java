package kingpost.kernel.evaluation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

@Timeout(60)
class ThreadCountTest {

    private static Process sleeping() throws Exception {
        Assumptions.assumeTrue(Files.isReadable(Path.of("/proc/self/status")), "a system that counts threads there");
        return new ProcessBuilder("sleep", "50").start();
    }

    @Test
    void countsTheThreadsOfAnotherProcess() throws Exception {
        Process process = sleeping();
        try {
            assertEquals(1, new ThreadCount(process, List.of()).now().orElseThrow());
        } finally {
            process.destroyForcibly().waitFor();
        }
        assertTrue(new ThreadCount(process, List.of()).now().isEmpty());
    }

    @Test
    void takesTheLimitFromTheFlags() throws Exception {
        Process process = sleeping();
        try {
            assertEquals("cells had started more than 2,000 threads", new ThreadCount(process, List.of()).sentence());
            assertEquals("cells had started more than 70 threads",
                    new ThreadCount(process, List.of("-Dkingpost.calc.threads=70")).sentence());
        } finally {
            process.destroyForcibly().waitFor();
        }
    }

    @Test
    void tellsWhenThereAreTooMany() throws Exception {
        // this VM itself stands for one with too many threads
        var told = new CountDownLatch(1);
        var many = new CountDownLatch(1);
        for (int i = 0; i < 150; i++) {
            var waiting = new Thread(() -> {
                try {
                    many.await();
                } catch (InterruptedException nobodyDoes) {
                    Thread.currentThread().interrupt();
                }
            });
            waiting.setDaemon(true);
            waiting.start();
        }
        Process process = sleeping();
        try {
            new ThreadCount(process, List.of("-Dkingpost.calc.threads=1"), ProcessHandle.current().pid()).watch(told::countDown);
            assertTrue(told.await(30, TimeUnit.SECONDS));
        } finally {
            many.countDown();
            process.destroyForcibly();
        }
    }
}
