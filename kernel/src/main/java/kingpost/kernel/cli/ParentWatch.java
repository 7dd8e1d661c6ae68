package kingpost.kernel.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;

/**
 * Watches the process whose end is also the kernel's: the one named by {@code JPY_PARENT_PID}, provided it is one of
 * this process's ancestors. A number that is none is left alone, as it may come from outside a container, unless it
 * can be told that its process ended before this one could look: then no process has that number, and this process's
 * parent is the one that takes in orphans here, and has not been started with that number itself.
 *
 * <p>On Windows the variable holds a handle, not a number of a process, so the parent itself is taken there.
 */
final class ParentWatch {

    static final String VARIABLE = "JPY_PARENT_PID";
    private static final long LOOK_MILLIS = 500;
    private static final Path PROCESSES = Path.of("/proc");

    private final Optional<ProcessHandle> process;
    private final boolean orphan;

    private ParentWatch(Optional<ProcessHandle> process, boolean orphan) {
        this.process = process;
        this.orphan = orphan;
    }

    static ParentWatch of(Map<String, String> environment) {
        String value = environment.getOrDefault(VARIABLE, "").trim();
        Optional<ProcessHandle> parent = ProcessHandle.current().parent();
        if (value.isEmpty()) {
            return new ParentWatch(Optional.empty(), false);
        }
        if (System.getProperty("os.name", "").startsWith("Windows")) {
            return new ParentWatch(parent, parent.isEmpty());
        }
        Optional<ProcessHandle> found = parent.flatMap(first -> ancestor(first, value));
        return new ParentWatch(found, found.isEmpty() && parent.filter(now -> hasTakenIn(now, value)).isPresent());
    }

    /** Whether the process that started this one had ended before it was looked for. */
    boolean isOrphan() {
        return orphan;
    }

    /**
     * Does this once the process has ended. Looks often, because the JDK's own notice of the end of a process that is
     * no child comes ever later the longer it has lived, by up to five seconds.
     */
    void onEnd(Runnable action) {
        if (!orphan && process.isEmpty()) {
            return;
        }
        Thread watch = new Thread(() -> {
            while (process.filter(ParentWatch::isRunning).isPresent()) {
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

    /** Alive, and not merely unburied: what nobody has waited for keeps its number after its end. */
    private static boolean isRunning(ProcessHandle process) {
        return process.isAlive() && !state(process.pid()).equals("Z");
    }

    /** The letter that Linux gives, or nothing. */
    private static String state(long pid) {
        try {
            String line = Files.readString(PROCESSES.resolve(pid + "/stat"), StandardCharsets.ISO_8859_1);
            return line.substring(line.lastIndexOf(')') + 1).strip().substring(0, 1);
        } catch (IOException | IndexOutOfBoundsException elsewhere) {
            return "";
        }
    }

    /** Whether {@code parent} is this process's parent only because the process with the number {@code pid} is gone. */
    private static boolean hasTakenIn(ProcessHandle parent, String pid) {
        return pid.matches("[1-9]\\d{0,17}")
                && ProcessHandle.of(Long.parseLong(pid)).filter(ParentWatch::isRunning).isEmpty()
                && !wasStartedWith(parent, VARIABLE + "=" + pid)
                && takesInOrphans(parent);
    }

    /** Whether the process got this variable when it was started; no, where that cannot be read. */
    private static boolean wasStartedWith(ProcessHandle process, String variable) {
        try {
            String all = Files.readString(PROCESSES.resolve(process.pid() + "/environ"), StandardCharsets.ISO_8859_1);
            return Arrays.asList(all.split("\0")).contains(variable);
        } catch (IOException notTold) {
            return false;
        }
    }

    /** Makes an orphan and looks whose child it becomes. */
    private static boolean takesInOrphans(ProcessHandle parent) {
        try {
            Process starter = new ProcessBuilder("/bin/sh", "-c", "sleep 30 > /dev/null 2>&1 & echo $!")
                    .redirectErrorStream(true).start();
            String number = new String(starter.getInputStream().readAllBytes(), StandardCharsets.US_ASCII).strip();
            if (!starter.waitFor(5, TimeUnit.SECONDS)) {
                return false;
            }
            Optional<ProcessHandle> made = ProcessHandle.of(Long.parseLong(number));
            boolean same = made.flatMap(ProcessHandle::parent).filter(parent::equals).isPresent();
            made.ifPresent(ProcessHandle::destroyForcibly);
            return same;
        } catch (IOException | NumberFormatException noShell) {
            return false;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return false;
        }
    }
}
