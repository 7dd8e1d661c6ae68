package kingpost.kernel.print;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.util.XRLog;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.w3c.dom.Document;

/**
 * An HTML page as a PDF: tagged, with bookmarks, a running head and page numbers, all fonts embedded. Figures, formulas
 * and rows of tables stay whole. The same page gives the same bytes.
 */
public final class PrintedPage {

    private static final double FIGURE_SCALE = 0.8;
    private static final double TEXT_SIZE = 10.5 * 96 / 72;

    /** The libraries' own remarks are of no use to who reads the page; held here, or they would come back. */
    private static final List<Logger> QUIET = List.of(Logger.getLogger("org.apache.pdfbox"),
            Logger.getLogger("org.apache.fontbox"));

    static {
        XRLog.setLoggingEnabled(false);
        QUIET.forEach(logger -> logger.setLevel(Level.OFF));
    }

    private PrintedPage() {
    }

    /**
     * What stands at the edge of every page.
     *
     * @param head     above the text, left
     * @param headside above the text, right
     * @param foot     below the text, left; page numbers stand at the right
     */
    public record Edges(String head, String headside, String foot) { }

    /** The PDF of {@code page}, which is changed on the way. */
    public static byte[] of(Document page, Paper paper, Edges edges) {
        MathDrawing formulas = new MathDrawing(paper.textWidth() / TEXT_SIZE);
        FigureDrawing figures = new FigureDrawing(paper.textWidth(), FIGURE_SCALE);
        new PageTree(page).prepare(styleSheet().replace("PAPER", paper.size()), edges, formulas::place, figures::place);
        PdfRendererBuilder builder = new PdfRendererBuilder().withW3cDocument(page, null).usePdfUaAccessibility(true)
                .withProducer("Kingpost").useSVGDrawer(figures).useMathMLDrawer(formulas)
                .useExternalResourceAccessControl((uri, type) -> uri.startsWith("data:"),
                        com.openhtmltopdf.outputdevice.helper.ExternalResourceControlPriority.RUN_BEFORE_RESOLVING_URI);
        Arrays.stream(PrintFont.values()).forEach(font -> builder.useFont(font::open, font.family(),
                font.isBold() ? 700 : 400, font.isItalic() ? FontStyle.ITALIC : FontStyle.NORMAL, true));
        try (PdfBoxRenderer renderer = builder.buildPdfRenderer()) {
            renderer.layout();
            return bytes(renderer.createPDFKeepOpen());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Without the time of day, which would make each run's file another one. */
    private static byte[] bytes(PDDocument document) throws IOException {
        document.getDocumentInformation().getCOSObject().removeItem(COSName.CREATION_DATE);
        document.setDocumentId(1L);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        document.save(out);
        return out.toByteArray();
    }

    private static String styleSheet() {
        try (InputStream in = PrintedPage.class.getResourceAsStream("print.css")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
