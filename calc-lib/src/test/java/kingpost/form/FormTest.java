package kingpost.form;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import kingpost.statics.Determinacies;
import kingpost.statics.Determinacy;
import kingpost.statics.Solution;
import kingpost.statics.Solver;
import kingpost.truss.Direction;
import kingpost.truss.Joint;
import kingpost.truss.Member;
import kingpost.truss.Support;
import kingpost.truss.TrussBuilder;
import kingpost.truss.TrussModel;
import kingpost.units.Quantity;
import kingpost.units.StructuralUnits;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class FormTest {

    private static TrussBuilder<TrussModel> written(Form form, double span, double rise, int panels) {
        return form.of(span, rise, panels, Function.<TrussModel>identity())
                .units(StructuralUnits.m, StructuralUnits.kN);
    }

    /** Every form with every count of panels from 2 to 12 that it can have. */
    static Stream<Arguments> all() {
        return Stream.of(Form.values()).flatMap(form -> IntStream.rangeClosed(2, 12).filter(form::allows)
                .mapToObj(n -> Arguments.of(form, n)));
    }

    @Test
    void everyCountThatTheTradeKnowsIsThere() {
        assertEquals(10 + 10 + 11 + 5 + 9 + 5 + 4 + 9 + 2 + 1 + 5 + 5 + 2 + 5, all().count());
    }

    @ParameterizedTest(name = "{0} {1}")
    @MethodSource("all")
    void isDeterminateAndStable(Form form, int panels) {
        TrussModel truss = written(form, 24, 5, panels).build();

        Determinacy.Count count = assertInstanceOf(Determinacy.Determinate.class, Determinacies.of(truss)).count();
        assertEquals(2 * truss.joints().size(), truss.members().size() + 3);
        assertEquals(2 * truss.joints().size(), count.rank());
    }

    @ParameterizedTest(name = "{0} {1}")
    @MethodSource("all")
    void isSolvedAndCheckedExactlyUnderUnequalLoads(Form form, int panels) {
        Random random = new Random(panels);
        TrussBuilder<TrussModel> builder = written(form, 24, 5, panels);
        for (String joint : written(form, 24, 5, panels).build().joints().stream().map(Joint::name).toList()) {
            builder.load(joint, random.nextInt(9) - 4, -1 - random.nextInt(30));
        }

        Solution solution = Solver.solve(builder.build());

        assertTrue(solution.checks().pass(), () -> "worst residual " + solution.checks().worst());
        assertTrue(solution.members().stream().allMatch(m -> m.exact().isPresent()));
    }

    @ParameterizedTest(name = "{0} {1}")
    @MethodSource("all")
    void spansAndRisesAsFarAsItIsTold(Form form, int panels) {
        TrussModel truss = written(form, 7.3, 1.7, panels).build();

        assertEquals(7.3, truss.joints().stream().mapToDouble(j -> j.x().getValue()).max().orElseThrow());
        assertEquals(0, truss.joints().stream().mapToDouble(j -> j.x().getValue()).min().orElseThrow());
        assertEquals(1.7, truss.joints().stream().mapToDouble(j -> j.y().getValue()).max().orElseThrow());
        assertEquals(0, truss.joints().stream().mapToDouble(j -> j.y().getValue()).min().orElseThrow());
    }

    @ParameterizedTest(name = "{0} {1}")
    @MethodSource("all")
    void numbersJointsFromLeftToRightWithoutAGap(Form form, int panels) {
        TrussModel truss = written(form, 24, 5, panels).build();

        for (String row : List.of("L", "U", "M")) {
            List<Joint> joints = truss.joints().stream().filter(j -> j.name().startsWith(row)).toList();
            for (int i = 1; i < joints.size(); i++) {
                assertTrue(number(joints.get(i - 1)) < number(joints.get(i)), row);
                assertTrue(joints.get(i - 1).x().getValue() < joints.get(i).x().getValue(), row);
            }
            if (row.equals("L")) {
                assertEquals(0, number(joints.get(0)));
                assertEquals(joints.size() - 1, number(joints.get(joints.size() - 1)));
            }
        }
        assertTrue(truss.joints().stream().allMatch(j -> j.name().matches("[LUM]\\d+")));
    }

    @ParameterizedTest(name = "{0} {1}")
    @MethodSource("all")
    void namesMembersFromLeftToRightAndPostsFromTheTop(Form form, int panels) {
        TrussModel truss = written(form, 24, 5, panels).build();

        for (Member member : truss.members()) {
            Joint from = truss.joint(member.from()).orElseThrow();
            Joint to = truss.joint(member.to()).orElseThrow();
            double run = to.x().getValue() - from.x().getValue();
            assertTrue(run > 0 || run == 0 && from.y().getValue() > to.y().getValue(), member.name());
            assertEquals(member.from() + "-" + member.to(), member.name());
        }
    }

    @ParameterizedTest(name = "{0} {1}")
    @MethodSource("all")
    void isTheSameFromBothEndsWhereTheCountIsEven(Form form, int panels) {
        boolean oneMiddleDiagonal = panels % 2 == 1 && form != Form.WARREN || form == Form.BALTIMORE && panels % 4 == 2;
        TrussModel truss = written(form, 24, 5, panels).build();

        List<String> places = truss.members().stream().map(m -> place(truss, m, false)).sorted().toList();
        List<String> mirrored = truss.members().stream().map(m -> place(truss, m, true)).sorted().toList();

        assertEquals(!oneMiddleDiagonal, places.equals(mirrored));
    }

    private static String place(TrussModel truss, Member member, boolean mirrored) {
        return Stream.of(member.from(), member.to()).map(truss::joint).map(j -> j.orElseThrow())
                .map(j -> String.format("%.6f/%.6f", mirrored ? 24 - j.x().getValue() : j.x().getValue() + 0.0,
                        j.y().getValue())).sorted().toList().toString();
    }

    private static int number(Joint joint) {
        return Integer.parseInt(joint.name().substring(1));
    }

    @Test
    void namesAPrattTrussAsTheRuleSays() {
        TrussModel truss = written(Form.PRATT, 12, 3, 4).build();

        assertEquals(List.of("L0", "L1", "L2", "L3", "L4", "U1", "U2", "U3"),
                truss.joints().stream().map(Joint::name).toList());
        assertEquals(List.of("L0-L1", "L1-L2", "L2-L3", "L3-L4", "L0-U1", "U1-U2", "U2-U3", "U3-L4", "U1-L1", "U2-L2",
                "U3-L3", "U1-L2", "L2-U3"), truss.members().stream().map(Member::name).toList());
        assertEquals("Pratt truss", truss.name());
    }

    @Test
    void turnsTheDiagonalsOfAHoweTrussRound() {
        assertTrue(names(Form.HOWE, 6).containsAll(List.of("L1-U2", "L2-U3", "U3-L4", "U4-L5")));
        assertTrue(names(Form.PRATT, 6).containsAll(List.of("U1-L2", "U2-L3", "L3-U4", "L4-U5")));
        assertTrue(names(Form.PRATT, 5).contains("U2-L3"), "the middle diagonal falls to the right");
        assertTrue(names(Form.HOWE, 5).contains("L2-U3"), "the middle diagonal rises to the right");
    }

    @Test
    void givesEveryFormItsOwnWebs() {
        assertTrue(names(Form.WARREN, 3).containsAll(List.of("L0-U1", "U1-L1", "L1-U2", "U2-L2", "L2-U3", "U3-L3")));
        assertTrue(names(Form.WARREN_WITH_VERTICALS, 6).containsAll(List.of("U1-L2", "L2-U3", "U3-L4", "L4-U5")));
        assertTrue(names(Form.K, 6).containsAll(List.of("U1-M1", "M1-L1", "M1-U2", "M1-L2", "M2-U3", "M2-L3", "U3-L3",
                "U3-M4", "L3-M4", "U4-M5", "L4-M5")));
        assertTrue(names(Form.BALTIMORE, 8).containsAll(List.of("L0-M1", "M1-U2", "M1-L1", "M1-L2", "U2-M3", "M3-L4",
                "L2-M3", "M3-L3", "L4-M5", "M5-U6", "M5-L6", "U6-M7", "M7-L8", "L6-M7")));
        assertTrue(names(Form.FINK, 8).containsAll(List.of("U1-L1", "L1-U2", "U2-L2", "U2-M1", "U3-M1", "L2-M1",
                "M1-U4", "L2-L3", "U4-M2", "M2-L3", "M2-U6", "M2-U5", "U6-L4", "L3-U6", "L4-U7")));
        assertTrue(names(Form.HOWE_ROOF, 6).containsAll(List.of("U1-L2", "U2-L3", "L3-U4", "L4-U5")));
        assertTrue(names(Form.PRATT_ROOF, 6).containsAll(List.of("L1-U2", "L2-U3", "U3-L4", "U4-L5")));
        assertTrue(names(Form.SCISSORS, 4).containsAll(List.of("L0-L1", "L1-U3", "U1-L1", "L1-L2", "U2-L1")));
    }

    private static List<String> names(Form form, int panels) {
        return written(form, 24, 5, panels).build().members().stream().map(Member::name).toList();
    }

    @Test
    void standsOnAPinAndARollerUnlessSupportsAreWritten() {
        TrussModel usual = written(Form.WARREN, 12, 3, 4).build();
        TrussModel turned = written(Form.WARREN, 12, 3, 4).roller("L0").pin("L4").build();

        assertEquals(List.of("L0 PIN", "L4 ROLLER"), supports(usual));
        assertEquals(List.of("L0 ROLLER", "L4 PIN"), supports(turned));
    }

    private static List<String> supports(TrussModel truss) {
        return truss.supports().stream().map((Support s) -> s.joint() + " " + s.kind()).toList();
    }

    @Test
    void takesLengthsWithTheirUnits() {
        TrussModel truss = Form.PRATT.of(Quantity.of(40, StructuralUnits.ft), Quantity.of(96, StructuralUnits.in), 4,
                Function.<TrussModel>identity()).loads("L1 L2, L3", Quantity.of(6, StructuralUnits.kip), Direction.DOWN)
                .named("Gangway").build();

        assertEquals(Quantity.of(10, StructuralUnits.ft), truss.joint("L1").orElseThrow().x());
        assertEquals(Quantity.of(8, StructuralUnits.ft), truss.joint("U2").orElseThrow().y());
        assertEquals("Gangway", truss.name());
        assertEquals(3, truss.loads().size());
    }

    /** A parabolic chord is the funicular of equal loads on equal panels: the diagonals rest. Derived from statics. */
    @Test
    void aBowstringUnderEqualLoadsNeedsNoDiagonals() {
        for (int n = 4; n <= 12; n++) {
            TrussBuilder<TrussModel> builder = written(Form.BOWSTRING, 24, 4, n);
            for (int i = 1; i < n; i++) {
                builder.load("L" + i, 7, Direction.DOWN);
            }
            Solution solution = Solver.solve(builder.build());
            TrussModel truss = solution.truss();
            double thrust = force(solution, truss.member("L0-L1").orElseThrow());
            assertEquals(n % 2 == 1 ? 7.0 * 24 * (n * n - 1) / (8.0 * n) / 4 : 7.0 * 24 * n / 8 / 4, thrust, 1e-9);
            for (Member member : truss.members()) {
                boolean chord = member.from().charAt(0) == member.to().charAt(0);
                boolean post = member.from().substring(1).equals(member.to().substring(1));
                boolean end = member.from().equals("L0") || member.to().equals("L" + n);
                double expected = post ? 7 : chord || end ? force(solution, member) : 0;
                assertEquals(expected, force(solution, member), 1e-9, n + " panels, " + member.name());
                if (chord && member.from().startsWith("L")) {
                    assertEquals(thrust, force(solution, member), 1e-9, n + " panels, " + member.name());
                }
            }
        }
    }

    private static double force(Solution solution, Member member) {
        return solution.members().stream().filter(r -> r.member().equals(member)).findFirst().orElseThrow()
                .force() / 1000;
    }
}
