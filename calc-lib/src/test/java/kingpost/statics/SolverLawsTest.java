package kingpost.statics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.concurrent.atomic.AtomicInteger;
import kingpost.exact.Surd;
import kingpost.truss.TrussModel;
import kingpost.units.Quantity;
import kingpost.units.StructuralUnits;
import org.junit.jupiter.api.Test;

/** What holds for every truss, tried on seeded random ones. */
class SolverLawsTest {

    private static final int COUNT = Integer.getInteger("kingpost.randomTrusses", 1000);

    @Test
    void stepsAgreeWithFractionsOnRandomTrusses() {
        AtomicInteger solved = new AtomicInteger();
        RandomTrusses.simple(COUNT, 4711).forEach(truss -> {
            Solution solution = solve(truss);
            if (solution != null) {
                solved.incrementAndGet();
                assertTrue(solution.checks().pass(), truss::name);
                compare(solution);
            }
        });
        assertTrue(solved.get() > COUNT * 8 / 10, () -> "only " + solved + " are simple enough for joints alone");
    }

    private static void compare(Solution solution) {
        double scale = solution.checks().scale();
        for (Step step : solution.steps()) {
            for (Step.Answer answer : step.answers()) {
                double exact = newtons(exact(solution, answer.unknown()));
                assertEquals(exact, answer.value(), 1e-9 * scale, () -> solution.truss().name() + " " + answer);
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

    /** Null where joints get stuck, which is another test's business. */
    private static Solution solve(TrussModel truss) {
        try {
            return Solver.solve(truss);
        } catch (NotSolvable stuck) {
            assertTrue(!stuck.stuckAt().isEmpty(), stuck::getMessage);
            return null;
        }
    }
}
