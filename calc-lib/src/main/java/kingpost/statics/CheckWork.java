package kingpost.statics;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import kingpost.statics.AxisEquation.Role;
import kingpost.statics.BodyEquation.Kind;

/** Checks a finished solution: equations not used, the truss as one body, and every force by a second method. */
final class CheckWork {

    private final Network network;
    private final Inspections inspections;
    private final Route route;
    private final Values values;
    private final Body body;
    private final double scale;
    private double worst;

    CheckWork(Network network, Inspections inspections, Route route, Values values, Body body) {
        this.network = network;
        this.inspections = inspections;
        this.route = route;
        this.values = values;
        this.body = body;
        this.scale = scale();
    }

    Checks check(List<Step> steps, Determinacy.Determinate determinate) {
        List<Checks.UnusedEquation> unused = unused(steps);
        unused.forEach(u -> measure(u.equation().residual(), scale));
        List<BodyEquation> whole = wholeBody();
        whole.forEach(e -> measure(e.residual(),
                e.kind() instanceof Kind.Along ? scale : scale * body.extentInMetres()));
        SolutionOrder order = SolutionOrder.of(network, route.moves());
        EquilibriumSystem system = new EquilibriumSystem(network, order);
        Map<String, Checks.SecondAnswer> second = second(system.solve());
        return new Checks(unused, whole, second, scale, worst, determinate.condition());
    }

    private void measure(double residual, double against) {
        worst = Math.max(worst, Math.abs(residual) / against);
    }

    private double scale() {
        double scale = 0;
        for (int u = 0; u < network.unknowns(); u++) {
            scale = Math.max(scale, Math.abs(values.get(u)));
        }
        for (Body.Force force : body.forces()) {
            scale = Math.max(scale, force.load());
        }
        return scale == 0 ? 1 : scale;
    }

    private List<Checks.UnusedEquation> unused(List<Step> steps) {
        List<Checks.UnusedEquation> unused = new ArrayList<>();
        boolean[] worked = new boolean[network.joints()];
        for (Step step : steps) {
            if (step instanceof Step.AtJoint at) {
                at.equations().forEach(e -> addIfCheck(at.joint(), e, unused));
                worked[network.number(at.joint())] |= at.equations().size() == network.dimension();
            } else if (step instanceof Step.JointsTogether together) {
                together.equations().forEach(e -> addIfCheck(e.joint(), e.equation(), unused));
                together.joints().forEach(j -> worked[network.number(j)] = true);
            }
        }
        for (int j = 0; j < network.joints(); j++) {
            if (!worked[j] && !inspections.isUsedUp(j)) {
                for (AxisEquation e : JointWork.checks(network, route.progress(), values, j)) {
                    unused.add(new Checks.UnusedEquation(network.name(j), e));
                }
            }
        }
        return unused;
    }

    private static void addIfCheck(String joint, AxisEquation equation, List<Checks.UnusedEquation> unused) {
        if (equation.role() instanceof Role.Check) {
            unused.add(new Checks.UnusedEquation(joint, equation));
        }
    }

    private List<BodyEquation> wholeBody() {
        int joint = network.reactions() == 0 ? 0 : network.firstJoint(network.members());
        return BodyWork.wholeChecks(network, body, values, joint);
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
