package kingpost.kernel.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import kingpost.kernel.document.Cell;
import kingpost.kernel.document.NotebookReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine;

class CommandsTest {

    private static final String CELL = "{\"cell_type\":\"code\",\"id\":\"%s\",\"metadata\":{},\"source\":\"%s\",\"outputs\":[],"
            + "\"execution_count\":null}";

    @TempDir
    Path folder;
    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    private int kingpost(Object... args) {
        CommandLine commands = Main.commandLine(EchoEvaluator::new);
        commands.setOut(new PrintWriter(out)).setErr(new PrintWriter(err));
        return commands.execute(java.util.Arrays.stream(args).map(Object::toString).toArray(String[]::new));
    }

    private Path notebook(String name, String metadata, String... sources) throws IOException {
        StringBuilder cells = new StringBuilder();
        for (int i = 0; i < sources.length; i++) {
            cells.append(i == 0 ? "" : ",").append(CELL.formatted("c" + i, sources[i]));
        }
        return Files.writeString(folder.resolve(name), "{\"nbformat\":4,\"nbformat_minor\":5,\"metadata\":{" + metadata
                + "},\"cells\":[" + cells + "]}");
    }

    @Test
    void writesTheExecutedNotebookAndThePageAndSaysWhere() throws IOException {
        Path source = notebook("tie.ipynb", "", "one", "two");
        String before = Files.readString(source);
        Path results = folder.resolve("results").resolve("today");
        assertEquals(0, kingpost("run", source, "--out", results), err::toString);
        assertEquals(before, Files.readString(source));
        Cell.Code second = (Cell.Code) NotebookReader.read(results.resolve("tie-executed.ipynb")).cells().get(1);
        assertTrue(second.outputs().toString().contains("two"), second.outputs().toString());
        assertTrue(Files.readString(results.resolve("tie.html")).contains("two"));
        assertTrue(out.toString().contains("[1/2] one"), out.toString());
        assertTrue(out.toString().contains(results.resolve("tie-executed.ipynb").toString()), out.toString());
        assertTrue(out.toString().contains(results.resolve("tie.html").toString()), out.toString());
        try (var files = Files.list(results)) {
            assertEquals(2, files.count(), "nothing else is left there");
        }
    }

    @Test
    void writesIntoTheNotebookItselfWhenTold() throws IOException {
        Path source = notebook("tie.ipynb", "\"ours\":1", "one");
        assertEquals(0, kingpost("run", "--in-place", source), err::toString);
        assertTrue(Files.readString(source).contains("\"execution_count\": 1"));
        assertTrue(Files.readString(source).contains("\"ours\": 1"));
        assertTrue(Files.exists(folder.resolve("tie.html")));
    }

    @Test
    void stopsAtAFailureShowsWhereAndStillWrites() throws IOException {
        Path source = notebook("tie.ipynb", "", "one", "fail here", "three");
        assertEquals(1, kingpost("run", source, "--out", folder));
        assertTrue(err.toString().contains("Cell 2, line 3: IllegalStateException: asked to fail"), err.toString());
        assertTrue(out.toString().contains("[3/3] three"), out.toString());
        assertTrue(out.toString().contains("not run"), out.toString());
        assertFalse(err.toString().contains("\tat "), "no stack trace of ours: " + err);
        Cell.Code first = (Cell.Code) NotebookReader.read(folder.resolve("tie-executed.ipynb")).cells().get(0);
        assertEquals(1, first.outputs().size());
    }

    @Test
    void keepsGoingWhenTold() throws IOException {
        Path source = notebook("tie.ipynb", "", "fail", "two");
        assertEquals(1, kingpost("run", "--keep-going", source, "--out", folder));
        Cell.Code second = (Cell.Code) NotebookReader.read(folder.resolve("tie-executed.ipynb")).cells().get(1);
        assertEquals(1, second.outputs().size());
    }

    @Test
    void saysInOneLineWhatIsWrongWithAFile() throws IOException {
        assertOneLine("there is no such file", "run", folder.resolve("missing.ipynb"));
        assertOneLine("a.ipynb: is not JSON (line 1, column 1); save it", "run", Files.writeString(folder.resolve("a.ipynb"), "hello"));
        assertOneLine("is JSON but not a notebook", "run", Files.writeString(folder.resolve("b.json"), "{\"a\":1}"));
        assertOneLine("written for the kernel \"python3\"", "run", notebook("py.ipynb",
                "\"kernelspec\":{\"name\":\"python3\",\"display_name\":\"P\"},\"language_info\":{\"name\":\"python\"}", "1"));
        Path file = Files.writeString(folder.resolve("file"), "");
        assertOneLine("Output folder " + file, "run", notebook("ok.ipynb", "", "1"), "--out", file);
        assertOneLine("Connection file", "kernel", folder.resolve("none.json"));
    }

    @Test
    void saysInOneLineWhatIsWrongWithTheCommandLine() {
        assertOneLine("[HTML, PDF, MD, IPYNB] but was 'docx'; see \"kingpost run --help\".", "run", "a.ipynb", "--to", "docx");
        assertOneLine("'frobnicate'; see \"kingpost --help\".", "frobnicate");
        assertOneLine("NOTEBOOK", "recheck");
    }

    private void assertOneLine(String message, Object... args) {
        err.getBuffer().setLength(0);
        assertEquals(2, kingpost(args));
        assertTrue(err.toString().contains(message), err.toString());
        assertEquals(1, err.toString().lines().count(), err.toString());
    }

    @Test
    void refusesToRegisterFromAnythingButTheJar() {
        assertEquals(2, kingpost("register", "--data-dir", folder));
        assertTrue(err.toString().contains("does not run from kingpost.jar"), err.toString());
        assertFalse(Files.exists(folder.resolve("kernels")));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "run", "register", "kernel"})
    void explainsItselfAndItsVersion(String command) {
        String[] help = command.isEmpty() ? new String[] {"--help"} : new String[] {command, "--help"};
        String[] version = command.isEmpty() ? new String[] {"--version"} : new String[] {command, "--version"};
        assertEquals(0, kingpost((Object[]) help));
        assertTrue(out.toString().contains(("Usage: kingpost " + command).strip()), out.toString());
        out.getBuffer().setLength(0);
        assertEquals(0, kingpost((Object[]) version));
        assertTrue(out.toString().startsWith("Kingpost "), out.toString());
    }

    @Test
    void namesTheCommandsWhenNoneIsGiven() {
        assertEquals(2, kingpost());
        for (String command : new String[] {"run", "register", "kernel"}) {
            assertTrue(err.toString().contains("  " + command), err.toString());
        }
        assertEquals(2, kingpost("dance"));
    }
}
