package kingpost.kernel.print;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.xml.sax.InputSource;

/** The PDF is read back with PDFBox's own reader, which did not lay it out. */
class PrintedPageTest {

    private static final String FIGURE = "<figure><svg width=\"400\" height=\"700\" viewBox=\"0 0 400 700\"><title>T</title>"
            + "<desc>D</desc><line x1=\"0\" y1=\"0\" x2=\"400\" y2=\"700\" stroke=\"#000\"/><text x=\"200\" y=\"300\" "
            + "font-size=\"14\" text-anchor=\"middle\">FIGURE<tspan dy=\"3.5\" font-size=\"9.8\">AB</tspan></text></svg></figure>";
    private static final String BODY = "<h1>First</h1><p>The stress \u03c3 is \u221230 kN \u2264 5 m\u00b2.</p><h2>Second</h2>"
            + FIGURE + FIGURE + "<h2>Third</h2><p><math><msub><mi>F</mi><mtext>AB</mtext></msub><mo>=</mo><mrow>"
            + "<mo form=\"prefix\">\u2212</mo><mn>24</mn></mrow></math></p>";

    private static byte[] pdf(String body, Paper paper) {
        try {
            Document page = DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new InputSource(new StringReader(
                    "<html lang=\"en\"><head><title>Page</title></head><body>" + body + "</body></html>")));
            return PrintedPage.of(page, paper, new PrintedPage.Edges("HEAD LINE", "SIDE LINE", "FOOT LINE"));
        } catch (Exception e) {
            throw new IllegalStateException(e);
        }
    }

    private static String text(byte[] pdf, int page) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            PDFTextStripper stripper = new PDFTextStripper();
            stripper.setStartPage(page);
            stripper.setEndPage(page);
            return stripper.getText(document);
        }
    }

    @Test
    void eachPageHasItsHeadFootAndNumber() throws IOException {
        byte[] pdf = pdf(BODY, Paper.A4);
        for (int page = 1; page <= 2; page++) {
            String text = text(pdf, page);
            assertTrue(text.contains("HEAD LINE") && text.contains("SIDE LINE") && text.contains("FOOT LINE"), text);
            assertTrue(text.contains("Page " + page + " of"), text);
        }
    }

    @Test
    void wordsGreekMinusAndFiguresAreText() throws IOException {
        String text = text(pdf(BODY, Paper.A4), 1);
        assertTrue(text.contains("The stress \u03c3 is \u221230 kN \u2264 5 m\u00b2."), text);
        assertTrue(text.contains("FIGURE"), text);
        String last = text(pdf("<p><math><msub><mi>F</mi><mtext>AB</mtext></msub><mo>=</mo><mo form=\"prefix\">\u2212</mo>"
                + "<mn>24</mn></math></p>", Paper.A4), 1);
        assertTrue(last.contains("F_AB = \u221224"), last);
    }

    /** Source: ISO 216; ANSI/ASME Y14.1; 72 points an inch. */
    @Test
    void paperHasItsSize() throws IOException {
        try (PDDocument a4 = Loader.loadPDF(pdf(BODY, Paper.A4)); PDDocument letter = Loader.loadPDF(pdf(BODY, Paper.LETTER))) {
            PDRectangle box = a4.getPage(0).getMediaBox();
            assertEquals(210 / 25.4 * 72, box.getWidth(), 0.1);
            assertEquals(297 / 25.4 * 72, box.getHeight(), 0.1);
            assertEquals(612, letter.getPage(0).getMediaBox().getWidth(), 0.1);
            assertEquals(792, letter.getPage(0).getMediaBox().getHeight(), 0.1);
        }
    }

    /** Two figures of 560 pixels on paper and the words above them do not fit one page: none is cut in two. */
    @Test
    void aFigureIsOnOnePageOnly() throws IOException {
        byte[] pdf = pdf(BODY, Paper.LETTER);
        int pages;
        try (PDDocument document = Loader.loadPDF(pdf)) {
            pages = document.getNumberOfPages();
        }
        List<Integer> figures = new ArrayList<>();
        for (int page = 1; page <= pages; page++) {
            figures.add(text(pdf, page).split("FIGURE", -1).length - 1);
        }
        assertEquals(List.of(1, 1), figures.subList(0, 2));
        try (PDDocument document = Loader.loadPDF(pdf)) {
            assertEquals(1, drawings(document.getPage(0)));
            assertEquals(1, drawings(document.getPage(1)) - (pages == 2 ? 1 : 0));
        }
    }

    private static int drawings(PDPage page) throws IOException {
        int count = 0;
        PDResources resources = page.getResources();
        for (COSName name : resources.getXObjectNames()) {
            count += resources.getXObject(name) instanceof PDFormXObject ? 1 : 0;
        }
        return count;
    }

    @Test
    void isTaggedHasBookmarksAndEmbedsItsFonts() throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf(BODY, Paper.A4))) {
            assertTrue(document.getDocumentCatalog().getMarkInfo().isMarked());
            assertNotNull(document.getDocumentCatalog().getStructureTreeRoot());
            assertEquals("en", document.getDocumentCatalog().getLanguage());
            assertEquals("First", document.getDocumentCatalog().getDocumentOutline().getFirstChild().getTitle());
            assertEquals("Second",
                    document.getDocumentCatalog().getDocumentOutline().getFirstChild().getFirstChild().getTitle());
            for (COSName name : document.getPage(0).getResources().getFontNames()) {
                PDFont font = document.getPage(0).getResources().getFont(name);
                assertTrue(font.isEmbedded(), font::getName);
            }
        }
    }

    @Test
    void theSamePageGivesTheSameBytes() {
        assertArrayEquals(pdf(BODY, Paper.A4), pdf(BODY, Paper.A4));
    }

    @Test
    void nothingIsFetched() throws IOException {
        assertTrue(text(pdf("<p>before</p><img src=\"http://127.0.0.1:9/x.png\" alt=\"x\"/><p>after</p>", Paper.A4), 1)
                .contains("after"));
    }

    /** Source: ISO 32000-1, 14.9.4, for the text that stands for marked content. */
    @Test
    void aFractionIsCopiedWithItsStroke() throws IOException {
        byte[] pdf = pdf("<p><math><mfrac><mn>4</mn><mn>5</mn></mfrac><mo>\u2062</mo><msub><mi>F</mi><mtext>AD</mtext></msub>"
                + "</math></p>", Paper.A4);
        String text = text(pdf, 1);
        assertTrue(text.contains("(4/5) F_AD"), text);
    }

    /** A heading in one cell, the code of the next and its table belong together, though each is in a box of its own. */
    @Test
    void aHeadingStaysWithWhatItLeadsTo() throws IOException {
        String filler = "<section class=\"kp-prose\"><p>" + "filler<br/>".repeat(40) + "</p><h2>HEADING</h2></section>";
        String rows = "<tr><td>ROW</td></tr>".repeat(8);
        String cell = "<section class=\"kp-cell\"><div class=\"kp-source\"><pre><code>CODE</code></pre></div>"
                + "<div class=\"kp-output\"><div class=\"kp-value\"><table><tbody>" + rows + "</tbody></table></div></div></section>";
        byte[] pdf = pdf("<main>" + filler + cell + "</main>", Paper.A4);
        String second = text(pdf, 2);
        assertTrue(second.contains("HEADING") && second.contains("CODE") && second.split("ROW", -1).length == 9, second);
    }

    /** Of forty rows some stand on each page, never a head alone; the head is said on each. */
    @Test
    void aLongTableBreaksBetweenRows() throws IOException {
        String table = "<table><thead><tr><th>HEAD</th></tr></thead><tbody>" + "<tr><td>ROW</td></tr>".repeat(40)
                + "</tbody></table>";
        byte[] pdf = pdf("<p>" + "filler<br/>".repeat(20) + "</p>" + table, Paper.A4);
        String first = text(pdf, 1);
        String second = text(pdf, 2);
        assertTrue(first.split("ROW", -1).length > 10 && first.contains("HEAD"), first);
        assertTrue(second.split("ROW", -1).length > 10 && second.contains("HEAD"), second);
    }
}
