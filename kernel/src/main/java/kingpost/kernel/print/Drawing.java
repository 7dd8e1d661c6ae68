package kingpost.kernel.print;

import com.openhtmltopdf.css.sheet.FontFaceRule;
import com.openhtmltopdf.css.style.CssContext;
import com.openhtmltopdf.extend.OutputDevice;
import com.openhtmltopdf.extend.SVGDrawer;
import com.openhtmltopdf.layout.SharedContext;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder;
import com.openhtmltopdf.render.Box;
import com.openhtmltopdf.render.RenderingContext;
import java.awt.Graphics2D;
import java.io.File;
import java.util.List;
import org.w3c.dom.Element;

/** Draws elements of one kind, each into the room that the page has given it. */
abstract class Drawing implements SVGDrawer {

    /** Whole pixels that are added, as the library cuts off broken ones. */
    private static final int SPARE = 2;

    /** Draws the element {@code width} wide and {@code height} high, in pixels, its upper left corner at the origin. */
    abstract void draw(Element element, Graphics2D graphics, double width, double height);

    /** Pixels that are set aside for a length. */
    static int canvas(double length) {
        return (int) Math.ceil(length) + SPARE;
    }

    @Override
    public final SVGImage buildSVGImage(Element element, Box box, CssContext context, double width, double height,
                                        double dotsPerPixel) {
        return new SVGImage() {
            @Override
            public int getIntrinsicWidth() {
                return (int) Math.round(width);
            }

            @Override
            public int getIntrinsicHeight() {
                return (int) Math.round(height);
            }

            @Override
            public void drawSVG(OutputDevice device, RenderingContext rendering, double x, double y) {
                double wide = width / dotsPerPixel;
                double high = height / dotsPerPixel;
                device.drawWithGraphics((float) x, (float) y, canvas(wide), canvas(high),
                        graphics -> draw(element, graphics, wide, high));
            }
        };
    }

    @Override
    public final void importFontFaceRules(List<FontFaceRule> fontFaces, SharedContext shared) {
        // the page's fonts are those of PrintFont
    }

    @Override
    public final void addFontFile(File file, String family, Integer weight, BaseRendererBuilder.FontStyle style) {
        // the page's fonts are those of PrintFont
    }

    @Override
    public final void close() {
        // holds nothing
    }
}
