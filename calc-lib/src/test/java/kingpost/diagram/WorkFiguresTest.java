package kingpost.diagram;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import kingpost.statics.Determinacies;
import kingpost.statics.Determinacy.Mechanism;
import kingpost.statics.Solution;
import kingpost.statics.Solver;
import kingpost.statics.Source;
import kingpost.statics.Step;
import kingpost.truss.Direction;
import kingpost.truss.TrussBuilder;
import kingpost.truss.TrussModel;
import kingpost.units.StructuralUnits;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The figures that go with the work: progress, the whole body, a mechanism. */
class WorkFiguresTest {

    static List<TrussModel> trusses() {
        return Example.all().stream().filter(t -> t.members().size() < 30).toList();
    }

    @ParameterizedTest
    @MethodSource("trusses")
    void keepTheContractOfFigures(TrussModel truss) {
        Solution solution = Solver.solve(truss);
        for (Step step : solution.steps()) {
            if (step instanceof Step.AtJoint joint) {
                FigureContract.check(() -> ProgressFigure.of(solution, joint));
            } else if (step instanceof Step.Reactions reactions) {
                FigureContract.check(() -> WholeBodyFigure.of(truss, reactions));
            }
        }
    }

    @Test
    void progressTellsWhatIsSolvedGivenAndUnknown() {
        TrussModel truss = Example.canopy();
        Solution solution = Solver.solve(truss);
        List<Step.AtJoint> joints = solution.steps().stream().filter(Step.AtJoint.class::isInstance)
                .map(Step.AtJoint.class::cast).toList();

        for (Step.AtJoint joint : joints) {
            List<String> texts = Clashes.textsOf(ProgressFigure.of(solution, joint));
            truss.joints().forEach(j -> assertTrue(texts.contains(j.name()), j.name() + " in " + texts));
        }
        String first = ProgressFigure.of(solution, joints.get(0)).description();
        String last = ProgressFigure.of(solution, joints.get(joints.size() - 1)).description();

        assertTrue(first.contains("This step gave") && first.contains("Still unknown"), first);
        assertTrue(last.contains("Solved before") && !last.contains("Still unknown"), last);
    }

    /** Three links, no two of them parallel: moments about the point where two of their lines cross. */
    @Test
    void theWholeBodyMarksThePointWhereReactionsCross() {
        TrussModel truss = Example.named("Three links").joint("A", 0, 0).joint("B", 4, 0).joint("C", 2, 3)
                .members("AB BC AC").link("A", 150).link("B", 90).link("C", 0).load("C", 5, Direction.DOWN)
                .load("B", 2, Direction.RIGHT).build();
        Step.Reactions step = Solver.solve(truss).steps().stream().filter(Step.Reactions.class::isInstance)
                .map(Step.Reactions.class::cast).findFirst().orElseThrow();

        FigureContract.check(() -> WholeBodyFigure.of(truss, step));
        assertTrue(Clashes.textsOf(WholeBodyFigure.of(truss, step)).contains("O"));
    }

    /** Two trusses, hinged at C and tied by AE: the section gives the tie, and the joints go on from there. */
    @Test
    void progressAfterASectionTellsWhatItGave() {
        TrussModel truss = Example.named("Tied trusses").joint("A", 0, 0).joint("B", 2.5, 2.5).joint("C", 5, 5)
                .joint("D", 7.5, 2.5).joint("E", 10, 0).joint("F", 3.2, 1.8).joint("G", 6.8, 1.8)
                .members("AB BC CD DE AF FC BF EG GC DG AE").pin("A").roller("E").load("B", 30, Direction.DOWN)
                .load("C", 30, Direction.DOWN).load("D", 30, Direction.DOWN).build();
        Solution solution = Solver.solve(truss);
        Step.AtSection section = solution.steps().stream().filter(Step.AtSection.class::isInstance)
                .map(Step.AtSection.class::cast).findFirst().orElseThrow();

        FigureContract.check(() -> ProgressFigure.of(solution, section));
        FigureContract.check(() -> SectionFigure.of(truss, section));
        String said = ProgressFigure.of(solution, section).description();
        assertTrue(said.startsWith("After the section through BC, FC and AE. This step gave AE. Still unknown: AB"), said);
    }

    @Test
    void theWholeBodyShowsEachReactionByItsSymbol() {
        TrussModel truss = Example.bridge(4, 3, 4, 10);
        Step.Reactions step = Solver.solve(truss).steps().stream().filter(Step.Reactions.class::isInstance)
                .map(Step.Reactions.class::cast).findFirst().orElseThrow();

        List<String> texts = Clashes.textsOf(WholeBodyFigure.of(truss, step));

        truss.joints().forEach(joint -> assertTrue(texts.contains(joint.name()), joint.name() + " in " + texts));
        for (Step.Answer answer : step.answers()) {
            String symbol = ((Source.OfReaction) answer.unknown()).symbol().replace("_", "");
            assertTrue(texts.contains(symbol), symbol + " in " + texts);
        }
    }

    @Test
    void aMechanismShowsWhichJointsMove() {
        TrussModel square = new TrussBuilder<TrussModel>("Square", t -> t).units(StructuralUnits.m, StructuralUnits.kN)
                .joint("A", 0, 0).joint("B", 3, 0).joint("C", 3, 3).joint("D", 0, 3).members("AB BC CD AD")
                .pin("A").roller("B").load("D", 5, Direction.RIGHT).build();
        Mechanism mechanism = assertInstanceOf(Mechanism.class, Determinacies.of(square));

        FigureContract.check(() -> MechanismFigure.of(square, mechanism));

        assertEquals("The truss with its first way of moving drawn dashed and large. These joints move: C and D.",
                MechanismFigure.of(square, mechanism).description());
    }
}
