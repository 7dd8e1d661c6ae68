package kingpost.kernel.evaluation;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** What is in scope in a fresh cell; calc-lib decides it, in a text file with one import a line. */
final class Preload {

    /** The list's place on the class path. */
    static final String RESOURCE = "/kingpost/notebook/preload.txt";

    private Preload() {
    }

    /** Import declarations, in order. */
    static List<String> imports() {
        try (InputStream in = Preload.class.getResourceAsStream(RESOURCE)) {
            if (in == null) {
                return List.of();
            }
            return new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8)).lines().map(String::strip)
                    .filter(line -> line.startsWith("import ")).filter(Preload::isThere).toList();
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    /** A static import of a class of ours counts only when the class is there. */
    private static boolean isThere(String line) {
        if (!line.startsWith("import static kingpost.")) {
            return true;
        }
        String name = line.substring("import static ".length(), line.lastIndexOf('.'));
        return Preload.class.getResource("/" + name.replace('.', '/') + ".class") != null;
    }
}
