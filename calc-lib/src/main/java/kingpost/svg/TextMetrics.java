package kingpost.svg;

import java.util.List;
import kingpost.svg.Element.Text;

/**
 * How much room text takes, near enough to place labels. The reader's font is not known; widths are those of a wide
 * sans-serif (DejaVu Sans, measured), so that a label drawn in a narrower one is never larger than its box.
 */
public final class TextMetrics {

    /** Height of capitals above the baseline, in font sizes. */
    public static final double ASCENT = 0.76;
    /** Depth of g and y below the baseline, in font sizes. */
    public static final double DESCENT = 0.24;

    private static final double SMALL = 0.7;
    private static final double BOLD = 1.1;
    private static final int OTHER = 640;
    private static final int FULL_WIDTH = 1000;

    /** Thousandths of the font size for the characters from space to tilde. */
    private static final int[] WIDTHS = {
        318, 401, 460, 838, 636, 950, 780, 275, 390, 390, 500, 838, 318, 361, 318, 337,
        636, 636, 636, 636, 636, 636, 636, 636, 636, 636, 337, 337, 838, 838, 838, 531,
        1000, 684, 686, 698, 770, 632, 575, 775, 752, 295, 295, 656, 557, 863, 748, 787,
        603, 787, 695, 635, 611, 732, 684, 989, 685, 611, 685, 390, 337, 390, 838, 500,
        500, 613, 635, 550, 635, 615, 352, 635, 634, 278, 278, 579, 278, 974, 634, 612,
        635, 635, 411, 521, 392, 634, 592, 818, 592, 592, 525, 636, 337, 636, 838};

    private TextMetrics() {
    }

    /** Width of {@code text} set {@code size} user units high. */
    public static double width(String text, double size) {
        return text.codePoints().map(TextMetrics::thousandths).sum() * size / 1000;
    }

    /** Width of {@code spans}, subscripts and superscripts counted at their smaller size. */
    public static double width(List<Span> spans, double size) {
        return spans.stream().mapToDouble(span -> width(span.text(), size * scale(span.level()))).sum();
    }

    /** The upright box around {@code text}, which must carry its font size in its own style. */
    public static Box box(Text text) {
        String given = text.style().attributes().get("font-size");
        if (given == null) {
            throw new IllegalArgumentException("text without a font size of its own: " + text.spans());
        }
        double size = Double.parseDouble(given);
        boolean bold = "bold".equals(text.style().attributes().get("font-weight"));
        double width = width(text.spans(), size) * (bold ? BOLD : 1);
        double before = switch (text.anchor()) {
            case START -> 0;
            case MIDDLE -> width / 2;
            case END -> width;
        };
        double above = size * (ASCENT + (has(text, Span.Level.SUPERSCRIPT) ? 0.12 : 0));
        double below = size * (DESCENT + (has(text, Span.Level.SUBSCRIPT) ? 0.1 : 0));
        return turned(text, new Box(text.at().x() - before, text.at().y() - above, width, above + below));
    }

    /** How far below the line a level stands, in font sizes. */
    static double drop(Span.Level level) {
        return switch (level) {
            case LINE -> 0;
            case SUBSCRIPT -> 0.25;
            case SUPERSCRIPT -> -0.38;
        };
    }

    static double scale(Span.Level level) {
        return level == Span.Level.LINE ? 1 : SMALL;
    }

    private static boolean has(Text text, Span.Level level) {
        return text.spans().stream().anyMatch(span -> span.level() == level);
    }

    private static Box turned(Text text, Box box) {
        if (text.turned() == 0) {
            return box;
        }
        Box around = null;
        for (Point corner : List.of(new Point(box.left(), box.top()), new Point(box.right(), box.top()),
                new Point(box.right(), box.bottom()), new Point(box.left(), box.bottom()))) {
            Point moved = text.at().towards(text.at().directionTo(corner) + text.turned(),
                    text.at().distanceTo(corner));
            Box here = Box.around(moved, moved);
            around = around == null ? here : around.union(here);
        }
        return around;
    }

    private static int thousandths(int c) {
        if (c >= ' ' && c <= '~') {
            return WIDTHS[c - ' '];
        }
        return switch (c) {
            case '\u2212', '\u00d7', '\u2264', '\u2265', '\u2192' -> 838;
            case '\u00b7', '\u2032' -> 318;
            case '\u202f', '\u2009' -> 200;
            case '\u00b0' -> 500;
            case '\u00b2', '\u00b3', '\u2074' -> 401;
            default -> c >= 0x1100 && !(c >= 0x1E00 && c <= 0x2DFF) ? FULL_WIDTH : Character.isISOControl(c) ? 0 : OTHER;
        };
    }
}
