package kingpost.statics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import kingpost.statics.MemberWays.Means;
import kingpost.truss.Direction;
import kingpost.truss.Member;
import kingpost.truss.TrussModel;
import kingpost.units.CalculationException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class MemberSearchTest {

    private static MemberWays to(TrussModel truss, String member) {
        return MemberSearch.of(truss, truss.member(member).orElseThrow());
    }

    private static Map<Means, Integer> counts(MemberWays ways) {
        return ways.ways().stream().collect(Collectors.toMap(MemberWays.Way::means,
                w -> w.count().map(MemberWays.Count::equations).orElse(-1)));
    }

    /**
     * Every member of published examples comes out the same by its own shortest way. The source of each stands in the
     * file of the case; {@code published} to the digits printed, {@code computed} to four decimals.
     */
    @ParameterizedTest
    @ValueSource(strings = {"MS-01", "MS-02", "MS-04", "MS-05", "MS-07", "MS-09", "MJ-01", "MJ-04"})
    void findsEveryMemberOfAPublishedTruss(String id) {
        PublishedCase published = PublishedCase.of(id);
        TrussModel truss = published.truss();

        for (Member member : truss.members()) {
            MemberWays ways = MemberSearch.of(truss, member);
            String name = member.name().replace("-", "");
            double force = published.inUnit(ways.force());
            double computed = published.computed.containsKey(member.name()) ? published.computed.get(member.name())
                    : published.computed.get(name);
            assertEquals(computed, force, 0.51e-4, member.name());
            assertTrue(ways.worst() < 1e-11, member.name());
            assertTrue(ways.zero() || gives(ways) == ways.ways().get(0).count().orElseThrow().equations(),
                    () -> member.name() + ": as many unknowns as equations");
        }
        published.published.forEach((member, force) -> assertEquals(force,
                published.inUnit(to(truss, member).force()), PublishedCase.precision(force), member));
    }

    private static int gives(MemberWays ways) {
        return ways.steps().stream().mapToInt(step -> step.answers().size()).sum();
    }

    /**
     * Hibbeler and Gupta, example 6.5 (MS-07): the example takes three equations of the whole and one of the part for
     * a chord; the vertical sum needs only one reaction. By joints it is joint A, then joint G.
     */
    @Test
    void comparesASectionWithJoints() {
        TrussModel truss = PublishedCase.of("MS-07").truss();

        assertEquals(Map.of(Means.SECTIONS, 2, Means.REACTIONS_AND_JOINTS, 3, Means.JOINTS, -1),
                counts(to(truss, "CG")));
        assertEquals(Means.SECTIONS, to(truss, "CG").ways().get(0).means());
    }

    /** A cantilever: one section against three joints from the tip. */
    @Test
    void needsNoReactionOnTheFreeSideOfACantilever() {
        TrussModel truss = PublishedCase.of("MJ-01").truss();
        MemberWays ways = to(truss, "AB");

        assertEquals(1, counts(ways).get(Means.SECTIONS));
        assertInstanceOf(Step.AtSection.class, ways.steps().get(0));
        assertEquals(1, ways.steps().size());
    }

    @Test
    void takesOneJointWhereThatIsEnough() {
        MemberWays ways = to(PublishedCase.of("MS-02").truss(), "U1-L1");

        assertEquals(Means.JOINTS, ways.ways().get(0).means());
        assertEquals(List.of("L1"), ways.ways().get(0).count().orElseThrow().joints());
        assertEquals(1, ways.ways().get(0).count().orElseThrow().equations());
    }

    @Test
    void tellsZeroByTheRuleAndWhatItRestsOn() {
        MemberWays ways = to(PublishedCase.of("MS-07").truss(), "BG");

        assertTrue(ways.zero());
        assertEquals(List.of("B"), ways.seen().stream().map(Inspection.Finding::joint).toList());
        assertEquals(List.of(), ways.steps());
        TrussModel chain = Trusses.named("Chain").joint("A", 0, 0).joint("B", 3, 0).joint("C", 6, 0).joint("D", 9, 0)
                .joint("E", 3, 2).joint("F", 6, 2).members("AB BC CD AE BE BF EF CF DF").pin("A").roller("B")
                .load("E", 5, Direction.DOWN).build();
        MemberWays far = to(chain, "BF");
        assertTrue(far.zero(), far::toString);
        assertEquals(List.of("C", "D", "F"), far.seen().stream().map(Inspection.Finding::joint).toList());
    }

    @Test
    void followsMembersInLine() {
        MemberWays ways = to(PublishedCase.of("MS-07").truss(), "AB");

        assertEquals(800, PublishedCase.of("MS-07").inUnit(ways.force()), 1e-9);
        assertInstanceOf(Inspection.Finding.ThreeMembers.class, ways.seen().get(0));
    }

    @Test
    void saysWhenOnlyTheWholeSystemHelps() {
        TrussModel complex = Trusses.named("Complex").joint("A", 0, 0).joint("B", 4, -1).joint("C", 8, 0)
                .joint("D", 7, 4).joint("E", 4, 6).joint("F", 0, 5).members("AB BC CD DE EF AF AD BE CF").pin("A")
                .roller("C").load("E", 7, Direction.DOWN).build();

        assertEquals("Member AB: neither joints one by one nor sections lead to it in Complex; use solve(), which solves"
                + " several equations at once.",
                assertThrows(CalculationException.class, () -> to(complex, "AB")).getMessage());
    }

    @Test
    void refusesAMechanism() {
        TrussModel square = Trusses.twoPanels(false).pin("A").roller("B").build();

        assertThrows(NotSolvable.class, () -> to(square, "AB"));
    }
}
