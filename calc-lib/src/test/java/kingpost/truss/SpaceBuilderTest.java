package kingpost.truss;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import kingpost.units.StructuralUnits;
import org.junit.jupiter.api.Test;

/** What the builder says of joints, supports and loads in space. */
class SpaceBuilderTest {

    private static TrussBuilder<TrussModel> legs() {
        return new TrussBuilder<TrussModel>("Legs", Function.identity()).units(StructuralUnits.m, StructuralUnits.kN)
                .joint("A", 0, 0, 2).joint("B", -2, 0, -1).joint("C", 2, 0, -1).joint("T", 0, 4, 0).members("AT BT CT");
    }

    private static String problems(UnaryOperator<TrussBuilder<TrussModel>> more) {
        return assertThrows(TrussProblems.class, () -> more.apply(legs()).build()).getMessage();
    }

    @Test
    void supportsBlockTheDirectionsOfTheirKind() {
        TrussModel truss = legs().ball("A").link("B", -1, 1, 0).link("B", 0, 0, 2).roller("C", 0, 1, 0).build();

        assertTrue(truss.isSpace());
        assertEquals(List.of(Direction.RIGHT, Direction.UP, Direction.NEAR), truss.supportsAt("A").get(0).reactions());
        assertEquals(Direction.slope(-1, 1, 0), truss.supportsAt("B").get(0).reactions().get(0));
        assertEquals(List.of(Direction.NEAR), truss.supportsAt("B").get(1).reactions());
        assertEquals(List.of(Direction.UP), truss.supportsAt("C").get(0).reactions());
        assertEquals(6, truss.reactionCount());
    }

    @Test
    void aJointWithoutZIsNamedWithOneThatHasIt() {
        assertEquals("Joints D, E: no z is given, but joint A is at (0, 0, 2) m, so the truss is in space; give each joint"
                + " x, y and z, as in joint(\"D\", 0, 0, 0).",
                problems(b -> b.joint("D", 1, 1).joint("E", 2, 1).members("DA DB DC EA EB EC").ball("A")));
    }

    @Test
    void zerosEverywhereLeaveATrussPlane() {
        assertFalse(new TrussBuilder<TrussModel>("Flat", Function.identity())
                .units(StructuralUnits.m, StructuralUnits.kN).joint("A", 0, 0, 0).joint("B", 2, 0).members("AB").pin("A")
                .build().isSpace());
    }

    @Test
    void aBallNeedsSpace() {
        String message = assertThrows(TrussProblems.class, () -> new TrussBuilder<TrussModel>("Flat", Function.identity())
                .units(StructuralUnits.m, StructuralUnits.kN).joint("A", 0, 0).joint("B", 2, 0).members("AB").ball("A")
                .build()).getMessage();
        assertEquals("Support at A: a ball holds a joint in space, but the truss is planar; write pin(\"A\"), or give the"
                + " joints their z.", message);
    }

    @Test
    void aDirectionOfNoLengthIsTold() {
        assertEquals("Support at B: the direction of the link is (0.0, 0.0, 0.0); give finite numbers that are not all"
                + " zero.", problems(b -> b.ball("A").link("B", 0, 0, 0)));
        assertEquals("Support at C: the direction of the roller is (NaN, 1.0, 0.0); give finite numbers that are not all"
                + " zero.", problems(b -> b.ball("A").roller("C", Double.NaN, 1, 0)));
    }

    @Test
    void twoLinksInOneLineAreOneTooMany() {
        assertEquals("Support at B: the joint is already held by a link; leave out the second, which holds it in the same"
                + " direction.", problems(b -> b.link("B", 1, 0, 1).link("B", -2, 0, -2)));
    }
}
