package kingpost.diagram;

import java.util.ArrayList;
import java.util.List;
import kingpost.svg.Element;
import kingpost.svg.Point;
import kingpost.svg.Span;
import kingpost.svg.Style;
import kingpost.svg.Svg;
import kingpost.svg.TextMetrics;

/** Reads a finished picture and tells which writing lies on other writing, on a line, or off the paper. */
final class Clashes implements Element.Visitor<Void> {

    /** Letters rarely fill their whole box: this much of an overlap, px, is not seen. */
    private static final double UNSEEN = 0.6;

    private final List<Writing> writings = new ArrayList<>();
    private final List<Patch> lines = new ArrayList<>();

    private Clashes() {
    }

    /** One sentence for each clash; empty for a clean picture. */
    static List<String> in(Svg svg) {
        Clashes clashes = new Clashes();
        svg.elements().stream().skip(1).forEach(e -> e.accept(clashes));
        List<String> found = new ArrayList<>();
        Patch paper = Patch.edges(svg.view().left(), svg.view().top(), svg.view().right(), svg.view().bottom());
        for (int i = 0; i < clashes.writings.size(); i++) {
            Writing writing = clashes.writings.get(i);
            for (Writing other : clashes.writings.subList(i + 1, clashes.writings.size())) {
                if (writing.patch.overlaps(other.patch, UNSEEN)) {
                    found.add("'" + writing.text + "' lies on '" + other.text + "'");
                }
            }
            if (clashes.lines.stream().anyMatch(l -> writing.patch.overlaps(l, UNSEEN))) {
                found.add("'" + writing.text + "' is crossed by a line");
            }
            if (writing.patch.left() < paper.left() || writing.patch.right() > paper.right()
                    || writing.patch.top() < paper.top() || writing.patch.bottom() > paper.bottom()) {
                found.add("'" + writing.text + "' leaves the paper");
            }
        }
        return found;
    }

    /** Every text in the picture. */
    static List<String> textsOf(Svg svg) {
        Clashes clashes = new Clashes();
        svg.elements().forEach(e -> e.accept(clashes));
        return clashes.writings.stream().map(Writing::text).toList();
    }

    /** What the shaft of each force covers: an arrow is a group of a line and a polygon. */
    static List<Patch> arrowsOf(Svg svg) {
        List<Patch> arrows = new ArrayList<>();
        for (Element element : svg.elements()) {
            if (element instanceof Element.Group group && group.children().size() == 2) {
                Element.Line shaft = (Element.Line) group.children().get(0);
                Element.Polygon head = (Element.Polygon) group.children().get(1);
                if (Double.parseDouble(shaft.style().attributes().get("stroke-width")) < 2) {
                    continue; // an axis, not a force
                }
                arrows.add(Patch.line(place(shaft.from()), place(head.points().get(0)), 2));
            }
        }
        return arrows;
    }

    /** The smallest font size in the picture, px. */
    static double smallest(Svg svg) {
        Clashes clashes = new Clashes();
        svg.elements().forEach(e -> e.accept(clashes));
        return clashes.writings.stream().mapToDouble(Writing::size).min().orElseThrow();
    }

    private record Writing(String text, Patch patch, double size) {
    }

    @Override
    public Void group(Element.Group group) {
        group.children().forEach(child -> child.accept(this));
        return null;
    }

    @Override
    public Void line(Element.Line line) {
        stroke(line.from(), line.to(), line.style());
        return null;
    }

    @Override
    public Void polyline(Element.Polyline polyline) {
        for (int i = 1; i < polyline.points().size(); i++) {
            stroke(polyline.points().get(i - 1), polyline.points().get(i), polyline.style());
        }
        return null;
    }

    @Override
    public Void polygon(Element.Polygon polygon) {
        lines.add(Patch.of(polygon.points().stream().map(Clashes::place).toArray(Place[]::new)));
        return null;
    }

    @Override
    public Void circle(Element.Circle circle) {
        if (circle.radius() < 20) {
            lines.add(Patch.disc(place(circle.centre()), circle.radius()));
        }
        return null;
    }

    @Override
    public Void rect(Element.Rect rect) {
        return null;
    }

    @Override
    public Void path(Element.Path path) {
        return null;
    }

    @Override
    public Void text(Element.Text text) {
        double size = Double.parseDouble(text.style().attributes().get("font-size"));
        boolean bold = "bold".equals(text.style().attributes().get("font-weight"));
        double width = TextMetrics.width(text.spans(), size) * (bold ? 1.08 : 1);
        boolean low = text.spans().stream().anyMatch(s -> s.level() == Span.Level.SUBSCRIPT);
        double above = size * 0.73;
        double below = size * (low ? 0.3 : 0.16);
        Place up = Place.towards(-text.turned()).left();
        double start = text.anchor() == Element.Anchor.START ? width / 2 : 0;
        Place centre = place(text.at()).plus(up.times((above - below) / 2)).plus(new Place(start, 0));
        String said = String.join("", text.spans().stream().map(Span::text).toList());
        writings.add(new Writing(said, Patch.box(centre, width, above + below, -text.turned()), size));
        return null;
    }

    private void stroke(Point from, Point to, Style style) {
        if (!"none".equals(style.attributes().get("stroke"))) {
            double width = Double.parseDouble(style.attributes().getOrDefault("stroke-width", "1"));
            lines.add(Patch.line(place(from), place(to), width));
        }
    }

    private static Place place(Point point) {
        return new Place(point.x(), point.y());
    }
}
