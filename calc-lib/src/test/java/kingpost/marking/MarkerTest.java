package kingpost.marking;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import kingpost.marking.Slip.Kind;
import kingpost.marking.Slip.Place;
import kingpost.marking.Verdict.FollowThrough;
import kingpost.marking.Verdict.Right;
import kingpost.marking.Verdict.Slipped;
import kingpost.marking.Verdict.Unexplained;
import kingpost.statics.Solver;
import kingpost.truss.Direction;
import org.junit.jupiter.api.Test;

/**
 * Sheets written by hand for the footbridge. Its forces: AB 17.3 T, BC 17.3 T, CD 14.7 T, AE 16.7 C, EF 14.7 C,
 * FD 18.3 C, BE 12 T, CE 3.33 C, CF 2 T; reactions Ax 4 left, Ay 10 up, Dy 11 up.
 */
class MarkerTest {

    private static final String RIGHT =
            "AB 17.3, BC 17.3, CD 14.7, AE -16.7, EF -14.7, FD -18.3, BE 12, CE -3.33, CF 2";
    private final Marker marker = Marker.of(SampleTrusses.footbridge());

    private MarkedSheet marked(String change) {
        MarkedSheet marked = marker.mark(with(change));
        for (MarkedSheet.MarkedAnswer answer : marked.answers()) {
            if (RIGHT.contains(answer.subject() + " " + answer.text())) {
                assertInstanceOf(Right.class, answer.verdict(), answer.subject());
            }
        }
        return marked;
    }

    /** The right sheet with some answers replaced. */
    private static String with(String change) {
        String sheet = RIGHT;
        for (String one : change.split(", *")) {
            String[] parts = one.split(" ", 2);
            sheet = sheet.replaceAll("\\b" + parts[0] + " [^,]*", one);
        }
        return sheet;
    }

    private static Slip only(MarkedSheet marked) {
        assertEquals(1, marked.slips().size(), marked.slips()::toString);
        return marked.slips().get(0);
    }

    private static Verdict verdict(MarkedSheet marked, String subject) {
        return marked.answer(subject).orElseThrow().verdict();
    }

    @Test
    void marksRightAnswersRight() {
        for (String sheet : List.of(RIGHT, "AB 17.3 T\nCE 3.33 C\nEB 12.0 kN tension", "AB 17333 N T, CE 10/3 C",
                "AB 17.33333, CE -3.3333333", "AB 52/3", "compression positive\nAE 16.7, AB -17.3", "Ax 4 left, D 11",
                "CE C 3.33kN")) {
            MarkedSheet marked = marker.mark(sheet);
            assertEquals(marked.answers().size(), marked.right(), () -> sheet + " " + marked);
            assertEquals(List.of(), marked.slips());
        }
    }

    @Test
    void tellsWhenTooFewFiguresAreStated() {
        assertEquals(new Right(true), verdict(marker.mark("AB 17"), "AB"));
        assertEquals(new Right(false), verdict(marker.mark("BE 12"), "BE"));
        assertEquals(new Right(true), verdict(marker.mark("CE -3.3"), "CE"));
        for (String wrong : List.of("AB 18", "AB 16", "AB 20", "AB 17.5", "AB 17.2", "BE 0")) {
            assertEquals(0, marker.mark(wrong).right(), wrong);
        }
    }

    @Test
    void tellsWhenAnAnswerWasRoundedEarly() {
        assertEquals(new Right(false, true), verdict(marker.mark("AB 17.4"), "AB"));
        assertEquals(new Right(false, true), verdict(marker.mark("FD -18.4"), "FD"));
    }

    @Test
    void namesAWrongSenseWord() {
        assertEquals(new Slip(Kind.WRONG_SENSE_WORD, new Place.InAnswer(false), "AE", ""), only(marked("AE 16.7 kN T")));
    }

    @Test
    void namesAReversedSign() {
        assertEquals(new Slip(Kind.SENSE_REVERSED, new Place.InAnswer(false), "CE", ""), only(marked("CE 3.33")));
    }

    @Test
    void followsAReversedSenseThroughTheNextJoint() {
        // joint E with AE in tension: down 10 and 12, so CE takes 22 upwards, 36.7; across -4 + 29.3 + 13.3
        MarkedSheet marked = marked("AE 16.7 T, AB -9.33, BC -9.33, CE -36.7, EF 38.7, CF 22, CD -38.7");
        assertEquals(Kind.SENSE_REVERSED, only(marked).kind());
        assertEquals("AE", only(marked).subject());
        assertInstanceOf(Slipped.class, verdict(marked, "AE"));
        for (String follows : List.of("AB", "BC", "CE", "EF")) {
            assertInstanceOf(FollowThrough.class, verdict(marked, follows), follows);
        }
    }

    @Test
    void namesSwappedSineAndCosine() {
        // joint A with 0.8 up and 0.6 across: AE = 10 / 0.8, AB = 4 + 0.6 times 12.5
        MarkedSheet marked = marked("AE -12.5, AB 11.5, BC 11.5, CE -7.5, EF -8, CF 4.5, CD 5.5");
        assertEquals(Kind.SINE_COSINE_SWAPPED, only(marked).kind());
        assertEquals(new Place.AtJoint("A"), only(marked).where());
        assertInstanceOf(FollowThrough.class, verdict(marked, "BC"));
    }

    @Test
    void namesTransposedDigits() {
        assertEquals(Kind.DIGITS_TRANSPOSED, only(marked("AB 71.3")).kind());
        assertEquals(Kind.DIGITS_TRANSPOSED, only(marked("EF -41.7")).kind());
    }

    @Test
    void namesALoadForgottenAtAJoint() {
        // joint B without its 12 kN: nothing for BE to carry; joint E then has no 12 pulling down
        MarkedSheet marked = marked("BE 0, CE 16.7, EF -30.7, CF -10, CD 30.7");
        assertEquals(Kind.LOAD_FORGOTTEN, only(marked).kind());
        assertEquals("the 12 kN load at B", only(marked).subject());
        assertInstanceOf(FollowThrough.class, verdict(marked, "CE"));
    }

    @Test
    void namesALoadForgottenAltogetherWhenNoReactionIsStated() {
        // no 4 kN anywhere: Ax = 0, moments give D = 10 and Ay = 11
        MarkedSheet marked = marker.mark("AE -18.3, AB 14.7, BC 14.7, BE 12, CE -1.67, EF -13.3, CF 1, CD 13.3");
        assertTrue(marked.allSlips().stream().allMatch(slip -> slip.kind() == Kind.LOAD_FORGOTTEN), marked::toString);
        assertEquals("the 4 kN load at E", marked.slips().get(0).subject());
    }

    @Test
    void namesAnotherMembersValueCarried() {
        // joint E with BC's 17.3 in place of BE's 12: CE = (10 - 17.33) / 0.6
        MarkedSheet marked = marked("CE -12.2, EF -7.56, CF 7.33, CD 7.56");
        assertTrue(marked.allSlips().stream().anyMatch(slip -> slip.kind() == Kind.WRONG_MEMBER_CARRIED), marked::toString);
    }

    @Test
    void namesAnEarlyRounding() {
        // joint E with AE as 17: CE = (10.2 - 12) / 0.6 = -3; EF = -4 - 13.6 + 2.4
        MarkedSheet marked = marked("CE -3.00, EF -15.2, CF 1.80, CD 14.9");
        assertEquals(Kind.ROUNDED_CARRIED, only(marked).kind());
        assertEquals("AE", only(marked).subject());
    }

    @Test
    void tellsTwoSlipsApart() {
        MarkedSheet marked = marked("AB 71.3, FD 18.3");
        assertEquals(List.of(Kind.DIGITS_TRANSPOSED, Kind.SENSE_REVERSED), Marker.kinds(marked));
    }

    @Test
    void callsWhatNothingExplainsUnexplained() {
        MarkedSheet marked = marked("CE -7.77");
        assertInstanceOf(Unexplained.class, verdict(marked, "CE"));
        assertEquals(List.of(), marked.slips());
    }

    @Test
    void followsAnUnexplainedSlip() {
        // AE = -15, and AB from it by the sum across: 4 + 0.8 times 15
        MarkedSheet marked = marked("AE -15, AB 16, BC 16");
        assertInstanceOf(Unexplained.class, verdict(marked, "AE"));
        assertInstanceOf(FollowThrough.class, verdict(marked, "AB"));
        assertInstanceOf(FollowThrough.class, verdict(marked, "BC"));
    }

    @Test
    void seesSensesCountedTheOtherWayRound() {
        MarkedSheet marked = marker.mark("AB -17.3, BC -17.3, CD -14.7, AE 16.7, EF 14.7, FD 18.3, BE -12, CE 3.33, CF -2");
        assertEquals(new Slip(Kind.SENSE_REVERSED, new Place.Throughout(), "", ""), only(marked));
    }

    @Test
    void seesSensesNotStated() {
        MarkedSheet marked = marker.mark("AB 17.3, BC 17.3, CD 14.7, AE 16.7, EF 14.7, FD 18.3, BE 12, CE 3.33, CF 2");
        assertEquals(Kind.SENSE_NOT_STATED, only(marked).kind());
        assertEquals(5, marked.right());
    }

    @Test
    void seesAWrongPrefix() {
        assertEquals(Kind.POWER_OF_TEN, only(marked("BE 12000")).kind());
    }

    @Test
    void usesTheOrderAPersonTells() {
        // from joint D with sine and cosine swapped: FD = 11 / 0.8, CD = 0.6 times 13.75
        MarkedSheet marked = marker.mark("reactions: Dy = 11\njoint D: FD -13.75, CD 8.25");
        assertEquals(Kind.SINE_COSINE_SWAPPED, only(marked).kind());
        assertEquals(new Place.AtJoint("D"), only(marked).where());
    }

    @Test
    void findsASlipOfSomeoneWhoBeganAtTheOtherEnd() {
        MarkedSheet marked = marked("FD -13.75, CD 8.25, AE -16.7");
        assertEquals(Kind.SINE_COSINE_SWAPPED, only(marked).kind());
    }

    @Test
    void followsASectionForceIntoAJoint() {
        // section BC, CE, EF without the 12 kN at B: 10 - 0.6 CE = 0; joint C then gives CF = -0.6 CE
        MarkedSheet marked = marked("CE 16.7, CF -10");
        assertEquals(Kind.LOAD_FORGOTTEN, only(marked).kind());
        assertEquals("the 12 kN load at B", only(marked).subject());
        assertInstanceOf(Place.AtSection.class, only(marked).where());
        assertInstanceOf(Slipped.class, verdict(marked, "CE"));
        assertInstanceOf(FollowThrough.class, verdict(marked, "CF"));
    }

    @Test
    void followsAWrongReactionIntoMoments() {
        // Ay as 01 for 10 is no number; as 100 it gives moments about E: 3 BC = 4 times 3 + 100 times 4
        MarkedSheet marked = marker.mark("Ax 4 left, Ay 100, Dy 11, BC 137, CD 14.7, FD -18.3");
        assertEquals(Kind.POWER_OF_TEN, only(marked).kind());
        assertInstanceOf(FollowThrough.class, verdict(marked, "BC"));
        assertInstanceOf(Right.class, verdict(marked, "CD"));
    }

    @Test
    void marksReactionsThatTheWorkingDoesNotNeed() {
        // a bracket worked from its free end; moments about A without the 9 kN at D: 4 Bx = 12 times 8; then Ax = -Bx
        Marker bracket = Marker.of(Solver.solve(SampleTrusses.named("Bracket").joint("A", 0, 4).joint("B", 0, 0).joint("C", 4, 0)
                .joint("D", 4, 4).joint("E", 8, 0).members("AD AC AB BC CD CE DE").pin("A").roller("B", Direction.RIGHT)
                .load("E", 12, Direction.DOWN).load("D", 9, Direction.DOWN).build()));
        MarkedSheet marked = bracket.mark("Bx = 24, Ax = 24 left, Ay = 21, AD 12, AC 29.7, AB 0, BC -33, CD -21, CE -12, DE 17.0");
        assertEquals(Kind.LOAD_FORGOTTEN, only(marked).kind());
        assertInstanceOf(Slipped.class, verdict(marked, "Bx"));
        assertInstanceOf(FollowThrough.class, verdict(marked, "Ax"));
        assertEquals(8, marked.right(), marked::toString);
    }

    @Test
    void tellsAConventionOnceAndFollowsIt() {
        MarkedSheet marked = marker.mark("AB -17.3, BC -17.3, CD -14.7, AE 16.7, EF 14.7, FD 18.3, BE -12, CE 3.33, CF -2");
        assertEquals(1, marked.slipped());
        assertEquals(8, marked.followThrough());
    }

    @Test
    void seesALoadAtTheWrongJoint() {
        // the 9 kN at E in place of F, by hand: moments about A give Dy = (48 + 36 + 12) / 12 = 8, Ay = 13
        MarkedSheet marked = marker.mark("Ax -4, Ay 13, Dy 8, AE -21.7, AB 21.3, BC 21.3, BE 12, CE -13.3, EF -10.7, CF 8, FD -13.3,"
                + " CD 10.7");
        assertEquals(Kind.LOAD_MISPLACED, only(marked).kind());
        assertEquals("E", only(marked).other());
        assertEquals(1, marked.slipped());
    }

    @Test
    void leavesWhatItCannotReadToAPerson() {
        MarkedSheet marked = marker.mark("AB 17,333\nBC 17.3 T\nCD\nAE sixteen");
        assertEquals(2, marked.notRead());
        assertEquals(1, marked.notAnswered());
        assertEquals(1, marked.right());
    }

    @Test
    void marksAClass() {
        MarkedClass marked = marker.markClass("student,AB,CE\nIvo,17.3,-3.33\nMara,17.3,3.33\n");
        assertEquals(List.of(2, 1), marked.sheets().stream().map(MarkedSheet::right).toList());
        assertEquals(Map.of("Mara", Kind.SENSE_REVERSED), Map.of(marked.sheets().get(1).student(),
                only(marked.sheets().get(1)).kind()));
    }
}
