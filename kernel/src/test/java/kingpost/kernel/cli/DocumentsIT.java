package kingpost.kernel.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import kingpost.kernel.document.Cell;
import kingpost.kernel.document.Notebook;
import kingpost.kernel.document.NotebookReader;
import kingpost.kernel.document.Trees;
import kingpost.kernel.wire.Json;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSObject;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.cos.COSString;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Attribute;
import org.jsoup.nodes.Comment;
import org.jsoup.nodes.DataNode;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jsoup.nodes.TextNode;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Documents as a person makes them, by the jar: editions of the first notebook, parameters, rows.
 *
 * <p>The forces of the first truss worked by hand: moments about A, C_y = (12 kN 2 m + 6 kN 4 m + 12 kN 4 m)/8 m = 12 kN,
 * so A_y = 18 kN; slopes of 3 in 4, so AD = 18 kN 5/3 = 30 kN in compression and AB = 24 kN; CF = 20 kN in compression and
 * BC = 16 kN; at F, BF = 0 and EF = CF; at E, DE = EF and BE = 2 (20 kN) 3/5 - 6 kN = 18 kN; at D across the rafter,
 * BD = 10 kN in compression. The reaction of 12 kN cannot be told from the loads of 12 kN.
 */
class DocumentsIT {

    private static final String ANSWERS = "(?:24|16|30|20|10|18)";
    /** An answer as a number of its own: plain, with zeros behind, in newtons, with or without a sign. */
    private static final Pattern NUMBER = Pattern.compile("(?<![\\w.,#])" + ANSWERS + "(?:[\u202f ,]?000)?(?:\\.0+)?(?![\\w.]*\\d)");
    /** An answer with its unit, however the two are joined, in the middle of anything. */
    private static final Pattern WITH_UNIT = Pattern.compile("(?<![\\d.])(?:0|" + ANSWERS + "(?:\\.0+)?)"
            + "(?:\\s|\u00a0|\u202f|&nbsp;|&#\\w+;|~|\\\\[,;:! ]|\\$|\\{|}|</?mn>|</?mtext>|<mspace[^>]*>|</mspace>|\\\\text|\\\\mathrm)*kN");
    private static final Pattern FIGURES = Pattern.compile("(?<![\\w.,#])\\d+(?:\\.\\d+)?(?![\\w.]*\\d)");
    private static final Set<String> GEOMETRY = Set.of("x", "y", "x1", "x2", "y1", "y2", "cx", "cy", "r", "rx", "ry", "d",
            "points", "width", "height", "viewbox", "transform", "style", "font-size", "stroke-width", "dx", "dy", "fill",
            "stroke", "stroke-dasharray", "id", "aria-labelledby", "class", "opacity", "fill-opacity", "charset");

    @TempDir
    private static Path folder;
    private static Ran made;

    private record Ran(int status, String out, String errors) { }

    private static Ran kingpost(String... arguments) {
        try {
            List<String> command = new ArrayList<>(List.of(
                    Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-jar", System.getProperty("kingpost.jar")));
            command.addAll(List.of(arguments));
            Path errors = Files.createTempFile(folder, "err", ".txt");
            Process process = new ProcessBuilder(command).redirectError(errors.toFile()).start();
            String out = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
            return new Ran(process.waitFor(), out, Files.readString(errors));
        } catch (IOException e) {
            throw new IllegalStateException(e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(e);
        }
    }

    @BeforeAll
    static void make() {
        Path notebook = Path.of(System.getProperty("kingpost.notebooks", "../notebooks"), "first-truss.ipynb");
        made = kingpost("run", notebook.toString(), "-o", folder.toString(), "--to", "html,pdf,md,ipynb", "--as",
                "solution,handout,key", "--paper", "letter");
    }

    private static byte[] file(String name) throws IOException {
        return Files.readAllBytes(folder.resolve(name));
    }

    @Test
    void everyDocumentIsMadeAndNothingElseIsSaid() {
        assertEquals(0, made.status(), made.errors());
        assertEquals("", made.errors());
    }

    @ParameterizedTest
    @EnumSource(Form.class)
    void theHandoutHoldsNoAnswer(Form form) throws IOException {
        byte[] bytes = file("first-truss-handout" + form.ending());
        List<String> words = new ArrayList<>();
        List<String> everything = new ArrayList<>(List.of(new String(bytes, StandardCharsets.UTF_8)));
        switch (form) {
            case HTML -> html(everything.get(0), words);
            case MD -> markdown(everything.get(0), words, everything);
            case IPYNB -> json(Json.read(everything.get(0)), words, everything);
            case PDF -> pdf(bytes, words, everything);
        }
        assertTrue(words.stream().anyMatch(text -> text.contains("Find the force in each member")), "the problem is there");
        for (String text : words) {
            Matcher number = NUMBER.matcher(text.replaceAll("Java \\d+|[0-9a-f]{64}|inputs [0-9a-f]{12}", ""));
            assertFalse(number.find(), () -> "\"" + number.group() + "\" in: " + text);
        }
        for (String text : everything) {
            Matcher number = WITH_UNIT.matcher(text);
            assertFalse(number.find(), () -> "\"" + number.group() + "\"");
            assertFalse(text.contains("no force") || text.contains("inspection") || text.contains("carries nothing"));
        }
    }

    /** All but the first, which is searched more closely, and the one about answers, which has no key. */
    private static Stream<Path> otherNotebooks() throws IOException {
        try (Stream<Path> all = Files.list(Path.of(System.getProperty("kingpost.notebooks", "../notebooks")))) {
            return all.filter(path -> path.toString().endsWith(".ipynb") && !path.endsWith("first-truss.ipynb")
                    && !path.endsWith("marking-session.ipynb")).sorted().toList()
                    .stream();
        }
    }

    /** An answer is a number of three figures in a table of the key, unless the problem gives it as well. */
    @ParameterizedTest
    @MethodSource("otherNotebooks")
    void noHandoutHoldsAnAnswer(Path notebook) throws IOException {
        String name = notebook.getFileName().toString().replace(".ipynb", "");
        Ran ran = kingpost("run", notebook.toString(), "-o", folder.toString(), "--to", "html,pdf,md,ipynb", "--as", "handout,key");
        assertEquals(0, ran.status(), ran.errors());
        String handout = new String(file(name + "-handout.html"), StandardCharsets.UTF_8);
        Document key = Jsoup.parse(new String(file(name + "-key.html"), StandardCharsets.UTF_8));
        key.select("math:has(mfrac), math:has(msqrt), math:has(msub)").remove();
        Set<String> answers = figures(key.select("td").eachText());
        assertTrue(answers.size() > 2, "there are answers to look for");
        Set<String> given = figures(Jsoup.parse(handout).select("li").eachText());
        answers.removeAll(given);
        answers.removeAll(given.stream().map(number -> new BigDecimal(number).round(new MathContext(3)).toPlainString()).toList());
        Notebook source = NotebookReader.read(notebook);
        answers.removeAll(figures(source.cells().stream().map(Cell::source).toList()));
        for (Form form : Form.values()) {
            byte[] bytes = file(name + "-handout" + form.ending());
            List<String> words = new ArrayList<>();
            List<String> everything = new ArrayList<>();
            String text = new String(bytes, StandardCharsets.UTF_8);
            switch (form) {
                case HTML -> html(text, words);
                case MD -> markdown(text, words, everything);
                case IPYNB -> json(Json.read(text), words, everything);
                case PDF -> pdf(bytes, words, everything);
            }
            Set<String> found = figures(words);
            found.retainAll(answers);
            assertEquals(Set.of(), found, name + " as " + form.word());
        }
    }

    /** Numbers of three figures or more. */
    private static Set<String> figures(List<String> texts) {
        return texts.stream().map(text -> text.replaceAll("[0-9a-f]{64}|inputs [0-9a-f]{12}|[\\d.]+bp", ""))
                .flatMap(text -> FIGURES.matcher(text).results()).map(MatchResult::group)
                .filter(number -> number.replaceFirst("^0\\.0*", "").replace(".", "").length() >= 3)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    @ParameterizedTest
    @ValueSource(strings = {"first-truss.pdf", "first-truss-key.pdf"})
    void solutionAndKeyHoldEveryAnswer(String name) throws IOException {
        try (PDDocument document = Loader.loadPDF(file(name))) {
            String text = new PDFTextStripper().getText(document);
            for (String row : List.of("AB 24 tension", "BC 16 tension", "AD \u221230 compression", "DE \u221220 compression",
                    "BD \u221210 compression", "BE 18 tension", "BF 0 no force")) {
                assertTrue(text.replaceAll("\\s+", " ").contains(row), row);
            }
        }
    }

    @Test
    void theKeyHoldsNoWorking() throws IOException {
        String key = new String(file("first-truss-key.html"), StandardCharsets.UTF_8);
        assertFalse(key.contains("Take moments") || key.contains("shed.solve()") || key.contains("hoist hangs"));
    }

    @Test
    void parametersAreSetShownAndRecorded() throws IOException {
        Path notebook = Files.writeString(folder.resolve("hanger.ipynb"), HANGER);
        Ran ran = kingpost("run", notebook.toString(), "-o", folder.toString(), "--set", "P=15 kN", "--set", "f_d=200MPa");
        assertEquals(0, ran.status(), ran.errors());
        String page = Jsoup.parse(new String(file("hanger.html"), StandardCharsets.UTF_8)).text();
        assertTrue(page.contains("P is set to 15 kN for this run; the notebook says 12 kN."), page);
        assertTrue(page.contains("f_d is set to 200 MPa for this run; the notebook says 165 MPa."), page);
        assertTrue(page.contains("AC is 12.5 kN"), page);
        assertEquals(1, page.split("allowable stress", -1).length - 2, "the line stands once, beside its source");
        Notebook executed = NotebookReader.read(folder.resolve("hanger-executed.ipynb"));
        assertEquals(Map.of("P", "15 kN", "f_d", "200MPa"),
                Trees.map(Trees.map(executed.metadata(), "kingpost"), "parameters"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"P=15 m", "f_d=3 kN", "Q=1"})
    void aParameterThatCannotBeIsOneClearError(String setting) throws IOException {
        Path notebook = Files.writeString(folder.resolve("hanger.ipynb"), HANGER);
        Ran ran = kingpost("run", notebook.toString(), "-o", folder.resolve("none").toString(), "--set", setting);
        assertEquals(2, ran.status());
        assertEquals(1, ran.errors().lines().count(), ran.errors());
        assertTrue(ran.errors().startsWith("Parameter " + setting.replaceFirst("=.*", "") + ": "), ran.errors());
    }

    @Test
    void aRowThatCannotBeDoesNotStopTheOthers() throws IOException {
        Path notebook = Files.writeString(folder.resolve("hanger.ipynb"), HANGER);
        Path rows = Files.writeString(folder.resolve("rows.csv"), "name,P,f_d\nlight,6kN,\nwrong,6m,\nheavy,24 kN,200 MPa\n");
        Ran ran = kingpost("run", notebook.toString(), "-o", folder.resolve("rows").toString(), "--rows", rows.toString(), "--to",
                "md");
        assertEquals(1, ran.status(), ran.errors());
        assertTrue(Files.readString(folder.resolve("rows/hanger-light.md")).contains("AC is 5 kN"));
        assertTrue(Files.readString(folder.resolve("rows/hanger-heavy.md")).contains("AC is 20 kN"));
        assertFalse(Files.exists(folder.resolve("rows/hanger-wrong.md")));
        List<String> summary = Files.readAllLines(folder.resolve("rows/hanger-rows.csv"));
        assertEquals("row,name,P,f_d,outcome,seconds,files,problem", summary.get(0));
        assertTrue(summary.get(1).startsWith("1,light,6kN,,made,"), summary.get(1));
        assertTrue(summary.get(2).startsWith("2,wrong,6m,,failed,") && summary.get(2).contains("Parameter P:"), summary.get(2));
        assertTrue(ran.out().contains("2 of 3 rows made; 1 failed."), ran.out());
    }

    /** A load in the middle of two bars that fall 3 in 4; by hand, each carries half of it over the sine, (P/2)/(3/5). */
    private static final String HANGER = """
            {"cells": [
             {"cell_type": "code", "id": "a", "metadata": {"tags": ["parameters"]}, "outputs": [], "execution_count": null,
              "source": "var P = kN(12);\\nint n = 3;\\ngiven(\\"f_d\\", MPa(165), \\"allowable stress\\")"},
             {"cell_type": "code", "id": "b", "metadata": {}, "outputs": [], "execution_count": null,
              "source": "var s = Truss.named(\\"Hanger\\").units(m, kN).joint(\\"A\\", 0, 0).joint(\\"B\\", 6, 0).joint(\\"C\\", 3, -2.25).members(\\"AC BC AB\\").pin(\\"A\\").roller(\\"B\\").load(\\"C\\", P, DOWN).build().solve();\\nSystem.out.println(\\"AC is \\" + s.force(\\"AC\\"));"}],
             "metadata": {"kernelspec": {"name": "kingpost", "language": "java", "display_name": "Kingpost"}},
             "nbformat": 4, "nbformat_minor": 5}
            """;

    private static void html(String markup, List<String> words) {
        for (Element element : Jsoup.parse(markup).getAllElements()) {
            for (Attribute attribute : element.attributes()) {
                String value = attribute.getValue();
                if (value.startsWith("data:image/svg+xml;base64,")) {
                    html(new String(Base64.getDecoder().decode(value.substring(26)), StandardCharsets.UTF_8), words);
                } else if (!GEOMETRY.contains(attribute.getKey().toLowerCase(java.util.Locale.ROOT))) {
                    words.add(value);
                }
            }
            element.childNodes().forEach(node -> {
                if (node instanceof TextNode text) {
                    words.add(text.getWholeText());
                } else if (node instanceof Comment comment) {
                    words.add(comment.getData());
                } else if (node instanceof DataNode data && !element.normalName().equals("style")) {
                    words.add(data.getWholeData());
                }
            });
        }
    }

    private static void markdown(String text, List<String> words, List<String> everything) {
        Matcher data = Pattern.compile("data:image/svg\\+xml;base64,([A-Za-z0-9+/=]+)").matcher(text);
        while (data.find()) {
            String svg = new String(Base64.getDecoder().decode(data.group(1)), StandardCharsets.UTF_8);
            everything.add(svg);
            html(svg, words);
        }
        words.add(text.replaceAll("data:image/[a-z+]+;base64,[A-Za-z0-9+/=]+", ""));
    }

    /** Texts that draw are looked through for numbers with units only, as their places are numbers too. */
    private static void json(Object tree, List<String> words, List<String> everything) {
        if (tree instanceof Map<?, ?> map) {
            map.forEach((key, value) -> {
                Object joined = value instanceof List<?> lines && lines.stream().allMatch(String.class::isInstance)
                        ? String.join("", lines.stream().map(String.class::cast).toList()) : value;
                if (joined instanceof String text && !key.equals("image/png")) {
                    everything.add(text);
                    if (text.contains("<svg") || text.startsWith("<")) {
                        html(text, words);
                    } else if (text.contains("data:image/svg")) {
                        markdown(text, words, everything);
                    } else if (!key.equals("text/latex")) {
                        words.add(text);
                    }
                } else if (!(joined instanceof String)) {
                    json(joined, words, everything);
                }
            });
        } else if (tree instanceof List<?> list) {
            list.forEach(item -> json(item, words, everything));
        } else if (tree instanceof Number number) {
            words.add(String.valueOf(number));
        }
    }

    private static void pdf(byte[] bytes, List<String> words, List<String> everything) throws IOException {
        try (PDDocument document = Loader.loadPDF(bytes)) {
            words.add(new PDFTextStripper().getText(document));
            for (var key : document.getDocument().getXrefTable().keySet()) {
                texts(document.getDocument().getObjectFromPool(key).getObject(), words, everything);
            }
        }
    }

    private static void texts(COSBase base, List<String> words, List<String> everything) throws IOException {
        if (base instanceof COSString string) {
            words.add(string.getString());
        } else if (base instanceof COSArray array) {
            for (COSBase item : array) {
                texts(item instanceof COSObject ? null : item, words, everything);
            }
        } else if (base instanceof COSDictionary dictionary) {
            for (COSBase value : dictionary.getValues()) {
                texts(value instanceof COSObject ? null : value, words, everything);
            }
            if (base instanceof COSStream stream) {
                try (var in = stream.createInputStream(); var out = new ByteArrayOutputStream()) {
                    in.transferTo(out);
                    everything.add(out.toString(StandardCharsets.ISO_8859_1));
                }
            }
        }
    }
}
