package kingpost.notebook;

import static kingpost.notebook.Notebook.DOWN;
import static kingpost.notebook.Notebook.RIGHT;
import static kingpost.notebook.Notebook.at;
import static kingpost.notebook.Notebook.show;
import static kingpost.notebook.Notebook.showAgain;
import static kingpost.notebook.Notebook.slope;
import static kingpost.notebook.SheetWords.check;
import static kingpost.notebook.SheetWords.column;
import static kingpost.notebook.SheetWords.figures;
import static kingpost.notebook.SheetWords.formula;
import static kingpost.notebook.SheetWords.given;
import static kingpost.notebook.SheetWords.newSheet;
import static kingpost.notebook.SheetWords.over;
import static kingpost.notebook.SheetWords.overEach;
import static kingpost.notebook.SheetWords.setForThisRun;
import static kingpost.notebook.SheetWords.table;
import static kingpost.notebook.UnitWords.kN;
import static kingpost.notebook.UnitWords.m;
import static kingpost.notebook.UnitWords.mm2;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import kingpost.truss.Direction;
import kingpost.truss.TrussBuilder;
import kingpost.units.CalculationException;
import kingpost.units.Quantity;
import kingpost.units.StructuralUnits;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * What a cell is told for each kind of bad input, word for word, over every part of the language. Faults of joints,
 * members, supports and loads one by one are in {@code TrussBuilderTest}; slips inside formulas in
 * {@code CalculationLinesTest}.
 */
class BadInputTest {

    private final CellDisplay.Sink before = CellDisplay.sink();

    /** A kind of bad input: the message, and what is written to earn it. */
    private static Arguments bad(String message, Executable written) {
        return Arguments.of(message, written);
    }

    private static TrussBuilder<Truss> named(String name) {
        return Truss.named(name).units(StructuralUnits.m, StructuralUnits.kN);
    }

    private static TrussBuilder<Truss> gable() {
        return named("Gable").joint("A", 0, 0).joint("B", 4, 0).joint("C", 2, 3).members("AB BC AC").pin("A").roller("B")
                .load("C", 10, DOWN);
    }

    private static TrussBuilder<Truss> square() {
        return named("Square").joint("A", 0, 0).joint("B", 3, 0).joint("C", 3, 3).joint("D", 0, 3).members("AB BC CD AD")
                .pin("A").roller("B").load("D", 5, RIGHT);
    }

    static Stream<Arguments> forms() {
        return Stream.of(
                bad("Pratt truss: it cannot have 2 panels; give 3 or more.", () -> Truss.pratt(12, 3, 2)),
                bad("Howe truss: it cannot have 1 panel; give 3 or more.", () -> Truss.howe(12, 3, 1)),
                bad("Warren truss: it cannot have 0 panels; give 2 or more.", () -> Truss.warren(12, 3, 0)),
                bad("Warren truss: it cannot have -4 panels; give 2 or more.", () -> Truss.warren(12, 3, -4)),
                bad("Warren truss with verticals: it cannot have 5 panels; give an even number from 4.",
                        () -> Truss.warrenWithVerticals(12, 3, 5)),
                bad("Parker truss: it cannot have 3 panels; give 4 or more.", () -> Truss.parker(12, 3, 3)),
                bad("K truss: it cannot have 7 panels; give an even number from 4.", () -> Truss.kTruss(12, 3, 7)),
                bad("Baltimore truss: it cannot have 4 panels; give an even number from 6.",
                        () -> Truss.baltimore(12, 3, 4)),
                bad("Bowstring truss: it cannot have 3 panels; give 4 or more.", () -> Truss.bowstring(12, 3, 3)),
                bad("King-post truss: it cannot have 3 panels; give 2 or 4.", () -> Truss.kingPost(12, 3, 3)),
                bad("Fink truss: it cannot have 6 panels; give 4 or 8.", () -> Truss.fink(12, 3, 6)),
                bad("Scissors truss: it cannot have 5 panels; give an even number from 4.",
                        () -> Truss.scissors(12, 3, 5)),
                bad("Pratt truss: 60000 panels are more than can be set out; give at most 50000.",
                        () -> Truss.pratt(12, 3, 60_000)),
                bad("Pratt truss: the span is \u221212; give a length above zero.", () -> Truss.pratt(-12, 3, 4)),
                bad("Howe roof truss: the rise is 0; give a length above zero.", () -> Truss.howeRoof(12, 0, 4)),
                bad("Pratt roof truss: the span is not a number; give a length above zero.",
                        () -> Truss.prattRoof(Double.NaN, 3, 4)),
                bad("Queen-post truss: the rise is infinite; give a length above zero.",
                        () -> Truss.queenPost(12, Double.POSITIVE_INFINITY)),
                bad("Parker truss: the span is \u221212 m; give a length above zero.", () -> Truss.parker(m(-12), m(3), 4)),
                bad("K truss: the span is 12 kN, which is not a length; give a length, in m for instance.",
                        () -> Truss.kTruss(kN(12), m(3), 4)),
                bad("Warren truss: the rise is missing; give a length.", () -> Truss.warren(m(12), null, 4)),
                bad("Fink truss: the rise is half the span or more, where struts square to the rafters do not meet the tie;"
                        + " give a rise below half the span.", () -> Truss.fink(12, 6, 4)),
                bad("Pratt truss: the span is \u221212; give a length above zero.\n"
                        + "Pratt truss: the rise is 0; give a length above zero.\n"
                        + "Pratt truss: it cannot have 2 panels; give 3 or more.", () -> Truss.pratt(-12, 0, 2)),
                bad("Units: bare numbers are used for a length, but no unit of length is given; add units(m, kN) or the "
                        + "like, or write m(3) for each number.", () -> Truss.pratt(12, 3, 4).build()),
                bad("Load at L9: there is no joint L9; add the joint or correct the name.", () -> Truss.pratt(12, 3, 4)
                        .units(StructuralUnits.m, StructuralUnits.kN).load("L9", 3, DOWN).build()));
    }

    static Stream<Arguments> builder() {
        return Stream.of(
                bad("Load: it names no joint; write where it acts, as in load(\"C\", 12, DOWN).",
                        () -> gable().load(" ", 3, DOWN).build()),
                bad("Load: it names no joint; write where it acts, as in load(\"C\", 12, DOWN).",
                        () -> gable().loads("  ", 3, DOWN).build()),
                bad("Load at X: there is no joint X; add the joint or correct the name.",
                        () -> gable().loads("A X", 3, DOWN).build()),
                bad("Load at A B: there is no joint A B; write loads(\"A B\", ...) for the same load at each.",
                        () -> gable().load("A B", 3, DOWN).build()),
                bad("Load at C: its size is missing; give a force.",
                        () -> gable().load("C", (Quantity) null, DOWN).build()),
                bad("Support: the pin names no joint; write what it holds, as in pin(\"A\").",
                        () -> gable().pin("").build()),
                bad("Support: the roller names no joint; write what it holds, as in roller(\"A\").",
                        () -> gable().roller(null).build()),
                bad("Support: the link names no joint; write what it holds, as in link(\"A\", 90).",
                        () -> gable().link(" ", 90).build()),
                bad("Support at A: the joint is already held by a pin; leave out the second, which holds it in the same "
                        + "direction.", () -> gable().pin("A").build()),
                bad("Member A-: one of its ends has no name; name both ends, as in AB or L0-L1.",
                        () -> gable().member("A", null).build()),
                bad("Member A-B-C: there is no joint B-C; add joint(\"B-C\", x, y) or correct the name.",
                        () -> gable().members("A-B-C").build()),
                bad("Truss: it has no name; write Truss.named(\"Canopy\") or the like.",
                        () -> gable().named(null).build()),
                bad("Direction (0.0, 0.0, 0.0): it points nowhere; give finite numbers that are not all zero.",
                        () -> gable().load("C", 3, slope(0, 0))),
                bad("Direction: a slope of NaN across and 1.0 up points nowhere; give finite numbers that are not both "
                        + "zero.", () -> slope(Double.NaN, 1)),
                bad("Direction (0.0, Infinity, 1.0): it points nowhere; give finite numbers that are not all zero.",
                        () -> Direction.slope(0, Double.POSITIVE_INFINITY, 1)),
                bad("Direction: the angle NaN is not a number of degrees; give a finite one, counter-clockwise from x.",
                        () -> at(Double.NaN)));
    }

    static Stream<Arguments> truss() {
        return Stream.of(
                bad("Truss Square: it is a mechanism (m + r = 4 + 3 = 7, 2j = 8): joints C, D can move; add one member or "
                        + "reaction there.", () -> square().build().solve()),
                bad("Truss Square: it is statically indeterminate to degree 1 (m + r = 6 + 3 = 9, 2j = 8), so equilibrium "
                        + "alone does not give its forces; take away one of AB, BC, CD, AD, AC, BD.",
                        () -> square().members("AC BD").build().solve()),
                bad("Truss Gable: it is statically indeterminate to degree 2 (m + r = 3 + 5 = 8, 2j = 6), so equilibrium "
                        + "alone does not give its forces; take away 2, chosen so that the rest holds, of AB, BC, AC, the "
                        + "reaction A_x, the reaction A_y, the reaction B_y, the reaction C_x, the reaction C_y.",
                        () -> gable().pin("C").build().solve()),
                bad("Truss Sliding: its reactions do not hold it (m + r = 3 + 3 = 6, 2j = 6): they are parallel or meet in "
                        + "one point, so that the whole truss can move; turn or move a support.",
                        () -> named("Sliding").joint("A", 0, 0).joint("B", 4, 0).joint("C", 2, 3).members("AB BC AC")
                                .roller("A").roller("B").roller("C").load("C", 10, RIGHT).build().solve()),
                bad("Truss Panels: it is a mechanism although the count is right (m + r = 9 + 3 = 12, 2j = 12): joints B, "
                        + "D, E, F can move; brace them with a member taken from where there is one too many.",
                        () -> named("Panels").joint("A", 0, 0).joint("B", 4, 0).joint("C", 8, 0).joint("D", 0, 4)
                                .joint("E", 4, 4).joint("F", 8, 4).members("AB BC DE EF AD BE CF AE BD").pin("A")
                                .roller("C").load("E", 10, DOWN).build().solve()),
                bad("Truss Square: it is a mechanism (m + r = 4 + 3 = 7, 2j = 8): joints C, D can move; add one member or "
                        + "reaction there.", () -> square().build().section("AB CD")),
                bad("Section: no members are given; name those to cut, as in section(\"BC BD\").",
                        () -> gable().build().section(" ")),
                bad("Section: no members are given; name those to cut, as in section(\"BC BD\").",
                        () -> gable().build().section(null)),
                bad("Section: member AB is given twice; name it once.", () -> gable().build().section("AB BA")),
                bad("Member XY: the truss \"Gable\" has none of that name; its members are AB, BC, AC.",
                        () -> gable().build().section("AB XY")),
                bad("Member BD: the truss \"Gable\" has none of that name; its members are AB, BC, AC.",
                        () -> gable().build().solve().force("BD")),
                bad("Member: no name is given; write one of AB, BC, AC.", () -> gable().build().solve().force(" ")),
                bad("Member: no name is given; write one of AB, BC, AC.", () -> gable().build().solve().sense(null)),
                bad("Member X: the truss \"Gable\" has none of that name; its members are AB, BC, AC.",
                        () -> gable().build().solve().exact("X")),
                bad("Joint C: nothing supports it, so it has no reaction; supported joints are A, B.",
                        () -> gable().build().solve().reaction("C")),
                bad("Joint Z: the truss \"Gable\" has none of that name; its joints are A, B, C.",
                        () -> gable().build().solve().reaction("Z")),
                bad("Joint Z: the truss \"Gable\" has none of that name; its joints are A, B, C.",
                        () -> gable().build().solve().joint("Z")),
                bad("Joint: no name is given; write one of A, B, C.", () -> gable().build().solve().joint("")));
    }

    static Stream<Arguments> quantities() {
        return Stream.of(
                bad("Quantity: there is nothing to read; write it as 12 kN, 3.5 kip/ft or -0.75 m.",
                        () -> Quantity.parse(null)),
                bad("Unit \"kNn\": there is no unit called kNn; did you mean kN or kNm?", () -> Quantity.parse("12 kNn")),
                bad("Unit \"kN/\": cannot be read at \"\"; write units as kN, kN/m^2, mm^4 or kip*ft.",
                        () -> Quantity.parse("12 kN/")),
                bad("Quantity in kN: the value is not a number; look for a division by zero or a missing value.",
                        () -> kN(Double.NaN)),
                bad("Quantity in kN: the value is infinite; look for a division by zero or a missing value.",
                        () -> kN(1 / 0.0)),
                bad("Cannot add 3 kN and 2 m: force and length; check the units.", () -> kN(3).add(m(2))),
                bad("Cannot add 3 kN and anything: the second quantity is missing; give one, as in kN(12).",
                        () -> kN(3).add(null)),
                bad("Cannot subtract 2 m from 3 kN: length and force; check the units.", () -> kN(3).subtract(m(2))),
                bad("Cannot subtract anything from 3 kN: the second quantity is missing; give one, as in kN(12).",
                        () -> kN(3).subtract(null)),
                bad("Cannot multiply 3 kN by anything: the second quantity is missing; give one, as in kN(12).",
                        () -> kN(3).multiply(null)),
                bad("Cannot divide 3 kN by anything: the second quantity is missing; give one, as in kN(12).",
                        () -> kN(3).divide(null)),
                bad("Cannot express 3 kN in m: force and length; check the units.", () -> kN(3).to(StructuralUnits.m)),
                bad("Cannot express 3 kN in another unit: the unit is missing; give one, as in .to(kN).",
                        () -> kN(3).to(null)),
                bad("Cannot express 3 kN in MPa: force and stress or pressure; check the units.",
                        () -> kN(3).in(StructuralUnits.MPa)),
                bad("Cannot divide 3 kN by 0: the divisor is zero; check the value below the line.",
                        () -> kN(3).divide(0)),
                bad("Cannot divide 3 kN by 0 m: the divisor is zero; check the value below the line.",
                        () -> kN(3).divide(m(0))),
                bad("Cannot take the square root of \u22123 mm\u00b2: it is negative; check the signs.",
                        () -> mm2(-3).sqrt()),
                bad("Cannot take the square root of 3 kN: force is not the square of anything; check the units.",
                        () -> kN(3).sqrt()),
                bad("Cannot raise 0 m to the power \u22121: it is zero; check the value.", () -> m(0).pow(-1)),
                bad("Cannot compare 3 kN with 3 m: force and length; check the units.", () -> kN(3).compareTo(m(3))),
                bad("Unit \u2103: its scale does not start at zero; give a temperature change in K.",
                        () -> Quantity.of(20, tech.units.indriya.unit.Units.CELSIUS)));
    }

    static Stream<Arguments> sheet() {
        return Stream.of(
                bad("Name: it is missing; write a letter followed by letters, digits and underscores, as in A_req or "
                        + "sigma_1.", () -> given(null, kN(3), "")),
                bad("Name \"2x\": a name is a letter followed by letters, digits and underscores; write it as in A_req or "
                        + "sigma_1.", () -> given("2x", kN(3), "")),
                bad("Name \"sin\": it means something in every formula already; choose another, such as sin_1.",
                        () -> given("sin", kN(3), "")),
                bad("N: its value is missing; give a quantity, as in kN(12).", () -> given("N", null, "")),
                bad("x: Formula: it is empty; write one such as \"N / A\".",
                        () -> formula("x", "", StructuralUnits.mm2, "")),
                bad("x: Formula: it is empty; write one such as \"N / A\".",
                        () -> formula("x", null, StructuralUnits.mm2, "")),
                bad("x: the unit of the answer is missing; give one, as in mm2, or leave it out.",
                        () -> formula("x", "P*2", null, "")),
                bad("x: Name Q: no line above gives it; give it in a line above, with given(\"Q\", ...); the sheet has P.",
                        () -> formula("x", "P/Q", StructuralUnits.mm2, "")),
                bad("Formula \"P\": at its end a comparison is missing; write one such as \"N <= N_Rd\".",
                        () -> check("P", "")),
                bad("Formula \"1 kN <= P <= 3 kN\": at \"<= 3 kN\" there is a second comparison; write one check for each.",
                        () -> check("1 kN <= P <= 3 kN", "")),
                bad("Check P <= 3 m: Cannot compare 257 kN with 3 m: force and length; check the units.",
                        () -> check("P <= 3 m", "")),
                bad("Table over A: it has no column; give at least one.",
                        () -> table("T", over("A", mm2(1), mm2(2), mm2(1)))),
                bad("Table over A: Name B: no line above gives it; give it in a line above, with given(\"B\", ...); the "
                        + "sheet has P.", () -> table("T", over("A", mm2(1), mm2(2), mm2(1)), column("s", "P/B"))),
                bad("Range of A: steps of 0 mm\u00b2 from 1 mm\u00b2 to 2 mm\u00b2 are going nowhere; give fewer than 1000 "
                        + "that lead there.", () -> over("A", mm2(1), mm2(2), mm2(0))),
                bad("Range of A: steps of \u22121 mm\u00b2 from 1 mm\u00b2 to 2 mm\u00b2 are going nowhere; give fewer than"
                        + " 1000 that lead there.", () -> over("A", mm2(1), mm2(2), mm2(-1))),
                bad("Range of A: steps of 1 mm\u00b2 from 1 mm\u00b2 to 2000 mm\u00b2 are too many; give fewer than 1000 "
                        + "that lead there.", () -> over("A", mm2(1), mm2(2000), mm2(1))),
                bad("Range of A: Cannot subtract 1 mm\u00b2 from 2 m: area and length; check the units.",
                        () -> over("A", mm2(1), m(2), mm2(1))),
                bad("Range of A: Cannot express 1 m in mm\u00b2: length and area; check the units.",
                        () -> over("A", mm2(1), mm2(2), m(1))),
                bad("Range of A: a value is missing; give the first, the last and the step.",
                        () -> over("A", mm2(1), null, mm2(1))),
                bad("Range of A: it has 0 values; give from 1 to 1000.", () -> overEach("A")),
                bad("Range of A: Cannot compare 1 m with 1 mm\u00b2: length and area; check the units.",
                        () -> overEach("A", mm2(1), m(1))),
                bad("Range of A: a value is missing; give a quantity for each.",
                        () -> overEach("A", mm2(1), null)),
                bad("Parameter P_set: Quantity \"kN\": there is no number that can be read; write it as 12 kN, "
                        + "3.5 kip/ft or -0.75 m, with a point for decimals and no commas.",
                        () -> setForThisRun("P_set", "kN")),
                bad("Number format: 0 significant figures; choose from 1 to 15.", () -> figures(0)),
                bad("Show: the name is missing; give one, as in show(x, \"status\").", () -> show(1, null)),
                bad("Show: the name is missing; give one, as in show(x, \"status\").", () -> showAgain(1, " ")));
    }

    static Stream<Arguments> all() {
        return Stream.of(forms(), builder(), truss(), quantities(), sheet()).flatMap(kinds -> kinds);
    }

    @ParameterizedTest(name = "{index} {0}")
    @MethodSource("all")
    void isToldInOneSentenceThatSaysWhatToDo(String message, Executable written) {
        assertEquals(message, assertThrows(CalculationException.class, written).getMessage());
    }

    @Test
    void thereAreMoreThanAHundredKinds() {
        assertTrue(all().count() > 100, all().count() + " kinds");
    }

    @Test
    void aRefusedLineLeavesTheSheetAsItWas() {
        assertThrows(CalculationException.class, () -> given("N", null, ""));

        assertEquals(kN(5), given("N", kN(5), ""));
    }

    @BeforeEach
    void connect() {
        newSheet("Sheet");
        CellDisplay.connect(new CellDisplay.Sink() {
            @Override
            public void display(Object value, Optional<String> displayId) {
            }

            @Override
            public void update(Object value, String displayId) {
            }

            @Override
            public void clear(boolean wait) {
            }

            @Override
            public Optional<String> input(String prompt, boolean password) {
                return Optional.empty();
            }

            @Override
            public void payload(Map<String, Object> payload) {
            }
        });
        given("P", kN(257), "");
    }

    @AfterEach
    void disconnect() {
        CellDisplay.connect(before);
    }
}
