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

    private static Truss bridge() {
        return Truss.pratt(16, 3, 4).units(StructuralUnits.m, StructuralUnits.kN).named("Bridge").load("L2", 10, DOWN).build();
    }

    private static TrussBuilder<Truss> bare() {
        return named("Gable").joint("A", 0, 0).joint("B", 4, 0).joint("C", 2, 3).members("AB BC AC").pin("A").roller("B");
    }

    private static Truss inCases() {
        return bare().loadCase("dead").load("C", 3, DOWN).loadCase("wind").load("C", 2, RIGHT).build();
    }

    private static TrussBuilder<Truss> tripod() {
        return named("Tripod").joint("A", 2, 0, 0).joint("B", -1, 0, 1.5).joint("C", -1, 0, -2).joint("T", 0, 5, 0)
                .members("AT BT CT").ball("A").ball("B").ball("C").load("T", 12, DOWN);
    }

    static Stream<Arguments> moving() {
        return Stream.of(
                bad("Member: no name is given; write one of L0-L1, L1-L2, L2-L3, L3-L4, L0-U1, U1-U2, U2-U3, U3-L4, U1-L1, "
                        + "U2-L2, U3-L3, U1-L2, L2-U3.", () -> bridge().influence(null)),
                bad("Joint L2: nothing supports it, so it has no reaction; supported joints are L0, L4.",
                        () -> bridge().influenceOfReaction("L2")),
                bad("Joint: no name is given; write one of L0, L1, L2, L3, L4, U1, U2, U3.",
                        () -> bridge().influenceOfReaction(null)),
                bad("Panel: none is named; write its two joints, as in influenceOfShear(\"L1 L2\").",
                        () -> bridge().influenceOfShear(null)),
                bad("Panel L0: it takes two joints of the loaded chord; write them from left to right, as in "
                        + "influenceOfShear(\"L1 L2\").", () -> bridge().influenceOfShear("L0")),
                bad("Panel L2 L1: it is not one of the loaded chord L0 L1 L2 L3 L4; name two joints of it that follow each "
                        + "other.", () -> bridge().influenceOfShear("L2 L1").facts()),
                bad("Loaded chord: no joint is named; name two or more from left to right, as in along(\"L0 L1 L2\").",
                        () -> bridge().influence("L0-L1").along(null)),
                bad("Loaded chord: joint L0 does not lie to the right of L0; name the joints from left to right.",
                        () -> bridge().influence("L0-L1").along("L0 L0")),
                bad("Joint U1: the loaded chord has none of that name; its joints are L0, L1, L2, L3, L4.",
                        () -> bridge().influence("L0-L1").ordinate("U1")),
                bad("Wheel train: 2 numbers are given; write it as load, distance, load ... load, which is an odd number, as "
                        + "in train(35, 4.3, 145).", () -> bridge().influence("L0-L1").train(35, 4)),
                bad("Wheel train: distance 1 is \u22124 m; give a finite number above zero.",
                        () -> bridge().influence("L0-L1").train(35, -4, 35)),
                bad("Wheel train: load 1 is 0 kN; give a finite number above zero.",
                        () -> bridge().influence("L0-L1").train(0)),
                bad("Wheel train: load 1 is 3 m; give a force, in kN for instance.",
                        () -> bridge().influence("L0-L1").train(m(3))),
                bad("Wheel train: distance 1 is 3 kN; give a length, in m for instance.",
                        () -> bridge().influence("L0-L1").train(kN(3), kN(3), kN(3))),
                bad("Uniform load: it is \u22123 kN/m; give a finite number above zero.",
                        () -> bridge().influence("L0-L1").uniform(-3)),
                bad("Uniform load: it is 3 kN; give a force per length, in kN/m for instance.",
                        () -> bridge().influence("L0-L1").uniform(kN(3))),
                bad("Uniform load: it is missing; give a force per length, in kN/m for instance.",
                        () -> bridge().influence("L0-L1").uniform((Quantity) null)));
    }

    static Stream<Arguments> cases() {
        return Stream.of(
                bad("Envelope: Gable has no load cases; write loadCase(\"dead\") or the like before the loads of each.",
                        () -> gable().build().envelope()),
                bad("Load case snow: the truss \"Gable\" has none of that name; its cases are dead, wind.",
                        () -> inCases().loadCase("snow")),
                bad("Load case x: the truss \"Gable\" has none of that name; its loads are not parted into cases.",
                        () -> gable().build().loadCase("x")),
                bad("Combination 1.2 dead + snow: there is no load case snow; name one of dead, wind.",
                        () -> inCases().combination("1.2 dead + snow")),
                bad("Combination: it is empty; write it like 1.2 dead + 1.6 snow.", () -> inCases().combination(null)),
                bad("Combination dead + + wind: a factor stands there without a load case; write it like 1.2 dead + 1.6 snow.",
                        () -> inCases().combination("dead + + wind")),
                bad("Combination 0 dead: the factor of dead is zero; leave the case out.",
                        () -> inCases().combination("0 dead")),
                bad("Combination dead + dead: the load case dead comes twice; add its factors.",
                        () -> inCases().combination("dead + dead")),
                bad("Load case: it has no name; write loadCase(\"dead\") or the like.",
                        () -> bare().loadCase(" ").load("C", 3, DOWN).build()),
                bad("Load case dead: it is begun twice; write all its loads in one place.",
                        () -> bare().loadCase("dead").load("C", 3, DOWN).loadCase("dead").load("C", 3, DOWN).build()),
                bad("Load case dead: no load is in it; write its loads after it, or leave it out.",
                        () -> bare().loadCase("dead").build()),
                bad("Loads: 1 of them stands before the first load case; write loadCase(\"dead\") or the like before them.",
                        () -> gable().loadCase("dead").load("C", 3, DOWN).build()),
                bad("Combination u: it is given twice; leave one out or rename it.", () -> bare().loadCase("dead")
                        .load("C", 3, DOWN).combination("u", "1.2 dead").combination("u", "1.4 dead").build()),
                bad("Self weight: its size is 1 kN, which is not a force per length; give a force per length, in kN/m for "
                        + "instance.", () -> bare().selfWeight(kN(1)).build()),
                bad("Self weight: it names no member; name members, as in selfWeight(\"AB BC\", 0.2), or leave the names out "
                        + "for the weight of all.", () -> bare().selfWeight(" ", 1).build()),
                bad("Deck load: it needs two joints at least to lie between; list the joints of one chord in order, as in "
                        + "\"L0 L1 L2\".", () -> bare().deckLoad("A", 1).build()),
                bad("Deck load: joint A is listed twice, one after the other; list the joints of one chord in order, each "
                        + "one.", () -> bare().deckLoad("A A", 1).build()),
                bad("Deck load: the spacing of the trusses is 0 m, not above zero; give the distance from truss to truss.",
                        () -> bare().deckLoad("A B", 1, 0).build()),
                bad("Wind load: its size is zero; give its size or leave it out.",
                        () -> bare().windLoad("A C", 0).build()));
    }

    static Stream<Arguments> space() {
        return Stream.of(
                bad("Section: Tripod is a space truss, and sections are worked in plane trusses; use solve(), or "
                        + "s.joint(\"A\") for one joint.", () -> tripod().build().section("AT BT")),
                bad("Member AT: Tripod is a space truss, in which ways to one member are not compared; use solve(), or "
                        + "s.joint(\"A\") for one joint.", () -> tripod().build().member("AT")),
                bad("Influence line: Tripod is a space truss; moving loads are worked in plane trusses; put the load on one "
                        + "joint after another, and solve() each.", () -> tripod().build().influence("AT").facts()),
                bad("Force diagram: Tripod is a space truss, and forces in space make no flat polygon; use s.joint(\"B\").",
                        () -> tripod().build().solve().forceDiagram()),
                bad("Variants of Tripod: it is a truss in space, and only plane trusses can be varied; write its variants "
                        + "down one by one.", () -> tripod().build().variants(3)),
                bad("Wind load: the truss is in space, where more than one direction is square to a slope; give the load of "
                        + "each joint, as in load(\"B\", 1, 0, 2).", () -> tripod().windLoad("B T", 1).build()),
                bad("Joint A: no z is given, but joint B is at (1, 0, 2) m, so the truss is in space; give each joint x, y "
                        + "and z, as in joint(\"A\", 0, 0, 0).", () -> named("S").joint("A", 0, 0).joint("B", 1, 0, 2)
                        .members("AB").ball("A").build()),
                bad("Support at C: a ball holds a joint in space, but the truss is planar; write pin(\"C\"), or give the "
                        + "joints their z.", () -> gable().ball("C").build()),
                bad("Support at T: the direction of the link is (0.0, 0.0, 0.0); give finite numbers that are not all zero.",
                        () -> tripod().link("T", 0, 0, 0).build()),
                bad("Load at C: it has a part towards the reader, but the truss is planar; give a direction in the plane.",
                        () -> gable().load("C", 1, 2, 3).build()));
    }

    static Stream<Arguments> classroom() {
        return Stream.of(
                bad("Answers: there are none; write them as in mark(\"AB = 12 kN tension, BC = -3\").",
                        () -> gable().build().mark((String) null)),
                bad("Answers: there are none; give the text of a table, or the name of its file.",
                        () -> gable().build().markClass((String) null)),
                bad("Answers in nowhere.csv: the file cannot be read (NoSuchFileException); give a file of comma-separated "
                        + "text in UTF-8.", () -> gable().build().markClass("nowhere.csv")),
                bad("Variants of Gable: 0 were asked for; ask for one or more.", () -> gable().build().variants(0)),
                bad("Variant 4: there is none of that number; they are numbered from 1 to 3.",
                        () -> gable().build().variants(3).get(4)),
                bad("Folder: no name is given; name one to write to, as in save(\"week-3\").",
                        () -> gable().build().variants(3).save((String) null)),
                bad("Page: there is nothing to show; give what a cell would show, as in saveAsPage(s.derivation(), "
                        + "\"roof.html\").", () -> Notebook.saveAsPage(null, "x.html")),
                bad("Page: the file has no name; give one, as in saveAsPage(x, \"roof.html\").",
                        () -> Notebook.saveAsPage(gable().build(), " ")),
                bad("Assumption: it says nothing; write a sentence, as in assume(\"Joints are pins.\").",
                        () -> SheetWords.assume(" ")),
                bad("Title block: Project is missing; give its words, or leave it out.", () -> SheetWords.titleBlock(null)),
                bad("Joint Z: the truss \"Gable\" has none of that name; its joints are A, B, C.",
                        () -> gable().build().solve().polygon("Z")),
                bad("Substitute for AB: between A and C no member can be put; give two joints that no member joins.",
                        () -> gable().build().substitute("AB", "AC")),
                bad("Member CD: its name is not made of two joints of \"Gable\"; its joints are A, B, C.",
                        () -> gable().build().substitute("AB", "CD")));
    }

    static Stream<Arguments> all() {
        return Stream.of(forms(), builder(), truss(), quantities(), sheet(), moving(), cases(), space(), classroom())
                .flatMap(kinds -> kinds);
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
