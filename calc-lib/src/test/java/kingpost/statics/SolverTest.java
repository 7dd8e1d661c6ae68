package kingpost.statics;

import static kingpost.statics.Answers.force;
import static kingpost.statics.Answers.reaction;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import kingpost.exact.Surd;
import kingpost.statics.AxisEquation.Role;
import kingpost.statics.BodyEquation.Kind;
import kingpost.statics.Step.Axes;
import kingpost.statics.Step.Selection.Reason;
import kingpost.statics.Step.WhyReactions;
import kingpost.truss.Direction;
import kingpost.truss.TrussModel;
import kingpost.units.StructuralUnits;
import org.junit.jupiter.api.Test;

class SolverTest {

    private static Step.AtJoint at(Solution solution, String joint) {
        return solution.steps().stream().filter(s -> s instanceof Step.AtJoint a && a.joint().equals(joint))
                .map(s -> (Step.AtJoint) s).findFirst().orElseThrow();
    }

    private static List<String> worked(Solution solution) {
        return solution.steps().stream().map(s -> s instanceof Step.AtJoint a ? a.joint() : "reactions").toList();
    }

    @Test
    void startsWithoutReactionsWhereJointsReachEveryMember() {
        Solution s = Solver.solve(Trusses.canopy());

        assertEquals(List.of("D", "C", "A"), worked(s));
        assertEquals(-10, force(s, "AD"), 1e-12);
        assertEquals(8, force(s, "AB"), 1e-12);
        assertEquals(8, force(s, "BC"), 1e-12);
        assertEquals(0, force(s, "BD"));
        assertEquals(6, reaction(s, "C_y"), 1e-12);
        assertEquals(6, reaction(s, "A_y"), 1e-12);
        assertEquals(0, reaction(s, "A_x"));
        assertTrue(s.checks().worst() < 1e-14);
    }

    @Test
    void givesExactForcesAsFractionTimesSurd() {
        TrussModel truss = Trusses.named("Square").joint("A", 0, 0).joint("B", 2, 0).joint("C", 0, 2)
                .members("AB AC BC").pin("A").roller("B").load("C", 1, Direction.RIGHT).build();

        Solution s = Solver.solve(truss);

        assertEquals(Optional.of(Surd.of(-1, 2)), Answers.member(s, "BC").exact());
        assertEquals(Optional.of(Surd.of(1, 1)), Answers.member(s, "AC").exact());
    }

    @Test
    void keepsTheRootOfAnInclinedLoadInTheExactForce() {
        TrussModel truss = Trusses.named("Inclined").joint("A", 0, 0).joint("B", 2, 0).joint("C", 0, 2)
                .members("AB AC BC").pin("A").roller("B").load("C", 6, Direction.at(45)).build();

        Solution s = Solver.solve(truss);

        assertEquals(Optional.of(Surd.of(3, 2)), s.reactions().get(2).exact());
        assertEquals(Optional.of(Surd.of(-6, 1)), Answers.member(s, "BC").exact());
    }

    @Test
    void hasNoExactForcesWhereAnAngleIsNotRational() {
        TrussModel truss = Trusses.named("Inclined").joint("A", 0, 0).joint("B", 2, 0).joint("C", 0, 2)
                .members("AB AC BC").pin("A").roller("B", 120).load("C", 6, Direction.RIGHT).build();

        assertTrue(Solver.solve(truss).members().stream().allMatch(m -> m.exact().isEmpty()));
    }

    @Test
    void readsThirdsAsThirds() {
        TrussModel truss = Trusses.named("Thirds").joint("A", 0, 0).joint("B", 4.0 / 3, 0).joint("C", 0, 1)
                .members("AB AC BC").pin("A").roller("B").load("C", 3, Direction.RIGHT).build();

        assertEquals(Optional.of(new Surd(kingpost.exact.Fraction.of(-15, 4), java.math.BigInteger.ONE)),
                Answers.member(Solver.solve(truss), "BC").exact());
    }

    @Test
    void findsReactionsFirstWhereNoJointCanStart() {
        PublishedCase warren = PublishedCase.of("MJ-02");
        Solution s = Solver.solve(warren.truss());

        Step.Reactions reactions = assertInstanceOf(Step.Reactions.class, s.steps().get(0));
        assertEquals(WhyReactions.NO_JOINT_TO_START, reactions.why());
        Kind.Moment first = assertInstanceOf(Kind.Moment.class, reactions.equations().get(0).kind());
        assertEquals("A", first.joint());
        assertEquals(2, first.passing().size());
        assertEquals(List.of("D_y", "A_x", "A_y"), reactions.answers().stream()
                .map(a -> ((Source.OfReaction) a.unknown()).name()).toList());
        assertInstanceOf(Role.Check.class, reactions.equations().get(3).role());
        assertEquals(0, reactions.equations().get(3).residual(), 1e-9);
    }

    @Test
    void saysWhenJointsStopShort() {
        Solution s = Solver.solve(PublishedCase.of("MJ-06").truss());

        assertEquals(WhyReactions.JOINTS_STOP_SHORT, ((Step.Reactions) s.steps().get(0)).why());
    }

    @Test
    void takesMomentsWhereTwoLinksMeetOutsideTheTruss() {
        TrussModel truss = Trusses.named("Three links").joint("A", 0, 0).joint("B", 6, 0).joint("C", 3, 4)
                .joint("D", 3, 1).members("AC BC AD BD CD").link("A", Direction.slope(1, 1))
                .link("B", Direction.slope(-1, 1)).link("D", Direction.slope(1, 2))
                .load("C", 6, Direction.DOWN).build();

        Solution s = Solver.solve(truss);
        Step.Reactions reactions = (Step.Reactions) s.steps().get(0);

        Kind.Moment first = assertInstanceOf(Kind.Moment.class, reactions.equations().get(0).kind());
        assertEquals("", first.joint());
        assertEquals(new Vector(3, 3, 0), first.point());
        assertTrue(s.checks().pass());
        assertEquals(6 / Math.sqrt(2), reaction(s, "R_A"), 1e-9);
    }

    @Test
    void numbersTheCountsOfEveryJointBeforeAChoice() {
        Step.AtJoint first = at(Solver.solve(Trusses.canopy()), "D");

        assertEquals(List.of("A:4:false", "C:3:false", "D:2:true"), first.selection().counts().stream()
                .map(c -> c.joint() + ":" + c.unknowns().size() + ":" + c.ready()).toList());
        assertEquals(Reason.ONLY_ONE, first.selection().reason());
    }

    @Test
    void goesOnToTheNextJointAlong() {
        Solution s = Solver.solve(PublishedCase.of("MS-01").truss());

        assertEquals(Reason.FIRST_NAMED, at(s, "A").selection().reason());
        assertEquals(Reason.NEXT_ALONG, at(s, "B").selection().reason());
    }

    @Test
    void turnsAxesWhereTheUnknownsArePerpendicular() {
        TrussModel truss = Trusses.named("Right angle").joint("A", 0, 0).joint("B", 25, 0).joint("C", 9, 12)
                .members("AB AC BC").pin("A").roller("B").load("C", 10, Direction.DOWN).build();

        Step.AtJoint c = at(Solver.solve(truss), "C");

        Axes.Turned turned = assertInstanceOf(Axes.Turned.class, c.axes());
        assertEquals(Axes.Reason.UNKNOWNS_PERPENDICULAR, turned.reason());
        assertEquals(Math.toDegrees(Math.atan2(12, 9)), turned.degrees(), 1e-12);
        assertTrue(c.equations().stream().allMatch(e -> e.role() instanceof Role.Gives));
        assertEquals(2, c.equations().get(0).terms().size());
    }

    @Test
    void turnsAxesWhereThatFreesOneUnknown() {
        Step.AtJoint first = at(Solver.solve(PublishedCase.of("MJ-16").truss()), "A");

        assertEquals(Axes.Reason.FREES_ONE, assertInstanceOf(Axes.Turned.class, first.axes()).reason());
    }

    @Test
    void keepsAxesWhereAnUnknownLiesAlongOne() {
        Step.AtJoint b = at(Solver.solve(PublishedCase.of("MJ-02").truss()), "A");

        assertInstanceOf(Axes.Conventional.class, b.axes());
        assertEquals("y", b.equations().get(0).axis().label());
    }

    @Test
    void usesTheLastEquationsAsChecks() {
        Solution s = Solver.solve(PublishedCase.of("MJ-02").truss());

        assertEquals(3, s.checks().unused().size());
        s.checks().unused().forEach(u -> assertEquals(0, u.equation().residual(), 1e-9));
        assertEquals(10, s.checks().secondMethod().size());
        assertEquals(3, s.checks().loadsAndReactions().size());
    }

    @Test
    void leavesOutIdleMembersFromFreeBodiesAndNamesThem() {
        Step.AtJoint d = at(Solver.solve(Trusses.canopy()), "D");

        assertEquals(List.of("BD"), d.omitted().stream().map(kingpost.truss.Member::name).toList());
        assertEquals(3, d.forces().size());
    }

    @Test
    void solvesATrussWithoutLoadsAsAllZero() {
        TrussModel truss = Trusses.named("Bare").joint("A", 0, 0).joint("B", 3, 0).joint("C", 1, 2)
                .members("AB BC AC").pin("A").roller("B").build();

        Solution s = Solver.solve(truss);

        assertTrue(s.members().stream().allMatch(m -> m.force() == 0));
        assertTrue(s.reactions().stream().allMatch(r -> r.force() == 0));
        assertTrue(s.checks().pass());
    }

    @Test
    void takesEachLoadInItsOwnUnit() {
        TrussModel truss = Trusses.named("Mixed").joint("A", 0, 0).joint("B", 3, 0).joint("C", 0, 4)
                .members("AB BC AC").pin("A").roller("B")
                .load("C", kingpost.units.Quantity.of(3000, StructuralUnits.N), Direction.RIGHT).build();

        assertEquals(-5, force(Solver.solve(truss), "BC"), 1e-12);
    }

    /** Inclined roller: the same truss as MJ-04 with a roller on a slope; constructed, not published. */
    @Test
    void solvesAnInclinedRoller() {
        TrussModel truss = Trusses.named("Sloping roller").joint("A", 0, 0).joint("F", 4, 0).joint("E", 8, 0)
                .joint("B", 0, 4).joint("C", 4, 4).joint("D", 8, 4).members("AB AF BF BC CF CD DF DE EF").pin("A")
                .roller("E", 120).load("B", 0, -30).load("C", 0, -50).load("D", 20, -40).load("F", 0, -30).build();

        Solution s = Solver.solve(truss);

        assertEquals(103.92305, reaction(s, "R_E"), 0.5e-5);
        assertEquals(31.96152, reaction(s, "A_x"), 0.5e-5);
        assertEquals(-51.96152, force(s, "EF"), 0.5e-5);
        assertEquals(-31.96152, force(s, "AF"), 0.5e-5);
        assertEquals(70.71068, force(s, "DF"), 0.5e-5);
    }

    @Test
    void plansWithoutForces() {
        JointOrder order = JointOrder.of(PublishedCase.of("MJ-02").truss());

        assertEquals(Optional.of(WhyReactions.NO_JOINT_TO_START), order.reactionsFirst());
        assertEquals(List.of("A", "B", "E", "D"), order.turns().stream().map(JointOrder.Turn::joint).toList());
        assertEquals(List.of(), order.stuckAt());
    }
}
