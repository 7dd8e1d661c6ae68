package kingpost.statics;

import static kingpost.statics.Answers.force;
import static kingpost.statics.Answers.reaction;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import kingpost.statics.BodyEquation.Kind;
import kingpost.truss.Direction;
import kingpost.truss.Member;
import kingpost.truss.TrussBuilder;
import kingpost.truss.TrussModel;
import org.junit.jupiter.api.Test;

/** Trusses where joint by joint gets stuck. */
class CompoundTrussesTest {

    private static List<String> worked(Solution solution) {
        return solution.steps().stream().map(s -> s instanceof Step.AtJoint a ? a.joint()
                : s instanceof Step.AtSection c ? "cut " + String.join(" ", c.cut().stream().map(Member::name).toList())
                : s instanceof Step.JointsTogether t ? "together " + String.join(" ", t.joints()) : "reactions").toList();
    }

    /**
     * Two simple trusses with a hinge and a tie. Source: S. S. Bhavikatti, Mechanics of Solids, chapter 3, example
     * 3.11 (MS-04 in the test resources).
     */
    @Test
    void opensATieBetweenTwoTrussesByASection() {
        PublishedCase published = PublishedCase.of("MS-04");
        Solution s = Solver.solve(published.truss());

        assertEquals(List.of("reactions", "cut BC FC AE"), worked(s).subList(0, 2));
        Step.AtSection section = (Step.AtSection) s.steps().get(1);
        assertEquals("C", assertInstanceOf(Kind.Moment.class, section.equations().get(0).kind()).joint());
        assertEquals(List.of("AE"), section.answers().stream()
                .map(a -> ((Source.OfMember) a.unknown()).member().name()).toList());
        assertEquals(7, section.stuck().size());
        assertEquals(Solution.Found.SECTION, Answers.member(s, "AE").found());
        published.published.forEach((member, force) -> assertEquals(force, force(s, member),
                PublishedCase.precision(force), member));
        published.computed.forEach((member, force) -> assertEquals(force, force(s, member), 0.51e-4, member));
        assertTrue(s.checks().pass());
    }

    /** A French roof of eight rafter panels at 30 degrees, a load W at each inner rafter point, span 18. */
    private static TrussModel frenchRoof(double w) {
        double third = 18 / (2 * Math.sqrt(3));
        TrussBuilder<TrussModel> t = Trusses.named("French roof");
        double rise = third;
        t.joint("A", 0, 0).joint("C", 9, rise).joint("B", 18, 0);
        for (int i = 1; i <= 3; i++) {
            t.joint("R" + i, 9 * i / 4.0, rise * i / 4).joint("S" + i, 18 - 9 * i / 4.0, rise * i / 4);
            t.load("R" + i, w, Direction.DOWN).load("S" + i, w, Direction.DOWN);
        }
        t.load("C", w, Direction.DOWN);
        t.joint("D", 6, 0).joint("E", 12, 0).joint("P", 3, 0).joint("T", 15, 0);
        t.joint("Q", 7.5, rise / 2).joint("V", 10.5, rise / 2);
        return t.members("A-R1 R1-R2 R2-R3 R3-C A-P P-D D-E D-Q Q-C R1-P P-R2 R2-D R2-Q Q-R3")
                .members("B-S1 S1-S2 S2-S3 S3-C B-T T-E E-V V-C S1-T T-S2 S2-E S2-V V-S3").pin("A").roller("B").build();
    }

    /**
     * Coefficients of W. Source: S. S. Bhavikatti, Mechanics of Solids, chapter 3, example 3.10, for R3-C, Q-C and the
     * middle tie; the other ones are a pocket-book table given from memory and checked by an independent joint
     * solution (HB-01).
     */
    @Test
    void opensAFrenchRoofByASection() {
        Solution s = Solver.solve(frenchRoof(20));

        Step.AtSection section = s.steps().stream().filter(step -> step instanceof Step.AtSection)
                .map(step -> (Step.AtSection) step).findFirst().orElseThrow();
        assertEquals("C", ((Kind.Moment) section.equations().get(0).kind()).joint());
        assertEquals(110, -force(s, "R3-C"), 0.5);
        assertEquals(51.9615, force(s, "Q-C"), 0.5e-4);
        assertEquals(69.282, force(s, "D-E"), 0.5e-3);
        double root = Math.sqrt(3);
        double[] rafter = {-7, -6.5, -6, -5.5};
        for (int i = 0; i < 4; i++) {
            String name = (i == 0 ? "A" : "R" + i) + "-" + (i == 3 ? "C" : "R" + (i + 1));
            assertEquals(20 * rafter[i], force(s, name), 1e-9, name);
        }
        assertEquals(20 * 3.5 * root, force(s, "A-P"), 1e-9);
        assertEquals(20 * 3 * root, force(s, "P-D"), 1e-9);
        assertEquals(20 * 2 * root, force(s, "D-E"), 1e-9);
        assertEquals(-20 * root / 2, force(s, "R1-P"), 1e-9);
        assertEquals(-20 * root, force(s, "R2-D"), 1e-9);
        assertEquals(20 * root / 2, force(s, "P-R2"), 1e-9);
        assertEquals(20 * root, force(s, "D-Q"), 1e-9);
        assertTrue(s.checks().pass());
    }

    /**
     * A bridge of two spans with a hinge at L3: the suspended part gives L6_y, and then the whole truss the other two.
     * Moments about the hinge of what is right of it: 15 L6_y = 20 x 5 + 20 x 10.
     */
    @Test
    void goesBackToTheWholeTrussWhenAPartHasToldAReaction() {
        Solution s = Solver.solve(Trusses.named("Two spans").joint("L0", 0, 0).joint("L1", 5, 0).joint("L2", 10, 0)
                .joint("L3", 15, 0).joint("L4", 20, 0).joint("L5", 25, 0).joint("L6", 30, 0).joint("U1", 5, 4)
                .joint("U2", 10, 6).joint("U3", 15, 4).joint("U4", 20, 4).joint("U5", 25, 4)
                .members("L0-L1 L1-L2 L2-L3 L3-L4 L4-L5 L5-L6 L0-U1 U1-L1 L1-U2 U1-U2 U2-L2 U2-U3 L2-U3 U3-L3 L3-U4")
                .members("U4-L4 U4-U5 L4-U5 U5-L5 U5-L6").pin("L0").roller("L2").roller("L6")
                .load("L1", 20, Direction.DOWN).load("L3", 20, Direction.DOWN).load("L4", 20, Direction.DOWN)
                .load("L5", 20, Direction.DOWN).build());

        assertEquals(List.of("reactions", "cut L2-L3 U3-L3", "reactions"), worked(s).subList(0, 3));
        Step.Reactions again = (Step.Reactions) s.steps().get(2);
        assertEquals(Step.WhyReactions.WITHIN_REACH_NOW, again.why());
        assertEquals(List.of("L2_y", "L0_y"), again.answers().stream()
                .map(a -> ((Source.OfReaction) a.unknown()).symbol()).toList());
        assertEquals(20, reaction(s, "L6_y"), 1e-9);
        assertEquals(70, reaction(s, "L2_y"), 1e-9);
        assertEquals(-10, reaction(s, "L0_y"), 1e-9);
        assertEquals(1, s.steps().stream().filter(step -> step instanceof Step.AtSection).count());
        JointOrder order = JointOrder.of(s.truss());
        assertEquals(List.of(JointOrder.Opening.Kind.SECTION, JointOrder.Opening.Kind.WHOLE_TRUSS),
                order.openings().stream().map(JointOrder.Opening::kind).toList());
    }

    @Test
    void solvesAKTruss() {
        TrussBuilder<TrussModel> t = Trusses.named("K");
        for (int i = 0; i <= 6; i++) {
            t.joint("L" + i, 4 * i, 0);
            if (i > 0 && i < 6) {
                t.joint("U" + i, 4 * i, 6);
                t.load("L" + i, 10 + i, Direction.DOWN);
            }
            if (i == 2 || i == 4) {
                t.joint("M" + i, 4 * i, 3);
            }
        }
        t.joint("M1", 4, 3).joint("M5", 20, 3);
        t.members("L0-U1 U1-U2 U2-U3 U3-U4 U4-U5 U5-L6 L0-L1 L1-L2 L2-L3 L3-L4 L4-L5 L5-L6")
                .members("U1-M1 M1-L1 U2-M2 M2-L2 U3-L3 U4-M4 M4-L4 U5-M5 M5-L5")
                .members("M1-U2 M1-L2 M2-U3 M2-L3 M5-U4 M5-L4 M4-U3 M4-L3").pin("L0").roller("L6");
        TrussModel truss = t.build();

        assertInstanceOf(Determinacy.Mechanism.class, Determinacies.of(
                Trusses.named("no").joint("A", 0, 0).joint("B", 1, 0).members("AB").roller("A").roller("B").build()));
        Solution s = Solver.solve(truss);

        assertTrue(s.checks().pass(), worked(s)::toString);
        double moment = reaction(s, "L0_y") * 8 - 11 * 4;
        assertEquals(moment / 6, force(s, "L2-L3"), 1e-9);
        assertEquals(-moment / 6, force(s, "U2-U3"), 1e-9);
    }

    /** A hexagon with three long diagonals: two sections of four members each leave the same two unknowns. */
    @Test
    void opensAComplexTrussByTwoSections() {
        TrussModel truss = Trusses.named("Complex").joint("A", 0, 0).joint("B", 4, -1).joint("C", 8, 0).joint("D", 7, 4)
                .joint("E", 4, 6).joint("F", 0, 5).members("AB BC CD DE EF AF AD BE CF").pin("A").roller("C")
                .load("E", 7, Direction.DOWN).load("F", 3, Direction.RIGHT).build();

        Solution s = Solver.solve(truss);

        Step.TwoBodies two = assertInstanceOf(Step.TwoBodies.class, s.steps().get(1));
        assertEquals(List.of(4, 4), two.bodies().stream().map(body -> body.cut().size()).toList());
        agreesInAllRoutes(s);
    }

    /** Two quadrilaterals, one inside the other: nothing smaller than joints solved together helps. */
    @Test
    void solvesAComplexTrussByJointsTogether() {
        TrussModel truss = Trusses.named("Two rings").joint("A", 0, 0).joint("B", 8, 0).joint("C", 8, 7).joint("D", 1, 8)
                .joint("E", 3, 2).joint("F", 6, 3).joint("G", 5, 6).joint("H", 2, 4.5)
                .members("AB BC CD DA EF FG GH HE AE BF CG DH AG").pin("A").roller("B")
                .load("D", 7, Direction.DOWN).load("C", 3, Direction.RIGHT).build();

        Solution s = Solver.solve(truss);

        assertTrue(worked(s).stream().anyMatch(w -> w.startsWith("together")), worked(s)::toString);
        agreesInAllRoutes(s);
    }

    private static void agreesInAllRoutes(Solution s) {
        assertTrue(s.checks().pass());
        assertTrue(s.members().stream().allMatch(m -> m.exact().isPresent()));
        s.checks().secondMethod().values().forEach(a -> assertEquals(a.second(), a.first(), 1e-9 * s.checks().scale()));
    }

    @Test
    void solvesAThreeHingedArchWithSupportsAtOneLevel() {
        TrussModel truss = Trusses.named("Arch").joint("A", 0, 0).joint("B", 2, 3).joint("C", 5, 4)
                .joint("D", 8, 3).joint("E", 10, 0).joint("F", 3, 1).joint("G", 7, 1)
                .members("AB BC AF BF CF CD DE CG DG EG").pin("A").pin("E").load("B", 5, Direction.DOWN).build();

        Solution s = Solver.solve(truss);

        assertEquals(4, reaction(s, "A_y"), 1e-9);
        assertEquals(1, reaction(s, "E_y"), 1e-9);
        assertEquals((4 * 5 - 5 * 3) / 4.0, reaction(s, "A_x"), 1e-9);
        assertTrue(s.checks().pass());
    }

    @Test
    void solvesAThreeHingedArchWithSupportsAtTwoLevels() {
        TrussModel truss = Trusses.named("Arch").joint("A", 0, 0).joint("B", 2, 3).joint("C", 5, 4)
                .joint("D", 8, 3).joint("E", 10, -1).joint("F", 3, 1).joint("G", 7, 1)
                .members("AB BC AF BF CF CD DE CG DG EG").pin("A").pin("E").load("B", 5, Direction.DOWN).build();

        Solution s = Solver.solve(truss);

        assertTrue(s.checks().pass());
        assertInstanceOf(Step.TwoBodies.class, s.steps().get(0));
        Step.TwoBodies two = (Step.TwoBodies) s.steps().get(0);
        assertEquals(List.of(0, 2), two.bodies().stream().map(b -> b.cut().size()).toList());
        assertEquals(10 / 9.0, reaction(s, "E_y"), 1e-12, "of the whole about A: E_x + 10 E_y = 10; of the half about C: "
                + "E_x + E_y = 0");
        assertEquals(0, reaction(s, "A_x") + reaction(s, "E_x"), 1e-9);
        assertEquals(5, reaction(s, "A_y") + reaction(s, "E_y"), 1e-9);
    }

    @Test
    void plansTheOpening() {
        JointOrder order = JointOrder.of(PublishedCase.of("MS-04").truss());

        assertEquals(1, order.openings().size());
        assertEquals(0, order.openings().get(0).after());
        assertEquals(JointOrder.Opening.Kind.SECTION, order.openings().get(0).kind());
        assertEquals(List.of("BC", "FC", "AE"), order.openings().get(0).names());
        assertEquals(List.of(), order.stuckAt());
    }
}
