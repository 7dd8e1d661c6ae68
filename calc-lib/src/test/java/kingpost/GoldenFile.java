package kingpost;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Compares a text with the file kept in the test resources. The system property {@code kingpost.golden=write} writes
 * the files instead; read the difference before it is committed.
 */
public final class GoldenFile {

    private static final Path RESOURCES = Path.of("src", "test", "resources");

    private GoldenFile() {
    }

    /** @param name path under the test resources, such as {@code kingpost/render/every-node.md} */
    public static void check(String name, String actual) {
        if ("write".equals(System.getProperty("kingpost.golden"))) {
            write(RESOURCES.resolve(name), actual);
            return;
        }
        assertEquals(read(name), actual, () -> name + " differs; run with -Dkingpost.golden=write to renew it");
    }

    private static String read(String name) {
        try (InputStream in = GoldenFile.class.getClassLoader().getResourceAsStream(name)) {
            return in == null ? "(no such file)" : new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void write(Path file, String text) {
        try {
            Files.createDirectories(file.getParent());
            Files.writeString(file, text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
