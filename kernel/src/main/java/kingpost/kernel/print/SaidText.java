package kingpost.kernel.print;

import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2D;
import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2DPaintApplier;
import java.awt.Graphics2D;
import java.awt.Paint;
import java.awt.geom.AffineTransform;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HexFormat;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.graphics.shading.PDShading;
import org.apache.pdfbox.pdmodel.graphics.state.RenderingMode;
import org.apache.pdfbox.util.Matrix;

/**
 * Tells readers of the PDF which text stands for what is drawn: without it a fraction of 4 over 5 would be copied as 45.
 * Readers look for its place at the first and the last letter that is drawn; these are blanks that nobody sees.
 *
 * <p><b>Units</b>: pixels, x right and y down from the upper left corner of the drawing.
 *
 * <p>Source: ISO 32000-1, 14.9.4, replacement text.
 */
final class SaidText {

    private final double size;
    private final double height;
    private PDPageContentStream stream;
    private PDResources resources;
    private PDFont font;

    private SaidText(double size, double height) {
        this.size = size;
        this.height = height;
    }

    /**
     * For drawing on {@code graphics}; on anything but a PDF it does nothing.
     *
     * @param size   of the letters on the line
     * @param height of the drawing
     */
    static SaidText on(Graphics2D graphics, double size, double height) {
        SaidText text = new SaidText(size, height);
        if (graphics instanceof PdfBoxGraphics2D pdf) {
            pdf.setPaintApplier(text.new Listening());
            pdf.setFont(PrintFont.SERIF.drawn(size));
            pdf.drawString(" ", 0, 0);
            text.readFont();
        }
        return text;
    }

    private void readFont() {
        try {
            for (var name : resources.getFontNames()) {
                font = resources.getFont(name);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** What is drawn from now on is copied as {@code words}, which begin at this place on their line. */
    void begin(String words, double left, double line) {
        if (font != null) {
            write("/Span <</ActualText " + hexadecimal(words) + ">> BDC\n");
            blank(left, line);
        }
    }

    /** The end of what was begun, at this place on its line. */
    void end(double right, double line) {
        if (font != null) {
            blank(right, line);
            write("EMC\n");
        }
    }

    private void blank(double x, double line) {
        try {
            stream.beginText();
            stream.setFont(font, (float) size);
            stream.setRenderingMode(RenderingMode.NEITHER);
            stream.setHorizontalScaling(1);
            stream.setTextMatrix(Matrix.getTranslateInstance((float) x, (float) (height - line)));
            stream.showText(" ");
            stream.setHorizontalScaling(100);
            stream.setRenderingMode(RenderingMode.FILL);
            stream.endText();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** As it stands: the library would put the words into the page's resources, where not all readers look for them. */
    @SuppressWarnings("deprecation")
    private void write(String commands) {
        try {
            stream.appendRawCommands(commands.getBytes(StandardCharsets.US_ASCII));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A text as a string of the page's contents: UTF-16 with its mark in front. */
    private static String hexadecimal(String words) {
        return "<" + HexFormat.of().withUpperCase().formatHex(("\ufeff" + words).getBytes(StandardCharsets.UTF_16BE)) + ">";
    }

    /** The library tells where it writes only to who chooses its colours. */
    private final class Listening extends PdfBoxGraphics2DPaintApplier {
        @Override
        public PDShading applyPaint(Paint paint, PDPageContentStream contents, AffineTransform transform, IPaintEnv env)
                throws IOException {
            stream = contents;
            resources = env.getResources();
            return super.applyPaint(paint, contents, transform, env);
        }
    }
}
