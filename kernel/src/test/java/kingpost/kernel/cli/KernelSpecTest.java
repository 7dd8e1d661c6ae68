package kingpost.kernel.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import kingpost.kernel.wire.Json;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class KernelSpecTest {

    @TempDir
    Path data;
    private Path jar;
    private KernelSpec spec;

    @BeforeEach
    void makeJar() throws IOException {
        jar = Files.writeString(data.resolve("some.jar"), "jar of today");
        spec = new KernelSpec(data);
    }

    @Test
    void writesEverythingThatAFrontEndNeeds() throws IOException {
        spec.write(jar, Path.of("/opt/java/bin/java"), "1.2.3");
        try (Stream<Path> files = Files.list(spec.folder())) {
            assertEquals(Set.of("kernel.json", "kingpost.jar", "logo-svg.svg", "logo-64x64.png", "logo-32x32.png"),
                    files.map(file -> file.getFileName().toString()).collect(Collectors.toSet()));
        }
        assertEquals("jar of today", Files.readString(spec.folder().resolve("kingpost.jar")));
        Map<String, Object> fields = Json.readObject(Files.readString(spec.folder().resolve("kernel.json")));
        List<?> argv = (List<?>) fields.get("argv");
        assertEquals("/opt/java/bin/java", argv.get(0));
        assertEquals(List.of("-jar", "{resource_dir}/kingpost.jar", "kernel", "{connection_file}"),
                argv.subList(argv.size() - 4, argv.size()));
        assertEquals("message", fields.get("interrupt_mode"));
        assertEquals("java", fields.get("language"));
    }

    @Test
    void replacesAnEarlierOneOfOurs() throws IOException {
        spec.write(jar, Path.of("java"), "1");
        assertFalse(spec.isTakenByAnother());
        Files.writeString(jar, "jar of tomorrow");
        spec.write(jar, Path.of("java"), "2");
        assertEquals("jar of tomorrow", Files.readString(spec.folder().resolve("kingpost.jar")));
    }

    @Test
    void canBeWrittenFromItsOwnJar() throws IOException {
        spec.write(jar, Path.of("java"), "1");
        spec.write(spec.folder().resolve("kingpost.jar"), Path.of("other"), "1");
        assertEquals("jar of today", Files.readString(spec.folder().resolve("kingpost.jar")));
    }

    @Test
    void knowsAKernelThatIsNotOurs() throws IOException {
        assertFalse(spec.isTakenByAnother(), "nothing there yet");
        Path other = Files.createDirectories(data.resolve("kernels").resolve("KingPost"));
        Files.writeString(other.resolve("kernel.json"), "{\"argv\": [\"x\"], \"metadata\": {}}");
        assertTrue(spec.isTakenByAnother());
        Files.writeString(other.resolve("kernel.json"), "no json");
        assertTrue(spec.isTakenByAnother());
    }
}
