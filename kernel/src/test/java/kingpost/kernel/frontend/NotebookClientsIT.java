package kingpost.kernel.frontend;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.stream.Stream;
import kingpost.kernel.document.Cell;
import kingpost.kernel.document.Notebook;
import kingpost.kernel.document.NotebookReader;
import kingpost.kernel.document.NotebookWriter;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The reference clients that work on notebook files: jupyter_client, nbclient, nbconvert, nbformat. */
@Tag("clients")
class NotebookClientsIT {

    /** The LaTeX route would turn SVG into PDF with a program that few have; the PNG of each figure is taken instead. */
    private static final String WITHOUT_INKSCAPE = "--SVG2PDFPreprocessor.enabled=False";

    @TempDir
    static Path home;
    private static FrontEnd frontEnd;

    @BeforeAll
    static void register() {
        frontEnd = FrontEnd.with(home, "jupyter_client", "nbclient", "nbformat", "nbconvert");
    }

    @Test
    void answersEveryMessageOfARawClient() {
        System.out.println(frontEnd.script(240, "raw_client.py").expectSuccess().output());
    }

    @Test
    void speaksOverUnixSocketsWithTheReferenceClient() throws IOException {
        // a socket's path must be short
        Path sockets = Files.createTempDirectory("kp");
        System.out.println(frontEnd.script(240, "unix_sockets.py", sockets).expectSuccess().output());
        Files.deleteIfExists(sockets.resolve("connection.json"));
        Files.delete(sockets);
    }

    @Test
    void runsACellFileThroughNbclient() throws IOException {
        Path executed = runThroughNbclient(sample());
        Cell.Code cell = (Cell.Code) NotebookReader.read(executed).cells().get(1);
        assertEquals(OptionalLong.of(1), cell.executionCount());
        assertTrue(cell.outputs().toString().contains("81"), cell.outputs().toString());
    }

    /** One test a notebook, so that none uses up the time of the others. */
    @ParameterizedTest
    @MethodSource("notebooks")
    void runsEveryNotebookOfTheProject(Path notebook) throws IOException {
        Notebook executed = NotebookReader.read(runThroughNbclient(notebook));
        String html = convert(notebook, "html");
        long figures = forms(executed, "image/svg+xml");
        assertTrue(html.split("<svg|data:image/svg\\+xml|image/png").length - 1 >= figures,
                notebook + " has " + figures + " figures");
        assertTrue(html.contains("$$") || forms(executed, "text/markdown") == 0, notebook + " shows mathematics");
        assertTrue(convert(notebook, "latex").contains("\\begin{document}"));
    }

    @Test
    void writesNotebooksAsTheReferenceLibraryDoes() throws IOException {
        for (Path notebook : List.of(sample(), notebooks().get(0))) {
            frontEnd.command(180, FrontEnd.java(), "-jar", FrontEnd.jar().toString(), "run", notebook.toString(), "--out",
                    home.resolve("own").toString()).expectSuccess();
            String name = notebook.getFileName().toString().replace(".ipynb", "-executed.ipynb");
            frontEnd.script(60, "same_as_reference_writer.py", home.resolve("own").resolve(name)).expectSuccess();
        }
    }

    private static Path runThroughNbclient(Path notebook) {
        Path executed = home.resolve("executed-" + notebook.getFileName());
        frontEnd.script(300, "run_notebook.py", notebook, executed).expectSuccess();
        return executed;
    }

    private static String convert(Path notebook, String format) throws IOException {
        Path executed = home.resolve("executed-" + notebook.getFileName());
        Path output = Files.createDirectories(home.resolve("converted")).resolve(notebook.getFileName() + "." + format);
        frontEnd.command(180, FrontEnd.python(), "-m", "nbconvert", "--to", format, "--output", output.toString(),
                WITHOUT_INKSCAPE, executed.toString()).expectSuccess();
        Path written = Stream.of("", ".html", ".tex").map(end -> Path.of(output + end)).filter(Files::exists).findFirst()
                .orElseThrow();
        return Files.readString(written);
    }

    private static long forms(Notebook notebook, String type) {
        return notebook.cells().stream().filter(Cell.Code.class::isInstance).map(Cell.Code.class::cast)
                .flatMap(cell -> cell.outputs().stream())
                .filter(output -> output.get("data") instanceof Map<?, ?> data && data.containsKey(type)).count();
    }

    private static List<Path> notebooks() throws IOException {
        Path folder = Path.of(System.getProperty("kingpost.notebooks", "../notebooks"));
        try (Stream<Path> files = Files.list(folder)) {
            List<Path> found = files.filter(file -> file.toString().endsWith(".ipynb")).sorted().map(Path::toAbsolutePath)
                    .toList();
            assertFalse(found.isEmpty(), "there are notebooks in " + folder);
            return found;
        }
    }

    private static Path sample() throws IOException {
        List<Cell> cells = List.of(
                new Cell.Markdown("prose", Map.of(), "# Squares\n\n$x^2$ \u2014 \uD835\uDF0E", Map.of()),
                code("first", "int square(int x) {\n    return x * x;\n}\nsquare(9)"),
                code("second", "System.out.println(\"a\\nb\");\nsquare(3) / 2.0"));
        return Files.writeString(home.resolve("sample.ipynb"),
                NotebookWriter.write(new Notebook(5, Map.of(), cells, Map.of())));
    }

    private static Cell.Code code(String id, String source) {
        return new Cell.Code(id, Map.of(), source, OptionalLong.empty(), List.of(), Map.of());
    }
}
