package kingpost.kernel.cli;

import java.util.Map;
import java.util.Optional;
import java.util.concurrent.locks.LockSupport;

/**
 * Finds the process whose end is also the kernel's: the one named by {@code JPY_PARENT_PID}, provided it is one of
 * this process's ancestors. A number that is none is left alone: it may come from outside a container.
 *
 * <p>On Windows the variable holds a handle, not a number of a process, so the parent itself is taken there.
 */
final class ParentWatch {

    static final String VARIABLE = "JPY_PARENT_PID";
    private static final long LOOK_MILLIS = 500;

    private ParentWatch() { }

    static Optional<ProcessHandle> of(Map<String, String> environment) {
        String value = environment.getOrDefault(VARIABLE, "");
        if (value.isBlank()) {
            return Optional.empty();
        }
        Optional<ProcessHandle> parent = ProcessHandle.current().parent();
        return System.getProperty("os.name", "").startsWith("Windows") ? parent
                : parent.flatMap(first -> ancestor(first, value.trim()));
    }

    /**
     * Does this once the process has ended. Looks often, because the JDK's own notice of the end of a process that is
     * no child comes ever later the longer it has lived, by up to five seconds.
     */
    static void onEnd(ProcessHandle process, Runnable action) {
        Thread watch = new Thread(() -> {
            while (process.isAlive()) {
                LockSupport.parkNanos(LOOK_MILLIS * 1_000_000);
            }
            action.run();
        }, "kingpost-parent-watch");
        watch.setDaemon(true);
        watch.start();
    }

    private static Optional<ProcessHandle> ancestor(ProcessHandle from, String pid) {
        Optional<ProcessHandle> candidate = Optional.of(from);
        while (candidate.isPresent() && !String.valueOf(candidate.get().pid()).equals(pid)) {
            candidate = candidate.get().parent();
        }
        return candidate;
    }
}
