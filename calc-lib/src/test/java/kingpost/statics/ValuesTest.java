package kingpost.statics;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import kingpost.truss.Direction;
import kingpost.truss.TrussModel;
import org.junit.jupiter.api.Test;

/** What is kept of a result, and what is taken for rounding. */
class ValuesTest {

    private static final double EPS = Math.ulp(1.0);
    private static final int AB = 0;
    private static final int BD = 3;

    private static Values inexact() {
        return Values.of(new Network(Trusses.canopy()), Optional.empty());
    }

    @Test
    void knowsNothingAtFirst() {
        assertEquals(Double.NaN, inexact().get(AB));
    }

    @Test
    void addsTheRoundingOfAResultToWhatItCameFrom() {
        Values values = inexact();
        values.put(AB, 5, 100, 0.25);

        assertEquals(5, values.get(AB));
        assertEquals(0.25 + 400 * EPS, values.bound(AB));
    }

    @Test
    void writesRoundingAsZeroUpToEightTimesItsBound() {
        Values values = inexact();
        values.put(AB, 32 * EPS, 1, 0);
        assertEquals(0, values.get(AB));

        values.put(AB, -32 * EPS, 1, 0);
        assertEquals(0, values.get(AB));

        values.put(AB, 33 * EPS, 1, 0);
        assertEquals(33 * EPS, values.get(AB));

        values.put(AB, 33 * EPS, 1, 100 * EPS);
        assertEquals(0, values.get(AB));
    }

    @Test
    void keepsAForceThatIsNoTinyPartOfWhatItCameFromWhateverTheBound() {
        Values values = inexact();
        values.put(AB, 2e-9, 1, 1e-6);
        assertEquals(2e-9, values.get(AB));

        values.put(AB, 1e-9, 1, 1e-6);
        assertEquals(0, values.get(AB));

        values.put(AB, 2e-9, 4, 1e-6);
        assertEquals(0, values.get(AB));
    }

    @Test
    void trustsTheExactSolutionAboutZeros() {
        Network network = new Network(Trusses.canopy());
        Values values = Values.of(network, Route.of(network, new Inspections(network)));
        values.put(BD, 7, 10, 0);
        values.put(AB, 1e-300, 1, 1);

        assertEquals("BD", network.unknownName(BD));
        assertEquals(0, values.get(BD));
        assertEquals(1e-300, values.get(AB));
    }

    @Test
    void givesAMemberInLineTheSameForceAndBound() {
        Values values = inexact();
        values.put(AB, 5, 100, 0.25);
        values.same(1, AB);

        assertEquals(5, values.get(1));
        assertEquals(values.bound(AB), values.bound(1));
    }

    /** A roller at an odd angle has no exact route; the idle member's force is still exactly zero. */
    @Test
    void leavesNoRoundingInAMemberThatCarriesNothing() {
        TrussModel truss = Trusses.named("Odd").joint("A", 0, 0).joint("B", 3, 0).joint("C", 6, 0).joint("D", 3, 2.2)
                .joint("E", 4.5, 1.1).members("AB BC AD BD CE DE BE").pin("A").roller("C", 77)
                .load("D", 12, Direction.at(251)).build();

        assertEquals(0, Answers.force(Solver.solve(truss), "BE"));
    }
}
