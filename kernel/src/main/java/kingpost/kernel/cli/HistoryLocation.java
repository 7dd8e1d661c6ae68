package kingpost.kernel.cli;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import kingpost.kernel.session.HistoryStore;
import kingpost.kernel.session.MemoryHistory;
import kingpost.kernel.session.SqliteHistory;

/**
 * Where a user's history lies: the path in {@code KINGPOST_HISTORY}, nowhere when it says {@code off}, or else a file
 * in the user's folder for such state.
 */
final class HistoryLocation {

    static final String VARIABLE = "KINGPOST_HISTORY";
    private static final String FILE = "history.sqlite";

    private HistoryLocation() { }

    static HistoryStore open(Map<String, String> environment, String system, Path home) {
        String wanted = environment.getOrDefault(VARIABLE, "").trim();
        return wanted.equals("off") ? new MemoryHistory()
                : new SqliteHistory(wanted.isEmpty() ? byDefault(environment, system, home) : Path.of(wanted));
    }

    static Path byDefault(Map<String, String> environment, String system, Path home) {
        String name = system.toLowerCase(Locale.ROOT);
        if (name.startsWith("windows")) {
            return folder(environment, "LOCALAPPDATA", home.resolve("AppData/Local")).resolve("Kingpost").resolve(FILE);
        }
        if (name.startsWith("mac")) {
            return home.resolve("Library/Application Support/Kingpost").resolve(FILE);
        }
        return folder(environment, "XDG_STATE_HOME", home.resolve(".local/state")).resolve("kingpost").resolve(FILE);
    }

    private static Path folder(Map<String, String> environment, String variable, Path otherwise) {
        String value = environment.getOrDefault(variable, "");
        return value.isBlank() ? otherwise : Path.of(value);
    }
}
