package kingpost.statics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import kingpost.statics.Determinacy.Cause;
import kingpost.statics.Determinacy.Indeterminate;
import kingpost.statics.Determinacy.Mechanism;
import kingpost.truss.Direction;
import kingpost.truss.TrussModel;
import org.junit.jupiter.api.Test;

class DeterminaciesTest {

    @Test
    void countsMembersReactionsAndJoints() {
        Determinacy.Count count = Determinacies.of(Trusses.canopy()).count();

        assertEquals(new Determinacy.Count(5, 3, 4, 2, 8), count);
        assertEquals(8, count.unknowns());
        assertEquals(8, count.equations());
    }

    @Test
    void findsTheJointsOfAPanelWithoutDiagonal() {
        TrussModel truss = Trusses.twoPanels(false).pin("A").roller("B").build();

        Mechanism mechanism = assertInstanceOf(Mechanism.class, Determinacies.of(truss));

        assertEquals(Cause.TOO_FEW, mechanism.cause());
        assertEquals(1, mechanism.freedoms());
        assertEquals(Set.of("C", "F"), mechanism.motion().keySet());
        assertEquals(0, mechanism.motion().get("C").x(), 1e-12);
        assertEquals(1, Math.abs(mechanism.motion().get("C").y()), 1e-12);
        assertEquals(mechanism.motion().get("C").y(), mechanism.motion().get("F").y(), 1e-12);
    }

    @Test
    void tellsAMisplacedMemberFromAMissingOne() {
        TrussModel truss = Trusses.twoPanels(false).members("BD").pin("A").roller("B").build();

        Mechanism mechanism = assertInstanceOf(Mechanism.class, Determinacies.of(truss));

        assertEquals(Cause.MEMBERS_MISPLACED, mechanism.cause());
        assertEquals(Set.of("C", "F"), mechanism.motion().keySet());
    }

    @Test
    void seesParallelReactions() {
        TrussModel truss = Trusses.named("Tray").joint("A", 0, 0).joint("B", 4, 0).joint("C", 2, 3).joint("D", 2, 1)
                .members("AB BC AC AD BD").roller("A").roller("B").roller("C").load("C", 1, Direction.DOWN).build();

        Mechanism mechanism = assertInstanceOf(Mechanism.class, Determinacies.of(truss));

        assertEquals(Cause.REACTIONS_DO_NOT_HOLD, mechanism.cause());
        assertEquals(Set.of("A", "B", "C", "D"), mechanism.motion().keySet());
        mechanism.motion().values().forEach(v -> assertEquals(0, v.y(), 1e-9));
    }

    @Test
    void seesReactionsThatMeetInAPoint() {
        TrussModel truss = Trusses.named("Swing").joint("A", -2, 0).joint("B", 2, 0).joint("C", 0, -3)
                .members("AB BC AC").roller("A", Direction.slope(1, 2)).roller("B", Direction.slope(-1, 2)).roller("C")
                .load("C", 1, Direction.RIGHT).build();

        assertEquals(Cause.REACTIONS_DO_NOT_HOLD,
                assertInstanceOf(Mechanism.class, Determinacies.of(truss)).cause());
    }

    @Test
    void namesTheMembersThatMayGo() {
        TrussModel truss = Trusses.twoPanels(true).members("BD").pin("A").roller("C").build();

        Indeterminate indeterminate = assertInstanceOf(Indeterminate.class, Determinacies.of(truss));

        assertEquals(1, indeterminate.degree());
        assertEquals(Set.of("AB", "AD", "AE", "BD", "BE", "DE"), new TreeSet<>(indeterminate.removable()));
    }

    @Test
    void findsADegreeOfReactions() {
        TrussModel truss = Trusses.twoPanels(true).pin("A").pin("C").build();

        Indeterminate indeterminate = assertInstanceOf(Indeterminate.class, Determinacies.of(truss));

        assertEquals(1, indeterminate.degree());
        assertEquals(Set.of("AB", "BC"), new TreeSet<>(indeterminate.removable()));
        assertEquals(List.of("A_x", "C_x"), indeterminate.removableReactions());
    }

    @Test
    void findsSeveralMechanisms() {
        TrussModel truss = Trusses.named("Chain").joint("A", 0, 0).joint("B", 3, 0).joint("C", 6, 1).joint("D", 9, 0)
                .members("AB BC CD").pin("A").roller("D").load("B", 1, Direction.DOWN).build();

        assertEquals(2, assertInstanceOf(Mechanism.class, Determinacies.of(truss)).freedoms());
    }

    @Test
    void acceptsAThreeHingedArchOfTwoTrusses() {
        TrussModel truss = Trusses.named("Arch").joint("A", 0, 0).joint("B", 2, 3).joint("C", 5, 4)
                .joint("D", 8, 3).joint("E", 10, 0).joint("F", 3, 1).joint("G", 7, 1)
                .members("AB BC AF BF CF CD DE CG DG EG").pin("A").pin("E").load("B", 5, Direction.DOWN).build();

        assertInstanceOf(Determinacy.Determinate.class, Determinacies.of(truss));
    }

    @Test
    void solverRefusesAMechanismByNameOfItsJoints() {
        TrussModel truss = Trusses.twoPanels(false).pin("A").roller("B").build();

        assertEquals("Truss Two panels: it is a mechanism (m + r = 8 + 3 = 11, 2j = 12): joints C, F can move; add one "
                + "member or reaction there.", assertThrows(NotSolvable.class, () -> Solver.solve(truss)).getMessage());
    }

    @Test
    void solverRefusesAMechanismAlthoughTheCountIsRight() {
        TrussModel truss = Trusses.twoPanels(false).members("BD").pin("A").roller("B").build();

        assertEquals("Truss Two panels: it is a mechanism although the count is right (m + r = 9 + 3 = 12, 2j = 12): "
                + "joints C, F can move; brace them with a member taken from where there is one too many.",
                assertThrows(NotSolvable.class, () -> Solver.solve(truss)).getMessage());
    }

    @Test
    void solverRefusesAnIndeterminateTruss() {
        TrussModel truss = Trusses.twoPanels(true).members("BD").pin("A").roller("C").build();

        NotSolvable refusal = assertThrows(NotSolvable.class, () -> Solver.solve(truss));

        assertEquals("Truss Two panels: it is statically indeterminate to degree 1 (m + r = 10 + 3 = 13, 2j = 12), so "
                + "equilibrium alone does not give its forces; take away one of AB, DE, AD, BE, AE, BD.",
                refusal.getMessage());
        assertTrue(refusal.determinacy().isPresent());
        assertEquals(List.of(), refusal.stuckAt());
    }
}
