package kingpost.graphic;

import static kingpost.units.StructuralUnits.kN;
import static kingpost.units.StructuralUnits.m;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import kingpost.graphic.ForceDiagram.Drawn;
import kingpost.graphic.ForceDiagram.Line;
import kingpost.graphic.ForceDiagram.NotDrawn;
import kingpost.graphic.ForceDiagram.Space;
import kingpost.graphic.ForceDiagram.Why;
import kingpost.statics.PublishedCase;
import kingpost.statics.RandomTrusses;
import kingpost.statics.Solution;
import kingpost.statics.Solution.MemberResult;
import kingpost.statics.Solver;
import kingpost.statics.Vector;
import kingpost.truss.Direction;
import kingpost.truss.Joint;
import kingpost.truss.TrussBuilder;
import kingpost.truss.TrussModel;
import kingpost.units.CalculationException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ForceDiagramTest {

    private static TrussBuilder<TrussModel> named(String name) {
        return new TrussBuilder<TrussModel>(name, Function.identity()).units(m, kN);
    }

    private static TrussBuilder<TrussModel> canopy() {
        return named("Canopy").joint("A", 0, 0).joint("B", 3, 0).joint("C", 6, 0).joint("D", 3, 2.25)
                .members("AB BC AD BD CD").pin("A").roller("C");
    }

    private static ForceDiagram diagram(TrussModel truss) {
        return ForceDiagram.of(Solver.solve(truss));
    }

    private static Drawn drawn(TrussModel truss) {
        return assertInstanceOf(Drawn.class, diagram(truss));
    }

    private static List<String> names(Drawn diagram) {
        return diagram.spaces().stream().map(Space::name).toList();
    }

    /** Letters run clockwise from the left support and pass over the names of joints; spaces inside from the left. */
    @Test
    void lettersTheSpacesAfterBow() {
        Drawn diagram = drawn(canopy().load("D", 12, Direction.DOWN).build());

        assertEquals(List.of("E", "F", "G", "1", "2"), names(diagram));
        assertEquals(List.of(List.of("A", "D"), List.of("D", "C"), List.of("C", "B", "A")),
                diagram.spaces().subList(0, 3).stream().map(Space::joints).toList());
        assertEquals(List.of("ge", "ef", "fg"), diagram.outside().stream().map(diagram::name).toList());
        assertEquals("1-g", diagram.name(diagram.line(diagram.truss().member("AB").orElseThrow())));
    }

    /** Half the load on each side, slope 3 in 4: the triangle of the left end has the sides 6, 8 and 10. */
    @Test
    void drawsLinesAsLongAsTheForces() {
        Drawn diagram = drawn(canopy().load("D", 12, Direction.DOWN).build());

        assertEquals(8000, diagram.line(diagram.truss().member("AB").orElseThrow()).force(), 1e-9);
        assertEquals(-10000, diagram.line(diagram.truss().member("AD").orElseThrow()).force(), 1e-9);
        assertEquals(0, diagram.line(diagram.truss().member("BD").orElseThrow()).force(), 1e-9);
        assertEquals(diagram.spaces().get(3).at().x(), diagram.spaces().get(4).at().x(), 1e-9);
    }

    /**
     * The solved forces of published worked examples come out of the drawing too; the sources stand in the case files.
     */
    @ParameterizedTest
    @ValueSource(strings = {"MJ-01", "MJ-02", "MJ-04", "MJ-06", "MJ-07", "MJ-08", "MJ-09", "MJ-10", "MJ-13", "MJ-15",
        "MJ-16", "MS-01", "MS-02", "MS-04", "MS-05", "MS-07", "MS-09", "ZF-01", "ZF-03", "ZF-04"})
    void closesOnPublishedTrusses(String id) {
        Drawn diagram = drawn(PublishedCase.of(id).truss());

        assertTrue(diagram.worst() < 1e-12, id + " " + diagram.worst());
        assertEveryJointHasItsPolygon(diagram);
    }

    /** Seeded random trusses whose members do not cross: each diagram closes and is reciprocal. */
    @Test
    void closesOnRandomTrusses() {
        List<Drawn> all = RandomTrusses.simple(150, 40).map(ForceDiagramTest::diagram)
                .filter(Drawn.class::isInstance).map(Drawn.class::cast).toList();

        assertTrue(all.size() >= 30, all.size() + " were drawn");
        for (Drawn diagram : all) {
            assertTrue(diagram.worst() < 1e-9, diagram.truss().name() + " " + diagram.worst());
            assertEveryJointHasItsPolygon(diagram);
        }
    }

    /** The lines of a joint, taken clockwise from space to space, close; Maxwell's condition for reciprocal figures. */
    private static void assertEveryJointHasItsPolygon(Drawn diagram) {
        for (Joint joint : diagram.truss().joints()) {
            Vector sum = new Vector(0, 0, 0);
            int[] balance = new int[diagram.spaces().size()];
            for (Line line : diagram.members()) {
                boolean first = line.joint().equals(joint.name());
                if (first || ((Cause.OfMember) line.cause()).member().meets(joint.name())) {
                    sum = sum.plus(line.vector().times(first ? 1 : -1));
                    balance[line.from()] += first ? 1 : -1;
                    balance[line.to()] -= first ? 1 : -1;
                }
            }
            for (Line line : diagram.outside()) {
                if (line.joint().equals(joint.name())) {
                    sum = sum.plus(line.vector());
                    balance[line.from()]++;
                    balance[line.to()]--;
                }
            }
            for (int space : balance) {
                assertEquals(0, space, "the spaces round joint " + joint.name() + " do not follow on each other");
            }
            assertEquals(0, sum.norm() / diagram.scale(), 1e-9, joint.name());
        }
        int inside = (int) diagram.spaces().stream().filter(Space::isInside).count();
        assertEquals(diagram.truss().members().size() - diagram.truss().joints().size() + 1, inside, "Euler");
    }

    @Test
    void findsEachSpaceInsideOnceAndDrawsEachMemberOnce() {
        Drawn diagram = drawn(PublishedCase.of("MS-07").truss());
        List<String> lines = new ArrayList<>();
        List<Integer> found = new ArrayList<>();
        for (ForceDiagram.Step step : diagram.steps()) {
            found.add(step.found());
            step.closing().forEach(member -> lines.add(member.name()));
            if (step instanceof ForceDiagram.Step.AtJoint at) {
                lines.add(at.one().name());
                lines.add(at.other().name());
            } else {
                lines.add(((ForceDiagram.Step.LaidOff) step).member().name());
            }
        }

        assertEquals(diagram.members().size(), lines.size(), lines.toString());
        assertEquals(lines.size(), lines.stream().distinct().count(), lines.toString());
        assertEquals(found.size(), found.stream().distinct().count());
    }

    /** A wrong force is seen: the lines keep parallel to the members, so they do not come out as the wrong one. */
    @Test
    void seesAWrongForce() {
        Solution right = Solver.solve(canopy().load("D", 12, Direction.DOWN).load("B", 4, Direction.DOWN).build());
        List<MemberResult> members = new ArrayList<>(right.members());
        MemberResult first = members.get(0);
        members.set(0, new MemberResult(first.member(), first.force() * 1.001, first.sense(), first.found(),
                first.exact()));
        Drawn diagram = assertInstanceOf(Drawn.class, ForceDiagram.of(new Solution(right.truss(), right.determinacy(),
                right.inspection(), right.steps(), members, right.reactions(), right.checks())));

        assertTrue(!diagram.closes() && diagram.worst() > 1e-4, "" + diagram.worst());
    }

    @Test
    void saysWhichMembersCross() {
        TrussModel truss = named("Crossed").joint("A", 0, 0).joint("B", 4, 0).joint("C", 4, 3).joint("D", 0, 3)
                .members("AB BC CD AC BD").pin("A").roller("B").load("C", 5, Direction.RIGHT).build();

        NotDrawn result = assertInstanceOf(NotDrawn.class, diagram(truss));

        Why.Crossing why = assertInstanceOf(Why.Crossing.class, result.why());
        assertEquals("AC BD", why.one().name() + " " + why.other().name());
    }

    @Test
    void saysWhichLoadIsEnclosed() {
        TrussModel truss = named("Enclosed").joint("A", 0, 0).joint("B", 6, 0).joint("C", 3, 5).joint("D", 3, 2)
                .members("AB BC CA AD BD CD").pin("A").roller("B").load("D", 5, Direction.DOWN).build();
        TrussModel simple = named("Hung").joint("A", 0, 0).joint("B", 6, 0).joint("C", 3, 5).joint("D", 3, 2)
                .members("AB BC CA AD BD").pin("A").roller("B").load("D", 5, Direction.DOWN).build();

        assertThrows(CalculationException.class, () -> Solver.solve(truss));
        NotDrawn result = assertInstanceOf(NotDrawn.class, diagram(simple));
        assertEquals("D", assertInstanceOf(Why.InnerForce.class, result.why()).joint());
    }

    @Test
    void saysThatNothingActs() {
        assertInstanceOf(Why.NoForces.class, assertInstanceOf(NotDrawn.class, diagram(canopy().build())).why());
    }

    @Test
    void refusesSpaceTrusses() {
        CalculationException refused = assertThrows(CalculationException.class,
                () -> diagram(PublishedCase.of("ST-01").truss()));

        assertTrue(refused.getMessage().startsWith("Force diagram: ST-01 is a space truss"), refused.getMessage());
    }
}
