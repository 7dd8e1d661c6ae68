package kingpost.diagram;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import kingpost.statics.BodyEquation.Kind.Moment;
import kingpost.statics.Source;
import kingpost.statics.Step;
import kingpost.statics.Vector;
import kingpost.svg.Element;
import kingpost.svg.Style;
import kingpost.svg.Svg;
import kingpost.truss.Joint;
import kingpost.truss.Member;
import kingpost.truss.TrussModel;

/**
 * The free body that a section leaves: the part kept, the members cut with their unknown forces as tension, what is
 * known in its true sense, the points about which moments are taken, and the lever arms from them.
 */
public final class SectionFigure {

    private static final double RING = 6.4;
    private static final double ARROW = 46;
    /** A moment point farther out than this many times the part's extent is not drawn. */
    private static final double FAR_OUT = 1.1;
    /** Nor is one with which the figure would be higher than this, px. */
    private static final double TALLEST = 640;

    private final CutBody body;
    private final BodyForces forces;

    private SectionFigure(TrussModel truss, Step.AtSection step) {
        this.body = new CutBody(truss, step);
        this.forces = new BodyForces(truss, FreeBodyFigure.Shows.WORKING, new Step.Axes.Conventional());
    }

    /** The figure for a step that takes a section. */
    public static Svg of(TrussModel truss, Step.AtSection step) {
        SectionFigure figure = new SectionFigure(truss, step);
        return Fitting.sketch(figure.body.model(), figure::draw)
                .toSvg(step.cut().isEmpty() ? "Free body of the whole truss"
                        : "Section through " + TrussWords.listed(names(step.cut())), figure.words());
    }

    private static List<String> names(List<Member> members) {
        return members.stream().map(Member::name).toList();
    }

    private void draw(TrussSketch sketch) {
        CutLine line = new CutLine(body, sketch.layout());
        members(sketch);
        joints(sketch);
        line.draw(sketch.sheet());
        if (!sketch.layout().isDense()) {
            body.moments().forEach(moment -> moment(sketch, moment));
            body.step().omitted().forEach(member -> idle(sketch, member, line.of(member)));
            body.step().forces().stream().filter(f -> f.force().source() instanceof Source.OfMember)
                    .forEach(force -> cut(sketch, force, line));
            body.step().forces().stream().filter(f -> !(f.force().source() instanceof Source.OfMember))
                    .forEach(force -> outside(sketch, force));
            names(sketch);
        }
        sketch.sheet().settle();
        if (!sketch.layout().isDense()) {
            new ArmLines(sketch.sheet(), sketch.layout(), body).draw();
        }
        sketch.notes();
        farPoints(sketch);
    }

    private void farPoints(TrussSketch sketch) {
        for (Moment moment : body.moments()) {
            if (isFarOut(sketch.layout(), sketch.layout().place(moment.point()))) {
                Caption caption = Caption.of("Off this figure: " + point(moment.point()) + ".", 11, Ink.MEMBER);
                sketch.sheet().writeFrom(caption, new Place(sketch.sheet().bounds().left(),
                        sketch.sheet().bounds().bottom() + 20));
            }
        }
    }

    private void members(TrussSketch sketch) {
        TrussLayout layout = sketch.layout();
        for (Member member : body.model().members()) {
            if (body.isKept(member)) {
                sketch.sheet().line(Layer.MEMBERS, layout.from(member), layout.to(member), Ink.MEMBER,
                        layout.isDense() ? 1 : 2.6);
            } else if (!body.cut().contains(member)) {
                gone(sketch, layout.from(member), layout.to(member));
            }
        }
    }

    /** What the section takes away, as a faint trace. */
    static void gone(TrussSketch sketch, Place from, Place to) {
        sketch.sheet().add(Layer.GUIDES, new Element.Line(from.point(), to.point(),
                Ink.line(Ink.FAINT, 1).dashed(2, 4)), Patch.line(from, to, 1));
    }

    private void joints(TrussSketch sketch) {
        if (sketch.layout().isDense()) {
            return;
        }
        for (Joint joint : body.model().joints()) {
            boolean kept = body.isKept(joint.name());
            double radius = kept ? 3.2 : 2.4;
            sketch.sheet().add(Layer.JOINTS, new Element.Circle(sketch.layout().of(joint.name()).point(), radius,
                    Style.stroke(kept ? Ink.BLACK : Ink.FAINT, kept ? 1.4 : 1.1).filled(Ink.PAPER)),
                    Patch.disc(sketch.layout().of(joint.name()), radius + 0.7));
        }
    }

    private void names(TrussSketch sketch) {
        for (Joint joint : body.model().joints()) {
            String colour = body.isKept(joint.name()) ? Ink.BLACK : Ink.MEMBER;
            Caption caption = sketch.lettering().caption(TrussSketch.shortened(joint.name()), colour);
            sketch.sheet().label(new Label(body.isKept(joint.name()) ? caption.inBold() : caption,
                    Spots.around(sketch.layout().of(joint.name()), caption.inBold(),
                            sketch.layout().outward(joint.name())), joint.name(), 0));
        }
    }

    /** A member cut: its stump, and beyond the cut its force. */
    private void cut(TrussSketch sketch, Step.BodyForce force, CutLine line) {
        Member member = ((Source.OfMember) force.force().source()).member();
        Place near = sketch.layout().of(force.joint());
        Place far = sketch.layout().of(member.otherEnd(force.joint()));
        Place at = line.of(member);
        BodyForce drawn = forces.of(force.force()).get(0);
        sketch.sheet().line(Layer.MEMBERS, near, at, Ink.MEMBER, 2.6);
        gone(sketch, at, far);
        Place out = far.minus(near).unit();
        Place foot = at.plus(out.times(3));
        Place end = at.plus(out.times(ARROW));
        if (drawn.dashed()) {
            sketch.sheet().add(Layer.FORCES, new Element.Line(foot.point(), end.point(),
                    Ink.line(drawn.colour(), 1.6).dashed(6, 5)), Patch.line(foot, end, 1.6));
        } else if (drawn.way().dot(out) > 0) {
            sketch.sheet().arrow(foot, end, drawn.colour(), 2.2);
        } else {
            sketch.sheet().arrow(end, foot, drawn.colour(), 2.2);
        }
        Caption caption = sketch.lettering().caption(drawn.label(), drawn.colour());
        List<Spot> spots = new ArrayList<>(Spots.atArrow(foot, end, caption));
        for (double gap : new double[] {17, 24, 32}) {
            for (double part : new double[] {1, 0.7, 0.4, 0.1}) {
                Place beside = foot.along(end, part);
                for (Place side : List.of(out.left(), out.left().times(-1))) {
                    spots.add(new Spot(Spots.beside(beside, side, gap, caption), 0, beside.plus(side.times(5)),
                            1 + gap / 30));
                }
            }
        }
        sketch.sheet().label(new Label(caption, spots, caption.text(), 0));
    }

    private void idle(TrussSketch sketch, Member member, Place at) {
        Place near = sketch.layout().of(body.keptEnd(member));
        Place far = sketch.layout().of(member.otherEnd(body.keptEnd(member)));
        sketch.sheet().add(Layer.MEMBERS, new Element.Line(near.point(), at.point(),
                Ink.line(Ink.ZERO, 1.6).dashed(6, 5)), Patch.line(near, at, 1.6));
        gone(sketch, at, far);
    }

    /** A load or a reaction. */
    private void outside(TrussSketch sketch, Step.BodyForce force) {
        for (BodyForce drawn : forces.of(force.force())) {
            if (drawn.way().norm() > 0) {
                sketch.arrow(sketch.layout().of(force.joint()), drawn.way(), drawn.colour(),
                        sketch.lettering().caption(drawn.label(), drawn.colour()), drawn.key() + " at " + force.joint());
            }
        }
    }

    /** A ring round the point about which moments are taken, and the lines that meet there where it is no joint. */
    private void moment(TrussSketch sketch, Moment moment) {
        Place point = sketch.layout().place(moment.point());
        if (isFarOut(sketch.layout(), point)) {
            return;
        }
        if (moment.joint().isEmpty()) {
            markPoint(sketch, point);
            moment.passing().stream().map(body::force).forEach(force ->
                    gone(sketch, sketch.layout().of(force.joint()), point));
        } else {
            ring(sketch, point);
        }
    }

    private static void ring(TrussSketch sketch, Place point) {
        sketch.sheet().add(Layer.BACKGROUND, new Element.Circle(point.point(), RING,
                Style.stroke(Ink.UNKNOWN, 1.5).filled(Ink.PAPER).dashed(3, 2.5)), Patch.disc(point, RING + 0.7));
    }

    /** A moment point that is no joint: ringed, dotted, and called O. */
    static void markPoint(TrussSketch sketch, Place point) {
        ring(sketch, point);
        sketch.sheet().add(Layer.JOINTS, new Element.Circle(point.point(), 2, Style.fill(Ink.UNKNOWN)),
                Patch.disc(point, 3));
        Caption caption = sketch.lettering().caption("O", Ink.UNKNOWN).inBold();
        sketch.sheet().label(new Label(caption, Spots.around(point, caption, Place.towards(90)), "O", 0));
    }

    /** Whether a point about which moments are taken lies too far from the part to be drawn with it. */
    static boolean isFarOut(TrussLayout layout, Place point) {
        double across = Math.max(layout.right() - layout.left(), layout.bottom() - layout.top());
        double up = Math.max(layout.top() - point.y(), point.y() - layout.bottom());
        double out = Math.max(up, Math.max(layout.left() - point.x(), point.x() - layout.right()));
        return out > FAR_OUT * across || layout.bottom() - layout.top() + up > TALLEST;
    }

    private String words() {
        String said = body.step().forces().stream().flatMap(f -> forces.of(f.force()).stream()
                .map(drawn -> drawn.words().replace("away from the joint", "away from the part")))
                .distinct().limit(30).collect(Collectors.joining(" "));
        String points = body.moments().stream().map(m -> m.joint().isEmpty() ? point(m.point()) : "joint " + m.joint())
                .distinct().collect(Collectors.joining(" and "));
        String whole = body.cut().isEmpty() ? "The whole truss. " : "The part of the truss with joints "
                + TrussWords.listed(body.step().part()) + ", cut through " + TrussWords.listed(names(body.cut())) + ". ";
        return whole + said
                + (points.isEmpty() ? "" : " Moments are taken about " + points + ".");
    }

    private String point(Vector point) {
        ForceText text = new ForceText(body.model());
        return "the point O at " + text.length(point.x()) + ", " + text.length(point.y());
    }
}
