package kingpost.kernel.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import kingpost.kernel.document.Cell;
import kingpost.kernel.document.Notebook;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class NotebookPageTest {

    private static final String RESULT = "application/vnd.kingpost.result+json";
    private static final String SVG = "<svg viewBox=\"0 0 1 1\"><title id=\"t\">Truss</title><rect width=\"1\"/></svg>";

    private static Document page(Cell... cells) {
        return Jsoup.parse(text(cells));
    }

    private static String text(Cell... cells) {
        return new NotebookPage(new Notebook(5, Map.of(), List.of(cells), Map.of()), "tie.ipynb").html();
    }

    private static Cell.Markdown markdown(String source) {
        return new Cell.Markdown("m", Map.of(), source, Map.of());
    }

    @SafeVarargs
    private static Cell.Code code(String source, Map<String, Object>... outputs) {
        return new Cell.Code("c", Map.of(), source, OptionalLong.of(7), List.of(outputs), Map.of());
    }

    private static Map<String, Object> value(Object... data) {
        Map<String, Object> bundle = new java.util.LinkedHashMap<>();
        for (int i = 0; i < data.length; i += 2) {
            bundle.put((String) data[i], data[i + 1]);
        }
        return Map.of("output_type", "execute_result", "execution_count", 7L, "data", bundle, "metadata", Map.of());
    }

    private static Map<String, Object> stream(String name, String text) {
        return Map.of("output_type", "stream", "name", name, "text", text);
    }

    private static Element output(Map<String, Object> output) {
        return page(code("x", output)).selectFirst(".kp-output");
    }

    @Test
    void needsNothingFromElsewhereAndRunsNothing() {
        Document page = page(markdown("# Tie\n\n<script>alert(1)</script>\n\n![p](https://elsewhere.example/p.png)"),
                code("x", value("text/html", "<b onclick='x()'>v</b><script>1</script>", "text/plain", "v")));
        assertEquals(0, page.select("script, link, iframe, img, object").size());
        assertTrue(page.selectFirst("meta[http-equiv=Content-Security-Policy]").attr("content").startsWith(
                "default-src 'none'"));
        assertEquals("Tie", page.title());
    }

    @Test
    void titlesThePageByItsFileIfThereIsNoHeading() {
        assertEquals("tie.ipynb", page(markdown("no heading")).title());
        assertEquals("a <b>", page(markdown("# a <b>")).title());
    }

    @Test
    void choosesTheRichestFormThatNeedsNoScript() {
        Map<String, Object> ours = Map.of("html", "<p>ours <math><mi>x</mi></math></p>");
        assertEquals("ours x", output(value("text/plain", "p", "text/markdown", "m", "image/svg+xml", SVG, RESULT, ours)).text());
        assertEquals(1, output(value("text/plain", "p", "image/svg+xml", SVG, "text/html", "<i>h</i>",
                RESULT, Map.of("kind", "force"))).select("figure svg").size());
        assertEquals("h", output(value("text/plain", "p", "text/markdown", "m", "text/html", "<i>h</i>")).text());
        assertEquals("m", output(value("text/plain", "p", "text/latex", "$l$", "text/markdown", "*m*")).select("em").text());
        assertEquals("l", output(value("text/plain", "p", "image/png", "AAAA", "text/latex", "$l$")).select("math").text());
        assertEquals("data:image/png;base64,AAAA", output(value("text/plain", "p", "image/png", "AA\nAA")).select("img").attr("src"));
        assertEquals("p <1>", output(value("text/plain", "p <1>")).select("pre").text());
    }

    @Test
    void giveEachFigureIdsOfItsOwn() {
        Document page = page(code("x", value("image/svg+xml", SVG), value("image/svg+xml", SVG)),
                code("y", value("image/svg+xml", SVG)));
        List<String> ids = page.select("[id]").eachAttr("id");
        assertEquals(3, ids.size());
        assertEquals(3, ids.stream().distinct().count(), ids.toString());
    }

    @Test
    void showsStreamsAndErrorsWithTheirColoursButNoControlCharacters() {
        Element out = output(stream("stdout", "10 %\r20 %\r\n\u001b[31mred\u001b[0m <plain>\u001b[2K\u0007"));
        assertEquals("20 %\nred <plain>", out.selectFirst("pre").wholeText());
        assertEquals("red", out.select(".kp-ansi-red").text());
        Map<String, Object> failed = Map.of("output_type", "error", "ename", "ArithmeticException", "evalue", "/ by <zero>",
                "traceback", List.of("\u001b[1mline 2\u001b[0m", "  x / 0"));
        Element error = output(failed);
        assertEquals("ArithmeticException / by <zero>", error.select("p").text());
        assertEquals("line 2\n  x / 0", error.selectFirst("pre").wholeText());
    }

    @Test
    void hidesWhatTheNotebookHides() {
        Map<String, Object> hidden = Map.of("jupyter", Map.of("source_hidden", true, "outputs_hidden", true));
        Cell.Code cell = new Cell.Code("c", hidden, "int x = 1;", OptionalLong.of(1), List.of(stream("stdout", "out")), Map.of());
        Document page = page(cell);
        assertEquals(1, page.select("details.kp-source:not([open])").size());
        assertEquals(0, page.select(".kp-output").size());
    }

    @Test
    void marksJavaWithoutChangingIt() {
        String source = "var s = \"a<b // no\"; // note <x>\nchar c = '\\''; int n = 12; /* open";
        Element listing = page(code(source)).selectFirst("pre code");
        assertEquals(source, listing.wholeText());
        assertEquals(List.of("// note <x>", "/* open"), listing.select(".kp-comment").eachText());
        assertEquals(List.of("\"a<b // no\"", "'\\''"), listing.select(".kp-string").eachText());
    }

    @Test
    void putsPicturesOfTheNotebookIntoThePage(@TempDir Path folder) throws IOException {
        Path inside = Files.createDirectory(folder.resolve("notebooks"));
        Files.write(inside.resolve("site plan.png"), new byte[] {1, 2, 3});
        Files.write(folder.resolve("outside.png"), new byte[] {4});
        Map<String, Object> attachments = Map.of("attachments", Map.of("a b.png", Map.of("image/png", "AAAA")));
        Cell cell = new Cell.Markdown("m", Map.of(), "![1](attachment:a%20b.png) ![2](site%20plan.png) ![3](../outside.png)",
                attachments);
        Document page = Jsoup.parse(new NotebookPage(new Notebook(5, Map.of(), List.of(cell), Map.of()), "n",
                Optional.of(inside)).html());
        assertEquals(List.of("data:image/png;base64,AAAA", "data:image/png;base64,AQID"), page.select("img").eachAttr("src"));
        assertEquals("[Picture not included: 3 (../outside.png)]", page.select(".kp-missing").text());
    }

    @Test
    void isTheSameEachTime() {
        Cell[] cells = {markdown("# T\n\n$x$"), code("x", value("image/svg+xml", SVG))};
        assertEquals(text(cells), text(cells));
        assertFalse(text(cells).contains("\r"));
    }
}
