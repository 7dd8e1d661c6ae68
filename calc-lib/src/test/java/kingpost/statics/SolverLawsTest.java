package kingpost.statics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.DoubleAccumulator;
import kingpost.exact.Surd;
import kingpost.truss.TrussModel;
import kingpost.units.Quantity;
import kingpost.units.StructuralUnits;
import org.junit.jupiter.api.Test;

/** What holds for every truss, tried on seeded random ones. */
class SolverLawsTest {

    /** {@code -Dkingpost.randomTrusses=10000} tries more. */
    private static final int COUNT = Integer.getInteger("kingpost.randomTrusses", 1000);

    @Test
    void stepsAgreeWithFractionsOnRandomTrusses() {
        AtomicInteger answers = new AtomicInteger();
        DoubleAccumulator worst = new DoubleAccumulator(Math::max, 0);
        long trusses = RandomTrusses.simple(COUNT, 4711).peek(truss -> {
            Solution solution = Solver.solve(truss);
            assertTrue(solution.checks().pass(), truss::name);
            compare(solution, answers, worst);
        }).toList().size();
        assertEquals(COUNT, trusses);
        System.out.println(answers + " answers of " + trusses + " random trusses: in doubles at most " + worst
                + " of the largest force from the exact fraction");
    }

    private static void compare(Solution solution, AtomicInteger answers, DoubleAccumulator worst) {
        double scale = solution.checks().scale();
        for (Step step : solution.steps()) {
            for (Step.Answer answer : step.answers()) {
                double exact = newtons(exact(solution, answer.unknown()));
                assertEquals(exact, answer.value(), 1e-9 * scale, () -> solution.truss().name() + " " + answer);
                answers.incrementAndGet();
                worst.accumulate(Math.abs(exact - answer.value()) / scale);
                assertEquals(exact == 0, answer.value() == 0, () -> solution.truss().name() + " " + answer);
            }
        }
    }

    private static Surd exact(Solution solution, Source unknown) {
        if (unknown instanceof Source.OfMember member) {
            return solution.members().stream().filter(r -> r.member().equals(member.member())).findFirst()
                    .orElseThrow().exact().orElseThrow();
        }
        return solution.reactions().stream().filter(r -> r.reaction().equals(unknown)).findFirst().orElseThrow()
                .exact().orElseThrow();
    }

    private static double newtons(Surd kilonewtons) {
        return Quantity.of(kilonewtons.doubleValue(), StructuralUnits.kN).in(StructuralUnits.N);
    }
}
