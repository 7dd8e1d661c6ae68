package kingpost.kernel.cli;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * Where front ends of the notebook protocol look for a user's kernels.
 *
 * <p>Source: the protocol's reference client, "Data files" of its core library (jupyter_core), user directories; the
 * folders of {@code JUPYTER_PLATFORM_DIRS} from memory.
 */
final class DataDirectory {

    private final Map<String, String> environment;
    private final String system;
    private final Path home;

    /**
     * @param environment the process's environment
     * @param system      the operating system's name, as {@code os.name} has it
     * @param home        the user's home folder
     */
    DataDirectory(Map<String, String> environment, String system, Path home) {
        this.environment = environment;
        this.system = system.toLowerCase(Locale.ROOT);
        this.home = home;
    }

    /** For this user on this machine. */
    static DataDirectory ofThisUser() {
        return new DataDirectory(System.getenv(), System.getProperty("os.name"), Path.of(System.getProperty("user.home")));
    }

    Path path() {
        return variable("JUPYTER_DATA_DIR").map(Path::of).orElseGet(this::usual);
    }

    private Path usual() {
        boolean platform = variable("JUPYTER_PLATFORM_DIRS").filter(v -> !v.matches("(?i)0|no|n|false|off")).isPresent();
        if (system.startsWith("mac")) {
            return home.resolve(platform ? "Library/Application Support/Jupyter" : "Library/Jupyter");
        }
        if (system.startsWith("windows")) {
            return platform ? variable("LOCALAPPDATA").map(Path::of).orElse(home.resolve("AppData/Local")).resolve("Jupyter")
                    : variable("APPDATA").map(folder -> Path.of(folder, "jupyter")).orElse(home.resolve(".jupyter/data"));
        }
        return variable("XDG_DATA_HOME").map(Path::of).orElse(home.resolve(".local/share")).resolve("jupyter");
    }

    private Optional<String> variable(String name) {
        return Optional.ofNullable(environment.get(name)).filter(value -> !value.isBlank());
    }
}
