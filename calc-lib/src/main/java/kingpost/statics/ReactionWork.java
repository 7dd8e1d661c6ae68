package kingpost.statics;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import kingpost.statics.AxisEquation.Axis;
import kingpost.statics.AxisEquation.Role;
import kingpost.statics.BodyEquation.Kind;

/**
 * Finds three reactions in the plane from the truss as one body: a moment about the point where most of them meet,
 * then the sums, each equation with one unknown where the supports allow it.
 */
final class ReactionWork {

    private static final List<Axis> AXES = List.of(new Axis("x", Vector.X), new Axis("y", Vector.Y));

    private final Network network;
    private final WholeBody body;
    private final Values values;
    private final List<WholeBody.Force> open = new ArrayList<>();
    private final List<BodyEquation> equations = new ArrayList<>();
    private final List<Kind> used = new ArrayList<>();
    private final List<Step.Answer> answers = new ArrayList<>();

    ReactionWork(Network network, WholeBody body, Values values) {
        this.network = network;
        this.body = body;
        this.values = values;
        body.forces().stream().filter(f -> f.unknown() >= 0).forEach(open::add);
    }

    Step.Reactions work(Step.WhyReactions why) {
        while (!open.isEmpty()) {
            solve(nextEquation().orElseThrow(() -> new IllegalStateException("reactions are not independent")));
        }
        check();
        return new Step.Reactions(why, equations, answers);
    }

    /** The next equation that holds one unknown: first a moment, then a sum, then any moment that is left. */
    private Optional<Kind> nextEquation() {
        List<Kind> candidates = new ArrayList<>();
        if (equations.isEmpty()) {
            candidates.addAll(momentsAboutJoints());
        }
        AXES.forEach(axis -> candidates.add(new Kind.Along(axis)));
        candidates.addAll(momentsAboutJoints());
        candidates.addAll(momentsAboutCrossings());
        return candidates.stream().filter(kind -> unknownsIn(kind).size() == 1).findFirst();
    }

    /** Moments about the joints that are held, those where most unknowns pass first. */
    private List<Kind> momentsAboutJoints() {
        Set<Kind> kinds = new LinkedHashSet<>();
        for (WholeBody.Force force : open) {
            kinds.add(moment(force.joint(), force.at()));
        }
        return kinds.stream().sorted((a, b) -> passing(b) - passing(a)).toList();
    }

    private int passing(Kind kind) {
        return ((Kind.Moment) kind).passing().size();
    }

    private List<Kind> momentsAboutCrossings() {
        List<Kind> kinds = new ArrayList<>();
        for (int i = 0; i < open.size(); i++) {
            for (int k = i + 1; k < open.size(); k++) {
                crossing(open.get(i), open.get(k)).ifPresent(p -> kinds.add(moment(network.jointAt(p), p)));
            }
        }
        return kinds;
    }

    /** Where the lines of two forces meet. */
    private static Optional<Vector> crossing(WholeBody.Force a, WholeBody.Force b) {
        double sine = a.unit().cross(b.unit()).z();
        if (Math.abs(sine) <= Network.IN_LINE) {
            return Optional.empty();
        }
        double along = b.at().minus(a.at()).cross(b.unit()).z() / sine;
        return Optional.of(a.at().plus(a.unit().times(along)));
    }

    private Kind.Moment moment(String joint, Vector point) {
        List<Source> passing = open.stream().filter(f -> body.arm(f, point) == 0).map(WholeBody.Force::source).toList();
        return new Kind.Moment(joint, point, passing);
    }

    private List<WholeBody.Force> unknownsIn(Kind kind) {
        return open.stream().filter(f -> body.factor(f, kind) != 0).toList();
    }

    private void solve(Kind kind) {
        WholeBody.Force only = unknownsIn(kind).get(0);
        double sum = 0;
        double spread = 0;
        double bound = 0;
        for (WholeBody.Force force : body.forces()) {
            if (!open.contains(force)) {
                double factor = body.factor(force, kind);
                double part = factor * (force.unknown() < 0 ? force.load() : values.get(force.unknown()));
                sum += part;
                spread += Math.abs(part);
                bound += force.unknown() < 0 ? 0 : Math.abs(factor) * values.bound(force.unknown());
            }
        }
        double pivot = body.factor(only, kind);
        values.put(only.unknown(), -sum / pivot, spread / Math.abs(pivot), bound / Math.abs(pivot));
        equations.add(body.equation(kind, new Role.Gives(only.source()), values, List.of(only.unknown())));
        used.add(kind);
        answers.add(new Step.Answer(only.source(), values.get(only.unknown())));
        open.remove(only);
    }

    /** One equation more than was needed: a moment about a held joint not used before. */
    private void check() {
        for (WholeBody.Force force : body.forces()) {
            boolean fresh = used.stream().noneMatch(k -> k instanceof Kind.Moment m && m.joint().equals(force.joint()));
            if (force.unknown() >= 0 && fresh) {
                equations.add(body.equation(moment(force.joint(), force.at()), new Role.Check(), values, List.of()));
                return;
            }
        }
    }
}
