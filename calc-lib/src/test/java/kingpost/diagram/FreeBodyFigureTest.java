package kingpost.diagram;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import kingpost.diagram.FreeBodyFigure.Shows;
import kingpost.statics.Solver;
import kingpost.statics.Step;
import kingpost.truss.Direction;
import kingpost.truss.TrussModel;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class FreeBodyFigureTest {

    static List<TrussModel> trusses() {
        return Example.all().stream().filter(t -> t.members().size() < 30).toList();
    }

    private static List<Step.AtJoint> joints(TrussModel truss) {
        return Solver.solve(truss).steps().stream().filter(Step.AtJoint.class::isInstance)
                .map(Step.AtJoint.class::cast).toList();
    }

    private static Step.AtJoint joint(TrussModel truss, String joint) {
        return joints(truss).stream().filter(s -> s.joint().equals(joint)).findFirst().orElseThrow();
    }

    @ParameterizedTest
    @MethodSource("trusses")
    void keepsTheContractOfFigures(TrussModel truss) {
        for (Step.AtJoint step : joints(truss)) {
            for (Shows shows : Shows.values()) {
                FigureContract.check(() -> FreeBodyFigure.of(truss, step, shows));
            }
            FigureContract.check(() -> FreeBodyFigure.blank(truss, step.joint()));
        }
    }

    @ParameterizedTest
    @MethodSource("trusses")
    void findsRoomForEveryLabel(TrussModel truss) {
        for (Step.AtJoint step : joints(truss)) {
            for (Shows shows : Shows.values()) {
                Sheet sheet = FreeBodyFigure.sheet(step, FreeBodyFigure.forces(truss, step, shows));

                assertEquals(List.of(), sheet.homeless(), truss.name() + ", joint " + step.joint());
            }
        }
    }

    @ParameterizedTest
    @MethodSource("trusses")
    void keepsArrowsOffEachOther(TrussModel truss) {
        for (Step.AtJoint step : joints(truss)) {
            List<Patch> arrows = Clashes.arrowsOf(FreeBodyFigure.of(truss, step));
            for (int i = 0; i < arrows.size(); i++) {
                for (int k = i + 1; k < arrows.size(); k++) {
                    assertFalse(arrows.get(i).overlaps(arrows.get(k), 0.5), truss.name() + ", joint " + step.joint());
                }
            }
        }
    }

    @Test
    void writesSymbolsForUnknownsAndValuesForTheRest() {
        TrussModel truss = Example.canopy();

        assertTrue(Clashes.textsOf(FreeBodyFigure.of(truss, joint(truss, "A")))
                .containsAll(List.of("Ax", "Ay", "AD: 10 kN C", "AB: 8 kN T", "3", "4", "x", "y")));
        assertTrue(Clashes.textsOf(FreeBodyFigure.of(truss, joint(truss, "A"), Shows.SYMBOLS))
                .containsAll(List.of("Ax", "Ay", "FAD", "FAB")));
        assertTrue(Clashes.textsOf(FreeBodyFigure.of(truss, joint(truss, "A"), Shows.ANSWERS))
                .containsAll(List.of("Ay: 6 kN", "AD: 10 kN C", "AB: 8 kN T")));
    }

    @Test
    void tellsNoForceOnABlankSheet() {
        assertEquals(List.of("AD", "BD", "CD", "D", "x", "y", "\u03a3Fx = 0:", "\u03a3Fy = 0:"),
                Clashes.textsOf(FreeBodyFigure.blank(Example.canopy(), "D")).stream().sorted().toList());
    }

    @Test
    void drawsALoadByComponentsAsItsComponents() {
        TrussModel truss = new kingpost.truss.TrussBuilder<TrussModel>("t", t -> t)
                .units(kingpost.units.StructuralUnits.m, kingpost.units.StructuralUnits.kN).joint("A", 0, 0).joint("B", 3, 0)
                .joint("C", 0, 2).members("AB BC AC").pin("A").roller("B").load("C", 5, -7).build();

        List<String> texts = Clashes.textsOf(FreeBodyFigure.of(truss, joint(truss, "C"), Shows.SYMBOLS));

        assertTrue(texts.containsAll(List.of("5 kN", "7 kN")), texts.toString());
    }

    @Test
    void describesTheBodyInWords() {
        TrussModel truss = Example.canopy();

        assertEquals("Joint C cut free. Member CD pushes on it with 10 kN. The unknown force of member BC is drawn as "
                + "tension, away from the joint. The unknown reaction C_y is drawn up.",
                sorted(FreeBodyFigure.of(truss, joint(truss, "C")).description()));
    }

    /** Sentences in the order of the alphabet, after the first: the order of forces is not this class's business. */
    private static String sorted(String description) {
        List<String> sentences = List.of(description.split("(?<=\\.) "));
        return sentences.get(0) + " " + String.join(" ", sentences.stream().skip(1).sorted().toList());
    }

    @Test
    void knowsSlopesOfWholeNumbers() {
        assertEquals(new Incline(4, 3, 5), Incline.of(new kingpost.statics.Vector(-3, 2.25, 0)).orElseThrow());
        assertEquals(new Incline(5, 12, 13), Incline.of(new kingpost.statics.Vector(1.25, -3, 0)).orElseThrow());
        assertTrue(Incline.of(new kingpost.statics.Vector(1, 2, 0)).isEmpty());
        assertTrue(Incline.of(new kingpost.statics.Vector(3, 0, 0)).isEmpty());
        assertTrue(Incline.of(new kingpost.statics.Vector(Math.cos(1), Math.sin(1), 0)).isEmpty());
    }

    @Test
    void setsForcesOnOneLineAndSideApart() {
        TrussModel truss = Example.named("In line").joint("A", 0, 0).joint("B", 4, 0).joint("C", 2, 2)
                .members("AB BC AC").pin("A").roller("B").load("C", 5, Example.at(-45)).load("C", 2, Direction.DOWN)
                .load("C", 3, Direction.DOWN).load("B", 4, Direction.LEFT).load("B", 1, Direction.RIGHT).build();

        for (Step.AtJoint step : joints(truss)) {
            FigureContract.check(() -> FreeBodyFigure.of(truss, step));
        }
    }
}
