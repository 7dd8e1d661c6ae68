package kingpost.notebook;

import static kingpost.notebook.Notebook.DOWN;
import static kingpost.units.StructuralUnits.kN;
import static kingpost.units.StructuralUnits.m;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import kingpost.graphic.ForceDiagram;
import kingpost.graphic.ForcePolygon;
import kingpost.moving.TrainEffect;
import kingpost.moving.UniformEffect;
import kingpost.units.CalculationException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

/** The words for graphic statics and moving loads, as a cell says them. */
class MovingWordsTest {

    private static Truss bridge() {
        return Truss.named("Mill bridge").units(m, kN)
                .joint("L0", 0, 0).joint("L1", 4, 0).joint("L2", 8, 0).joint("L3", 12, 0).joint("L4", 16, 0)
                .joint("U1", 4, 3).joint("U2", 8, 3).joint("U3", 12, 3)
                .members("L0-L1 L1-L2 L2-L3 L3-L4 L0-U1 U1-U2 U2-U3 U3-L4 L1-U1 L2-U2 L3-U3 U1-L2 U3-L2")
                .pin("L0").roller("L4").load("L2", 10, DOWN).build();
    }

    @Test
    void anInfluenceLineIsAskedForByMemberReactionAndPanel() {
        assertEquals(-4 / 3.0, bridge().influence("U1-U2").ordinate("L2"), 1e-12);
        assertEquals("\u22124/3", bridge().influence("U2-U1").exact("L2").orElseThrow().toString());
        assertEquals(0.75, bridge().influenceOfReaction("L0").ordinate("L1"), 1e-12);
        assertEquals(0, bridge().influenceOfReaction("L0_x").ordinate("L1"));
        assertEquals(0.5, bridge().influenceOfShear("L1 L2").ordinate("L2"), 1e-12);
        assertEquals(-1, bridge().influence("L2-U2").along("U1 U2 U3").ordinate("U2"), 1e-12);
    }

    @Test
    void aTrainIsWrittenWithOrWithoutUnits() {
        Influence line = bridge().influence("L1-L2");
        TrainEffect bare = line.train(20, 2, 20).facts();
        TrainEffect same = line.train(UnitWords.kN(20), UnitWords.mm(2000), UnitWords.kN(20)).facts();

        assertEquals(bare.largest().orElseThrow().effect(), same.largest().orElseThrow().effect(), 1e-6);
        assertEquals("110/3", bare.largest().orElseThrow().exact().orElseThrow().toString());
        assertTrue(line.train(20, 2, 20).toString().contains("F_L1-L2 = 36.7 kN"), line.train(20, 2, 20).toString());
        UniformEffect uniform = line.uniform(3).facts();
        assertEquals(24_000, uniform.largest(), 1e-6);
        assertEquals(uniform.largest(), line.uniform(UnitWords.kN_per_m(3)).facts().largest(), 1e-6);
    }

    @Test
    void graphicStaticsIsAskedOfTheSolution() {
        TrussSolution s = bridge().solve();

        ForcePolygon polygon = s.polygon("U1").facts();
        assertEquals(0, polygon.gap(), 1e-9);
        assertTrue(((ForceDiagram.Drawn) s.forceDiagram().facts()).closes());
        assertTrue(s.checks().toString().contains("Drawn as a force diagram"), s.checks().toString());
    }

    @Test
    void namesAreProposedInQuotes() {
        assertTrue(bridge().names("influence").contains("U1-L2"));
        assertEquals(List.of("L0", "L4"), bridge().names("influenceOfReaction"));
        assertEquals(List.of("L0", "L1", "L2", "L3", "L4"), bridge().influence("U1-L2").names("ordinate"));
        assertTrue(bridge().solve().names("polygon").contains("U1"));
    }

    private static String refusal(Executable executable) {
        return assertThrows(CalculationException.class, executable).getMessage();
    }

    @Test
    void mistakesAreToldWithWhatToDo() {
        assertTrue(refusal(() -> bridge().influence("L0-U3")).startsWith("Member L0-U3: the truss \"Mill bridge\" has none"));
        assertTrue(refusal(() -> bridge().influenceOfReaction("L1")).startsWith("Joint L1: nothing supports it"));
        assertEquals("Panel L1: it takes two joints of the loaded chord; write them from left to right, as in"
                + " influenceOfShear(\"L1 L2\").", refusal(() -> bridge().influenceOfShear("L1")));
        assertTrue(refusal(() -> bridge().influence("L1-L2").along("L1 X9")).startsWith("Joint X9: the truss"));
        assertEquals("Joint U1: the loaded chord has none of that name; its joints are L0, L1, L2, L3, L4.",
                refusal(() -> bridge().influence("L1-L2").ordinate("U1")));
        assertTrue(refusal(() -> bridge().solve().polygon("X")).startsWith("Joint X: the truss"));
    }
}
