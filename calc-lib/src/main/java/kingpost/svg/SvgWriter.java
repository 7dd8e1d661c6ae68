package kingpost.svg;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import kingpost.svg.Element.Circle;
import kingpost.svg.Element.Group;
import kingpost.svg.Element.Line;
import kingpost.svg.Element.Path;
import kingpost.svg.Element.Polygon;
import kingpost.svg.Element.Polyline;
import kingpost.svg.Element.Rect;
import kingpost.svg.Element.Text;

/**
 * Writes a picture as SVG text: the same picture always gives the same text.
 *
 * <p>The root element carries the picture's title and description, tied to it by {@code aria-labelledby}; their ids
 * start with the picture's prefix, or with a mark made from its content, so that many pictures share a page.
 */
public final class SvgWriter implements Element.Visitor<Void> {

    private final StringBuilder out = new StringBuilder(4096);

    private SvgWriter() {
    }

    /** {@code svg} as text that can stand in an HTML page or a file; no XML declaration. */
    public static String write(Svg svg) {
        SvgWriter writer = new SvgWriter();
        svg.elements().forEach(element -> element.accept(writer));
        String body = writer.out.toString();
        String prefix = svg.idPrefix().orElseGet(() -> mark(svg.title() + svg.description() + body));
        Box view = svg.view();
        String size = Numbers.text(view.width()) + " " + Numbers.text(view.height());
        return "<svg xmlns=\"http://www.w3.org/2000/svg\" role=\"img\" aria-labelledby=\"" + prefix + "-t " + prefix
                + "-d\" width=\"" + Numbers.text(view.width()) + "\" height=\"" + Numbers.text(view.height())
                + "\" viewBox=\"" + Numbers.text(view.left()) + " " + Numbers.text(view.top()) + " " + size + "\">\n"
                + "<title id=\"" + prefix + "-t\">" + Escape.text(svg.title()) + "</title>\n"
                + "<desc id=\"" + prefix + "-d\">" + Escape.text(svg.description()) + "</desc>\n"
                + body + "</svg>\n";
    }

    @Override
    public Void group(Group group) {
        open("g", group.style());
        out.append(">\n");
        if (!group.title().isEmpty()) {
            out.append("<title>").append(Escape.text(group.title())).append("</title>\n");
        }
        group.children().forEach(child -> child.accept(this));
        out.append("</g>\n");
        return null;
    }

    @Override
    public Void line(Line line) {
        out.append("<line");
        place("x1", line.from().x()).place("y1", line.from().y());
        place("x2", line.to().x()).place("y2", line.to().y());
        return finish(line.style());
    }

    @Override
    public Void polyline(Polyline polyline) {
        out.append("<polyline");
        attribute("points", points(polyline.points()));
        return finish(polyline.style());
    }

    @Override
    public Void polygon(Polygon polygon) {
        out.append("<polygon");
        attribute("points", points(polygon.points()));
        return finish(polygon.style());
    }

    @Override
    public Void circle(Circle circle) {
        out.append("<circle");
        place("cx", circle.centre().x()).place("cy", circle.centre().y()).place("r", circle.radius());
        return finish(circle.style());
    }

    @Override
    public Void rect(Rect rect) {
        out.append("<rect");
        place("x", rect.box().left()).place("y", rect.box().top());
        place("width", rect.box().width()).place("height", rect.box().height());
        if (rect.corner() > 0) {
            place("rx", rect.corner());
        }
        return finish(rect.style());
    }

    @Override
    public Void path(Path path) {
        out.append("<path");
        attribute("d", path.outline().data());
        return finish(path.style());
    }

    @Override
    public Void text(Text text) {
        out.append("<text");
        place("x", text.at().x()).place("y", text.at().y());
        if (text.anchor() != Element.Anchor.START) {
            attribute("text-anchor", text.anchor().name().toLowerCase(Locale.ROOT));
        }
        if (text.turned() != 0) {
            attribute("transform", "rotate(" + Numbers.text(text.turned()) + " " + Numbers.text(text.at().x()) + " "
                    + Numbers.text(text.at().y()) + ")");
        }
        attributes(text.style());
        out.append('>').append(spans(text)).append("</text>\n");
        return null;
    }

    /** Subscripts and superscripts are shifted and set smaller; the stretch after one is shifted back. */
    private static String spans(Text text) {
        double size = Double.parseDouble(text.style().attributes().getOrDefault("font-size", "0"));
        StringBuilder written = new StringBuilder();
        double shift = 0;
        for (Span span : text.spans()) {
            double drop = TextMetrics.drop(span.level());
            if (drop == 0 && shift == 0) {
                written.append(Escape.text(span.text()));
            } else if (!span.text().isEmpty()) {
                written.append(shifted(span, drop - shift, size));
                shift = drop;
            }
        }
        return written.toString();
    }

    private static String shifted(Span span, double shift, double size) {
        double scale = TextMetrics.scale(span.level());
        // without a size of its own the text inherits one; em in dy then means the span's own, smaller size
        String dy = size > 0 ? Numbers.text(shift * size) : Numbers.text(shift / scale) + "em";
        String small = size > 0 ? Numbers.text(scale * size) : Numbers.text(scale) + "em";
        return "<tspan dy=\"" + dy + "\"" + (scale == 1 ? "" : " font-size=\"" + small + "\"") + ">"
                + Escape.text(span.text()) + "</tspan>";
    }

    private static String points(List<Point> points) {
        return points.stream().map(Numbers::text).collect(Collectors.joining(" "));
    }

    private void open(String name, Style style) {
        out.append('<').append(name);
        attributes(style);
    }

    private Void finish(Style style) {
        attributes(style);
        out.append("/>\n");
        return null;
    }

    private void attributes(Style style) {
        for (Map.Entry<String, String> each : style.attributes().entrySet()) {
            attribute(each.getKey(), each.getValue());
        }
    }

    private void attribute(String name, String value) {
        out.append(' ').append(name).append("=\"").append(Escape.text(value)).append('"');
    }

    private SvgWriter place(String name, double value) {
        attribute(name, Numbers.text(value));
        return this;
    }

    private static String mark(String content) {
        long hash = 0xcbf29ce484222325L;
        for (int i = 0; i < content.length(); i++) {
            hash = (hash ^ content.charAt(i)) * 0x100000001b3L;
        }
        return "f" + Long.toHexString(hash);
    }
}
