package kingpost.diagram;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import kingpost.statics.JointForce;
import kingpost.statics.Source;
import kingpost.statics.Step;
import kingpost.statics.Vector;
import kingpost.svg.Element;
import kingpost.svg.Span;
import kingpost.svg.Style;
import kingpost.svg.Svg;
import kingpost.truss.Member;
import kingpost.truss.TrussModel;

/**
 * The free body of one joint: the joint as a point, unknowns drawn away from it as tension, known forces in their true
 * sense with their values, loads, reactions, slopes and axes.
 */
public final class FreeBodyFigure {

    private static final double MEMBER = 86;
    private static final double OTHER = 68;
    private static final double GAP = 7;
    private static final double SIZE = 13;
    /** How long the lines are on which a reader writes. */
    private static final double LINES = 380;
    private static final double[] SIZES = {1, 1.25, 1.5, 1.8, 2.2};

    /** What a free body tells. */
    public enum Shows {
        /** As the step finds it: what was known has its value, the unknowns have symbols. */
        WORKING,
        /** Nothing but what was given: every member and reaction has its symbol. */
        SYMBOLS,
        /** With the answers of the step. */
        ANSWERS
    }

    private final Sheet sheet = new Sheet();
    private final ArrowPlacer arrows = new ArrowPlacer(sheet, Hull.of(List.of()));
    private final InclineMarks inclines;

    private final double size;

    /** @param size of the arrows, 1 where nothing is crowded */
    private FreeBodyFigure(Step.Axes axes, double size) {
        this.size = size;
        inclines = new InclineMarks(sheet, axes instanceof Step.Axes.Turned turned ? turned.degrees() : 0);
    }

    /** The free body as the step of a solution uses it, before its answers are known. */
    public static Svg of(TrussModel truss, Step.AtJoint step) {
        return of(truss, step, Shows.WORKING);
    }

    /** The free body of the step's joint, telling as much as {@code shows} says. */
    public static Svg of(TrussModel truss, Step.AtJoint step, Shows shows) {
        if (truss.isSpace()) {
            return inSpace(truss, step, shows);
        }
        List<BodyForce> forces = forces(truss, step, shows);
        List<String> said = forces.stream().map(BodyForce::words).toList();
        return sheet(step, forces).toSvg("Free body of joint " + step.joint(),
                "Joint " + step.joint() + " cut free. " + String.join(" ", said) + axesInWords(step.axes()));
    }

    /** The joint from before, right and above, and its projections. What points at the reader is named under a view. */
    private static Svg inSpace(TrussModel truss, Step.AtJoint step, Shows shows) {
        Views views = new Views();
        List<String> said = List.of();
        for (View view : List.of(View.PICTORIAL, View.FRONT, View.SIDE, View.PLAN)) {
            BodyForces forces = new BodyForces(truss, shows, view);
            List<BodyForce> all = step.forces().stream().flatMap(force -> forces.of(force).stream()).toList();
            said = all.stream().map(BodyForce::words).toList();
            if (view == View.SIDE) {
                views.newRow();
            }
            views.add(sheet(step, all, view), view.caption() + hidden(all));
        }
        return views.toSvg("Free body of joint " + step.joint(), "Joint " + step.joint()
                + " cut free, in four views. " + String.join(" ", said));
    }

    private static String hidden(List<BodyForce> forces) {
        List<String> names = forces.stream().filter(f -> f.way().norm() == 0)
                .map(f -> f.label().stream().map(Span::text).collect(Collectors.joining())).toList();
        return names.isEmpty() ? "" : "; end on: " + String.join(", ", names);
    }

    private static Sheet sheet(Step.AtJoint step, List<BodyForce> forces, View view) {
        Sheet sheet = null;
        for (double size : SIZES) {
            FreeBodyFigure figure = new FreeBodyFigure(new Step.Axes.Conventional(), 0.8 * size);
            sheet = figure.draw(step, forces, view);
            if (sheet.homeless().isEmpty()) {
                break;
            }
        }
        return sheet;
    }

    private Sheet draw(Step.AtJoint step, List<BodyForce> forces, View view) {
        sheet.reach(Patch.box(Place.ORIGIN, 2.6 * MEMBER, 2 * MEMBER, 0));
        forces.stream().filter(f -> !f.isFree()).forEach(this::member);
        forces.stream().filter(BodyForce::isFree).forEach(this::other);
        joint(step.joint());
        sheet.settle();
        new AxesMark(sheet).draw(view);
        return sheet;
    }

    static List<BodyForce> forces(TrussModel truss, Step.AtJoint step, Shows shows) {
        BodyForces forces = new BodyForces(truss, shows, step.axes());
        List<BodyForce> drawn = new ArrayList<>();
        for (JointForce force : step.forces()) {
            drawn.addAll(forces.of(force));
        }
        return drawn;
    }

    /** Drawn larger until every label has a place. */
    static Sheet sheet(Step.AtJoint step, List<BodyForce> forces) {
        Sheet sheet = null;
        for (double size : SIZES) {
            sheet = new FreeBodyFigure(step.axes(), size).draw(step, forces);
            if (sheet.homeless().isEmpty()) {
                break;
            }
        }
        return sheet;
    }

    /** The joint with short ends of its members and lines for its equations, for a reader to complete. */
    public static Svg blank(TrussModel truss, String joint) {
        FreeBodyFigure figure = new FreeBodyFigure(new Step.Axes.Conventional(), 1);
        for (Member member : truss.membersAt(joint)) {
            Vector along = position(truss, member.otherEnd(joint)).minus(position(truss, joint));
            figure.stub(member.name(), TrussLayout.way(along));
        }
        figure.joint(joint);
        figure.sheet.reach(Patch.box(Place.ORIGIN, 3 * MEMBER, 2.4 * MEMBER, 0));
        figure.sheet.settle();
        new AxesMark(figure.sheet).draw(new Step.Axes.Conventional());
        figure.linesToWriteOn(truss.isSpace() ? List.of("x", "y", "z") : List.of("x", "y"));
        return figure.sheet.toSvg("Joint " + joint + " to complete",
                "Joint " + joint + " with the ends of its members, to draw the forces on, and lines for its equations.");
    }

    /** Right of the body: the name of each equation, and two lines. */
    private void linesToWriteOn(List<String> axes) {
        double left = 1.75 * MEMBER;
        double apart = 2.4 * MEMBER / (2 * axes.size());
        for (int i = 0; i < axes.size(); i++) {
            double first = -1.2 * MEMBER + (2 * i + 0.8) * apart;
            Caption name = Caption.of(List.of(Span.of("\u03a3F"), Span.sub(axes.get(i)), Span.of(" = 0:")), SIZE, Ink.MEMBER);
            sheet.writeFrom(name, new Place(left, first - 0.6 * SIZE));
            for (int line = 0; line < 2; line++) {
                Place start = new Place(line == 0 ? left + 5.2 * SIZE : left, first + line * apart);
                Place end = new Place(left + LINES, first + line * apart);
                sheet.add(Layer.GUIDES, new Element.Line(start.point(), end.point(), Ink.line(Ink.FAINT, 0.8)),
                        Patch.line(start, end, 1));
            }
        }
    }

    private Sheet draw(Step.AtJoint step, List<BodyForce> forces) {
        sheet.reach(Patch.box(Place.ORIGIN, 2.2 * MEMBER, 1.4 * MEMBER, 0));
        forces.stream().filter(f -> !f.isFree()).forEach(this::member);
        forces.stream().filter(BodyForce::isFree).forEach(this::other);
        joint(step.joint());
        inclines.draw();
        sheet.settle();
        new AxesMark(sheet).draw(step.axes());
        return sheet;
    }

    private void joint(String name) {
        sheet.add(Layer.JOINTS, new Element.Circle(Place.ORIGIN.point(), 4.5, Style.fill(Ink.BLACK)),
                Patch.disc(Place.ORIGIN, 5));
        Caption caption = Caption.of(TrussSketch.shortened(name), SIZE, Ink.BLACK).inBold();
        sheet.label(new Label(caption, Spots.around(Place.ORIGIN, caption, Place.towards(135)), name, 0));
    }

    private void stub(String member, Place way) {
        sheet.line(Layer.MEMBERS, way.times(GAP), way.times(OTHER), Ink.FAINT, 2.6);
        Caption caption = Caption.of(member, SIZE - 1, Ink.MEMBER);
        sheet.label(new Label(caption, Spots.atArrow(way.times(GAP), way.times(OTHER), caption), member, 0));
    }

    /** On the member's own side: outwards for a pull, inwards for a push, a dashed end for nothing. */
    private void member(BodyForce force) {
        Place near = force.side().times(GAP);
        Place far = force.side().times(GAP + MEMBER * size);
        if (force.dashed()) {
            far = force.side().times(GAP + MEMBER * size * 0.6);
            sheet.add(Layer.FORCES, new Element.Line(near.point(), far.point(), Ink.line(force.colour(), 1.6)
                    .dashed(6, 5)), Patch.line(near, far, 1.6));
        } else if (force.way().dot(force.side()) > 0) {
            sheet.arrow(near, far, force.colour(), 2.2);
        } else {
            sheet.arrow(far, near, force.colour(), 2.2);
        }
        name(force, near, far);
    }

    /** Where there is most room. */
    private void other(BodyForce force) {
        if (force.way().norm() > 0) {
            ArrowPlacer.Line line = arrows.place(Place.ORIGIN, force.way(), OTHER * size);
            sheet.arrow(line.tail(), line.tip(), force.colour(), 2.2);
            name(force, line.near(), line.far());
        }
    }

    private void name(BodyForce force, Place near, Place far) {
        Caption caption = Caption.of(force.label(), SIZE, force.colour());
        sheet.label(new Label(caption, Spots.atArrow(near, far, caption), force.key(), 0));
        inclines.add(force, near, far);
    }

    private static Vector position(TrussModel truss, String joint) {
        return truss.joint(joint).map(j -> TrussLayout.vector(truss, j)).orElseThrow();
    }

    private static String axesInWords(Step.Axes axes) {
        if (!(axes instanceof Step.Axes.Turned turned)) {
            return "";
        }
        String along = turned.along() instanceof Source.OfMember of ? "member " + of.member().name() : "a force";
        return " The axes are turned by " + Math.round(turned.degrees()) + "\u00b0, so that x\u2032 lies along " + along
                + ".";
    }
}
