package kingpost.truss;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import kingpost.units.CalculationException;
import kingpost.units.Quantity;
import kingpost.units.StructuralUnits;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class TrussBuilderTest {

    private static TrussBuilder<TrussModel> named(String name) {
        return new TrussBuilder<>(name, Function.identity());
    }

    /** A sound truss to spoil: A (0, 0), B (4, 0), C (2, 3). */
    private static TrussBuilder<TrussModel> gable() {
        return named("Gable").units(StructuralUnits.m, StructuralUnits.kN)
                .joint("A", 0, 0).joint("B", 4, 0).joint("C", 2, 3)
                .members("AB BC AC").pin("A").roller("B").load("C", 10, Direction.DOWN);
    }

    private static Quantity kN(double value) {
        return Quantity.of(value, StructuralUnits.kN);
    }

    private static Quantity m(double value) {
        return Quantity.of(value, StructuralUnits.m);
    }

    private static Arguments bad(String line, UnaryOperator<TrussBuilder<TrussModel>> spoil) {
        return Arguments.of(line, spoil);
    }

    static Stream<Arguments> badInput() {
        return Stream.of(
                bad("Joint B: it is given twice, at (4, 0) m and at (5, 1) m; rename one or leave it out.",
                        t -> t.joint("B", 5, 1)),
                bad("Joints B and E: both are at (4, 0) m; move one or leave it out.",
                        t -> t.joint("E", 4, 0).members("AE")),
                bad("Joint E: no member meets it; add a member to it or leave it out.", t -> t.joint("E", 7, 7)),
                bad("Joint E: x is not a number; give a finite number.",
                        t -> t.joint("E", Double.NaN, 1).members("AE")),
                bad("Joint E: y is infinite; give a finite number.",
                        t -> t.joint("E", 1, Double.NEGATIVE_INFINITY).members("AE")),
                bad("Joint E: x is 3 kN, which is not a length; give a length, in m for instance.",
                        t -> t.joint("E", kN(3), m(1)).members("AE")),
                bad("Joint E: y is missing; give a length.", t -> t.joint("E", m(3), (Quantity) null).members("AE")),
                bad("Joint L 0: its name holds a space, which parts one member from the next; leave the space out.",
                        t -> t.joint("L 0", 9, 9)),
                bad("Joint L-0: its name holds one of the signs - , ; that part the names of members; "
                        + "use letters and digits.", t -> t.joint("L-0", 9, 9)),
                bad("Joint at (9.0, 9.0): it has no name; give it one, such as \"A\" or \"L0\".",
                        t -> t.joint("", 9, 9)),
                bad("Joint at (9.0, 9.0): it has no name; give it one, such as \"A\" or \"L0\".",
                        t -> t.joint(null, 9, 9)),
                bad("Member AX: there is no joint X; add joint(\"X\", x, y) or correct the name.",
                        t -> t.members("AX")),
                bad("Member A-L7: there is no joint L7; add joint(\"L7\", x, y) or correct the name.",
                        t -> t.members("A-L7")),
                bad("Member BA: it is given twice, first as AB; leave one out.", t -> t.members("BA")),
                bad("Member AB: it is given twice; leave one out.", t -> t.members("AB")),
                bad("Member AA: both ends are joint A; give two different joints.", t -> t.members("AA")),
                bad("Member A: it names one joint only; name both ends, as in AB or L0-L1.", t -> t.members("A")),
                bad("Member A-: one of its ends has no name; name both ends, as in AB or L0-L1.",
                        t -> t.members("A-")),
                bad("Member ABC: its name can be read in 2 ways, such as A-BC or AB-C; put a '-' between the two "
                        + "joints.", t -> t.joint("AB", 8, 8).joint("BC", 9, 7).members("AB-BC ABC")),
                bad("Members: an empty list of members is given; name them, as in \"AB BC\".", t -> t.members("  ")),
                bad("Member EB: it passes through joint A; give two members, E-A and A-B, or move the joint.",
                        t -> t.joint("E", -3, 0).members("EB")),
                bad("Support at X: there is no joint X for the roller; add the joint or correct the name.",
                        t -> t.roller("X")),
                bad("Support at A: the joint is already held by a pin; give it one support, or links only.",
                        t -> t.roller("A")),
                bad("Support at B: the joint is already held by a roller; leave out the second, which holds it in the "
                        + "same direction.", t -> t.link("B", 270)),
                bad("Support at C: the direction of the roller is NaN degrees; give a finite angle or a direction.",
                        t -> t.roller("C", Double.NaN)),
                bad("Support at C: the direction of the link is missing; give a finite angle or a direction.",
                        t -> t.link("C", (Direction) null)),
                bad("Load at X: there is no joint X; add the joint or correct the name.",
                        t -> t.load("X", 3, Direction.DOWN)),
                bad("Load at C: its size is \u22123 kN, below zero; give a positive size and turn its direction round.",
                        t -> t.load("C", -3, Direction.DOWN)),
                bad("Load at C: its size is zero; give its size or leave it out.",
                        t -> t.load("C", 0, Direction.DOWN)),
                bad("Load at C: its size is zero; give its size or leave it out.", t -> t.load("C", 0, 0)),
                bad("Load at C: its size is not a number; give a finite number.",
                        t -> t.load("C", Double.NaN, Direction.UP)),
                bad("Load at C: its size is 3 m, which is not a force; give a force, in kN for instance.",
                        t -> t.load("C", m(3), Direction.UP)),
                bad("Load at C: the part upwards is infinite; give a finite number.",
                        t -> t.load("C", 1, Double.POSITIVE_INFINITY)),
                bad("Load at C: it has no direction; give DOWN, UP, LEFT, RIGHT, at(degrees) or slope(run, rise).",
                        t -> t.load("C", 3, null)),
                bad("Load at C: it has a part towards the reader, but the truss is planar; give a direction in the "
                        + "plane.", t -> t.load("C", 3, Direction.NEAR)),
                bad("Units: they are given 2 times; call units(...) once.",
                        t -> t.units(StructuralUnits.ft, StructuralUnits.kip)));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("badInput")
    void saysOneLineThatNamesTheJointOrMemberAndWhatToDo(String line, UnaryOperator<TrussBuilder<TrussModel>> spoil) {
        TrussProblems problems = assertThrows(TrussProblems.class, () -> spoil.apply(gable()).build());

        assertTrue(problems.getMessage().lines().anyMatch(line::equals), problems::getMessage);
        assertEquals(1, problems.problems().size(), problems::getMessage);
    }

    @Test
    void reportsEveryProblemAtOnce() {
        TrussBuilder<TrussModel> builder = gable().joint("E", Double.NaN, 0).members("AX AE").roller("Y")
                .load("Z", 1, Direction.UP).load("C", -1, Direction.UP);

        TrussProblems problems = assertThrows(TrussProblems.class, builder::build);

        assertEquals(List.of("Joint E", "Member AX", "Support at Y", "Load at Z", "Load at C"),
                problems.problems().stream().map(TrussProblems.Problem::subject).filter(s -> !s.startsWith("Joints"))
                        .toList());
    }

    @Test
    void saysThatAnEmptyTrussIsEmpty() {
        TrussProblems problems = assertThrows(TrussProblems.class, () -> named("Idea").build());

        assertEquals("Truss Idea: it is empty; add joints, members and supports.", problems.getMessage());
    }

    @Test
    void missesSupportsMembersAndName() {
        TrussBuilder<TrussModel> builder = named(" ").joint("A", m(0), m(0)).joint("B", m(1), m(0));

        assertEquals(List.of("Truss: it has no name; write Truss.named(\"Canopy\") or the like.",
                "Truss: it has no members; add them by their ends, as in members(\"AB BC\").",
                "Truss: it has no support; add pin(\"A\") and roller(\"C\"), or links."),
                assertThrows(TrussProblems.class, builder::build).getMessage().lines().toList());
    }

    @Test
    void asksForUnitsWhenNumbersAreBare() {
        TrussBuilder<TrussModel> builder = named("Gable").joint("A", 0, 0).joint("B", 4, 0).joint("C", 2, 3)
                .members("AB BC AC").pin("A").roller("B").load("C", kN(10), Direction.DOWN);

        assertEquals("Units: bare numbers are used for a length, but no unit of length is given; add units(m, kN) or "
                + "the like, or write m(3) for each number.",
                assertThrows(TrussProblems.class, builder::build).getMessage());
    }

    @Test
    void rejectsUnitsOfTheWrongKind() {
        TrussBuilder<TrussModel> builder = named("Gable").units(StructuralUnits.kN, null).joint("A", 0, 0)
                .joint("B", 4, 0).members("AB").pin("A").roller("B");

        assertEquals(List.of("Units: kN is not a unit of length; write units(m, kN): first length, then force.",
                "Units: the unit of force is missing; write units(m, kN): first length, then force."),
                assertThrows(TrussProblems.class, builder::build).getMessage().lines().toList());
    }

    @Test
    void takesItsUnitsFromTheFirstQuantities() {
        TrussModel truss = named("Gable").joint("A", m(0), m(0)).joint("B", Quantity.of(4000, StructuralUnits.mm), m(0))
                .joint("C", m(2), m(3)).members("AB BC AC").pin("A").roller("B").load("C", kN(10), Direction.DOWN)
                .build();

        assertEquals(StructuralUnits.m, truss.lengthUnit());
        assertEquals(StructuralUnits.kN, truss.forceUnit());
        assertEquals(4, truss.joint("B").orElseThrow().x().getValue());
    }

    @Test
    void readsNumbersAndLongNamesAsMembers() {
        TrussModel truss = named("Numbers").units(StructuralUnits.m, StructuralUnits.kN)
                .joint("1", 0, 0).joint("2", 4, 0).joint("13", 2, 3).joint("U1", 2, -3)
                .members("12 1-13, 213 U11\n2-U1").pin("1").roller("2").build();

        assertEquals(List.of("1>2", "1>13", "2>13", "U1>1", "2>U1"),
                truss.members().stream().map(mem -> mem.from() + ">" + mem.to()).toList());
    }

    @Test
    void letsMembersCross() {
        TrussModel truss = gable().joint("D", 2, -1).members("CD").build();

        assertEquals(4, truss.members().size());
    }

    @Test
    void letsATrussBeWithoutLoads() {
        TrussModel truss = named("Bare").units(StructuralUnits.m, StructuralUnits.kN).joint("A", 0, 0)
                .joint("B", 4, 0).joint("C", 2, 3).members("AB BC AC").pin("A").roller("B").build();

        assertTrue(truss.loads().isEmpty());
    }

    @Test
    void keepsSeveralLoadsAtOneJoint() {
        TrussModel truss = gable().load("C", kN(3), Direction.at(225)).load("C", 1, 2).build();

        assertEquals(3, truss.loadsAt("C").size());
        assertEquals(-3 * Math.sqrt(0.5), truss.loadsAt("C").get(1).fx().in(StructuralUnits.kN), 1e-15);
    }

    @Test
    void rejectsADirectionThatPointsNowhere() {
        assertThrows(CalculationException.class, () -> Direction.slope(0, 0));
        assertThrows(CalculationException.class, () -> Direction.at(Double.NaN));
    }
}
