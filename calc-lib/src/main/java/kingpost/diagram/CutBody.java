package kingpost.diagram;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import kingpost.statics.AxisEquation;
import kingpost.statics.BodyEquation;
import kingpost.statics.BodyEquation.Kind.Moment;
import kingpost.statics.Source;
import kingpost.statics.Step;
import kingpost.truss.Joint;
import kingpost.truss.Member;
import kingpost.truss.TrussModel;

/** The part of a truss that a section keeps, with as much of the rest as a figure of it needs. */
final class CutBody {

    private final Step.AtSection step;
    private final Set<String> kept;
    private final Set<String> shown = new LinkedHashSet<>();
    private final TrussModel model;

    CutBody(TrussModel truss, Step.AtSection step) {
        this.step = step;
        this.kept = new LinkedHashSet<>(step.part());
        shown.addAll(kept);
        cut().forEach(member -> shown.addAll(List.of(member.from(), member.to())));
        moments().stream().map(Moment::joint).filter(joint -> !joint.isEmpty()).forEach(shown::add);
        model = new TrussModel(truss.name(), truss.lengthUnit(), truss.forceUnit(),
                truss.joints().stream().filter(j -> shown.contains(j.name())).toList(),
                truss.members().stream().filter(m -> shown.contains(m.from()) && shown.contains(m.to())).toList(),
                List.of(), truss.loads().stream().filter(l -> kept.contains(l.joint())).toList());
    }

    /** Joints kept, joints at which the cut members would have ended, and joints about which moments are taken. */
    TrussModel model() {
        return model;
    }

    Step.AtSection step() {
        return step;
    }

    boolean isKept(String joint) {
        return kept.contains(joint);
    }

    boolean isKept(Member member) {
        return kept.contains(member.from()) && kept.contains(member.to());
    }

    /** Members cut, those that carry nothing last. */
    List<Member> cut() {
        return java.util.stream.Stream.concat(step.cut().stream(), step.omitted().stream()).toList();
    }

    /** The end of a cut member that is kept. */
    String keptEnd(Member member) {
        return isKept(member.from()) ? member.from() : member.to();
    }

    List<Joint> gone() {
        return model.joints().stream().filter(j -> !isKept(j.name())).toList();
    }

    /** The equations that give an unknown by moments. */
    List<BodyEquation> momentEquations() {
        return step.equations().stream().filter(e -> e.kind() instanceof Moment)
                .filter(e -> !(e.role() instanceof AxisEquation.Role.Check)).toList();
    }

    /** The points about which these are taken. */
    List<Moment> moments() {
        return momentEquations().stream().map(e -> (Moment) e.kind()).distinct().toList();
    }

    /** The force of the part that comes from {@code source}. */
    Step.BodyForce force(Source source) {
        return step.forces().stream().filter(f -> f.force().source().equals(source)).findFirst().orElseThrow();
    }
}
