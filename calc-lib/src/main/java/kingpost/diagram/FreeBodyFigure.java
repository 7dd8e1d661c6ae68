package kingpost.diagram;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import kingpost.statics.JointForce;
import kingpost.statics.Source;
import kingpost.statics.Step;
import kingpost.statics.Vector;
import kingpost.svg.Element;
import kingpost.svg.Point;
import kingpost.svg.Span;
import kingpost.svg.Svg;
import kingpost.truss.Member;
import kingpost.truss.TrussModel;

/**
 * The free body of one joint: unknowns drawn away from it as tension, known forces in their true sense with their
 * values, slopes beside inclined forces, and turned axes where the equations use them.
 */
public final class FreeBodyFigure {

    private static final double ARROW = 78;
    private static final double STUB = 60;
    private static final double GAP = 7;
    private static final double SIZE = 13;

    private final Sheet sheet = new Sheet();
    private final ForceText text;
    private final List<String> said = new ArrayList<>();
    private final List<Place> taken = new ArrayList<>();
    private final List<Inclined> inclined = new ArrayList<>();

    private FreeBodyFigure(TrussModel truss) {
        this.text = new ForceText(truss);
    }

    /** The free body as the step of a solution uses it, before its answers are known. */
    public static Svg of(TrussModel truss, Step.AtJoint step) {
        FreeBodyFigure figure = new FreeBodyFigure(truss);
        figure.joint(step.joint());
        step.forces().stream().sorted(Comparator.comparing(f -> f.source() instanceof Source.OfMember ? 0 : 1))
                .forEach(figure::force);
        figure.slopes();
        figure.axes(step.axes());
        figure.sheet.settle();
        return figure.sheet.toSvg("Free body of joint " + step.joint(), "Joint " + step.joint() + " cut free. "
                + String.join(" ", figure.said));
    }

    /** The joint with short ends of its members and nothing else, for a reader to complete. */
    public static Svg blank(TrussModel truss, String joint) {
        FreeBodyFigure figure = new FreeBodyFigure(truss);
        figure.joint(joint);
        for (Member member : truss.membersAt(joint)) {
            Place way = way(position(truss, member.otherEnd(joint)).minus(position(truss, joint)));
            figure.stub(member, way);
        }
        figure.sheet.reach(Patch.box(Place.ORIGIN, 3 * ARROW, 3 * ARROW, 0));
        figure.sheet.settle();
        return figure.sheet.toSvg("Joint " + joint + " to complete",
                "Joint " + joint + " with the ends of its members; draw the forces on it.");
    }

    private static Vector position(TrussModel truss, String joint) {
        return truss.joint(joint).map(j -> new Vector(j.x().getValue(), j.y().in(j.x().getUnit()),
                j.z().in(j.x().getUnit()))).orElseThrow();
    }

    /** The way on the sheet, where y points down. */
    private static Place way(Vector along) {
        return new Place(along.x(), -along.y()).unit();
    }

    private void joint(String name) {
        sheet.add(Layer.JOINTS, new Element.Circle(Place.ORIGIN.point(), 4.5,
                Ink.line(Ink.BLACK, 1.6).filled(Ink.PAPER)), Patch.disc(Place.ORIGIN, 5));
        Caption caption = Caption.of(name, SIZE, Ink.BLACK).inBold();
        sheet.label(new Label(caption, Spots.around(Place.ORIGIN, caption, new Place(-0.6, -0.8)), "joint " + name, 0));
    }

    private void stub(Member member, Place way) {
        sheet.line(Layer.MEMBERS, way.times(GAP), way.times(STUB), Ink.PALE, 2.4);
        Caption caption = Caption.of(member.name(), SIZE - 1, Ink.MEMBER);
        sheet.label(new Label(caption, Spots.atArrow(way.times(GAP), way.times(STUB), caption), member.name(), 0));
    }

    private void force(JointForce force) {
        force.source().accept(new Source.Visitor<Void>() {
            @Override
            public Void member(Source.OfMember of) {
                drawMember(force, of.member());
                return null;
            }

            @Override
            public Void reaction(Source.OfReaction of) {
                drawReaction(force, of);
                return null;
            }

            @Override
            public Void load(Source.OfLoad of) {
                drawLoad(force);
                return null;
            }
        });
    }

    private void drawMember(JointForce force, Member member) {
        Place way = way(force.along());
        boolean pushes = force.known() && force.value() < 0;
        String colour = !force.known() ? Ink.UNKNOWN : pushes ? Ink.COMPRESSION : Ink.TENSION;
        Place near = way.times(GAP);
        Place far = way.times(GAP + ARROW);
        sheet.arrow(pushes ? far : near, pushes ? near : far, colour, force.known() ? 2 : 2.4);
        taken.add(way);
        List<Span> spans = new ArrayList<>(Span.indexed("F", member.name()));
        if (force.known()) {
            String size = text.ofNewtons(force.value());
            spans.clear();
            spans.add(Span.of(member.name() + "  " + size));
            said.add("Member " + member.name() + (pushes ? " pushes on it with " : " pulls on it with ") + size + ".");
        } else {
            said.add("The unknown force of member " + member.name() + " is drawn as tension, away from the joint.");
        }
        name(spans, colour, near, far, member.name());
        slope(force.along(), way);
    }

    private void drawReaction(JointForce force, Source.OfReaction of) {
        boolean reversed = force.known() && force.value() < 0;
        Place way = way(force.along()).times(reversed ? -1 : 1);
        List<Span> spans = new ArrayList<>(of.letter().isEmpty() ? Span.indexed("R", of.joint())
                : Span.indexed(of.joint(), of.letter()));
        if (force.known()) {
            spans.add(Span.of(" = " + text.ofNewtons(force.value())));
        }
        said.add(force.known() ? "The reaction " + of.symbol() + " is " + text.ofNewtons(force.value()) + "."
                : "The reaction " + of.symbol() + " is unknown.");
        if (!force.known() || force.value() != 0) {
            slope(force.along(), acting(way, spans, force.known() ? Ink.REACTION : Ink.UNKNOWN, of.symbol()));
        }
    }

    private void drawLoad(JointForce force) {
        String size = text.ofNewtons(force.value());
        Place way = way(force.along());
        said.add("A load of " + size + " acts on it.");
        slope(force.along(), acting(way, List.of(Span.of(size)), Ink.BLACK, "load"));
    }

    /** Draws an arrow on the side where there is most room, at the joint or away from it; returns that side. */
    private Place acting(Place way, List<Span> spans, String colour, String key) {
        boolean pulls = room(way) > room(way.times(-1)) + 1e-6;
        Place side = pulls ? way : way.times(-1);
        Place shift = room(side) < 12 ? side.left().times(11) : Place.ORIGIN;
        Place near = side.times(GAP).plus(shift);
        Place far = side.times(GAP + ARROW * 0.8).plus(shift);
        sheet.arrow(pulls ? near : far, pulls ? far : near, colour, 2.2);
        taken.add(side);
        name(spans, colour, near, far, key);
        return side;
    }

    /** Degrees from the way to {@code corner} to the nearest arrow, that along {@code but} left aside. */
    private double room(Place corner, Place but) {
        return taken.stream().filter(t -> t.degreesTo(but) > 1e-6).mapToDouble(t -> t.degreesTo(corner)).min()
                .orElse(180);
    }

    /** Degrees to the nearest arrow on that side. */
    private double room(Place side) {
        return taken.stream().mapToDouble(t -> t.degreesTo(side)).min().orElse(180);
    }

    private void name(List<Span> spans, String colour, Place near, Place far, String key) {
        Caption caption = Caption.of(spans, SIZE, colour);
        sheet.label(new Label(caption, Spots.atArrow(near, far, caption), key, 0));
    }

    private void slope(Vector along, Place way) {
        if (Math.abs(way.x()) > 1e-9 && Math.abs(way.y()) > 1e-9) {
            inclined.add(new Inclined(along, way));
        }
    }

    /** Slopes come last, when it is known where the arrows leave room. */
    private void slopes() {
        for (Inclined force : inclined) {
            SlopeTriangle.of(force.along()).ifPresentOrElse(ratio -> triangle(force.way(), ratio),
                    () -> arc(force.way()));
        }
    }

    /** An inclined force and the side of the joint on which its arrow lies. */
    private record Inclined(Vector along, Place way) {
    }

    /** A small right triangle on the outer part of the arrow, its sides numbered. */
    private void triangle(Place way, long[] ratio) {
        double length = Math.min(44, Math.max(26, 13 / Math.min(Math.abs(way.x()), Math.abs(way.y()))));
        Place from = way.times(GAP + ARROW * 0.62 - length / 2);
        Place to = from.plus(way.times(length));
        boolean low = room(new Place(to.x(), from.y()), way) >= room(new Place(from.x(), to.y()), way);
        Place corner = low ? new Place(to.x(), from.y()) : new Place(from.x(), to.y());
        sheet.line(Layer.GUIDES, from, corner, Ink.FAINT, 1);
        sheet.line(Layer.GUIDES, corner, to, Ink.FAINT, 1);
        Place level = low ? from : to;
        Place upright = low ? to : from;
        number(Long.toString(ratio[0]), level.middle(corner), new Place(0, Math.signum(corner.y() - upright.y())));
        number(Long.toString(ratio[1]), upright.middle(corner), new Place(Math.signum(corner.x() - level.x()), 0));
    }

    private void number(String digits, Place at, Place outward) {
        Caption caption = Caption.of(digits, 11, Ink.MEMBER);
        List<Spot> spots = new ArrayList<>();
        for (double gap : new double[] {2, 5, 9}) {
            spots.add(new Spot(Spots.beside(at, outward, gap, caption), 0, at.plus(outward), gap / 20));
        }
        sheet.label(new Label(caption, spots, digits, 0));
    }

    /** An arc from the nearer horizontal, with its degrees. */
    private void arc(Place way) {
        double radius = 30;
        double start = way.x() > 0 ? 0 : 180;
        double degrees = way.degrees();
        double turn = Math.IEEEremainder(degrees - start, 360);
        sheet.add(Layer.GUIDES, new Element.Line(Place.ORIGIN.plus(Place.towards(start).times(GAP)).point(),
                Place.towards(start).times(radius + 8).point(), Ink.line(Ink.PALE, 1)));
        List<Point> points = new ArrayList<>();
        for (int i = 0; i <= 16; i++) {
            points.add(Place.towards(start + turn * i / 16).times(radius).point());
        }
        sheet.add(Layer.GUIDES, new Element.Polyline(points, Ink.line(Ink.FAINT, 1)));
        Caption caption = Caption.of(String.format(Locale.ROOT, "%.1f°", Math.abs(turn)), 11, Ink.MEMBER);
        Place mid = Place.towards(start + turn / 2);
        List<Spot> spots = new ArrayList<>();
        for (double gap : new double[] {3, 7, 12, 20}) {
            spots.add(new Spot(Spots.beside(mid.times(radius), mid, gap, caption), 0, mid.times(radius + 2), gap / 20));
        }
        sheet.label(new Label(caption, spots, "angle", 0));
    }

    private void axes(Step.Axes axes) {
        if (!(axes instanceof Step.Axes.Turned turned)) {
            return;
        }
        Place origin = new Place(sheet.bounds().left() - 34, sheet.bounds().top() + sheet.bounds().height() + 8);
        axis(origin, Place.towards(turned.degrees()), "x\u2032");
        axis(origin, Place.towards(turned.degrees() + 90), "y\u2032");
        said.add(String.format(Locale.ROOT, "The axes are turned by %.1f degrees, x\u2032 along %s.", turned.degrees(),
                turned.along() instanceof Source.OfMember m ? "member " + m.member().name() : "a force"));
    }

    private void axis(Place origin, Place way, String name) {
        Place tip = origin.plus(way.times(30));
        sheet.arrow(origin, tip, Ink.MEMBER, 1.1);
        Caption caption = Caption.of(name, 12, Ink.MEMBER);
        sheet.label(new Label(caption, Spots.atArrow(origin, tip, caption), name, 0));
    }
}
