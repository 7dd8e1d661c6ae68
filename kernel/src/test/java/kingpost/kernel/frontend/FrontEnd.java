package kingpost.kernel.frontend;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Assumptions;

/** A scratch home for clients of the protocol, with the kernel registered in it, and the means to start them. */
final class FrontEnd {

    /** What a command printed and how it ended. */
    record Ended(int status, String output) {
        Ended expectSuccess() {
            assertEquals(0, status, output);
            return this;
        }
    }

    private static final boolean REQUIRED = Boolean.getBoolean("kingpost.requireClients");
    private static final Path SCRIPTS = Path.of("src", "test", "python").toAbsolutePath();
    private static final Path JAR = Path.of(System.getProperty("kingpost.jar", "target/kingpost.jar")).toAbsolutePath();

    private final Path home;

    private FrontEnd(Path home) {
        this.home = home;
    }

    /** Registers the kernel under {@code home}; skips the test, or fails it, if a module of Python is missing. */
    static FrontEnd with(Path home, String... modules) {
        FrontEnd frontEnd = new FrontEnd(home);
        for (String module : modules) {
            need("Python module " + module, frontEnd.hasModule(module));
        }
        assertTrue(Files.exists(JAR), JAR + " is there: this test runs after \"package\"");
        frontEnd.command(60, java(), "-jar", JAR.toString(), "register", "--data-dir", frontEnd.data().toString())
                .expectSuccess();
        return frontEnd;
    }

    /** Skips the test, or fails it where clients are required, unless {@code there}. */
    static void need(String what, boolean there) {
        if (REQUIRED) {
            assertTrue(there, what + " is required here and is not installed");
        }
        Assumptions.assumeTrue(there, what + " is not installed; this client test is skipped");
    }

    Path home() {
        return home;
    }

    /** Where the kernel is registered. */
    Path data() {
        return home.resolve("data");
    }

    static String python() {
        Path system = Path.of("/usr/bin/python3");
        return Files.isExecutable(system) ? system.toString() : "python3";
    }

    static String java() {
        return Path.of(System.getProperty("java.home"), "bin", "java").toString();
    }

    static Path jar() {
        return JAR;
    }

    boolean hasModule(String module) {
        try {
            return command(60, python(), "-c", "import " + module).status() == 0;
        } catch (UncheckedIOException e) {
            return false;
        }
    }

    /** Whether a program of this name can be started. */
    boolean hasProgram(String name) {
        return List.of(System.getenv("PATH").split(java.io.File.pathSeparator)).stream()
                .anyMatch(folder -> Files.isExecutable(Path.of(folder, name)));
    }

    /** Runs a script of {@code src/test/python}. */
    Ended script(int seconds, String name, Object... arguments) {
        List<String> command = new ArrayList<>(List.of(python(), SCRIPTS.resolve(name).toString()));
        for (Object argument : arguments) {
            command.add(argument.toString());
        }
        return command(seconds, command.toArray(String[]::new));
    }

    /** Runs a command in the scratch home and waits for its end. */
    Ended command(int seconds, String... command) {
        try {
            Path output = Files.createTempFile(Files.createDirectories(home), "command", ".log");
            ProcessBuilder builder = new ProcessBuilder(command).redirectErrorStream(true).redirectOutput(output.toFile())
                    .directory(home.toFile());
            builder.environment().putAll(environment());
            Process process = builder.start();
            process.getOutputStream().close();
            if (!process.waitFor(seconds, TimeUnit.SECONDS)) {
                process.descendants().forEach(ProcessHandle::destroyForcibly);
                process.destroyForcibly().waitFor();
                return new Ended(-1, Files.readString(output) + "\nnot ended after " + seconds + " s");
            }
            return new Ended(process.exitValue(), Files.readString(output));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("interrupted while waiting for " + command[0], e);
        }
    }

    /** Everything that clients write goes under the scratch home. */
    private Map<String, String> environment() {
        Map<String, String> variables = new HashMap<>();
        variables.put("HOME", home.toString());
        variables.put("JUPYTER_DATA_DIR", data().toString());
        variables.put("JUPYTER_RUNTIME_DIR", home.resolve("runtime").toString());
        variables.put("JUPYTER_CONFIG_DIR", home.resolve("config").toString());
        variables.put("IPYTHONDIR", home.resolve("ipython").toString());
        variables.put("KINGPOST_HISTORY", home.resolve("history.sqlite").toString());
        variables.put("PYTHONDONTWRITEBYTECODE", "1");
        variables.put("PYTHONWARNINGS", "ignore");
        return variables;
    }
}
