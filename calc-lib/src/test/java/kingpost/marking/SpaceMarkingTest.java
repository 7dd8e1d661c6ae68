package kingpost.marking;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import kingpost.marking.Slip.Kind;
import kingpost.statics.Solver;
import org.junit.jupiter.api.Test;

/** A mast in space of two stages. Its forces, right and with slips, are from NumPy: numpy.linalg.solve, joint by joint. */
class SpaceMarkingTest {

    private static final String RIGHT = "AB = 1.50, BC = 7.14, CA = 2.25, AD = 4.97, BD = -3.76, CD = -8.32, BE = -10.6,"
            + " CE = -7.19, DE = 5.34";
    private static final String REACTIONS = ", Ax = -3.00, Ay = -4.50, Az = -3.75, By = 10.5, Bz = 1.75, Cy = 12.0";

    private final Marker marker = Marker.of(Solver.solve(SampleTrusses.named("Mast").joint("A", 0, 0, 0).joint("B", 4, 0, 0)
            .joint("C", 0, 0, 4).joint("D", 1, 3, 1).joint("E", 2, 4, 3).members("AB BC CA AD BD CD BE CE DE").ball("A")
            .link("B", 0, 1, 0).link("B", 0, 0, 1).link("C", 0, 1, 0).load("E", 3, -12, 0).load("D", 0, -6, 2).build()));

    @Test
    void marksRightAnswersRight() {
        MarkedSheet marked = marker.mark(RIGHT + REACTIONS);
        assertEquals(15, marked.right(), marked::toString);
    }

    @Test
    void followsAReversedSenseThroughTheJointsBelow() {
        MarkedSheet marked = marker.mark("AD = -8.29, BD = -0.594, CD = -0.396, BE = -10.6, CE = -7.19, DE = -5.34");
        assertEquals(List.of(Kind.SENSE_REVERSED), Marker.kinds(marked), marked::toString);
        assertEquals("DE", marked.slips().get(0).subject());
        for (String follows : List.of("AD", "BD", "CD")) {
            assertInstanceOf(Verdict.FollowThrough.class, marked.answer(follows).orElseThrow().verdict(), follows);
        }
        assertEquals(2, marked.right());
    }

    @Test
    void namesSlipsOfWriting() {
        assertEquals(List.of(Kind.DIGITS_TRANSPOSED), Marker.kinds(marker.mark(RIGHT.replace("-8.32", "-3.82"))));
        assertEquals(List.of(Kind.SENSE_REVERSED), Marker.kinds(marker.mark(RIGHT.replace("BE = -10.6", "BE = 10.6"))));
        assertEquals(List.of(Kind.WRONG_SENSE_WORD), Marker.kinds(marker.mark("BE = 10.6 T, CE = 7.19 C, DE = 5.34 T")));
    }

    @Test
    void judgesEquationsOfJointsInSpace() {
        MarkedSheet marked = marker.mark("joint A: \u03a3Fx: Ax + AB + 0.302 AD = 0; \u03a3Fz: Az + CA - 0.302 AD = 0");
        assertTrue(marked.steps().get(0).isRight(), marked::toString);
        assertEquals(List.of("AD has the wrong sign."), marked.steps().get(1).findings().stream()
                .map(words -> words.replaceAll(" Or: .*", "")).toList());
    }
}
