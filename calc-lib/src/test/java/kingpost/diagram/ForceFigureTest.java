package kingpost.diagram;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import kingpost.statics.Solution;
import kingpost.statics.Solver;
import kingpost.truss.TrussModel;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class ForceFigureTest {

    static List<TrussModel> trusses() {
        return Example.all();
    }

    @ParameterizedTest
    @MethodSource("trusses")
    void keepsTheContractOfFigures(TrussModel truss) {
        Solution solution = Solver.solve(truss);

        FigureContract.check(() -> ForceFigure.of(solution));
    }

    @ParameterizedTest
    @MethodSource("trusses")
    void namesEveryJoint(TrussModel truss) {
        List<String> texts = Clashes.textsOf(ForceFigure.of(Solver.solve(truss)));

        truss.joints().forEach(j -> assertTrue(texts.contains(j.name()), j.name() + " in " + texts));
    }

    @ParameterizedTest
    @MethodSource("trusses")
    void writesForcesBesideTheirMembersUnlessTheTrussIsVeryFlat(TrussModel truss) {
        List<String> texts = Clashes.textsOf(ForceFigure.of(Solver.solve(truss)));

        long listed = texts.stream().filter(t -> t.startsWith("No room")).flatMap(t -> Stream.of(t.split(","))).count();
        assertTrue(listed <= (truss.name().startsWith("Roof of 1") ? 14 : 1), texts.toString());
    }

    @Test
    void tellsTensionAndCompressionInLettersAndInALegend() {
        List<String> texts = Clashes.textsOf(ForceFigure.of(Solver.solve(Example.canopy())));

        assertTrue(texts.containsAll(List.of("8 kN T", "10 kN C", "0", "6 kN", "tension (T): pulls at its joints",
                "compression (C): pushes at its joints", "no force")), texts.toString());
    }

    @Test
    void leavesOutOfTheLegendWhatTheFigureDoesNotHold() {
        List<String> texts = Clashes.textsOf(ForceFigure.of(Solver.solve(Example.bracket())));

        assertTrue(texts.stream().noneMatch("no force"::equals), texts.toString());
    }

    @Test
    void describesTheForcesInWords() {
        assertEquals("A truss of 4 joints and 5 members. In tension: AB 8 kN and BC 8 kN. In compression: AD 10 kN and "
                + "CD 10 kN. Without force: BD. Reactions: 0 kN to the right at A, 6 kN up at A and 6 kN up at C.",
                ForceFigure.of(Solver.solve(Example.canopy())).description());
    }
}
