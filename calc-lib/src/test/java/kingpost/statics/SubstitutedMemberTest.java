package kingpost.statics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import kingpost.truss.Direction;
import kingpost.truss.Member;
import kingpost.truss.TrussModel;
import kingpost.units.CalculationException;
import org.junit.jupiter.api.Test;

/** No published example with figures was found; the check is the full system of joint equations, and exact fractions. */
class SubstitutedMemberTest {

    private static TrussModel complex() {
        return Trusses.named("Complex").joint("A", 0, 0).joint("B", 4, -1).joint("C", 8, 0).joint("D", 7, 4)
                .joint("E", 4, 6).joint("F", 0, 5).members("AB BC CD DE EF AF AD BE CF").pin("A").roller("C")
                .load("E", 7, Direction.DOWN).load("F", 3, Direction.RIGHT).build();
    }

    @Test
    void agreesWithTheFullSystemWhicheverMemberIsTakenOut() {
        TrussModel truss = complex();
        Solution whole = Solver.solve(truss);
        for (Member out : truss.members()) {
            SubstitutedMember exchange = SubstitutedMember.of(truss, out);

            assertTrue(exchange.worst() < 1e-12, out.name());
            assertEquals(Answers.member(whole, out.name()).force(), exchange.pull(), 1e-9 * whole.checks().scale());
            assertEquals(0, exchange.substituteUnderLoads() + exchange.pull() * exchange.substitutePerUnit(),
                    1e-9 * whole.checks().scale(), "the substitute carries nothing");
            exchange.rows().forEach(row -> assertEquals(Answers.member(whole, row.member().name()).exact().orElseThrow()
                    .doubleValue() * 1000, row.force(), 1e-9 * whole.checks().scale(), row.member().name()));
        }
    }

    /** An octahedron on six links: four members at every joint, so that joints alone do not begin. */
    private static TrussModel octahedron() {
        return Trusses.named("Octahedron").joint("A", 0, 0, 0).joint("B", 4, 0, 0).joint("C", 2, 0, 3.5).joint("D", 2, 3, -1)
                .joint("E", 3.5, 3, 2).joint("F", 0.5, 3, 2).members("AB BC AC DE EF DF AD BD BE CE CF AF")
                .link("A", 1, 0, 0).link("A", 0, 1, 0).link("A", 0, 0, 1).link("B", 0, 1, 0).link("B", 0, 0, 1)
                .link("C", 0, 1, 0).load("D", 1, -5, 2).load("E", 0, -3, 1).build();
    }

    /** Held against a full matrix that is written straight from the model, member by member. */
    @Test
    void agreesInSpaceWithAMatrixOfItsOwn() {
        TrussModel truss = octahedron();
        Map<String, Double> oracle = DenseEquilibrium.of(truss);
        double scale = oracle.values().stream().mapToDouble(Math::abs).max().orElseThrow();

        for (Member out : truss.members()) {
            SubstitutedMember exchange = SubstitutedMember.of(truss, out);
            exchange.rows().forEach(row -> assertEquals(oracle.get(row.member().name()), row.force() / 1000, 1e-9 * scale,
                    out.name() + " out: " + row.member().name()));
            assertTrue(exchange.loaded().steps().stream().allMatch(s -> s instanceof Step.AtJoint
                    || s instanceof Step.Reactions), out.name());
        }
    }

    /** Both solutions go from joint to joint; the pull is in balance with itself, so it calls for no reaction. */
    @Test
    void worksTheChangedTrussByJoints() {
        SubstitutedMember exchange = SubstitutedMember.of(complex(), complex().member("AD").orElseThrow());

        for (Solution solution : new Solution[] {exchange.loaded(), exchange.pulled()}) {
            assertTrue(solution.steps().stream().allMatch(s -> s instanceof Step.AtJoint || s instanceof Step.Reactions));
            assertTrue(solution.checks().pass());
        }
        exchange.pulled().reactions().forEach(r -> assertEquals(0, r.force(), 1e-12));
        assertNotEquals(0, exchange.substitutePerUnit());
    }

    @Test
    void takesTheSubstituteThatIsAskedFor() {
        TrussModel truss = complex();
        SubstitutedMember exchange = SubstitutedMember.of(truss, truss.member("AD").orElseThrow(), "C", "E");

        assertEquals("CE", exchange.substitute().name());
        assertTrue(exchange.worst() < 1e-12);
    }

    @Test
    void saysWhyAnExchangeDoesNotHelp() {
        TrussModel truss = complex();
        Member ad = truss.member("AD").orElseThrow();

        assertEquals("Substitute for AD: between A and B no member can be put; give two joints that no member joins.",
                assertThrows(CalculationException.class, () -> SubstitutedMember.of(truss, ad, "A", "B")).getMessage());
        TrussModel canopy = Trusses.canopy();
        assertEquals("Substitute for AB: no member between two joints of Canopy makes it a simple truss; take out another "
                + "member.", assertThrows(CalculationException.class,
                () -> SubstitutedMember.of(canopy, canopy.member("AB").orElseThrow())).getMessage());
    }
}
