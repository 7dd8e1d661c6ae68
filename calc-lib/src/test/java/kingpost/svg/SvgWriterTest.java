package kingpost.svg;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import kingpost.svg.Element.Anchor;
import kingpost.svg.Element.Circle;
import kingpost.svg.Element.Group;
import kingpost.svg.Element.Line;
import kingpost.svg.Element.Path;
import kingpost.svg.Element.Polygon;
import kingpost.svg.Element.Polyline;
import kingpost.svg.Element.Rect;
import kingpost.svg.Element.Text;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Document;
import org.xml.sax.InputSource;

class SvgWriterTest {

    static final Style THIN = Style.stroke("#1a1a1a", 1.5);
    static final Box VIEW = new Box(0, 0, 320, 200);

    static Svg picture(Element... elements) {
        return Svg.onPaper(VIEW, "A picture", "What there is to see.", List.of(elements)).withIdPrefix("p1");
    }

    static Document read(Svg svg) {
        try {
            return DocumentBuilderFactory.newDefaultNSInstance().newDocumentBuilder()
                    .parse(new InputSource(new StringReader(svg.toText())));
        } catch (Exception e) {
            throw new AssertionError(svg.toText(), e);
        }
    }

    /** One of everything, as a person would look at it. */
    static Svg sampler() {
        Style words = Style.text("#1a1a1a", 14);
        return picture(
                new Line(Point.of(20, 30), Point.of(120, 30), THIN),
                new Line(Point.of(20, 50), Point.of(120, 50), Style.stroke("#9b2226", 3).dashed(8, 4).rounded()),
                new Polyline(List.of(Point.of(140, 50), Point.of(160, 30), Point.of(180, 50)), THIN),
                new Polygon(List.of(Point.of(200, 50), Point.of(220, 30), Point.of(240, 50)), THIN.filled("#dddddd")),
                new Circle(Point.of(280, 40), 10, THIN.filled("#ffffff")),
                new Rect(new Box(20, 70, 60, 30), 4, THIN),
                new Path(Outline.from(Point.of(100, 100)).arcTo(Point.of(140, 100), 20, false, true)
                        .lineTo(Point.of(150, 80)).curveTo(Point.of(160, 60), Point.of(170, 120), Point.of(180, 90)),
                        THIN),
                Arrow.of(Point.of(200, 100), Point.of(280, 75), 12, "#005f73", 2),
                Arrow.of(Point.of(200, 115), Point.of(280, 115), 12, "#005f73", 2, Style.none().dashed(4, 3)),
                Text.of(Point.of(20, 140), Anchor.START, Span.indexed("F", "AB"), words),
                Text.of(Point.of(60, 140), Anchor.START,
                        List.of(Span.of("q = 3 kN/m"), Span.sup("2"), Span.of(", x"), Span.sub("1"), Span.of(" = 2")),
                        words),
                Text.of(Point.of(315, 140), Anchor.END, "\u22125 kN", words.bold()),
                new Line(Point.of(20, 170), Point.of(300, 170), THIN),
                Text.of(Point.of(160, 175), Anchor.MIDDLE, "on a line", words.halo("#ffffff", 4)),
                Text.of(Point.of(60, 190), Anchor.MIDDLE, "turned", words.italic()).turned(-20),
                Group.of(List.of(new Circle(Point.of(280, 185), 4, Style.none())), Style.fill("#9b2226"))
                        .titled("joint A"));
    }

    @Test
    void writesTheSamplerAsKept() throws Exception {
        String kept = new String(SvgWriterTest.class.getResourceAsStream("sampler.svg").readAllBytes(),
                java.nio.charset.StandardCharsets.UTF_8);
        assertEquals(kept, sampler().toText());
    }

    @Test
    void tiesTitleAndDescriptionToThePicture() {
        org.w3c.dom.Element root = read(picture()).getDocumentElement();
        assertEquals("img", root.getAttribute("role"));
        assertEquals("p1-t p1-d", root.getAttribute("aria-labelledby"));
        org.w3c.dom.Element title = (org.w3c.dom.Element) root.getElementsByTagName("title").item(0);
        assertEquals("p1-t", title.getAttribute("id"));
        assertEquals("A picture", title.getTextContent());
    }

    @Test
    void differentPicturesGetDifferentIds() {
        Svg one = Svg.onPaper(VIEW, "One", "", List.of());
        Svg two = Svg.onPaper(VIEW, "Two", "", List.of());
        String first = read(one).getDocumentElement().getAttribute("aria-labelledby");
        assertNotEquals(first, read(two).getDocumentElement().getAttribute("aria-labelledby"));
        assertEquals(first, read(one).getDocumentElement().getAttribute("aria-labelledby"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"<script>alert(1)</script>", "\"><script>", "' onload='x", "]]>", "&lt;b&gt;", "<!--",
            "</svg><b>", "\u0000\u0007\u001b[31m", "\ud800", "\ufffe", "a\u202eb\u2066c", "<![CDATA[x"})
    void userTextCannotBecomeMarkup(String text) {
        Svg svg = new Svg(VIEW, text, text, List.of(Group.of(
                Text.of(Point.of(1, 2), Anchor.START, List.of(Span.of(text), Span.sub(text)),
                        Style.text("#000", 10))).titled(text)), java.util.Optional.empty());
        Document document = read(svg);
        List<String> names = new ArrayList<>();
        var all = document.getElementsByTagName("*");
        for (int i = 0; i < all.getLength(); i++) {
            names.add(all.item(i).getNodeName());
        }
        names.removeAll(List.of("svg", "title", "desc", "g", "text", "tspan"));
        assertEquals(List.of(), names);
        assertFalse(svg.toText().contains("<script"));
    }

    @Test
    void keepsLettersOfAnyScript() {
        Svg svg = picture(Text.of(Point.of(1, 2), Anchor.START, "Träger \u6881 \ud83d\ude00", Style.text("#000", 10)));
        assertEquals("Träger \u6881 \ud83d\ude00", read(svg).getElementsByTagName("text").item(0).getTextContent());
    }

    @Test
    void numbersAreShort() {
        assertEquals("0", Numbers.text(-0.001));
        assertEquals("12.5", Numbers.text(12.5000001));
        assertEquals("100", Numbers.text(100));
        assertEquals("0.33", Numbers.text(1 / 3.0));
        assertEquals("12345678", Numbers.text(1.2345678e7));
        assertThrows(IllegalArgumentException.class, () -> Numbers.text(Double.NaN));
    }

    @Test
    void writesNothingThatRunsOrFetches() {
        String text = sampler().toText();
        for (String word : List.of("<style", "<script", "href", "url(", "@import", "onload")) {
            assertFalse(text.contains(word), word);
        }
        assertTrue(text.contains("sans-serif"));
    }

    @Test
    void refusesAColourThatIsNone() {
        assertThrows(IllegalArgumentException.class, () -> Style.fill("red\" onload=\"x"));
        assertThrows(IllegalArgumentException.class, () -> Style.fill("url(#x)"));
    }
}
