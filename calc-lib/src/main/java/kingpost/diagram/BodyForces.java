package kingpost.diagram;

import java.util.ArrayList;
import java.util.List;
import kingpost.statics.JointForce;
import kingpost.statics.Source;
import kingpost.statics.Step;
import kingpost.statics.Vector;
import kingpost.svg.Span;
import kingpost.truss.Load;
import kingpost.truss.Member;
import kingpost.truss.TrussModel;

/** Turns the forces of a joint into what is drawn: symbols for unknowns, values and true senses for the rest. */
final class BodyForces implements Source.Visitor<List<BodyForce>> {

    private final ForceText text;
    private final FreeBodyFigure.Shows shows;
    private final boolean turned;
    private JointForce force;

    /** @param axes loads given by components are drawn so only along axes that are not turned */
    BodyForces(TrussModel truss, FreeBodyFigure.Shows shows, Step.Axes axes) {
        this.text = new ForceText(truss);
        this.shows = shows;
        this.turned = axes instanceof Step.Axes.Turned;
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
        Place side = TrussLayout.way(force.along());
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
        Place positive = TrussLayout.way(force.along());
        if (!isTold()) {
            return List.of(new BodyForce(ForceName.of(source), source.name(), Ink.UNKNOWN, positive, Place.ORIGIN,
                    force.along(), false, "The unknown reaction " + source.name() + " is drawn "
                    + TrussWords.way(positive) + "."));
        }
        if (force.value() == 0) {
            return List.of();
        }
        List<Span> label = new ArrayList<>(ForceName.of(source));
        label.add(Span.of(": " + text.ofNewtons(force.value())));
        Place way = positive.times(force.value() < 0 ? -1 : 1);
        return List.of(new BodyForce(label, source.name(), Ink.REACTION, way, Place.ORIGIN, force.along(), false,
                "The reaction " + source.name() + " is " + text.ofNewtons(force.value()) + " " + TrussWords.way(way)
                + "."));
    }

    @Override
    public List<BodyForce> load(Source.OfLoad source) {
        Load load = source.load();
        if (load instanceof Load.Components && !turned) {
            return LoadArrow.of(load).stream()
                    .map(a -> load(text.given(a.size()), new Vector(a.way().x(), -a.way().y(), 0))).toList();
        }
        return List.of(load(text.given(load.magnitude()), force.along()));
    }

    private static BodyForce load(String size, Vector along) {
        Place way = TrussLayout.way(along);
        return new BodyForce(List.of(Span.of(size)), "load", Ink.BLACK, way, Place.ORIGIN, along, false,
                "A load of " + size + " acts " + TrussWords.way(way) + ".");
    }
}
