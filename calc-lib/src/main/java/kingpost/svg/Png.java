package kingpost.svg;

import com.github.weisj.jsvg.SVGDocument;
import com.github.weisj.jsvg.parser.LoaderContext;
import com.github.weisj.jsvg.parser.SVGLoader;
import com.github.weisj.jsvg.renderer.NullPlatformSupport;
import com.github.weisj.jsvg.view.ViewBox;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import javax.imageio.ImageIO;

/** Draws a picture as dots, for pages that do not draw SVG. Needs no window system. */
public final class Png {

    private static final int LARGEST_SIDE = 20_000;

    private Png() {
    }

    /**
     * {@code svg} as the content of a PNG file, {@code scale} dots for each user unit.
     *
     * @throws IllegalArgumentException when a side would have no dots, or more than 20,000
     */
    public static byte[] of(Svg svg, double scale) {
        int width = dots(svg.view().width() * scale);
        int height = dots(svg.view().height() * scale);
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_ARGB);
        Graphics2D graphics = image.createGraphics();
        try {
            graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
            graphics.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
            load(svg).renderWithPlatform(NullPlatformSupport.INSTANCE, graphics, new ViewBox(0, 0, width, height));
        } finally {
            graphics.dispose();
        }
        return encode(image);
    }

    /** {@link #of} as base64 text, as messages carry it. */
    public static String base64(Svg svg, double scale) {
        return Base64.getEncoder().encodeToString(of(svg, scale));
    }

    private static int dots(double side) {
        int dots = (int) Math.ceil(side);
        if (dots < 1 || dots > LARGEST_SIDE) {
            throw new IllegalArgumentException("a picture with a side of " + side + " dots");
        }
        return dots;
    }

    private static SVGDocument load(Svg svg) {
        ByteArrayInputStream text = new ByteArrayInputStream(svg.toText().getBytes(StandardCharsets.UTF_8));
        SVGDocument document = new SVGLoader().load(text, null, LoaderContext.createDefault());
        if (document == null) {
            throw new IllegalStateException("the picture \"" + svg.title() + "\" could not be read back");
        }
        return document;
    }

    private static byte[] encode(BufferedImage image) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try {
            ImageIO.write(image, "png", bytes);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return bytes.toByteArray();
    }
}
