package kingpost.statics;

import static kingpost.units.StructuralUnits.kN;
import static kingpost.units.StructuralUnits.m;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import kingpost.statics.Solution.MemberResult;
import kingpost.statics.Solution.ReactionResult;
import kingpost.truss.Direction;
import kingpost.truss.TrussBuilder;
import kingpost.truss.TrussModel;
import org.junit.jupiter.api.Test;

class SecondLookTest {

    private static Solution solved() {
        return Solver.solve(new TrussBuilder<TrussModel>("Hoist frame", Function.identity()).units(m, kN)
                .joint("A", 0, 0).joint("B", 4, 0).joint("C", 8, 0).joint("D", 4, 3).joint("E", 8, 6)
                .members("AB BC AD DE BD CD CE").pin("A").roller("C", Direction.slope(-3, 4))
                .load("E", 10, Direction.DOWN).load("E", 6, Direction.RIGHT).load("B", 1.7, Direction.at(250)).build());
    }

    /** The same solution with other answers in it. */
    private static Solution with(Solution s, UnaryOperator<MemberResult> member, UnaryOperator<ReactionResult> reaction) {
        List<MemberResult> members = new ArrayList<>(s.members());
        members.replaceAll(member);
        List<ReactionResult> reactions = new ArrayList<>(s.reactions());
        reactions.replaceAll(reaction);
        return new Solution(s.truss(), s.determinacy(), s.inspection(), s.steps(), members, reactions, s.checks());
    }

    private static MemberResult forced(MemberResult r, double force) {
        return new MemberResult(r.member(), force, r.sense(), r.found(), r.exact());
    }

    @Test
    void agreesWithARightSolution() {
        SecondLook look = SecondLook.of(solved());
        assertTrue(look.agrees(), look::toString);
        assertEquals(List.of(), look.unbalanced());
        assertEquals(10, look.forces().size());
        look.forces().forEach(each -> assertEquals(each.again(), each.answered(), 1e-9 * look.scale()));
    }

    /** By hand: the loads are 6 - 1.7 cos 70 along x and -10 - 1.7 sin 70 along y. */
    @Test
    void sumsTheLoadsByItself() {
        SecondLook look = SecondLook.of(solved());
        assertEquals(6000 - 1700 * Math.cos(Math.toRadians(70)), look.whole().get(0).loads(), 1e-8);
        assertEquals(-10000 - 1700 * Math.sin(Math.toRadians(70)), look.whole().get(1).loads(), 1e-8);
        assertEquals(-10000 * 8 - 6000 * 6 - 1700 * Math.sin(Math.toRadians(70)) * 4, look.whole().get(2).loads(), 1e-7);
    }

    @Test
    void findsAForceThatWasChanged() {
        Solution wrong = with(solved(), r -> r.member().name().equals("BD") ? forced(r, r.force() + 0.5) : r, r -> r);
        SecondLook look = SecondLook.of(wrong);
        assertFalse(look.agrees());
        assertEquals(List.of("B", "D"), look.unbalanced());
        assertEquals("BD", ((Source.OfMember) look.worstForce().orElseThrow().source()).member().name());
        assertEquals(0.5, look.worstForce().orElseThrow().difference(), 1e-8);
    }

    @Test
    void findsAReactionThatWasChanged() {
        Solution wrong = with(solved(), r -> r, r -> r.reaction().joint().equals("C")
                ? new ReactionResult(r.reaction(), -r.force(), r.exact()) : r);
        SecondLook look = SecondLook.of(wrong);
        assertFalse(look.agrees());
        assertEquals(List.of("C"), look.unbalanced());
    }

    /** A sign that is wrong in all forces at once still balances no joint with a load. */
    @Test
    void findsSignsTurnedRoundTogether() {
        Solution wrong = with(solved(), r -> forced(r, -r.force()), r -> new ReactionResult(r.reaction(), -r.force(),
                r.exact()));
        assertFalse(SecondLook.of(wrong).agrees());
    }

    @Test
    void findsASenseThatDoesNotFitItsForce() {
        Solution wrong = with(solved(), r -> r.member().name().equals("DE")
                ? new MemberResult(r.member(), r.force(), Solution.Sense.COMPRESSION, r.found(), r.exact()) : r, r -> r);
        SecondLook look = SecondLook.of(wrong);
        assertFalse(look.agrees());
        assertEquals(1, look.disagreements().size());
        assertTrue(look.disagreements().get(0).startsWith("DE is called by the sense compression"), look::toString);
    }
}
