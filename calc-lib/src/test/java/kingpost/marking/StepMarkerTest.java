package kingpost.marking;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import kingpost.marking.MarkedSheet.Judged;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Equations at joints of the footbridge, by hand: slopes 3 in 4; AE 16.7 C, BE 12 T, CE 3.33 C; Ax 4 left, Ay 10 up; at
 * E 4 kN to the right, at B 12 kN down.
 */
class StepMarkerTest {

    private final Marker marker = Marker.of(SampleTrusses.footbridge());

    private MarkedSheet.MarkedStep step(String sheet) {
        MarkedSheet marked = marker.mark(sheet);
        assertEquals(1, marked.steps().size(), marked::toString);
        assertEquals(List.of(), marked.answers(), marked::toString);
        return marked.steps().get(0);
    }

    @ParameterizedTest
    @ValueSource(strings = {"joint A: \u03a3Fx = 0: Ax + AB + 0.8 AE = 0", "joint A: \u03a3Fy: 10 + 0.6 AE = 0",
        "joint A: sum Fy = 3/5 AE + Ay = 0", "joint A: \u03a3F_y: 0.6*AE = -10", "joint A: \u2191+ \u03a3Fy = 0: AE sin 36.87\u00b0 + 10 kN = 0",
        "joint E: \u03a3Fy: \u22120.6 AE \u2212 BE \u2212 (3/5) CE = 0", "joint E: \u03a3Fy: 10 - 12 - 0.6 CE = 0",
        "joint E: \u03a3Fx: 4 + 0.8\u00b716.67 + EF + 0.8CE = 0", "joint E: \u03a3Fx: 0.8 AE - 4 - EF - 4/5 CE = 0",
        "joint B\n: \u03a3Fy: EB - 12 = 0", "at joint B: Fy: BE = 12", "joint A: \u03a3Fy: 3 AE = -50", "joint E: \u03a3Fy: 10 - 12 - 0,6 CE = 0",
        "reactions: \u03a3M_A = 0: 12 Dy - 4\u00b712 - 8\u00b79 - 3\u00b74 = 0", "reactions: \u03a3Fy: Ay + Dy - 12 - 9 = 0",
        "whole truss: \u03a3MD = 0: -12 Ay + 12(8) + 9(4) - 4(3) = 0", "reactions: sum of moments about A: 12 Dy = 48 + 72 + 12",
        "section BC CE EF: \u03a3ME = 0: 3 BC - 4 (3) - 10 (4) = 0"})
    void rightEquationsAreRight(String sheet) {
        MarkedSheet.MarkedStep step = marker.mark(sheet.replace("\n", "")).steps().get(0);
        assertTrue(step.isRight(), () -> step.toString());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "joint A: \u03a3Fy: 10 + 0.8 AE = 0 | Sine and cosine of AE have changed places.",
        "joint A: \u03a3Fx: AB - 0.8 AE + Ax = 0 | AE has the wrong sign.",
        "joint B: \u03a3Fy: BE = 0 | The load at B is left out.",
        "joint B: \u03a3Fy: BE + 12 = 0 | The load at B has the wrong sign. Or: BE has the wrong sign.",
        "joint E: \u03a3Fy: -12 - 0.6 CE = 0 | AE is left out.",
        "joint E: \u03a3Fx: EF + 0.8 CE + 13.33 = 0 | The load at E is left out.",
        "joint A: \u03a3Fy: 10 + 0.6 AE + AB = 0 | AB has no part in this equation.",
        "joint A: \u03a3Fy: 10 + 0.7 AE = 0 | 'The factor of AE should be 0.6, not 0.7.'",
        "joint E: \u03a3Fy: 10 - 17.33 - 0.6 CE = 0 | The value of AB stands for BE.",
        "reactions: \u03a3M_A: 12 Dy - 48 - 12 = 0 | The load at F is left out.",
        "reactions: \u03a3M_A: 8 Dy - 48 - 72 - 12 = 0 | 'The arm of Dy should be 12, not 8.'",
        "section BC, CE and EF: \u03a3Fy: 10 - 12 + 0.6 CE = 0 | CE has the wrong sign.",
        "joint A: \u03a3Fy: 11 + 0.6 AE = 0 | 'The known forces come to 10 here, not 11.'"})
    void tellsWhatIsWrong(String sheet, String finding) {
        assertEquals(List.of(finding), step(sheet).findings());
    }

    @ParameterizedTest
    @ValueSource(strings = {"joint A: \u03a3Fy: 10 + 0.6 (AE + AB) = 0", "joint A: \u03a3Fy: AE AB = 0", "joint A: \u03a3Fy: 10 + 0.6 XY = 0",
        "\u03a3Fy: 10 + 0.6 AE = 0", "joint A: \u03a3Fy: 10 + 0.6 AE", "joint A: \u03a3Fy: 10 + = 0", "joint A: \u03a3Fy: 10 N + 0.6 AE = 0",
        "section BC, CE: \u03a3Fy: CE = 0", "section BC, XY: \u03a3Fy: CE = 0", "\u03a3M_A: 12 Dy = 132"})
    void leavesWhatItCannotReadToAPerson(String sheet) {
        assertTrue(!step(sheet).reason().isEmpty(), () -> step(sheet).toString());
    }

    @Test
    void takesTheNumbersThatThePersonFound() {
        // AE = -15 is wrong, and carried rightly into joint E: 9 - 12 - 0.6 CE = 0
        MarkedSheet marked = marker.mark("joint A: AE = -15\njoint E: \u03a3Fy: 9 - 12 - 0.6 CE = 0\nCE = -5");
        assertEquals(Judged.FOLLOWS, marked.steps().get(0).judged(), marked::toString);
        assertEquals(2, marked.answers().size());
    }

    @Test
    void paysForEquations() {
        MarkedSheet marked = marker.mark("joint A: \u03a3Fy: 10 + 0.6 AE = 0; \u03a3Fx: AB - 0.8 AE + Ax = 0; \u03a3Fx: AB = 3\n"
                + "\u03a3Fz AB = 0\nAE = -16.7");
        assertEquals(List.of(Judged.RIGHT, Judged.SLIPPED, Judged.WRONG), marked.steps().stream().map(MarkedSheet.MarkedStep::judged)
                .limit(3).toList());
        assertEquals(2 + 1 + 2, Points.USUAL.of(marked).points());
    }
}
