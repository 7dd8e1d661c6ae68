package kingpost.notebook;

import static kingpost.notebook.Notebook.NEAR;
import static kingpost.notebook.Notebook.slope;
import static kingpost.units.StructuralUnits.kN;
import static kingpost.units.StructuralUnits.m;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import kingpost.units.CalculationException;
import org.junit.jupiter.api.Test;

/** The words of the notebook for a space truss: the same as for a plane one. */
class SpaceTrussTest {

    private static Truss bracket() {
        return Truss.named("Wall bracket").units(m, kN).joint("A", 0, 0, 0).joint("B", 0, 0, 3).joint("C", 0, 4, 1.5)
                .joint("T", 2, 0, 1.5).members("AT BT CT").ball("A").ball("B").ball("C").load("T", 8, Notebook.DOWN)
                .load("T", 2, NEAR).load("T", 3, slope(0, 3, -4)).build();
    }

    @Test
    void answersWithTheSameWords() {
        Truss truss = bracket();
        TrussSolution solved = truss.solve();

        // moments about the line AB give the tie CT: its vertical part carries 8 - 1.8 = 6.2 kN
        assertEquals(6.2 * Math.sqrt(20) / 4, solved.force("CT").in(kN), 1e-9);
        assertEquals(6.2, solved.reaction("C").y().in(kN), 1e-9);
        assertEquals(-(2 - 2.4), solved.reaction("A").z().add(solved.reaction("B").z()).add(solved.reaction("C").z())
                .in(kN), 1e-9);
        assertTrue(solved.checks().toString().contains("The answers hold"));
        assertTrue(truss.determinacy().toString().contains("three equations"));
        assertTrue(solved.derivation().toString().contains("cosine z"));
        assertTrue(solved.joint("T").toString().contains("cut free, in four views"));
        assertTrue(truss.diagram().toString().contains("Wall bracket"));
    }

    @Test
    void whatIsForThePlaneSaysSo() {
        Truss truss = bracket();
        assertEquals("Section: Wall bracket is a space truss, and sections are worked in plane trusses; use solve(), or s.joint(\"A\")"
                + " for one joint.",
                assertThrows(CalculationException.class, () -> truss.section("AT BT CT")).getMessage());
        ReactionForce reaction = truss.solve().reaction("A");
        assertTrue(assertThrows(CalculationException.class, reaction::direction).getMessage()
                .startsWith("Reaction at A: it has a part along z of "));
    }
}
