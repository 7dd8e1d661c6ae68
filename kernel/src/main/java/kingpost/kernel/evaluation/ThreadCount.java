package kingpost.kernel.evaluation;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import java.util.concurrent.TimeUnit;

/**
 * Watches from outside how many threads the calc VM has. Its own watch comes too late when so many threads want to run
 * that it gets no turn; a process is ended from outside without a turn of its own.
 */
final class ThreadCount {

    /** Sets the limit, in the calc VM as well. */
    private static final String FLAG = "-Dkingpost.calc.threads=";
    private static final int MOST = 2_000;
    /** Threads of the VM itself, which its own count leaves out, and some for a watch there to come first. */
    private static final int MARGIN = 100;
    private static final long MILLIS = 300;

    private final Process process;
    private final long counted;
    private final int most;

    ThreadCount(Process process, List<String> flags) {
        this(process, flags, process.pid());
    }

    /** Counts those of the process with this number, as long as the first lives. */
    ThreadCount(Process process, List<String> flags, long counted) {
        this.process = process;
        this.counted = counted;
        this.most = flags.stream().filter(flag -> flag.startsWith(FLAG)).map(flag -> flag.substring(FLAG.length()))
                .filter(number -> number.matches("\\d{1,7}")).mapToInt(Integer::parseInt).reduce(MOST, (first, last) -> last);
    }

    /** The sentence for a reader. */
    String sentence() {
        return String.format(Locale.ROOT, "cells had started more than %,d threads", most);
    }

    /** Does this once when there are too many; ends with the process, or where the system does not count threads. */
    void watch(Runnable whenTooMany) {
        var watch = new Thread(() -> {
            try {
                OptionalInt count = now();
                while (process.isAlive() && count.isPresent() && count.getAsInt() <= most + MARGIN) {
                    TimeUnit.MILLISECONDS.sleep(MILLIS);
                    count = now();
                }
                if (process.isAlive() && count.isPresent()) {
                    whenTooMany.run();
                }
            } catch (InterruptedException nobodyDoes) {
                Thread.currentThread().interrupt();
            }
        }, "calc threads");
        watch.setDaemon(true);
        watch.setPriority(Thread.MAX_PRIORITY);
        watch.start();
    }

    /** The number of threads; empty when the process is gone, or where there is no such file. */
    OptionalInt now() {
        try {
            return Files.readAllLines(Path.of("/proc", Long.toString(counted), "status")).stream()
                    .filter(line -> line.startsWith("Threads:")).map(line -> line.substring("Threads:".length()).strip())
                    .mapToInt(Integer::parseInt).findFirst();
        } catch (IOException | NumberFormatException unknown) {
            return OptionalInt.empty();
        }
    }
}
