package kingpost.statics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import kingpost.statics.Inspection.Finding;
import kingpost.truss.Direction;
import kingpost.truss.Member;
import kingpost.truss.TrussBuilder;
import kingpost.truss.TrussModel;
import org.junit.jupiter.api.Test;

/** The rules are common practice, no source. */
class InspectionsTest {

    /** A kite on a wall: A and B held, C inside, D outside, E the tip. */
    private static TrussBuilder<TrussModel> bracket() {
        return Trusses.named("Bracket").joint("A", 0, 0).joint("B", 0, 3).joint("C", 3, 3).joint("D", 3, 0)
                .joint("E", 6, 3).members("BC AC AD CD CE DE").pin("A").pin("B");
    }

    @Test
    void twoMembersAtAnUnloadedCornerCarryNothing() {
        Inspection inspection = Inspections.of(bracket().load("C", 5, Direction.DOWN).build());

        Finding.TwoMembers first = assertInstanceOf(Finding.TwoMembers.class, inspection.findings().get(0));
        assertEquals("E", first.joint());
        assertEquals(1, first.round());
        assertEquals(List.of("CE", "DE", "AD", "CD"),
                inspection.zeroForceMembers().stream().map(Member::name).toList());
        assertEquals(2, inspection.findings().get(1).round());
    }

    @Test
    void aLoadAtTheCornerIsANearMiss() {
        Inspection inspection = Inspections.of(bracket().load("E", 5, Direction.DOWN).build());

        assertTrue(inspection.findings().isEmpty());
        Inspection.NearMiss miss = inspection.nearMisses().stream().filter(n -> n.joint().equals("E")).findFirst()
                .orElseThrow();
        assertEquals(2, miss.rule());
        assertEquals(List.of("CE", "DE"), miss.members().stream().map(Member::name).toList());
        assertEquals(1, miss.loads().size());
        assertEquals(List.of(), miss.supports());
    }

    @Test
    void aLoadAlongOneOfTwoMembersLeavesTheOtherIdle() {
        Inspection inspection = Inspections.of(bracket().load("E", 5, Direction.RIGHT).build());

        Finding.LoadInLine first = assertInstanceOf(Finding.LoadInLine.class, inspection.findings().get(0));
        assertEquals("DE", first.idle().name());
        assertEquals(List.of("CE"), first.carrying().stream().map(Member::name).toList());
    }

    @Test
    void theThirdMemberAtAStraightJointCarriesNothingAndTheTwoInLineTheSame() {
        TrussModel canopy = Trusses.canopy();
        Inspection inspection = Inspections.of(canopy);
        Solution solution = Solver.solve(canopy);

        Finding.ThreeMembers finding = assertInstanceOf(Finding.ThreeMembers.class, inspection.findings().get(0));
        assertEquals("BD", finding.idle().name());
        assertEquals("AB", finding.first().name());
        assertEquals("BC", finding.second().name());
        assertEquals(solution.members().get(0).force(), solution.members().get(1).force());
        assertTrue(solution.steps().stream().noneMatch(s -> s instanceof Step.AtJoint at && at.joint().equals("B")));
    }

    @Test
    void aLoadAtAStraightJointIsANearMissOfTheThirdMember() {
        TrussModel truss = Trusses.named("Loaded below").joint("A", 0, 0).joint("B", 3, 0).joint("C", 6, 0)
                .joint("D", 3, 2.25).members("AB BC AD BD CD").pin("A").roller("C").load("B", 12, Direction.DOWN)
                .build();

        Inspection.NearMiss miss = Inspections.of(truss).nearMisses().stream().filter(n -> n.joint().equals("B"))
                .findFirst().orElseThrow();

        assertEquals(3, miss.rule());
        assertEquals(List.of("BD", "AB", "BC"), miss.members().stream().map(Member::name).toList());
    }

    @Test
    void aRollerTakesALoadAloneAndTheMemberAcrossIsIdle() {
        TrussModel truss = Trusses.named("Post").joint("A", 0, 0).joint("B", 4, 0).joint("C", 0, 3)
                .members("AB BC AC").pin("A").roller("B", 90).load("C", 5, Direction.DOWN).build();

        Inspection inspection = Inspections.of(truss);

        assertEquals(List.of("BC", "AB"), inspection.zeroForceMembers().stream().map(Member::name).toList());
        assertEquals(List.of(), ((Finding.LoadInLine) inspection.findings().get(1)).carrying());
    }

    @Test
    void twoMembersInLineWithNothingElseCarryTheSame() {
        TrussModel truss = Trusses.named("Long tie").joint("A", 0, 0).joint("B", 3, 0).joint("C", 6, 0)
                .joint("D", 3, 3).members("AB BC AD CD").pin("A").roller("C").load("D", 4, Direction.DOWN).build();

        Finding.SameForce finding = assertInstanceOf(Finding.SameForce.class,
                Inspections.of(truss).findings().get(0));

        assertEquals("B", finding.joint());
        assertEquals(List.of(), finding.zero());
    }

    @Test
    void aMemberThatIsZeroOnlyByCalculationIsNotFoundByInspection() {
        TrussModel truss = Trusses.named("Balanced").joint("A", 0, 0).joint("B", 4, 0).joint("C", 8, 0)
                .joint("D", 2, 3).joint("E", 6, 3).members("AB BC AD BD BE CE DE").pin("A").roller("C")
                .load("D", 6, Direction.DOWN).load("E", 6, Direction.DOWN).build();

        Solution solution = Solver.solve(truss);
        Solution.MemberResult bd = solution.members().get(3);

        assertEquals("BD", bd.member().name());
        assertEquals(0, bd.force());
        assertEquals(Solution.Sense.ZERO, bd.sense());
        assertEquals(Solution.Found.JOINT, bd.found());
        assertTrue(solution.inspection().zeroForceMembers().isEmpty());
    }
}
