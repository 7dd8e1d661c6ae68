package kingpost.kernel.recheck;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import kingpost.kernel.document.Cell;
import kingpost.kernel.document.Notebook;
import kingpost.kernel.document.NotebookRun;
import kingpost.kernel.document.RunEvent;
import kingpost.kernel.evaluation.Outcome;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RecheckTest {

    private static final String FIGURE = "<svg id=\"a1\"><title>Truss of 3 members</title><line x1=\"0\" y1=\"0.5\" x2=\"100\" "
            + "y2=\"40\"/><text x=\"3\" y=\"4\">12 kN</text></svg>";

    private static Map<String, Object> value(String type, Object content) {
        return Map.of("output_type", "execute_result", "metadata", Map.of(), "data", Map.of("text/plain", "v", type, content));
    }

    private static Map<String, Object> printed(String text) {
        return Map.of("output_type", "stream", "name", "stdout", "text", text);
    }

    private static Cell.Code cell(int count, String source, List<Map<String, Object>> outputs, String... tags) {
        return new Cell.Code("c" + source.hashCode() + count, Map.of("tags", List.of(tags)), source,
                count == 0 ? OptionalLong.empty() : OptionalLong.of(count), outputs, Map.of());
    }

    private static Notebook notebook(Cell... cells) {
        return new Notebook(5, Map.of(), List.of(cells), Map.of());
    }

    private static List<String> recheck(Notebook saved, Notebook now, RunEvent.Failed... failures) {
        return new Recheck(saved, Tolerance.STANDARD).compare(new NotebookRun.Report(now, List.of(failures))).stream()
                .map(Drift::toString).toList();
    }

    private static List<String> recheck(Map<String, Object> saved, Map<String, Object> now) {
        return recheck(notebook(cell(1, "x", List.of(saved))), notebook(cell(1, "x", List.of(now))));
    }

    private static RunEvent.Failed failure(int cell, String message) {
        return new RunEvent.Failed(new RunEvent.Place(cell, 9, "x"), Duration.ZERO, new Outcome.Failed(
                Outcome.Kind.COMPILATION, "CompilationError", message, List.of(), 1), false);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "F = 12.5 kN|F = 12.5 kN",
        "F = 12.5 kN|F  =  12.5\u00a0kN",
        "F = 12.50000001 kN|F = 12.5 kN",
        "sum 1e-17, load 12|sum -3e-18, load 12",
        "Thing@1b2c3d4e|Thing@99aabbcc",
        "12,000 N|12000 N",
        "\u22123 kN|-3 kN",
    })
    void takesTheseForTheSame(String saved, String now) {
        assertEquals(List.of(), recheck(printed(saved), printed(now)));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "F = 12.5 kN|F = 12.6 kN|12.5 was saved, now it is 12.6",
        "F = 12.5 kN|F = -12.5 kN|12.5 was saved, now it is -12.5",
        "tension|compression|\"tension\" was saved, now it is \"compression\"",
        "1 2|1 2 3|was saved, now it is",
        "AB 3|AC 3|was saved, now it is",
    })
    void findsWhatChanged(String saved, String now, String message) {
        List<String> found = recheck(printed(saved), printed(now));
        assertEquals(1, found.size(), found.toString());
        assertTrue(found.get(0).startsWith("Cell 1: its printed text (stdout) changed: "), found.toString());
        assertTrue(found.get(0).contains(message), found.toString());
    }

    @Test
    void comparesFiguresByWhatIsSeen() {
        Map<String, Object> saved = value("image/svg+xml", FIGURE);
        assertEquals(List.of(), recheck(saved, value("image/svg+xml", FIGURE.replace("a1", "b2").replace("y1=\"0.5\"", "y1=\"0.52\""))));
        String changed = recheck(saved, value("image/svg+xml", FIGURE.replace("12 kN", "13 kN"))).get(0);
        assertTrue(changed.startsWith("Cell 1: its figure changed: 12 was saved, now it is 13"), changed);
        assertEquals(List.of("Cell 1: its figure changed: it is drawn in another way"),
                recheck(saved, value("image/svg+xml", FIGURE.replace("x2=\"100\"", "x2=\"80\""))));
        assertEquals(List.of("Cell 1: its figure is gone"), recheck(saved, Map.of("output_type", "execute_result",
                "metadata", Map.of(), "data", Map.of("text/plain", "v"))));
        assertEquals(List.of("Cell 1: 1 figure was saved, now it shows nothing"),
                recheck(notebook(cell(1, "x", List.of(saved))), notebook(cell(1, "x", List.of()))));
    }

    @Test
    void comparesResultsNumberByNumber() {
        String type = "application/vnd.kingpost.result+json";
        Map<String, Object> saved = value(type, Map.of("forces", Map.of("AB", 12.0, "BC", List.of(1L, -3.5))));
        assertEquals(List.of(), recheck(saved, value(type, Map.of("forces", Map.of("AB", 12.000001, "BC", List.of(1.0, -3.5))))));
        assertEquals(List.of("Cell 1: its result changed: forces.BC[1]: -3.5 was saved, now it is 3.5"),
                recheck(saved, value(type, Map.of("forces", Map.of("AB", 12.0, "BC", List.of(1L, 3.5))))));
    }

    @Test
    void namesACellThatWasRunOutOfOrder() {
        Notebook saved = notebook(cell(3, "a", List.of()), cell(2, "b", List.of()), cell(4, "c", List.of()));
        assertEquals(List.of("Cell 2: was last run before cell 1 above it (counts 2 and 3)"), recheck(saved, saved));
    }

    @Test
    void namesACellThatNeedsWhatIsMadeFurtherDown() {
        Notebook saved = notebook(cell(2, "span + 1", List.of()), cell(1, "int other = 1;", List.of()),
                cell(3, "var span = 9;", List.of()));
        List<String> found = recheck(saved, saved, failure(1, "cannot find variable span"));
        assertTrue(found.contains("Cell 1: fails when the notebook runs from top to bottom (CompilationError: cannot find "
                + "variable span); span is made only in cell 3, further down"), found.toString());
    }

    @Test
    void tellsFailuresFromBeforeAndNow() {
        Map<String, Object> error = Map.of("output_type", "error", "ename", "E", "evalue", "m", "traceback", List.of());
        Notebook failed = notebook(cell(1, "x", List.of(error)));
        assertEquals(List.of(), recheck(failed, failed, failure(1, "m")));
        assertEquals(List.of("Cell 1: was saved with an error, now it runs"), recheck(failed, notebook(cell(1, "x", List.of()))));
    }

    @Test
    void comparesNothingWhereTheTagSaysSo() {
        List<Map<String, Object>> saved = new ArrayList<>(List.of(printed("took 12 ms")));
        assertEquals(List.of(), recheck(notebook(cell(1, "x", saved, Recheck.VARIES)),
                notebook(cell(1, "x", List.of(printed("took 15 ms"))))));
    }

    @Test
    void namesACellThatNeverRan() {
        assertEquals(List.of("Cell 1: was never run when the notebook was saved"),
                recheck(notebook(cell(0, "x", List.of())), notebook(cell(1, "x", List.of()))));
    }

    private static String picture(int width, java.awt.Color colour, String text) throws java.io.IOException {
        var image = new java.awt.image.BufferedImage(width, 100, java.awt.image.BufferedImage.TYPE_INT_ARGB);
        var graphics = image.createGraphics();
        graphics.setColor(colour);
        graphics.fillRect(20, 20, 60, 60);
        graphics.drawString(text, 100, 50);
        graphics.dispose();
        var bytes = new java.io.ByteArrayOutputStream();
        javax.imageio.ImageIO.write(image, "png", bytes);
        return java.util.Base64.getEncoder().encodeToString(bytes.toByteArray());
    }

    @Test
    void comparesPicturesByWhatTheyLookLike() throws java.io.IOException {
        Map<String, Object> saved = value("image/png", picture(200, java.awt.Color.BLUE, "."));
        assertEquals(List.of(), recheck(saved, value("image/png", picture(200, new java.awt.Color(0, 0, 250), "."))));
        assertEquals(List.of("Cell 1: its picture changed: 200 by 100 dots were saved, now it is 210 by 100"),
                recheck(saved, value("image/png", picture(210, java.awt.Color.BLUE, "."))));
        assertTrue(recheck(saved, value("image/png", picture(200, java.awt.Color.RED, "."))).get(0)
                .startsWith("Cell 1: its picture changed: it looks otherwise, first "));
        assertEquals(List.of("Cell 1: its picture changed: the new one cannot be read"), recheck(saved, value("image/png", "AAAA")));
    }

    @Test
    void tellsAChangeOfAllTextsOnce() {
        Map<String, Object> saved = Map.of("output_type", "execute_result", "metadata", Map.of(), "data",
                Map.of("text/plain", "AC 10.4", "text/markdown", "| AC | $10.4$ |", "text/latex", "AC 10.4"));
        Map<String, Object> now = Map.of("output_type", "execute_result", "metadata", Map.of(), "data",
                Map.of("text/plain", "AC 10.9", "text/markdown", "| AC | $10.9$ |", "text/latex", "AC 10.9"));
        List<String> told = recheck(saved, now);
        assertEquals(1, told.size(), told::toString);
        assertTrue(told.get(0).startsWith("Cell 1: its text changed: 10.4 was saved, now it is 10.9"), told::toString);
    }

    private static Map<String, Object> error(String message) {
        return Map.of("output_type", "error", "ename", "E", "evalue", message, "traceback", List.of());
    }

    @Test
    void comparesTheErrorOfACellThatMayFail() {
        Notebook failed = notebook(cell(1, "x", List.of(error("no member XY")), Cell.MAY_FAIL));
        assertEquals(List.of(), recheck(failed, failed));
        assertEquals(List.of("Cell 1: its error changed: \"...no member XY\" was saved, now it is \"...no member XZ\""),
                recheck(failed, notebook(cell(1, "x", List.of(error("no member XZ")), Cell.MAY_FAIL))).stream()
                        .map(said -> said.replaceAll("\"[^\"]*(no member X.)\"", "\"...$1\"")).toList());
        assertEquals(List.of("Cell 1: it failed when it was saved (E: no member XY), now it runs"),
                recheck(failed, notebook(cell(1, "x", List.of(printed("1")), Cell.MAY_FAIL))).subList(0, 1));
        assertEquals(List.of("Cell 1: it ran when it was saved, now it fails (E: no member XY)"),
                recheck(notebook(cell(1, "x", List.of(value("text/html", "v")), Cell.MAY_FAIL)), failed));
    }

    @Test
    void saysOnceThatNothingWasRun() {
        Notebook fresh = notebook(cell(0, "x", List.of()), cell(0, "y", List.of()));
        assertEquals(1, recheck(fresh, fresh).size());
    }
}
