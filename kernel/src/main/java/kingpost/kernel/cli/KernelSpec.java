package kingpost.kernel.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import kingpost.kernel.document.Notebook;
import kingpost.kernel.document.Trees;
import kingpost.kernel.wire.Json;

/**
 * The folder by which front ends find the kernel: what to start, the jar itself, pictures.
 *
 * <p>Source: messaging protocol, "Kernel specs".
 */
final class KernelSpec {

    /**
     * Flags of the kernel's own VM. It compiles cells but holds none of their values; a tight heap with the simplest
     * collector keeps it small beside the calc VM.
     */
    static final List<String> FLAGS = List.of("-XX:+UseSerialGC", "-Xms16m", "-Xmx384m", "-XX:MinHeapFreeRatio=20",
            "-XX:MaxHeapFreeRatio=40", "-XX:-UsePerfData", "-Djava.awt.headless=true");

    private static final String JAR = "kingpost.jar";
    private static final List<String> LOGOS = List.of("logo-svg.svg", "logo-64x64.png", "logo-32x32.png");

    private final Path folder;

    /** @param dataDirectory where front ends look for kernels */
    KernelSpec(Path dataDirectory) {
        this.folder = dataDirectory.toAbsolutePath().normalize().resolve("kernels").resolve(Notebook.KERNEL);
    }

    Path folder() {
        return folder;
    }

    /** Whether a kernel that is not ours stands under our name; names are compared without regard to case. */
    boolean isTakenByAnother() throws IOException {
        Path kernels = folder.getParent();
        if (!Files.isDirectory(kernels)) {
            return false;
        }
        try (Stream<Path> specs = Files.list(kernels)) {
            return specs.filter(spec -> spec.getFileName().toString().equalsIgnoreCase(Notebook.KERNEL))
                    .anyMatch(spec -> !isOurs(spec));
        }
    }

    private static boolean isOurs(Path spec) {
        Path file = spec.resolve("kernel.json");
        if (!Files.exists(file)) {
            return true;
        }
        try {
            return Trees.map(Json.readObject(Files.readString(file)), "metadata").containsKey(Notebook.KERNEL);
        } catch (IOException | IllegalArgumentException e) {
            return false;
        }
    }

    /**
     * Writes the folder, over an earlier one of ours.
     *
     * @param jar     the jar to copy
     * @param java    the command that starts it
     * @param version the product's version
     */
    void write(Path jar, Path java, String version) throws IOException {
        Files.createDirectories(folder);
        Path target = folder.resolve(JAR);
        if (!Files.exists(target) || !Files.isSameFile(jar, target)) {
            Path whole = folder.resolve("." + JAR + ".new");
            Files.copy(jar, whole, StandardCopyOption.REPLACE_EXISTING);
            Files.move(whole, target, StandardCopyOption.REPLACE_EXISTING);
        }
        for (String logo : LOGOS) {
            try (InputStream in = KernelSpec.class.getResourceAsStream(logo)) {
                Files.copy(in, folder.resolve(logo), StandardCopyOption.REPLACE_EXISTING);
            }
        }
        Files.writeString(folder.resolve("kernel.json"), Json.write(fields(java, version)) + "\n", StandardCharsets.UTF_8);
    }

    private static Map<String, Object> fields(Path java, String version) {
        List<String> argv = new ArrayList<>();
        argv.add(java.toString());
        argv.addAll(FLAGS);
        argv.addAll(List.of("-jar", "{resource_dir}/" + JAR, "kernel", "{connection_file}"));
        Map<String, Object> fields = new LinkedHashMap<>();
        fields.put("argv", argv);
        fields.put("display_name", "Kingpost");
        fields.put("language", "java");
        fields.put("interrupt_mode", "message");
        fields.put("metadata", Map.of(Notebook.KERNEL, Map.of("version", version)));
        return fields;
    }
}
