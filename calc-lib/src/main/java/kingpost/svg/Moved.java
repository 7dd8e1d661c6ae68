package kingpost.svg;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Elements moved as they are, so that several pictures can stand in one.
 *
 * @param dx user units to the right
 * @param dy user units downwards
 */
public record Moved(double dx, double dy) implements Element.Visitor<Element> {

    private static final Pattern STEP = Pattern.compile("([MLCAZ])([^MLCAZ]*)");
    private static final Pattern PAIR = Pattern.compile("(-?[0-9.eE-]+)[ ,](-?[0-9.eE-]+)");

    private Point point(Point p) {
        return new Point(p.x() + dx, p.y() + dy);
    }

    private List<Point> points(List<Point> points) {
        return points.stream().map(this::point).toList();
    }

    @Override
    public Element group(Element.Group group) {
        return new Element.Group(group.children().stream().map(child -> child.accept(this)).toList(), group.style(),
                group.title());
    }

    @Override
    public Element line(Element.Line line) {
        return new Element.Line(point(line.from()), point(line.to()), line.style());
    }

    @Override
    public Element polyline(Element.Polyline polyline) {
        return new Element.Polyline(points(polyline.points()), polyline.style());
    }

    @Override
    public Element polygon(Element.Polygon polygon) {
        return new Element.Polygon(points(polygon.points()), polygon.style());
    }

    @Override
    public Element circle(Element.Circle circle) {
        return new Element.Circle(point(circle.centre()), circle.radius(), circle.style());
    }

    @Override
    public Element rect(Element.Rect rect) {
        Box box = rect.box();
        return new Element.Rect(new Box(box.left() + dx, box.top() + dy, box.width(), box.height()), rect.corner(),
                rect.style());
    }

    @Override
    public Element path(Element.Path path) {
        Matcher step = STEP.matcher(path.outline().data());
        StringBuilder data = new StringBuilder();
        while (step.find()) {
            String at = step.group(2);
            boolean arc = step.group(1).equals("A");
            int from = arc ? at.lastIndexOf(' ') + 1 : 0;
            data.append(step.group(1)).append(at, 0, from).append(pairs(at.substring(from)));
        }
        return new Element.Path(new Outline(data.toString()), path.style());
    }

    private String pairs(String text) {
        return PAIR.matcher(text).replaceAll(pair -> Numbers.text(
                point(new Point(Double.parseDouble(pair.group(1)), Double.parseDouble(pair.group(2))))));
    }

    @Override
    public Element text(Element.Text text) {
        return new Element.Text(point(text.at()), text.anchor(), text.spans(), text.turned(), text.style());
    }
}
