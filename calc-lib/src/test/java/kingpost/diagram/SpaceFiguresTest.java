package kingpost.diagram;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import kingpost.statics.Determinacies;
import kingpost.statics.Determinacy;
import kingpost.statics.Solution;
import kingpost.statics.Solver;
import kingpost.statics.SpaceTrusses;
import kingpost.statics.Step;
import kingpost.svg.Svg;
import kingpost.truss.TrussModel;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Space trusses in their views: every joint named in each, every force written once, nothing on anything else. */
class SpaceFiguresTest {

    static Stream<TrussModel> trusses() {
        return Stream.of(SpaceTrusses.tripod(), SpaceTrusses.mast(), SpaceTrusses.boom());
    }

    @ParameterizedTest(name = "{index}")
    @MethodSource("trusses")
    void theTrussStandsInFourViews(TrussModel truss) {
        Svg figure = TrussFigure.of(truss);

        FigureContract.check(figure);
        List<String> texts = Clashes.textsOf(figure);
        for (String caption : List.of("Front: x and y", "Plan: x and z", "Side: z and y")) {
            assertTrue(texts.contains(caption), texts.toString());
        }
        truss.joints().forEach(joint -> assertEquals(4, texts.stream().filter(joint.name()::equals).count(),
                joint.name() + " in " + texts));
    }

    @ParameterizedTest(name = "{index}")
    @MethodSource("trusses")
    void everyForceIsWrittenOnce(TrussModel truss) {
        Svg figure = ForceFigure.of(Solver.solve(truss));

        FigureContract.check(figure);
    }

    @ParameterizedTest(name = "{index}")
    @MethodSource("trusses")
    void everyJointIsCutFreeInFourViews(TrussModel truss) {
        Solution solution = Solver.solve(truss);
        for (Step step : solution.steps()) {
            if (step instanceof Step.AtJoint joint) {
                Svg figure = FreeBodyFigure.of(truss, joint);
                FigureContract.check(figure);
                assertEquals(4, Clashes.textsOf(figure).stream().filter(joint.joint()::equals).count());
                FigureContract.check(ProgressFigure.of(solution, joint));
            } else if (step instanceof Step.Reactions reactions) {
                FigureContract.check(WholeBodyFigure.of(truss, reactions));
            }
        }
    }

    /** A load along z shows end on from before, and its view says so. */
    @Test
    void namesWhatPointsAtTheReader() {
        Solution solution = Solver.solve(SpaceTrusses.mast());
        Step.AtJoint top = (Step.AtJoint) solution.steps().stream()
                .filter(s -> s instanceof Step.AtJoint at && at.joint().equals("G")).findFirst().orElseThrow();

        List<String> texts = Clashes.textsOf(FreeBodyFigure.of(solution.truss(), top));
        assertTrue(texts.contains("Front: x and y; end on: 1 kN"), texts.toString());
        assertTrue(texts.contains("Plan: x and z; end on: 9 kN"), texts.toString());
    }

    @Test
    void aMechanismMovesInThePictorialView() {
        TrussModel boom = SpaceTrusses.boom();
        TrussModel loose = new TrussModel(boom.name(), boom.lengthUnit(), boom.forceUnit(), boom.joints(),
                boom.members().subList(0, boom.members().size() - 1), boom.supports(), boom.loads());

        FigureContract.check(MechanismFigure.of(loose, (Determinacy.Mechanism) Determinacies.of(loose)));
    }
}
