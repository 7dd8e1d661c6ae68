package kingpost.kernel.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;

class DataDirectoryTest {

    private static final Path HOME = Path.of("home");

    private static String on(String system, Map<String, String> environment) {
        return new DataDirectory(environment, system, HOME).path().toString().replace('\\', '/');
    }

    @Test
    void followsTheCustomOfEachSystem() {
        assertEquals("home/.local/share/jupyter", on("Linux", Map.of()));
        assertEquals("data/jupyter", on("Linux", Map.of("XDG_DATA_HOME", "data")));
        assertEquals("home/.local/share/jupyter", on("FreeBSD", Map.of("XDG_DATA_HOME", "")));
        assertEquals("home/Library/Jupyter", on("Mac OS X", Map.of("XDG_DATA_HOME", "data")));
        assertEquals("roaming/jupyter", on("Windows 11", Map.of("APPDATA", "roaming")));
        assertEquals("home/.jupyter/data", on("Windows 11", Map.of()));
    }

    @Test
    void obeysTheFrontEndsOwnSettings() {
        for (String system : new String[] {"Linux", "Mac OS X", "Windows 10"}) {
            assertEquals("mine", on(system, Map.of("JUPYTER_DATA_DIR", "mine", "APPDATA", "roaming")));
        }
        assertEquals("home/Library/Application Support/Jupyter", on("Mac OS X", Map.of("JUPYTER_PLATFORM_DIRS", "1")));
        assertEquals("home/Library/Jupyter", on("Mac OS X", Map.of("JUPYTER_PLATFORM_DIRS", "0")));
    }
}
