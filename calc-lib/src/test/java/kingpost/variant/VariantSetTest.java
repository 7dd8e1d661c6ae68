package kingpost.variant;

import static kingpost.units.StructuralUnits.kN;
import static kingpost.units.StructuralUnits.m;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import kingpost.csv.CsvTable;
import kingpost.render.Exhibit;
import kingpost.statics.Solution;
import kingpost.statics.Solver;
import kingpost.truss.Direction;
import kingpost.truss.TrussBuilder;
import kingpost.truss.TrussModel;
import org.junit.jupiter.api.Test;

class VariantSetTest {

    private static TrussModel gantry() {
        return new TrussBuilder<TrussModel>("Gantry", Function.identity()).units(m, kN)
                .joint("A", 0, 0).joint("B", 4, 0).joint("C", 8, 0).joint("D", 12, 0).joint("E", 4, 3).joint("F", 8, 3)
                .members("AB BC CD AE EF FD BE CE CF").pin("A").roller("D")
                .load("B", 12, Direction.DOWN).load("E", 6, Direction.RIGHT).build();
    }

    /** The keys as written, against all joint equations at once by plain elimination. */
    @Test
    void twoHundredKeysAreRightAndNoTwoAlike() {
        VariantSet set = VariantSet.of(gantry(), 200, 21);
        CsvTable keys = CsvTable.read("Keys", set.keys().write());
        assertEquals(200, keys.rows().size());
        Difficulty own = Difficulty.of(Solver.solve(gantry()));
        Set<List<String>> met = new HashSet<>();
        for (int i = 0; i < 200; i++) {
            Variant variant = set.variants().get(i);
            double[] forces = DenseForces.of(variant.truss());
            List<String> row = keys.rows().get(i).cells();
            assertEquals(Integer.toString(i + 1), row.get(0));
            for (int member = 0; member < forces.length; member++) {
                double stated = Double.parseDouble(row.get(member + 1));
                assertEquals(forces[member], stated, 1e-5 * Math.max(1, Math.abs(forces[member])), variant.truss().name());
            }
            assertTrue(met.add(row.subList(1, forces.length + 1)), variant.truss().name());
            assertEquals(own, Difficulty.of(variant.solution()));
            assertTrue(variant.clean(), variant.truss().name());
        }
    }

    @Test
    void theFirstVariantsOnSlopesOfThreeInFourAreWholeNumbers() {
        for (Variant variant : VariantSet.of(gantry(), 10, 21).variants()) {
            for (Solution.MemberResult each : variant.solution().members()) {
                assertTrue(each.exact().orElseThrow().coefficient().isWhole(), variant.truss().name() + " " + each);
            }
        }
    }

    @Test
    void showsWhatDiffersAndEachFigure() {
        Exhibit shown = Exhibit.of(VariantSet.of(gantry(), 3, 21).overview());
        String text = shown.toString();
        assertTrue(text.startsWith("Gantry: 3 variants"), text);
        for (int i = 1; i <= 3; i++) {
            assertTrue(text.contains("Gantry, variant " + i), text);
        }
        assertEquals(3, shown.forms().get("text/markdown").toString().split("<img ", -1).length - 1);
        assertFalse(text.contains("3 are drawn"), text);
    }
}
