package kingpost.svg;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import kingpost.svg.Element.Anchor;
import kingpost.svg.Element.Text;
import org.junit.jupiter.api.Test;

class TextMetricsTest {

    private static final Style TEN = Style.text("#000", 10);

    @Test
    void digitsAreAllAsWide() {
        assertEquals(TextMetrics.width("0123456789", 10), TextMetrics.width("8888888888", 10), 1e-9);
    }

    @Test
    void theBoxFollowsTheAnchor() {
        Box start = TextMetrics.box(Text.of(Point.of(50, 50), Anchor.START, "12.5 kN", TEN));
        Box middle = TextMetrics.box(Text.of(Point.of(50, 50), Anchor.MIDDLE, "12.5 kN", TEN));
        Box end = TextMetrics.box(Text.of(Point.of(50, 50), Anchor.END, "12.5 kN", TEN));
        assertEquals(50, start.left());
        assertEquals(50, middle.middle().x(), 1e-9);
        assertEquals(50, end.right(), 1e-9);
        assertTrue(start.contains(Point.of(60, 47)));
    }

    @Test
    void subscriptsAreNarrowerAndReachLower() {
        Text flat = Text.of(Point.of(0, 0), Anchor.START, "FAB", TEN);
        Text indexed = Text.of(Point.of(0, 0), Anchor.START, Span.indexed("F", "AB"), TEN);
        assertTrue(TextMetrics.box(indexed).width() < TextMetrics.box(flat).width());
        assertTrue(TextMetrics.box(indexed).bottom() > TextMetrics.box(flat).bottom());
    }

    @Test
    void turningByARightAngleSwapsWidthAndHeight() {
        Text flat = Text.of(Point.of(10, 20), Anchor.MIDDLE, "span 12 m", TEN);
        Box before = TextMetrics.box(flat);
        Box after = TextMetrics.box(flat.turned(-90));
        assertEquals(before.width(), after.height(), 1e-9);
        assertEquals(before.height(), after.width(), 1e-9);
        assertEquals(20, after.middle().y(), 1e-9);
    }

    @Test
    void needsTheFontSize() {
        assertThrows(IllegalArgumentException.class,
                () -> TextMetrics.box(Text.of(Point.of(0, 0), Anchor.START, "x", Style.none())));
    }

    @Test
    void boxesOverlapOnlyWhenTheyShareArea() {
        Box box = new Box(0, 0, 10, 10);
        assertTrue(box.overlaps(new Box(9, 9, 5, 5)));
        assertFalse(box.overlaps(new Box(10, 0, 5, 5)));
        assertEquals(new Box(0, 0, 20, 30), box.union(new Box(15, 25, 5, 5)));
    }

    @Test
    void seesWhichLinesCrossABox() {
        Box box = new Box(0, 0, 10, 10);
        assertTrue(box.crosses(Point.of(-5, 5), Point.of(15, 5)));
        assertTrue(box.crosses(Point.of(-5, -5), Point.of(15, 15)));
        assertTrue(box.crosses(Point.of(2, 2), Point.of(3, 3)));
        for (List<Point> line : List.of(List.of(Point.of(-5, 5), Point.of(5, 15.5)),
                List.of(Point.of(12, -5), Point.of(12, 15)), List.of(Point.of(-5, 5), Point.of(-1, 5)))) {
            assertFalse(box.crosses(line.get(0), line.get(1)), line.toString());
        }
    }
}
