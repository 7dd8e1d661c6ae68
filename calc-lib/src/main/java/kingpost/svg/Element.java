package kingpost.svg;

import java.util.List;

/** A part of a picture. */
public sealed interface Element {

    <R> R accept(Visitor<R> visitor);

    /** One method for each kind of element. */
    interface Visitor<R> {
        R group(Group group);

        R line(Line line);

        R polyline(Polyline polyline);

        R polygon(Polygon polygon);

        R circle(Circle circle);

        R rect(Rect rect);

        R path(Path path);

        R text(Text text);
    }

    /**
     * Elements that belong together, in drawing order.
     *
     * @param title what a reader who points at the group is told; empty for nothing
     */
    record Group(List<Element> children, Style style, String title) implements Element {
        public Group {
            children = List.copyOf(children);
        }

        public static Group of(Element... children) {
            return new Group(List.of(children), Style.none(), "");
        }

        public static Group of(List<? extends Element> children, Style style) {
            return new Group(List.copyOf(children), style, "");
        }

        public Group titled(String text) {
            return new Group(children, style, text);
        }

        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.group(this);
        }
    }

    /** A straight line. */
    record Line(Point from, Point to, Style style) implements Element {
        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.line(this);
        }
    }

    /** Straight lines from point to point, not closed. */
    record Polyline(List<Point> points, Style style) implements Element {
        public Polyline {
            points = List.copyOf(points);
        }

        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.polyline(this);
        }
    }

    /** Straight lines from point to point, and back to the first. */
    record Polygon(List<Point> points, Style style) implements Element {
        public Polygon {
            points = List.copyOf(points);
        }

        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.polygon(this);
        }
    }

    record Circle(Point centre, double radius, Style style) implements Element {
        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.circle(this);
        }
    }

    /**
     * An upright rectangle.
     *
     * @param corner radius of its corners, 0 for sharp ones
     */
    record Rect(Box box, double corner, Style style) implements Element {
        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.rect(this);
        }
    }

    /** Lines, arcs and curves: see {@link Outline}. */
    record Path(Outline outline, Style style) implements Element {
        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.path(this);
        }
    }

    /**
     * One line of text.
     *
     * @param at     the anchor's place on the baseline
     * @param anchor which end of the text is at {@code at}
     * @param turned degrees that the text is turned about {@code at}, clockwise on the screen
     */
    record Text(Point at, Anchor anchor, List<Span> spans, double turned, Style style) implements Element {
        public Text {
            spans = List.copyOf(spans);
        }

        public static Text of(Point at, Anchor anchor, String text, Style style) {
            return new Text(at, anchor, List.of(Span.of(text)), 0, style);
        }

        public static Text of(Point at, Anchor anchor, List<Span> spans, Style style) {
            return new Text(at, anchor, spans, 0, style);
        }

        public Text turned(double degrees) {
            return new Text(at, anchor, spans, degrees, style);
        }

        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.text(this);
        }
    }

    /** Which part of a text stands at its place. */
    enum Anchor { START, MIDDLE, END }
}
