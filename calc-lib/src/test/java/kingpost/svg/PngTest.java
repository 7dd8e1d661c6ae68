package kingpost.svg;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.util.Base64;
import java.util.List;
import javax.imageio.ImageIO;
import kingpost.svg.Element.Rect;
import org.junit.jupiter.api.Test;

class PngTest {

    private static BufferedImage draw(Svg svg, double scale) throws Exception {
        return ImageIO.read(new ByteArrayInputStream(Png.of(svg, scale)));
    }

    @Test
    void drawsTheElementsOnWhitePaper() throws Exception {
        Svg svg = SvgWriterTest.picture(new Rect(new Box(100, 50, 100, 100), 0, Style.fill("#9b2226")));
        BufferedImage image = draw(svg, 2);
        assertEquals(640, image.getWidth());
        assertEquals(400, image.getHeight());
        assertEquals(0xff9b2226, image.getRGB(300, 200));
        assertEquals(0xffffffff, image.getRGB(20, 200));
        assertEquals(0, image.getRGB(0, 0) >>> 24, "the sheet's corner is rounded");
    }

    @Test
    void drawsText() throws Exception {
        BufferedImage image = draw(SvgWriterTest.sampler(), 1);
        int dark = 0;
        for (int x = 20; x < 50; x++) {
            for (int y = 125; y < 150; y++) {
                dark += (image.getRGB(x, y) & 0xff) < 0x80 ? 1 : 0;
            }
        }
        assertTrue(dark > 20, "only " + dark + " dark dots where F with its index stands");
    }

    @Test
    void base64IsTheSamePicture() {
        Svg svg = SvgWriterTest.sampler();
        assertArrayEquals(Png.of(svg, 1), Base64.getDecoder().decode(Png.base64(svg, 1)));
    }

    @Test
    void refusesAPictureWithoutDotsOrTooLarge() {
        Svg svg = Svg.onPaper(new Box(0, 0, 10, 10), "", "", List.of());
        assertThrows(IllegalArgumentException.class, () -> Png.of(svg, 0));
        assertThrows(IllegalArgumentException.class, () -> Png.of(svg, 1e9));
    }
}
