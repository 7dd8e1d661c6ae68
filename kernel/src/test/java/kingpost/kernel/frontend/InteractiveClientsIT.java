package kingpost.kernel.frontend;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.CleanupMode;
import org.junit.jupiter.api.io.TempDir;

/** Clients that a person types into: the console on a terminal, the classic Notebook in a browser. */
@Tag("clients")
class InteractiveClientsIT {

    private static final Path DRIVER = Path.of("src", "test", "browser", "classic_notebook.js").toAbsolutePath();

    @TempDir(cleanup = CleanupMode.ON_SUCCESS)
    Path home;

    @Test
    void worksInTheConsole() {
        FrontEnd frontEnd = FrontEnd.with(home, "jupyter_console");
        FrontEnd.need("tmux", frontEnd.hasProgram("tmux"));
        FrontEnd.Ended ended = frontEnd.script(300, "console.py");
        if (ended.status() != 0 && ended.output().contains("Unhandled exception in event loop")) {
            // the console's own line editor stumbles when keys come while it is slow
            ended = frontEnd.script(300, "console.py");
        }
        System.out.println(ended.expectSuccess().output());
    }

    @Test
    void worksInTheClassicNotebook() {
        FrontEnd frontEnd = FrontEnd.with(home, "notebook");
        FrontEnd.need("node", frontEnd.hasProgram("node"));
        FrontEnd.need("the npm package playwright-core (found through NODE_PATH)",
                frontEnd.command(60, "node", "-e", "require('playwright-core')").status() == 0);
        String chromium = List.of("chromium", "chromium-browser", "google-chrome").stream().filter(frontEnd::hasProgram)
                .findFirst().orElse("");
        FrontEnd.need("Chromium", !chromium.isEmpty());
        String path = frontEnd.command(20, "sh", "-c", "command -v " + chromium).expectSuccess().output().strip();
        System.out.println(frontEnd.script(600, "classic_notebook.py", DRIVER, path, home.resolve("notebooks"))
                .expectSuccess().output());
    }
}
