package kingpost.diagram;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import kingpost.graphic.ForceDiagram;
import kingpost.graphic.ForceDiagram.Drawn;
import kingpost.graphic.ForcePolygon;
import kingpost.statics.Solution;
import kingpost.statics.Solver;
import kingpost.truss.Direction;
import kingpost.truss.Joint;
import kingpost.truss.TrussModel;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Force polygons of joints, and the reciprocal diagram beside its truss. */
class GraphicFiguresTest {

    static List<TrussModel> trusses() {
        return List.of(Example.canopy(), Example.bracket(), Example.mast(3), Example.bridge(8, 4, 5, 12.5),
                Example.roof(4, 2.5, 4), Example.triangles(5, 3, 2.6, 10));
    }

    private static Drawn drawn(TrussModel truss) {
        return assertInstanceOf(Drawn.class, ForceDiagram.of(Solver.solve(truss)));
    }

    @ParameterizedTest
    @MethodSource("trusses")
    void diagramsKeepTheContractOfFiguresAndNameEverySpaceAndPoint(TrussModel truss) {
        Drawn diagram = drawn(truss);
        FigureContract.check(() -> ForceDiagramFigure.of(diagram));
        List<String> texts = Clashes.textsOf(ForceDiagramFigure.of(diagram));
        List<String> points = texts.stream().flatMap(t -> List.of(t.split(", ")).stream()).toList();
        for (ForceDiagram.Space space : diagram.spaces()) {
            assertTrue(texts.contains(space.name()), space.name() + " in " + texts);
            assertTrue(points.contains(space.point()), space.point() + " in " + texts);
        }
    }

    @Test
    void polygonsKeepTheContractOfFigures() {
        for (TrussModel truss : List.of(Example.canopy(), Example.bracket())) {
            Solution solution = Solver.solve(truss);
            for (Joint joint : truss.joints()) {
                ForcePolygon polygon = ForcePolygon.of(solution, joint.name());
                FigureContract.check(() -> ForcePolygonFigure.of(polygon));
            }
        }
    }

    @Test
    void aPolygonSaysWhatItDraws() {
        ForcePolygon polygon = ForcePolygon.of(Solver.solve(Example.canopy()), "D");

        assertEquals("Joint D with its forces numbered clockwise, and the forces drawn to scale from tip to tail: "
                + "AD 10 kN at 37\u00b0, load 12 kN down, CD 10 kN at 143\u00b0. The last tip meets the first tail.",
                ForcePolygonFigure.of(polygon).description());
    }

    @Test
    void theScaleIsARoundNumber() {
        assertEquals(5, ScaleBar.round(9.9));
        assertEquals(10, ScaleBar.round(11));
        assertEquals(0.2, ScaleBar.round(0.4), 1e-12);
    }

    @Test
    void lettersOfUsersStayLetters() {
        String bad = "<b>&";
        TrussModel truss = Example.named("A & B <i>").joint(bad, 0, 0).joint("B", 3, 0).joint("C", 1, 2)
                .members(bad + "-B B-C C-" + bad).pin(bad).roller("B").load("C", 4, Direction.DOWN).build();

        FigureContract.assertWellFormed(ForceDiagramFigure.of(drawn(truss)).toText());
        FigureContract.assertWellFormed(ForcePolygonFigure.of(ForcePolygon.of(Solver.solve(truss), bad)).toText());
    }
}
