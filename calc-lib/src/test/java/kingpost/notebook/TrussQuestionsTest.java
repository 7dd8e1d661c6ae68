package kingpost.notebook;

import static kingpost.notebook.Notebook.ALONG_SLOPE;
import static kingpost.notebook.Notebook.DOWN;
import static kingpost.notebook.Notebook.ON_PLAN;
import static kingpost.units.StructuralUnits.kN;
import static kingpost.units.StructuralUnits.m;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import kingpost.units.CalculationException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

/** What a cell can ask a truss beyond its solution. */
class TrussQuestionsTest {

    private static Truss barn() {
        return Truss.named("Barn").units(m, kN).joint("A", 0, 0).joint("B", 4, 3).joint("C", 8, 6).joint("D", 12, 3)
                .joint("E", 16, 0).joint("F", 8, 0).members("AB BC CD DE AF FE BF DF CF").pin("A").roller("E")
                .loadCase("dead").selfWeight(0.2).roofLoad("A B C D E", 0.4, 5, ALONG_SLOPE)
                .loadCase("snow").roofLoad("A B C D E", 0.8, 5, ON_PLAN)
                .combination("1.2 dead + 1.6 snow").build();
    }

    private static String says(Executable asked) {
        return assertThrows(CalculationException.class, asked).getMessage();
    }

    /** 0.8 on 5 m of spacing and 16 m on plan is 64 kN; dead 10.4 and 40 kN; both halves come down at A. */
    @Test
    void takesLoadCasesApart() {
        Truss barn = barn();

        assertEquals(32, barn.loadCase("snow").solve().reaction("A").y().in(kN), 1e-9);
        assertEquals(25.2, barn.loadCase("dead").solve().reaction("A").y().in(kN), 1e-9);
        assertEquals(1.2 * 25.2 + 1.6 * 32, barn.combination("1.2 dead + 1.6 snow").solve().reaction("A").y().in(kN), 1e-9);
        assertEquals(0.9 * 25.2, barn.combination("0.9 dead").solve().reaction("A").y().in(kN), 1e-9);
        assertEquals(57.2, barn.solve().reaction("A").y().in(kN), 1e-9, "all cases at once, without factors");
        assertTrue(barn.solve().derivation().toString().replaceAll("\\s+", " ")
                .contains("These are the loads of all load cases at once, dead and snow, without factors."));
    }

    @Test
    void answersWithFactsAndTables() {
        Truss barn = barn();

        assertEquals(List.of("1.2 dead + 1.6 snow"), barn.envelope().facts().columns());
        assertTrue(barn.envelope().toString().replaceAll("\\s+", " ").contains("building code in force"), barn.envelope()::toString);
        assertTrue(barn.combinations().toString().contains("Member forces by load case, in kN"));
        assertTrue(barn.member("CF").toString().contains("Which way is shortest"));
        assertEquals(List.of("dead", "snow"), barn.names("loadCase"));
        assertEquals(List.of("1.2 dead + 1.6 snow"), barn.names("combination"));
        assertTrue(barn.names("member").contains("CF"));
    }

    @Test
    void saysWhatIsNotThere() {
        Truss barn = barn();
        Truss plain = Truss.named("Plain").units(m, kN).joint("A", 0, 0).joint("B", 3, 0).joint("C", 1, 2)
                .members("AB BC AC").pin("A").roller("B").load("C", 3, DOWN).build();

        assertEquals("Load case wind: the truss \"Barn\" has none of that name; its cases are dead, snow.",
                says(() -> barn.loadCase("wind")));
        assertEquals("Load case dead: the truss \"Plain\" has none of that name; its loads are not parted into cases.",
                says(() -> plain.loadCase("dead")));
        assertEquals("Combination 1.2 wind: there is no load case wind; name one of dead, snow.",
                says(() -> barn.combination("1.2 wind")));
        assertEquals("Envelope: Plain has no load cases; write loadCase(\"dead\") or the like before the loads of each.",
                says(plain::envelope));
        assertEquals("Member AQ: its name is not made of two joints of \"Barn\"; its joints are A, B, C, D, E, F.",
                says(() -> barn.substitute("AB", "AQ")));
        assertTrue(says(() -> barn.member("AQ")).startsWith("Member AQ: the truss \"Barn\" has none of that name"));
    }
}
