package kingpost.diagram;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import kingpost.graphic.Cause;
import kingpost.graphic.ForcePolygon;
import kingpost.graphic.Side;
import kingpost.statics.Vector;
import kingpost.svg.Box;
import kingpost.svg.Element;
import kingpost.svg.Style;
import kingpost.svg.Svg;
import kingpost.units.Quantity;
import kingpost.units.StructuralUnits;

/**
 * The forces on a joint twice: round the joint, numbered clockwise, and to scale from tip to tail. Lines that would lie
 * on each other are drawn side by side.
 */
public final class ForcePolygonFigure {

    private static final double GAP = 9;
    private static final double ARROW = 62;
    private static final double SIZE = 13;
    private static final double APART = 60;
    private static final double BESIDE = 26;
    private static final double ASIDE = 11;
    private static final double[] SIZES = {230, 280, 340, 400};

    private final ForcePolygon polygon;
    private final ForceText text;
    private final Sheet sheet = new Sheet();

    private ForcePolygonFigure(ForcePolygon polygon) {
        this.polygon = polygon;
        this.text = new ForceText(polygon.truss());
    }

    public static Svg of(ForcePolygon polygon) {
        ForcePolygonFigure figure = null;
        for (double size : SIZES) {
            figure = new ForcePolygonFigure(polygon);
            figure.draw(size);
            if (figure.sheet.homeless().isEmpty()) {
                break;
            }
        }
        return figure.sheet.toSvg("Force polygon of joint " + polygon.joint(), figure.words());
    }

    private void draw(double size) {
        joint();
        sheet.settle();
        Box round = sheet.bounds();
        List<Vector> corners = polygon.corners();
        double left = corners.stream().mapToDouble(Vector::x).min().orElse(0);
        double right = corners.stream().mapToDouble(Vector::x).max().orElse(0);
        double low = corners.stream().mapToDouble(Vector::y).min().orElse(0);
        double high = corners.stream().mapToDouble(Vector::y).max().orElse(0);
        double extent = Math.max(right - left, high - low);
        double scale = size / (extent == 0 ? polygon.scale() : extent);
        Place corner = new Place(round.right() + APART, -(high - low) * scale / 2);
        sides(new Place(corner.x() - left * scale, corner.y() + high * scale), scale);
        sheet.settle();
        if (extent > 0) {
            new ScaleBar(sheet, text).draw(new Place(corner.x(), sheet.bounds().bottom() + 24), scale,
                    Quantity.of(1, polygon.truss().forceUnit()).in(StructuralUnits.N));
        }
    }

    /** The joint, each force on its own side in its true sense, with its place in the order. */
    private void joint() {
        sheet.reach(Patch.box(Place.ORIGIN, 150, 120, 0));
        int number = 0;
        for (Side side : polygon.sides()) {
            List<Side> beside = polygon.sides().stream().filter(s -> s.place().dot(side.place()) > 0.99).toList();
            double off = BESIDE * (beside.indexOf(side) - (beside.size() - 1) / 2.0);
            ForceArrow arrow = ForceArrow.of(Place.ORIGIN, side, GAP, isIdle(side) ? 0.6 * ARROW : ARROW, off);
            String colour = colour(side);
            String name = name(side);
            if (isIdle(side)) {
                sheet.add(Layer.FORCES, new Element.Line(arrow.near().point(), arrow.far().point(),
                        Ink.line(colour, 1.6).dashed(6, 5)), Patch.line(arrow.near(), arrow.far(), 1.6));
                name += ": 0";
            } else {
                sheet.arrow(arrow.tail(), arrow.tip(), colour, 2.2);
                number++;
                name = number + ": " + name;
            }
            Caption caption = Caption.of(name, SIZE, colour);
            sheet.label(new Label(caption, Spots.atArrow(arrow.near(), arrow.far(), caption), name, 0));
        }
        sheet.add(Layer.JOINTS, new Element.Circle(Place.ORIGIN.point(), 4.5, Style.fill(Ink.BLACK)),
                Patch.disc(Place.ORIGIN, 5));
        Caption caption = Caption.of(TrussSketch.shortened(polygon.joint()), SIZE, Ink.BLACK).inBold();
        sheet.label(new Label(caption, Spots.around(Place.ORIGIN, caption, Place.towards(135)), polygon.joint(), 0));
    }

    private void sides(Place start, double scale) {
        List<Place[]> drawn = new ArrayList<>();
        Place at = start;
        int number = 0;
        for (Side side : polygon.sides()) {
            Place way = new Place(side.vector().x() * scale, -side.vector().y() * scale);
            Place tip = at.plus(way);
            if (!isIdle(side)) {
                number++;
                Place aside = aside(at, tip, drawn);
                drawn.add(new Place[] {at, tip});
                Place tail = at.plus(aside);
                Place head = tip.plus(aside);
                sheet.arrow(tail, head, colour(side), 2.2);
                String said = number + ": " + name(side) + " " + text.ofNewtons(side.vector().norm()) + letter(side);
                Caption caption = Caption.of(said, SIZE, colour(side));
                sheet.label(new Label(caption, Spots.along(tail, head, caption, 6, false), said, 0));
            }
            at = tip;
        }
        sheet.add(Layer.JOINTS, new Element.Circle(start.point(), 3.4, Style.stroke(Ink.BLACK, 1.4).filled(Ink.PAPER)));
        Caption caption = Caption.of("start", 11, Ink.MEMBER);
        sheet.label(new Label(caption, Spots.around(start, caption, Place.towards(180)), "start", 1));
    }

    /** How far a side must be moved off those before it that it would lie on. */
    private static Place aside(Place from, Place to, List<Place[]> drawn) {
        Place way = to.minus(from).unit();
        int under = 0;
        for (Place[] other : drawn) {
            boolean inLine = Math.abs(way.cross(other[0].minus(from))) < 2 && Math.abs(way.cross(other[1].minus(from))) < 2;
            double one = way.dot(other[0].minus(from));
            double two = way.dot(other[1].minus(from));
            boolean shares = Math.min(Math.max(one, two), to.distance(from)) - Math.max(Math.min(one, two), 0) > 2;
            under += inLine && shares ? 1 : 0;
        }
        Place side = Math.abs(way.x()) > Math.abs(way.y()) ? new Place(0, 1) : new Place(1, 0);
        return side.times(ASIDE * under);
    }

    private boolean isIdle(Side side) {
        return side.vector().norm() == 0;
    }

    private String colour(Side side) {
        return side.cause().accept(new Cause.Visitor<>() {
            @Override
            public String member(Cause.OfMember cause) {
                return style(side).colour();
            }

            @Override
            public String load(Cause.OfLoad cause) {
                return Ink.BLACK;
            }

            @Override
            public String support(Cause.OfSupport cause) {
                return Ink.REACTION;
            }
        });
    }

    private MemberStyle style(Side side) {
        return isIdle(side) ? MemberStyle.ZERO : side.pulls() ? MemberStyle.TENSION : MemberStyle.COMPRESSION;
    }

    private String letter(Side side) {
        return side.cause() instanceof Cause.OfMember ? " " + style(side).letter() : "";
    }

    private static String name(Side side) {
        return side.cause().accept(new Cause.Visitor<>() {
            @Override
            public String member(Cause.OfMember cause) {
                return cause.member().name();
            }

            @Override
            public String load(Cause.OfLoad cause) {
                return "load";
            }

            @Override
            public String support(Cause.OfSupport cause) {
                return "reaction";
            }
        });
    }

    private String words() {
        String said = polygon.sides().stream().filter(side -> !isIdle(side))
                .map(side -> name(side) + " " + text.ofNewtons(side.vector().norm()) + " "
                        + TrussWords.way(TrussLayout.way(side.vector())))
                .collect(Collectors.joining(", "));
        return "Joint " + polygon.joint() + " with its forces numbered clockwise, and the forces drawn to scale from tip"
                + " to tail: " + (said.isEmpty() ? "none" : said) + ". The last tip meets the first tail.";
    }
}
