package kingpost.diagram;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import kingpost.truss.Direction;
import kingpost.truss.Joint;
import kingpost.truss.TrussModel;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class TrussFigureTest {

    static List<TrussModel> trusses() {
        return Example.all();
    }

    @ParameterizedTest
    @MethodSource("trusses")
    void keepsTheContractOfFigures(TrussModel truss) {
        FigureContract.check(() -> TrussFigure.of(truss));
    }

    @ParameterizedTest
    @MethodSource("trusses")
    void namesEveryJointOnce(TrussModel truss) {
        List<String> texts = Clashes.textsOf(TrussFigure.of(truss));
        for (Joint joint : truss.joints()) {
            assertEquals(1, texts.stream().filter(joint.name()::equals).count(), joint.name());
        }
    }

    @Test
    void writesLoadsWithTheirUnitAndLengthsBelowAndBeside() {
        List<String> texts = Clashes.textsOf(TrussFigure.of(Example.canopy()));

        assertTrue(texts.containsAll(List.of("12 kN", "3 m", "6 m", "2.25 m")), texts.toString());
    }

    @Test
    void describesWhatIsSeen() {
        assertEquals("A truss of 5 joints and 7 members. It is held by a pin at A and a roller at B whose reaction acts "
                + "at 30\u00b0. The loads are 8 kN down at E, 3.5 kN to the right at E, 5 kN to the left at C, 6 kN down "
                + "at C, 2.75 kN down at C and 4 kN at -60\u00b0 at D.", TrussFigure.of(Example.bracket()).description());
    }

    @Test
    void lettersOfUsersStayLetters() {
        String bad = "<script>alert(1)</script>";
        TrussModel truss = Example.named("A & B <b> \"quoted\"").joint(bad, 0, 0).joint("B", 3, 0).joint("C", 1, 2)
                .members(bad + "-B B-C C-" + bad).pin(bad).roller("B").load("C", 4, Direction.DOWN).build();

        String text = TrussFigure.of(truss).toText();

        FigureContract.assertWellFormed(text);
        assertFalse(text.contains("<script") || text.contains("<b>"), text);
    }

    @Test
    void keepsAspect() {
        TrussModel truss = Example.bridge(4, 4, 5, 12.5);
        TrussLayout layout = TrussLayout.filling(truss, 500, 300);

        assertEquals(16.0 / 5, (layout.right() - layout.left()) / (layout.bottom() - layout.top()), 1e-12);
    }

    @Test
    void drawsATrussTooLongForItsLabelsWithoutLeavingThePage() {
        FigureContract.check(() -> TrussFigure.of(Example.bridge(200, 3, 3, 1)));
    }

    @Test
    void drawsATrussOfManyMembersInFewStrokes() {
        String text = TrussFigure.of(Example.bridge(5_000, 3, 3, 1)).toText();

        assertTrue(text.length() < 500_000, text.length() + " characters");
    }
}
