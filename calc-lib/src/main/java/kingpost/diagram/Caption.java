package kingpost.diagram;

import java.util.List;
import java.util.stream.Collectors;
import kingpost.svg.Element;
import kingpost.svg.Span;
import kingpost.svg.Style;
import kingpost.svg.TextMetrics;

/**
 * One line of writing and how it looks.
 *
 * @param size font size, px
 * @param bold whether it is bold
 */
record Caption(List<Span> spans, double size, String colour, boolean bold) {

    private static final double BOLD = 1.1;
    /** From the middle of the capitals down to the baseline, in font sizes. */
    private static final double TO_BASELINE = 0.365;

    Caption {
        spans = List.copyOf(spans);
    }

    static Caption of(String text, double size, String colour) {
        return new Caption(List.of(Span.of(text)), size, colour, false);
    }

    static Caption of(List<Span> spans, double size, String colour) {
        return new Caption(spans, size, colour, false);
    }

    Caption inBold() {
        return new Caption(spans, size, colour, true);
    }

    /** What it says, without its form. */
    String text() {
        return spans.stream().map(Span::text).collect(Collectors.joining());
    }

    double width() {
        return TextMetrics.width(spans, size) * (bold ? BOLD : 1);
    }

    double height() {
        return size * (spans.stream().allMatch(s -> s.level() == Span.Level.LINE) ? 1 : 1.2);
    }

    /** Level writing that starts at {@code left}, the middle of its capitals at that height. */
    Element from(Place left) {
        Style style = Style.text(colour, size);
        return Element.Text.of(left.plus(new Place(0, size * TO_BASELINE)).point(), Element.Anchor.START, spans,
                bold ? style.bold() : style);
    }

    /** The writing with the middle of its capitals at {@code centre}, turned counter-clockwise. */
    Element at(Place centre, double degrees) {
        Place base = centre.minus(Place.towards(degrees).left().times(size * TO_BASELINE));
        Style style = Style.text(colour, size);
        return Element.Text.of(base.point(), Element.Anchor.MIDDLE, spans, bold ? style.bold() : style)
                .turned(degrees == 0 ? 0 : -degrees);
    }
}
