package kingpost.diagram;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import kingpost.statics.JointForce;
import kingpost.statics.Source;
import kingpost.statics.Step;
import kingpost.statics.Vector;
import kingpost.svg.Span;
import kingpost.truss.Load;
import kingpost.truss.Member;
import kingpost.truss.TrussModel;
import kingpost.units.Quantity;

/** Turns the forces of a joint into what is drawn: symbols for unknowns, values and true senses for the rest. */
final class BodyForces implements Source.Visitor<List<BodyForce>> {

    private final ForceText text;
    private final FreeBodyFigure.Shows shows;
    private final boolean turned;
    private final View view;
    private JointForce force;

    /** @param axes loads given by components are drawn so only along axes that are not turned */
    BodyForces(TrussModel truss, FreeBodyFigure.Shows shows, Step.Axes axes) {
        this.text = new ForceText(truss);
        this.shows = shows;
        this.turned = axes instanceof Step.Axes.Turned;
        this.view = View.FLAT;
    }

    /** Forces at a joint of a space truss as a view shows them. */
    BodyForces(TrussModel truss, FreeBodyFigure.Shows shows, View view) {
        this.text = new ForceText(truss);
        this.shows = shows;
        this.turned = false;
        this.view = view;
    }

    List<BodyForce> of(JointForce joint) {
        force = joint;
        return joint.source().accept(this);
    }

    /** Whether its value is written; otherwise its symbol stands in the sense that counts as positive. */
    private boolean isTold() {
        return switch (shows) {
            case WORKING -> force.known();
            case SYMBOLS -> false;
            case ANSWERS -> !Double.isNaN(force.value());
        };
    }

    @Override
    public List<BodyForce> member(Source.OfMember source) {
        Member member = source.member();
        Place side = view.way(force.along());
        if (!isTold()) {
            return List.of(new BodyForce(ForceName.of(source), "F_" + member.name(), Ink.UNKNOWN, side, side,
                    force.along(), false, "The unknown force of member " + member.name()
                    + " is drawn as tension, away from the joint."));
        }
        MemberStyle style = force.value() == 0 ? MemberStyle.ZERO
                : force.value() > 0 ? MemberStyle.TENSION : MemberStyle.COMPRESSION;
        String size = style == MemberStyle.ZERO ? "0" : text.ofNewtons(force.value()) + " " + style.letter();
        String words = switch (style) {
            case TENSION -> " pulls on it with ";
            case COMPRESSION -> " pushes on it with ";
            default -> " has no force: ";
        };
        return List.of(new BodyForce(List.of(Span.of(member.name() + ": " + size)), member.name(), style.colour(),
                style == MemberStyle.COMPRESSION ? side.times(-1) : side, side, force.along(),
                style == MemberStyle.ZERO, "Member " + member.name() + words + text.ofNewtons(force.value()) + "."));
    }

    @Override
    public List<BodyForce> reaction(Source.OfReaction source) {
        Place positive = view.way(force.along());
        if (!isTold()) {
            return List.of(new BodyForce(ForceName.of(source), source.name(), Ink.UNKNOWN, positive, Place.ORIGIN,
                    force.along(), false, "The unknown reaction " + source.name() + " is drawn "
                    + TrussWords.way(force.along()) + "."));
        }
        if (force.value() == 0) {
            return List.of();
        }
        List<Span> label = new ArrayList<>(ForceName.of(source));
        label.add(Span.of(": " + text.ofNewtons(force.value())));
        Place way = positive.times(force.value() < 0 ? -1 : 1);
        return List.of(new BodyForce(label, source.name(), Ink.REACTION, way, Place.ORIGIN, force.along(), false,
                "The reaction " + source.name() + " is " + text.ofNewtons(force.value()) + " "
                + TrussWords.way(force.along().times(Math.signum(force.value())))
                + "."));
    }

    @Override
    public List<BodyForce> load(Source.OfLoad source) {
        Load load = source.load();
        if (load instanceof Load.Components && !turned) {
            return view == View.FLAT ? LoadArrow.of(load).stream()
                    .map(a -> load(text.given(a.size()), new Vector(a.way().x(), -a.way().y(), 0))).toList()
                    : parts(load);
        }
        return List.of(load(text.given(load.magnitude()), force.along()));
    }

    private List<BodyForce> parts(Load load) {
        List<Quantity> parts = List.of(load.fx(), load.fy(), load.fz());
        List<Vector> axes = List.of(Vector.X, Vector.Y, Vector.Z);
        return IntStream.range(0, 3).filter(i -> parts.get(i).getValue() != 0)
                .mapToObj(i -> load(text.given(parts.get(i)), axes.get(i).times(Math.signum(parts.get(i).getValue()))))
                .toList();
    }

    private BodyForce load(String size, Vector along) {
        Place way = view.way(along);
        return new BodyForce(List.of(Span.of(size)), "load", Ink.BLACK, way, Place.ORIGIN, along, false,
                "A load of " + size + " acts " + TrussWords.way(along) + ".");
    }
}
