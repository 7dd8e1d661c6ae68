package kingpost.variant;

import static kingpost.units.StructuralUnits.ft;
import static kingpost.units.StructuralUnits.kN;
import static kingpost.units.StructuralUnits.kip;
import static kingpost.units.StructuralUnits.m;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import javax.measure.Unit;
import kingpost.render.Exhibit;
import kingpost.statics.Solution;
import kingpost.statics.Solver;
import kingpost.truss.Direction;
import kingpost.truss.Load;
import kingpost.truss.TrussBuilder;
import kingpost.truss.TrussModel;
import kingpost.units.CalculationException;
import kingpost.units.Quantity;
import kingpost.units.StructuralUnits;
import org.junit.jupiter.api.Test;

class VariantsTest {

    private static TrussBuilder<TrussModel> named(String name, Unit<?> length, Unit<?> force) {
        return new TrussBuilder<TrussModel>(name, Function.identity()).units(length, force);
    }

    private static TrussModel canopy() {
        return named("Canopy", m, kN).joint("A", 0, 0).joint("B", 3, 0).joint("C", 6, 0).joint("D", 3, 2.25)
                .members("AB BC AD BD CD").pin("A").roller("C").load("D", 12, Direction.DOWN).build();
    }

    private static TrussModel footbridge() {
        return named("Footbridge", m, kN)
                .joint("A", 0, 0).joint("B", 4, 0).joint("C", 8, 0).joint("D", 12, 0).joint("E", 4, 3).joint("F", 8, 3)
                .members("AB BC CD AE EF FD BE CE CF").pin("A").roller("D")
                .load("B", 12, Direction.DOWN).load("F", 9, Direction.DOWN).load("E", 4, Direction.RIGHT).build();
    }

    /** Wind across a rafter, equal loads below it, two members that carry nothing. */
    private static TrussModel roof() {
        return named("Roof", ft, kip)
                .joint("L0", 0, 0).joint("L1", 8, 0).joint("L2", 16, 0).joint("L3", 24, 0).joint("L4", 32, 0)
                .joint("U1", 8, 6).joint("U2", 16, 12).joint("U3", 24, 6)
                .members("L0-L1 L1-L2 L2-L3 L3-L4 L0-U1 U1-U2 U2-U3 U3-L4 L1-U1 L2-U2 L3-U3 U1-L2 L2-U3")
                .pin("L0").roller("L4")
                .load("U1", 2, Direction.slope(3, -4)).load("U2", 4, Direction.DOWN).load("U3", 4, Direction.DOWN).build();
    }

    /** Sixty-degree slopes, an inclined roller, a load at an angle and one by components: nothing clean to begin with. */
    private static TrussModel awkward() {
        return named("Awkward", m, kN).joint("A", 0, 0).joint("B", 2, 0).joint("C", 4, 0).joint("D", 1, 1.732051)
                .joint("E", 3, 1.732051).members("AB BC AD DE EC BD BE").pin("A").roller("C", 60)
                .load("D", 5, Direction.at(240)).load("B", 3.0, -4.0).build();
    }

    @Test
    void givesAsManyAsAskedAndNoTwoAlike() {
        for (TrussModel truss : List.of(canopy(), footbridge(), roof(), awkward())) {
            List<Variant> variants = Variants.of(truss, 25, 3);
            Set<List<Double>> met = new HashSet<>();
            met.add(forces(Solver.solve(truss)));
            for (Variant variant : variants) {
                assertTrue(met.add(forces(variant.solution())), () -> variant.truss().name());
            }
        }
    }

    private static List<Double> forces(Solution solution) {
        return solution.members().stream().map(member -> Math.rint(member.force())).toList();
    }

    @Test
    void keepsTheDifficulty() {
        for (TrussModel truss : List.of(canopy(), footbridge(), roof(), awkward())) {
            Difficulty own = Difficulty.of(Solver.solve(truss));
            for (Variant variant : Variants.of(truss, 10, 5)) {
                assertEquals(own, Difficulty.of(variant.solution()), () -> variant.truss().name());
            }
        }
    }

    @Test
    void everyKeyIsRightByAnotherSolver() {
        for (TrussModel truss : List.of(canopy(), footbridge(), roof(), awkward())) {
            for (Variant variant : Variants.of(truss, 10, 11)) {
                double[] forces = DenseForces.of(variant.truss());
                for (int i = 0; i < forces.length; i++) {
                    double newtons = Quantity.of(forces[i], truss.forceUnit()).in(StructuralUnits.N);
                    assertEquals(newtons, variant.solution().members().get(i).force(),
                            1e-9 * variant.solution().checks().scale(), variant.truss().name());
                }
            }
        }
    }

    @Test
    void numbersComeOutClean() {
        for (TrussModel truss : List.of(canopy(), footbridge(), roof(), awkward())) {
            for (Variant variant : Variants.of(truss, 12, 1)) {
                assertTrue(variant.clean(), () -> variant.truss().name());
                variant.solution().members().forEach(member -> assertTrue(member.exact().orElseThrow().isRational()));
            }
        }
    }

    @Test
    void theFirstOnesAreWholeNumbers() {
        for (Variant variant : Variants.of(canopy(), 6, 1)) {
            variant.solution().members().forEach(member ->
                    assertTrue(member.exact().orElseThrow().coefficient().isWhole(), variant.truss().name()));
        }
    }

    @Test
    void loadsThatWereEqualStayEqual() {
        for (Variant variant : Variants.of(roof(), 10, 2)) {
            List<Load> loads = variant.truss().loads();
            assertEquals(loads.get(1).magnitude(), loads.get(2).magnitude());
        }
    }

    @Test
    void whatActsAcrossAMemberStaysAcrossIt() {
        for (Variant variant : Variants.of(roof(), 10, 2)) {
            TrussModel truss = variant.truss();
            double dx = truss.joint("U2").orElseThrow().x().getValue() - truss.joint("U1").orElseThrow().x().getValue();
            double dy = truss.joint("U2").orElseThrow().y().getValue() - truss.joint("U1").orElseThrow().y().getValue();
            Direction wind = truss.loads().get(0).direction();
            assertEquals(0, dx * wind.x() + dy * wind.y(), 1e-9);
            assertTrue(wind.y() < 0);
        }
    }

    @Test
    void theSameSeedGivesTheSameAndAnotherSeedOthers() {
        List<TrussModel> five = Variants.of(footbridge(), 5, 9).stream().map(Variant::truss).toList();
        assertEquals(five, Variants.of(footbridge(), 8, 9).stream().map(Variant::truss).limit(5).toList());
        assertFalse(five.equals(Variants.of(footbridge(), 5, 10).stream().map(Variant::truss).toList()));
    }

    @Test
    void handsOutNoAnswer() {
        TrussModel before = footbridge();
        Variant variant = Variants.of(before, 1, 4).get(0);
        String handout = Exhibit.of(variant.handout()).show().toString();
        String key = Exhibit.of(variant.key()).show().get("text/plain").toString();
        variant.solution().members().forEach(member -> {
            String answer = member.exact().orElseThrow().abs().coefficient().doubleValue() + "";
            String shown = answer.endsWith(".0") ? answer.substring(0, answer.length() - 2) : answer;
            boolean given = variant.truss().loads().stream().anyMatch(load -> load.magnitude().getValue()
                    == Math.abs(member.force() / 1000));
            assertTrue(key.contains(shown), shown);
            assertTrue(given || !handout.matches("(?s).*(?<![\\d.])" + shown.replace(".", "\\.") + " ?kN.*"), shown);
        });
        assertFalse(handout.matches("(?s).*(zero-force|carries nothing|by inspection).*"));
    }

    @Test
    void refusesWhatItCannotVary() {
        assertEquals("Variants of Canopy: 0 were asked for; ask for one or more.",
                assertThrows(CalculationException.class, () -> Variants.of(canopy(), 0, 1)).getMessage());
        TrussModel idle = named("Idle", m, kN).joint("A", 0, 0).joint("B", 3, 0).joint("D", 3, 2.25)
                .members("AB AD BD").pin("A").roller("B").build();
        assertEquals("Variants of Idle: no load acts on it; add a load.",
                assertThrows(CalculationException.class, () -> Variants.of(idle, 3, 1)).getMessage());
    }
}
