package kingpost.kernel.agent;

import java.util.concurrent.locks.LockSupport;
import kingpost.kernel.pipe.ExitCode;

/**
 * Ends this VM although a shutdown hook that a cell has added does not end. The VM waits for each hook, also for the one
 * here, so this one only starts the clock; hooks that end in time keep the exit code that the cell has given.
 */
final class ExitLimit {

    private static final long NANOS = 2_000_000_000L;

    private ExitLimit() {
    }

    static void prepare() {
        var clock = new Thread(ExitLimit::run, "exit limit");
        clock.setDaemon(true);
        clock.setPriority(Thread.MAX_PRIORITY);
        Runtime.getRuntime().addShutdownHook(new Thread(clock::start, "exit begins"));
    }

    private static void run() {
        long end = System.nanoTime() + NANOS;
        for (long left = NANOS; left > 0; left = end - System.nanoTime()) {
            LockSupport.parkNanos(left);
            Thread.interrupted(); // a cell can find this thread, but not hurry it
        }
        LastResort.halt(ExitCode.HOOK_WITHOUT_END);
    }
}
