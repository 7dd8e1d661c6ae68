package kingpost.render;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import kingpost.svg.Box;
import kingpost.svg.Element;
import kingpost.svg.Element.Circle;
import kingpost.svg.Element.Group;
import kingpost.svg.Element.Line;
import kingpost.svg.Element.Path;
import kingpost.svg.Element.Polygon;
import kingpost.svg.Element.Polyline;
import kingpost.svg.Element.Rect;
import kingpost.svg.Element.Text;
import kingpost.svg.Point;
import kingpost.svg.Span;
import kingpost.svg.Style;
import kingpost.svg.Svg;

/**
 * Draws a picture with pgf's basic commands. Source: T. Tantau, "The TikZ and PGF Packages", part "The Basic Layer".
 *
 * <p>A picture's unit, the CSS pixel of 1/96 in, becomes 0.75 bp; a picture wider than the page's text is made
 * smaller. y turns over, as TeX counts it upwards.
 */
final class PgfPicture implements Element.Visitor<Void> {

    private static final double BP_PER_PIXEL = 0.75;
    private static final double WIDEST = 430;
    private static final Pattern STEP = Pattern.compile("([MLACZ])([^MLACZ]*)");

    private final StringBuilder out = new StringBuilder(4096);
    private final Box view;
    private final double scale;
    private Style inherited = Style.none();

    private PgfPicture(Box view) {
        this.view = view;
        this.scale = Math.min(BP_PER_PIXEL, WIDEST / view.width());
    }

    static String of(Svg svg) {
        PgfPicture picture = new PgfPicture(svg.view());
        Point corner = new Point(svg.view().left(), svg.view().bottom());
        picture.out.append("\\begin{pgfpicture}\n\\pgfpathrectangle{").append(picture.point(corner)).append("}{\\pgfqpoint{")
                .append(picture.length(svg.view().width())).append("}{").append(picture.length(svg.view().height()))
                .append("}}\\pgfusepath{use as bounding box}\n");
        svg.elements().forEach(element -> element.accept(picture));
        return picture.out.append("\\end{pgfpicture}\n").toString();
    }

    @Override
    public Void group(Group group) {
        Style outer = inherited;
        inherited = outer.and(group.style());
        group.children().forEach(child -> child.accept(this));
        inherited = outer;
        return null;
    }

    @Override
    public Void line(Line line) {
        return painted(polyline(List.of(line.from(), line.to())), line.style());
    }

    @Override
    public Void polyline(Polyline polyline) {
        return painted(polyline(polyline.points()), polyline.style());
    }

    @Override
    public Void polygon(Polygon polygon) {
        return painted(polyline(polygon.points()) + "\\pgfpathclose", polygon.style());
    }

    @Override
    public Void circle(Circle circle) {
        return painted("\\pgfpathcircle{" + point(circle.centre()) + "}{" + length(circle.radius()) + "}",
                circle.style());
    }

    @Override
    public Void rect(Rect rect) {
        Point corner = new Point(rect.box().left(), rect.box().bottom());
        return painted("\\pgfpathrectangle{" + point(corner) + "}{\\pgfqpoint{" + length(rect.box().width()) + "}{"
                + length(rect.box().height()) + "}}", rect.style());
    }

    @Override
    public Void path(Path path) {
        StringBuilder steps = new StringBuilder();
        Matcher step = STEP.matcher(path.outline().data());
        while (step.find()) {
            steps.append(step(step.group(1).charAt(0), step.group(2).trim()));
        }
        return painted(steps.toString(), path.style());
    }

    private String step(char command, String arguments) {
        if (command == 'Z') {
            return "\\pgfpathclose";
        }
        String[] parts = arguments.split("[ ,]+");
        double[] n = new double[parts.length];
        for (int i = 0; i < n.length; i++) {
            n[i] = Double.parseDouble(parts[i]);
        }
        return switch (command) {
            case 'M' -> "\\pgfpathmoveto{" + point(new Point(n[0], n[1])) + "}";
            case 'L' -> "\\pgfpathlineto{" + point(new Point(n[0], n[1])) + "}";
            case 'C' -> "\\pgfpathcurveto{" + point(new Point(n[0], n[1])) + "}{" + point(new Point(n[2], n[3]))
                    + "}{" + point(new Point(n[4], n[5])) + "}";
            default -> "\\pgfpatharcto{" + length(n[0]) + "}{" + length(n[1]) + "}{0}{" + (int) n[3] + "}{"
                    + (1 - (int) n[4]) + "}{" + point(new Point(n[5], n[6])) + "}";
        };
    }

    @Override
    public Void text(Text text) {
        Map<String, String> style = inherited.and(text.style()).attributes();
        double size = Double.parseDouble(style.getOrDefault("font-size", "16")) * scale;
        String side = switch (text.anchor()) {
            case START -> "left,";
            case MIDDLE -> "";
            case END -> "right,";
        };
        String font = "\\sffamily\\fontsize{" + decimal(size) + "bp}{" + decimal(size * 1.2) + "bp}\\selectfont"
                + ("bold".equals(style.get("font-weight")) ? "\\bfseries" : "")
                + ("italic".equals(style.get("font-style")) ? "\\itshape" : "");
        StringBuilder words = new StringBuilder();
        text.spans().forEach(span -> words.append(span(span)));
        String content = colour("kpfill", style.getOrDefault("fill", "black")) + "\\color{kpfill}" + words;
        boolean halo = !"none".equals(style.getOrDefault("stroke", "none"));
        String shown = halo ? "\\setlength{\\fboxsep}{0.5bp}\\colorbox{white}{" + content + "}" : content;
        out.append("\\pgftext[").append(side).append("base,at={").append(point(text.at())).append("},rotate=")
                .append(decimal(-text.turned())).append("]{").append(font).append(' ').append(shown).append("}\n");
        return null;
    }

    private static String span(Span span) {
        String words = TexText.paragraph(span.text().replaceAll("\\p{Cntrl}+", " "));
        return switch (span.level()) {
            case LINE -> words;
            case SUBSCRIPT -> "\\textsubscript{" + words + "}";
            case SUPERSCRIPT -> "\\textsuperscript{" + words + "}";
        };
    }

    private Void painted(String path, Style own) {
        Map<String, String> style = inherited.and(own).attributes();
        String fill = style.getOrDefault("fill", "black");
        String stroke = style.getOrDefault("stroke", "none");
        StringBuilder use = new StringBuilder();
        out.append("\\begin{pgfscope}");
        String opacity = style.get("opacity");
        if (opacity != null) {
            out.append("\\pgfsetstrokeopacity{").append(opacity).append("}\\pgfsetfillopacity{").append(opacity)
                    .append('}');
        }
        if (!fill.equals("none")) {
            out.append(colour("kpfill", fill)).append("\\pgfsetfillcolor{kpfill}");
            use.append("fill");
        }
        if (!stroke.equals("none")) {
            out.append(colour("kpstroke", stroke)).append("\\pgfsetstrokecolor{kpstroke}").append(pen(style));
            use.append(use.isEmpty() ? "" : ",").append("stroke");
        }
        out.append(path).append("\\pgfusepath{").append(use.isEmpty() ? "discard" : use)
                .append("}\\end{pgfscope}\n");
        return null;
    }

    private String pen(Map<String, String> style) {
        StringBuilder pen = new StringBuilder("\\pgfsetlinewidth{"
                + length(Double.parseDouble(style.getOrDefault("stroke-width", "1"))) + "}");
        if ("round".equals(style.get("stroke-linecap"))) {
            pen.append("\\pgfsetroundcap\\pgfsetroundjoin");
        }
        String dashes = style.getOrDefault("stroke-dasharray", "");
        if (!dashes.isBlank()) {
            pen.append("\\pgfsetdash{");
            for (String dash : dashes.trim().split("[ ,]+")) {
                pen.append('{').append(length(Double.parseDouble(dash))).append('}');
            }
            pen.append("}{0bp}");
        }
        return pen.toString();
    }

    /** Gives a colour of the picture a name; of the colours known by name elsewhere only black and white are used. */
    private static String colour(String name, String value) {
        if (!value.startsWith("#")) {
            return "\\colorlet{" + name + "}{" + (value.equals("white") ? "white" : "black") + "}";
        }
        String hex = value.length() == 7 ? value.substring(1)
                : value.substring(1).replaceAll("(.)", "$1$1");
        return "\\definecolor{" + name + "}{HTML}{" + hex.toUpperCase(java.util.Locale.ROOT) + "}";
    }

    private String polyline(List<Point> points) {
        StringBuilder path = new StringBuilder();
        for (Point each : points) {
            path.append(path.isEmpty() ? "\\pgfpathmoveto{" : "\\pgfpathlineto{").append(point(each)).append('}');
        }
        return path.toString();
    }

    private String point(Point at) {
        return "\\pgfqpoint{" + length(at.x() - view.left()) + "}{" + length(view.top() - at.y()) + "}";
    }

    private String length(double pixels) {
        return decimal(pixels * scale) + "bp";
    }

    private static String decimal(double number) {
        BigDecimal rounded = BigDecimal.valueOf(number).setScale(2, RoundingMode.HALF_UP);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }
}
