package kingpost.diagram;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import kingpost.form.FormTrusses;
import kingpost.statics.Solver;
import kingpost.svg.Svg;
import kingpost.truss.TrussModel;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every ready-made form of 2 to 12 panels: no label on another, on a line, or off the paper. */
class FormFiguresTest {

    /** Forces of the densest webs that may be listed below the figure; every other stands beside its member. */
    private static final int MOST_LISTED = 9;

    static Stream<TrussModel> forms() {
        return FormTrusses.all();
    }

    @ParameterizedTest(name = "{index}")
    @MethodSource("forms")
    void theTrussKeepsTheContractOfFigures(TrussModel truss) {
        Svg figure = TrussFigure.of(truss);

        FigureContract.check(figure);
        List<String> texts = Clashes.textsOf(figure);
        truss.joints().forEach(joint -> assertEquals(1, texts.stream().filter(joint.name()::equals).count(),
                joint.name() + " in " + texts));
    }

    @ParameterizedTest(name = "{index}")
    @MethodSource("forms")
    void theForcesKeepTheContractOfFigures(TrussModel truss) {
        Svg figure = ForceFigure.of(Solver.solve(truss));

        FigureContract.check(figure);
        List<String> texts = Clashes.textsOf(figure);
        truss.joints().forEach(joint -> assertTrue(texts.contains(joint.name()), joint.name() + " in " + texts));
        long listed = texts.stream().filter(t -> t.startsWith("No room")).flatMap(t -> Stream.of(t.split(","))).count();
        assertTrue(listed <= (truss.joints().size() < 16 ? 0 : MOST_LISTED), texts.toString());
    }
}
