package kingpost.kernel.evaluation;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * How the calc VM is started and how long it may resist an interrupt.
 *
 * @param java      the {@code java} command
 * @param classPath jars and folders with Kingpost's own classes
 * @param flags     VM flags: memory limits first of all
 * @param stopLimit how long an interrupt is tried before the calc VM is replaced
 */
public record CalcOptions(Path java, List<Path> classPath, List<String> flags, Duration stopLimit) {

    /** VM flags in the system property of this name, or the environment variable, replace the ones below. */
    public static final String FLAGS_PROPERTY = "kingpost.calc.flags";
    public static final String FLAGS_VARIABLE = "KINGPOST_CALC_FLAGS";

    private static final List<String> FLAGS = List.of("-XX:+UseSerialGC", "-Xms16m", "-Xmx768m",
            "-XX:MaxMetaspaceSize=256m", "-XX:MinHeapFreeRatio=20", "-XX:MaxHeapFreeRatio=40", "-Xshare:auto",
            "-XX:-UsePerfData", "-Djava.awt.headless=true");

    public CalcOptions {
        classPath = List.copyOf(classPath);
        flags = List.copyOf(flags);
    }

    /** The running VM's own {@code java} and class path, and the flags above. */
    public static CalcOptions standard() {
        return new CalcOptions(javaCommand(), ownClassPath(), flagsInForce(), Duration.ofMillis(1500));
    }

    public CalcOptions withFlags(List<String> otherFlags) {
        return new CalcOptions(java, classPath, otherFlags, stopLimit);
    }

    /** The same with one more flag; a later flag wins over an earlier one. */
    public CalcOptions plusFlag(String flag) {
        var more = new ArrayList<>(flags);
        more.add(flag);
        return withFlags(more);
    }

    /** The heap's limit as the last {@code -Xmx} flag gives it: {@code "768 MB"}. */
    Optional<String> heapLimit() {
        return flags.stream().filter(flag -> flag.matches("-Xmx\\d+[kKmMgG]?")).reduce((first, last) -> last)
                .map(flag -> flag.substring(4).replaceFirst("(?i)g$", " GB").replaceFirst("(?i)m$", " MB")
                        .replaceFirst("(?i)k$", " KB"));
    }

    private static List<String> flagsInForce() {
        String given = System.getProperty(FLAGS_PROPERTY, System.getenv(FLAGS_VARIABLE));
        return given == null || given.isBlank() ? FLAGS : List.of(given.trim().split("\\s+"));
    }

    private static Path javaCommand() {
        Path bin = Path.of(System.getProperty("java.home"), "bin");
        Path windows = bin.resolve("java.exe");
        return Files.exists(windows) ? windows : bin.resolve("java");
    }

    private static List<Path> ownClassPath() {
        return Arrays.stream(System.getProperty("java.class.path").split(File.pathSeparator))
                .filter(entry -> !entry.isBlank()).map(entry -> Path.of(entry).toAbsolutePath()).toList();
    }
}
