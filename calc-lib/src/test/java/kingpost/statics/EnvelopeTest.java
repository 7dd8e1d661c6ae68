package kingpost.statics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import kingpost.truss.Direction;
import kingpost.truss.LoadCases.Combination;
import kingpost.truss.Measured;
import kingpost.truss.TrussBuilder;
import kingpost.truss.TrussModel;
import kingpost.units.CalculationException;
import org.junit.jupiter.api.Test;

class EnvelopeTest {

    private static TrussBuilder<TrussModel> roof() {
        return Trusses.named("Roof").joint("A", 0, 0).joint("B", 4, 3).joint("C", 8, 6).joint("D", 12, 3)
                .joint("E", 16, 0).joint("F", 8, 0).members("AB BC CD DE AF FE BF DF CF").pin("A").roller("E")
                .loadCase("dead").selfWeight(0.2).load("F", 4, Direction.DOWN)
                .loadCase("snow").roofLoad("A B C D E", 3, Measured.ON_PLAN)
                .loadCase("wind").windLoad("A B C", -2.5).windLoad("C D E", -1.5);
    }

    private static TrussModel combined() {
        return roof().combination("1.2 dead + 1.6 snow").combination("uplift", "0.9 dead + 1.5 wind")
                .combination("dead + 0.5 snow - wind").build();
    }

    /** A combination is solved again from its factored loads, as one load. */
    @Test
    void addsUpToWhatTheFactoredLoadsGive() {
        TrussModel truss = combined();
        Envelope envelope = Envelope.of(truss);
        for (int c = 0; c < envelope.combinations().size(); c++) {
            Combination combination = envelope.combinations().get(c);
            Solution alone = Solver.solve(truss.under(combination.name(), Envelope.loads(truss, combination)));
            for (int i = 0; i < truss.members().size(); i++) {
                assertEquals(alone.members().get(i).force(), envelope.members().get(i).byColumn().get(c),
                        1e-9 * alone.checks().scale(), combination.name() + " " + truss.members().get(i).name());
            }
            for (int i = 0; i < alone.reactions().size(); i++) {
                assertEquals(alone.reactions().get(i).force(), envelope.reactions().get(i).byColumn().get(c),
                        1e-9 * alone.checks().scale());
            }
        }
    }

    /** Snow on plan, 3 kN a metre on 16 m: 24 kN at each end, and less the 6 kN that stand over it 18 kN to the rafter. */
    @Test
    void tellsWhichCombinationGoverns() {
        Envelope envelope = Envelope.of(combined());
        Envelope.Range<?> rafter = envelope.members().get(0);

        assertEquals(-18e3 / 0.6, rafter.byCase().get(1), 1e-6);
        assertEquals("1.2 dead + 1.6 snow", rafter.lowest().orElseThrow().governs());
        assertEquals(rafter.byColumn().get(0), rafter.lowest().orElseThrow().force());
        assertEquals("uplift", rafter.highest().orElseThrow().governs());
        assertTrue(rafter.highest().orElseThrow().force() > 0);
        assertEquals(List.of("1.2 dead + 1.6 snow", "uplift", "dead + 0.5 snow - wind"), envelope.columns());
    }

    @Test
    void comparesTheCasesWhereNoCombinationIsWritten() {
        Envelope envelope = Envelope.of(roof().build());

        assertEquals(List.of("dead", "snow", "wind"), envelope.columns());
        assertEquals(envelope.members().get(0).byCase(), envelope.members().get(0).byColumn());
    }

    @Test
    void leavesOutAnExtremeThatNeverComes() {
        Envelope envelope = Envelope.of(Trusses.named("Hanger").joint("A", 0, 3).joint("B", 4, 3).joint("C", 2, 0)
                .members("AC BC AB").pin("A").roller("B").loadCase("lamp").load("C", 2, Direction.DOWN).build());

        assertTrue(envelope.members().get(0).lowest().isEmpty());
        assertEquals("lamp", envelope.members().get(0).highest().orElseThrow().governs());
    }

    @Test
    void asksForLoadCases() {
        assertEquals("Envelope: Canopy has no load cases; write loadCase(\"dead\") or the like before the loads of each.",
                assertThrows(CalculationException.class, () -> Envelope.of(Trusses.canopy())).getMessage());
    }
}
