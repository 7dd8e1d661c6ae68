package kingpost.statics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntToDoubleFunction;
import kingpost.truss.TrussModel;
import org.junit.jupiter.api.Test;

/** The checks find a wrong force, wherever it is. */
class CheckWorkTest {

    private static final Solution RIGHT = Solver.solve(Trusses.canopy());

    private static Checks checks(List<Step> steps, IntToDoubleFunction slip) {
        return checks(RIGHT, steps, slip);
    }

    /** The checks of a solution's forces with something added to each. */
    private static Checks checks(Solution right, List<Step> steps, IntToDoubleFunction slip) {
        TrussModel truss = right.truss();
        Network network = new Network(truss);
        Inspections inspections = new Inspections(network);
        Values values = Values.of(network, Optional.empty());
        List<Double> forces = new ArrayList<>();
        right.members().forEach(m -> forces.add(m.force()));
        right.reactions().forEach(r -> forces.add(r.force()));
        for (int u = 0; u < network.unknowns(); u++) {
            values.put(u, forces.get(u) + slip.applyAsDouble(u), 0, 0);
        }
        return new CheckWork(network, inspections, Route.of(network, inspections), values, Body.whole(network))
                .check(steps, right.determinacy());
    }

    @Test
    void passesWhatIsRight() {
        Checks checks = checks(RIGHT.steps(), u -> 0);

        assertTrue(checks.pass(), () -> "worst " + checks.worst());
        assertEquals(12_000, checks.scale());
    }

    @Test
    void findsAWrongForceInAnyMemberOrReaction() {
        for (int wrong = 0; wrong < 8; wrong++) {
            int u = wrong;
            Checks checks = checks(List.of(), v -> v == u ? 600 : 0);

            assertFalse(checks.pass());
            assertTrue(checks.worst() >= 0.05 * (1 - 1e-9), "unknown " + u + ": " + checks.worst());
            assertEquals(600, checks.secondMethod().values().stream().mapToDouble(a -> Math.abs(a.first() - a.second()))
                    .max().orElseThrow(), 1e-9);
        }
    }

    @Test
    void findsAWrongReactionByTheWholeTruss() {
        Checks checks = checks(List.of(), u -> u == 7 ? 600 : 0);

        assertEquals(600, checks.loadsAndReactions().get(1).residual(), 1e-9);
        assertEquals(600 * 6, checks.loadsAndReactions().get(2).residual(), 1e-8);
    }

    @Test
    void findsAWrongMemberByTheJointsThatWereNotWorked() {
        Checks checks = checks(List.of(), u -> u == 0 ? 600 : 0);

        assertEquals(600, checks.unused().stream().filter(e -> e.joint().equals("A"))
                .mapToDouble(e -> Math.abs(e.equation().residual())).max().orElseThrow(), 1e-9);
    }

    @Test
    void measuresAnEquationThatAStepLeftOver() {
        Solution right = Solver.solve(PublishedCase.of("MJ-02").truss());
        double scale = right.checks().scale();
        List<Step> steps = right.steps().stream().map(step -> spoilt(step, 2 * scale)).toList();

        Checks checks = checks(right, steps, u -> 0);

        assertFalse(checks.pass());
        assertEquals(2, checks.worst(), 1e-9);
    }

    /** The step with each of its left-over equations out of balance. */
    private static Step spoilt(Step step, double residual) {
        if (!(step instanceof Step.AtJoint at)) {
            return step;
        }
        List<AxisEquation> equations = at.equations().stream().map(e -> e.role() instanceof AxisEquation.Role.Check
                ? new AxisEquation(e.axis(), e.terms(), e.role(), residual) : e).toList();
        return new Step.AtJoint(at.number(), at.joint(), at.selection(), at.forces(), at.omitted(), at.axes(), equations,
                at.answers());
    }
}
