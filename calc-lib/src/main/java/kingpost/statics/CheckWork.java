package kingpost.statics;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import kingpost.statics.AxisEquation.Axis;
import kingpost.statics.AxisEquation.Role;
import kingpost.statics.BodyEquation.Kind;

/** Checks a finished solution: equations not used, the truss as one body, and every force by a second method. */
final class CheckWork {

    private final Network network;
    private final Inspections inspections;
    private final Route route;
    private final Values values;
    private final WholeBody body;
    private final double scale;
    private double worst;

    CheckWork(Network network, Inspections inspections, Route route, Values values, WholeBody body) {
        this.network = network;
        this.inspections = inspections;
        this.route = route;
        this.values = values;
        this.body = body;
        this.scale = scale();
    }

    Checks check(List<Step> steps) {
        List<Checks.UnusedEquation> unused = unused(steps);
        unused.forEach(u -> measure(u.equation().residual(), scale));
        List<BodyEquation> whole = wholeBody();
        whole.forEach(e -> measure(e.residual(),
                e.kind() instanceof Kind.Moment ? scale * body.extentInMetres() : scale));
        SolutionOrder order = SolutionOrder.of(network, route.joints().turns());
        EquilibriumSystem system = new EquilibriumSystem(network, order);
        Map<String, Checks.SecondAnswer> second = second(system.solve());
        return new Checks(unused, whole, second, scale, worst, system.condition());
    }

    private void measure(double residual, double against) {
        worst = Math.max(worst, Math.abs(residual) / against);
    }

    private double scale() {
        double scale = 0;
        for (int u = 0; u < network.unknowns(); u++) {
            scale = Math.max(scale, Math.abs(values.get(u)));
        }
        for (WholeBody.Force force : body.forces()) {
            scale = Math.max(scale, force.load());
        }
        return scale == 0 ? 1 : scale;
    }

    private List<Checks.UnusedEquation> unused(List<Step> steps) {
        List<Checks.UnusedEquation> unused = new ArrayList<>();
        boolean[] worked = new boolean[network.joints()];
        for (Step step : steps) {
            if (step instanceof Step.AtJoint at) {
                worked[network.number(at.joint())] = true;
                at.equations().stream().filter(e -> e.role() instanceof Role.Check)
                        .forEach(e -> unused.add(new Checks.UnusedEquation(at.joint(), e)));
            }
        }
        for (int j = 0; j < network.joints(); j++) {
            if (!worked[j] && !inspections.isUsedUp(j)) {
                for (AxisEquation e : JointWork.checks(network, route.joints().progress(), values, j)) {
                    unused.add(new Checks.UnusedEquation(network.name(j), e));
                }
            }
        }
        return unused;
    }

    private List<BodyEquation> wholeBody() {
        int joint = network.reactions() == 0 ? 0 : network.firstJoint(network.members());
        return List.of(
                body.equation(new Kind.Along(new Axis("x", Vector.X)), new Role.Check(), values, List.of()),
                body.equation(new Kind.Along(new Axis("y", Vector.Y)), new Role.Check(), values, List.of()),
                body.equation(new Kind.Moment(network.name(joint), network.place(joint), List.of()), new Role.Check(),
                        values, List.of()));
    }

    private Map<String, Checks.SecondAnswer> second(double[] forces) {
        Map<String, Checks.SecondAnswer> second = new LinkedHashMap<>();
        for (int u = 0; u < network.unknowns(); u++) {
            measure(values.get(u) - forces[u], scale);
            second.put(network.unknownName(u), new Checks.SecondAnswer(values.get(u), forces[u]));
        }
        return second;
    }
}
