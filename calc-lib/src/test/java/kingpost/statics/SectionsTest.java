package kingpost.statics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import kingpost.statics.BodyEquation.Kind;
import kingpost.statics.SectionResult.Impossible;
import kingpost.statics.SectionResult.Solved;
import kingpost.statics.SectionResult.Why;
import kingpost.truss.Direction;
import kingpost.truss.Member;
import kingpost.truss.TrussModel;
import kingpost.units.CalculationException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SectionsTest {

    private static SectionResult cut(TrussModel truss, String... members) {
        return Sections.of(truss, Stream.of(members).map(m -> truss.member(m).orElseThrow()).toList());
    }

    private static Map<String, Double> answers(Solved solved) {
        Map<String, Double> answers = new HashMap<>();
        solved.section().answers().forEach(a -> answers.put(((Source.OfMember) a.unknown()).member().name(), a.value()));
        return answers;
    }

    /**
     * Cuts of published examples, to the digits printed. MS-01 and MS-02: S. S. Bhavikatti, Mechanics of Solids,
     * chapter 3, examples 3.8 and 3.9; MS-05: Beer, Johnston et al., Vector Mechanics for Engineers: Statics, sample
     * problem 6.3; MS-07 and MS-09: Hibbeler and Gupta, Engineering Mechanics, examples 6.5 and 6.7 (for MS-09 its
     * second cut). The whole source of each stands in the file of the case.
     */
    @ParameterizedTest
    @CsvSource({"MS-01, FH GH GI", "MS-02, L3-L4 U3-U4 U4-L3", "MS-05, GI FH GH", "MS-07, BC EG CG",
            "MS-09, AB BF EF"})
    void findsThePublishedForces(String id, String members) {
        PublishedCase published = PublishedCase.of(id);
        Solved solved = assertInstanceOf(Solved.class, cut(published.truss(), members.split(" ")));

        Map<String, Double> answers = answers(solved);
        assertEquals(members.split(" ").length, answers.size());
        answers.forEach((member, force) -> {
            double given = published.inUnit(force);
            assertEquals(published.computed.get(member), given, 0.51e-4, member);
            if (published.published.containsKey(member)) {
                double printed = published.published.get(member);
                assertEquals(printed, given, PublishedCase.precision(printed), member);
            }
        });
        assertTrue(solved.worst() < 1e-12);
        assertEquals(List.of(), solved.notFound());
    }

    /** Common practice, no source: parallel chords leave the diagonal alone in the sum across them. */
    @Test
    void choosesTheEquationThatLeavesEachUnknownAlone() {
        Solved solved = (Solved) cut(PublishedCase.of("MS-07").truss(), "BC", "EG", "CG");
        List<BodyEquation> equations = solved.section().equations();

        assertEquals("G", ((Kind.Moment) equations.get(0).kind()).joint());
        assertEquals("y", ((Kind.Along) equations.get(1).kind()).axis().label());
        assertEquals("C", ((Kind.Moment) equations.get(2).kind()).joint());
        assertEquals(List.of("BC", "CG", "EG"), equations.subList(0, 3).stream()
                .map(e -> ((Source.OfMember) ((AxisEquation.Role.Gives) e.role()).unknown()).member().name()).toList());
        assertInstanceOf(AxisEquation.Role.Check.class, equations.get(3).role());
        assertEquals(0, equations.get(3).residual(), 1e-9);
    }

    @Test
    void keepsThePartWithoutReactionsOfACantilever() {
        PublishedCase cantilever = PublishedCase.of("MJ-01");
        Solved solved = (Solved) cut(cantilever.truss(), "AB", "BE", "DE");

        assertEquals(Step.Keep.NO_REACTIONS, solved.section().keep());
        assertEquals(List.of("B", "C", "D"), solved.section().part());
        assertEquals(List.of(), solved.reactions());
        answers(solved).forEach((m, f) -> assertEquals(cantilever.computed.get(m), cantilever.inUnit(f), 0.51e-4, m));
    }

    @Test
    void findsReactionsFirstWhereBothPartsAreHeld() {
        Solved solved = (Solved) cut(PublishedCase.of("MS-01").truss(), "FH", "GH", "GI");

        assertEquals(Step.WhyReactions.SECTION_NEEDS_THEM, solved.reactions().get(0).why());
        assertEquals(3, solved.reactions().get(0).answers().size());
    }

    @Test
    void saysThroughWhichMembersTheTrussStillHangsTogether() {
        Impossible no = assertInstanceOf(Impossible.class, cut(Trusses.canopy(), "AD", "BD"));

        assertEquals(Why.DOES_NOT_PART, no.why());
        assertEquals(List.of("AB", "BC", "CD"), no.joinedBy().stream().map(Member::name).toList());
        assertTrue(no.offer().stream().map(Member::name).toList().contains("AD"));
    }

    @Test
    void saysWhichMembersAreNoPartOfTheCut() {
        Impossible no = assertInstanceOf(Impossible.class,
                cut(PublishedCase.of("MS-01").truss(), "FH", "GH", "GI", "AC"));

        assertEquals(Why.NOT_ONE_CUT, no.why());
        assertEquals(List.of("AC"), no.surplus().stream().map(Member::name).toList());
        assertEquals(List.of("FH", "GH", "GI"), no.offer().stream().map(Member::name).sorted().toList());
    }

    @Test
    void saysWhenNoEquationLeavesAnUnknownAlone() {
        PublishedCase warren = PublishedCase.of("MS-01");
        Impossible no = assertInstanceOf(Impossible.class, cut(warren.truss(), "BD", "CD", "CE", "FH", "GH", "GI"));

        assertEquals(Why.TOO_MANY_UNKNOWNS, no.why());
        assertEquals(3, no.offer().size());
    }

    @Test
    void leavesOutIdleMembers() {
        Solved solved = (Solved) cut(PublishedCase.of("MS-05").truss(), "HJ", "IJ", "JK", "KL");

        assertEquals(List.of("JK"), solved.idle().stream().map(Member::name).toList());
        assertEquals(List.of("JK"), solved.section().omitted().stream().map(Member::name).toList());
    }

    @Test
    void cutsFourMembersWhereThreeMeet() {
        TrussModel truss = Trusses.named("Double").joint("A", 0, 0).joint("B", 4, 0).joint("C", 8, 0)
                .joint("D", 2, 3).joint("E", 6, 3).members("AB BC AD BD BE CE DE").pin("A").roller("C")
                .load("D", 6, Direction.DOWN).build();
        Solved solved = assertInstanceOf(Solved.class, cut(truss, "AB", "BD", "BE", "CE"));

        assertTrue(answers(solved).containsKey("CE"), () -> solved.section().answers().toString());
        assertTrue(solved.worst() < 1e-12);
    }

    @Test
    void refusesWhatIsNoSection() {
        TrussModel truss = Trusses.canopy();
        Member stranger = new Member("XY", "X", "Y");
        Member ab = truss.member("AB").orElseThrow();

        assertEquals("Section: no members are given; name those to cut, as in section(\"BC BD\").",
                assertThrows(CalculationException.class, () -> Sections.of(truss, List.of())).getMessage());
        assertEquals("Section: Canopy has no member XY; name members of the truss.",
                assertThrows(CalculationException.class, () -> Sections.of(truss, List.of(stranger))).getMessage());
        assertEquals("Section: member AB is given twice; name it once.",
                assertThrows(CalculationException.class, () -> Sections.of(truss, List.of(ab, ab))).getMessage());
        assertThrows(NotSolvable.class, () -> Sections.of(Trusses.twoPanels(false).pin("A").roller("B").build(),
                List.of(Trusses.twoPanels(false).pin("A").roller("B").build().member("AB").orElseThrow())));
    }
}
