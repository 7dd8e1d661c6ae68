package kingpost.kernel.print;

import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.GraphicsEnvironment;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.GlyphData;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/**
 * The fonts of the printed page. They are in the jar, so that a page looks the same wherever it is made; figures are
 * measured for the sans-serif one, which also has the signs that the others lack.
 */
enum PrintFont {
    SERIF("Liberation Serif", "LiberationSerif-Regular", false, false),
    SERIF_ITALIC("Liberation Serif", "LiberationSerif-Italic", false, true),
    SERIF_BOLD("Liberation Serif", "LiberationSerif-Bold", true, false),
    SERIF_BOLD_ITALIC("Liberation Serif", "LiberationSerif-BoldItalic", true, true),
    SANS("DejaVu Sans", "DejaVuSans", false, false),
    SANS_BOLD("DejaVu Sans", "DejaVuSans-Bold", true, false),
    MONO("DejaVu Sans Mono", "DejaVuSansMono", false, false);

    private final String family;
    private final String file;
    private final boolean bold;
    private final boolean italic;
    private Metrics metrics;

    PrintFont(String family, String file, boolean bold, boolean italic) {
        this.family = family;
        this.file = file;
        this.bold = bold;
        this.italic = italic;
    }

    String family() {
        return family;
    }

    boolean isBold() {
        return bold;
    }

    boolean isItalic() {
        return italic;
    }

    /** The font's file, from its beginning. */
    InputStream open() {
        return PrintFont.class.getResourceAsStream("fonts/" + file + ".ttf");
    }

    /** The font as drawing knows it, {@code size} high. */
    Font drawn(double size) {
        metrics();
        return new Font(family, (bold ? Font.BOLD : 0) | (italic ? Font.ITALIC : 0), 1).deriveFont((float) size);
    }

    /** Whether the font has this character. */
    boolean has(int codePoint) {
        return metrics().letters.getGlyphId(codePoint) != 0;
    }

    /** Width of {@code text} in font sizes; a character that is not there has none. */
    double width(String text) {
        return text.codePoints().mapToDouble(metrics()::width).sum();
    }

    /** The box around the character's ink, in font sizes, y up from the baseline. */
    Rectangle2D ink(int codePoint) {
        return metrics().ink(codePoint);
    }

    /** The font that sets {@code codePoint} where this one is asked for. */
    PrintFont with(int codePoint) {
        return has(codePoint) ? this : bold && SANS_BOLD.has(codePoint) ? SANS_BOLD : SANS;
    }

    private synchronized Metrics metrics() {
        if (metrics == null) {
            metrics = read();
        }
        return metrics;
    }

    private Metrics read() {
        try (InputStream forDrawing = open(); InputStream forMeasuring = open()) {
            GraphicsEnvironment.getLocalGraphicsEnvironment().registerFont(Font.createFont(Font.TRUETYPE_FONT, forDrawing));
            TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(forMeasuring));
            return new Metrics(font, font.getUnicodeCmapLookup());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (FontFormatException e) {
            throw new IllegalStateException("the font " + file + " in the jar cannot be read", e);
        }
    }

    private record Metrics(TrueTypeFont font, CmapLookup letters) {
        double width(int codePoint) {
            try {
                int glyph = letters.getGlyphId(codePoint);
                return glyph == 0 ? 0 : (double) font.getAdvanceWidth(glyph) / font.getUnitsPerEm();
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }

        Rectangle2D ink(int codePoint) {
            try {
                GlyphData glyph = font.getGlyph().getGlyph(letters.getGlyphId(codePoint));
                double em = font.getUnitsPerEm();
                return glyph == null ? new Rectangle2D.Double() : new Rectangle2D.Double(glyph.getXMinimum() / em,
                        glyph.getYMinimum() / em, (glyph.getXMaximum() - glyph.getXMinimum()) / em,
                        (glyph.getYMaximum() - glyph.getYMinimum()) / em);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    }
}
