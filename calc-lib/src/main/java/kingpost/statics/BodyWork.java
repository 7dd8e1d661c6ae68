package kingpost.statics;

import java.util.ArrayList;
import java.util.List;
import kingpost.statics.AxisEquation.Axis;
import kingpost.statics.AxisEquation.Role;
import kingpost.statics.BodyEquation.Kind;

/** Puts numbers into the equations of a body as planned, one unknown after the other, and adds one as a check. */
final class BodyWork {

    private final Body body;
    private final Values values;
    private final List<BodyEquation> equations = new ArrayList<>();
    private final List<Step.Answer> answers = new ArrayList<>();
    private final boolean isInSpace;

    BodyWork(Body body, Values values) {
        this.body = body;
        this.values = values;
        this.isInSpace = body.isInSpace();
    }

    /** Solves as planned. */
    BodyWork solve(List<BodyPlan.Planned> plan) {
        plan.forEach(this::solve);
        return this;
    }

    /**
     * Adds a moment about a joint where an unknown acts and that no equation was taken about yet, as a check; in space
     * the checks of the whole truss do as much.
     */
    BodyWork check() {
        if (isInSpace) {
            return this;
        }
        for (Body.Force force : body.unknowns()) {
            boolean fresh = equations.stream().noneMatch(e -> e.kind() instanceof Kind.Moment m
                    && m.joint().equals(force.name()));
            Kind kind = new Kind.Moment(force.name(), force.at(), List.of());
            if (fresh && isAllKnown(kind)) {
                equations.add(body.equation(kind, new Role.Check(), values, List.of()));
                return this;
            }
        }
        return this;
    }

    private boolean isAllKnown(Kind kind) {
        List<Body.Force> inIt = body.forces().stream().filter(f -> body.factor(f, kind) != 0).toList();
        return !inIt.isEmpty() && inIt.stream().noneMatch(f -> Double.isNaN(Body.value(f, values)));
    }

    /**
     * Sums along x and y and moments about a joint, each with every value put in; in space three sums, and moments
     * about three lines through the joint.
     */
    static List<BodyEquation> wholeChecks(Network network, Body body, Values values, int joint) {
        if (network.dimension() == 3) {
            List<Kind> kinds = new ArrayList<>();
            JointAxes.conventional(network).forEach(axis -> kinds.add(new Kind.Along(axis)));
            JointAxes.conventional(network).forEach(axis -> kinds.add(new Kind.MomentAbout(network.name(joint), "", axis,
                    network.place(joint), List.of())));
            return kinds.stream().map(kind -> body.equation(kind, new Role.Check(), values, List.of())).toList();
        }
        return List.of(
                body.equation(new Kind.Along(new Axis("x", Vector.X)), new Role.Check(), values, List.of()),
                body.equation(new Kind.Along(new Axis("y", Vector.Y)), new Role.Check(), values, List.of()),
                body.equation(new Kind.Moment(network.name(joint), network.place(joint), List.of()), new Role.Check(),
                        values, List.of()));
    }

    List<BodyEquation> equations() {
        return equations;
    }

    List<Step.Answer> answers() {
        return answers;
    }

    private void solve(BodyPlan.Planned planned) {
        Kind kind = planned.kind();
        Body.Force only = planned.unknown();
        double sum = 0;
        double spread = 0;
        double bound = 0;
        for (Body.Force force : body.forces()) {
            double factor = force.unknown() == only.unknown() ? 0 : body.factor(force, kind);
            if (factor != 0) {
                double part = factor * Body.value(force, values);
                sum += part;
                spread += Math.abs(part);
                bound += force.unknown() < 0 ? 0 : Math.abs(factor) * values.bound(force.unknown());
            }
        }
        double pivot = body.factor(only, kind);
        values.put(only.unknown(), -sum / pivot, spread / Math.abs(pivot), bound / Math.abs(pivot));
        equations.add(body.equation(kind, new Role.Gives(only.source()), values, List.of(only.unknown())));
        answers.add(new Step.Answer(only.source(), values.get(only.unknown())));
    }
}
