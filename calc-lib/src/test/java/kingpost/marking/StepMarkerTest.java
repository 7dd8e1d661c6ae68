package kingpost.marking;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
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
        "joint B\n: \u03a3Fy: EB - 12 = 0", "at joint B: Fy: BE = 12"})
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
        "joint A: \u03a3Fy: 11 + 0.6 AE = 0 | 'The known forces come to 10 here, not 11.'"})
    void tellsWhatIsWrong(String sheet, String finding) {
        assertEquals(List.of(finding), step(sheet).findings());
    }

    @ParameterizedTest
    @ValueSource(strings = {"joint A: \u03a3Fy: 10 + 0.6 (AE + AB) = 0", "joint A: \u03a3Fy: AE AB = 0", "joint A: \u03a3Fy: 10 + 0.6 XY = 0",
        "\u03a3Fy: 10 + 0.6 AE = 0", "joint A: \u03a3Fy: 10 + 0.6 AE", "joint A: \u03a3Fy: 10 + = 0", "joint A: \u03a3Fy: 10 N + 0.6 AE = 0"})
    void leavesWhatItCannotReadToAPerson(String sheet) {
        assertTrue(!step(sheet).reason().isEmpty(), () -> step(sheet).toString());
    }

    @Test
    void takesTheNumbersThatThePersonFound() {
        // AE = -15 is wrong, and carried rightly into joint E: 9 - 12 - 0.6 CE = 0
        MarkedSheet marked = marker.mark("joint A: AE = -15\njoint E: \u03a3Fy: 9 - 12 - 0.6 CE = 0\nCE = -5");
        assertTrue(marked.steps().get(0).isRight(), marked::toString);
        assertEquals(2, marked.answers().size());
    }
}
