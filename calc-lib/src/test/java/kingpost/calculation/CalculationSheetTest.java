package kingpost.calculation;

import static kingpost.units.StructuralUnits.*;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import kingpost.calculation.Line.Column;
import kingpost.derivation.Block;
import kingpost.derivation.Expression;
import kingpost.units.CalculationException;
import kingpost.units.Quantity;
import kingpost.units.UnitMismatchException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class CalculationSheetTest {

    private final CalculationSheet sheet = CalculationSheet.titled("Tie");

    private static Quantity kN(double value) {
        return Quantity.of(value, kN);
    }

    private List<String> notes() {
        return sheet.derivation().blocks().stream().filter(Block.Prose.class::isInstance)
                .map(block -> ((Block.Prose) block).phrase().pieces().get(0))
                .map(piece -> ((kingpost.derivation.Inline.Text) piece).text()).toList();
    }

    @Test
    void answersServeLaterLines() {
        sheet.given("N", kN(257), "largest chord force");
        sheet.given("f_all", Quantity.of(165, MPa), "allowable stress");
        Quantity area = sheet.formula("A_req", "N/f_all", mm2, "required area").value();
        Quantity side = sheet.formula("a", "sqrt(A_req)", "side of a square bar").value();
        assertEquals(257_000 / 165.0, area.in(mm2), 1e-10);
        assertEquals(Math.sqrt(257_000 / 165.0), side.in(mm), 1e-12);
        assertEquals(area, sheet.value("A_req"));
    }

    @Test
    void carriesValuesUnrounded() {
        sheet.given("x", Quantity.of(1), "");
        sheet.formula("third", "x/3", "");
        assertEquals(1.0, sheet.formula("whole", "third*3", "").value().getValue());
    }

    @Test
    void readsTheVerdictAloud() {
        sheet.given("N", kN(257), "");
        sheet.given("N_Rd", kN(310), "");
        assertEquals("257 kN at most 310 kN: satisfied, 83 %", sheet.check("N <= N_Rd", "").verdict().toString());
        assertEquals("310 kN at most 257 kN: not satisfied, 121 %", sheet.check("N_Rd <= N", "").verdict().toString());
        assertEquals("310 kN at least 257 kN: satisfied, 83 %", sheet.check("N_Rd >= N", "").verdict().toString());
        assertEquals("257 kN less than 310 kN: satisfied, 83 %", sheet.check("N < N_Rd", "").verdict().toString());
        assertEquals("310 kN equal to 257 kN: not satisfied", sheet.check("N_Rd = N", "").verdict().toString());
        assertEquals("\u2212257 kN at most 310 kN: satisfied", sheet.check("-N <= N_Rd", "").verdict().toString());
    }

    @Test
    void roundingNoiseDecidesNothing() {
        sheet.given("a", Quantity.of(0.1, m), "");
        sheet.given("b", Quantity.of(0.2, m), "");
        assertTrue(sheet.check("a + b <= 0.3 m", "").verdict().satisfied());
        assertTrue(sheet.check("a + b = 300 mm", "").verdict().satisfied());
        assertFalse(sheet.check("a + b < 0.3 m", "").verdict().satisfied());
    }

    @Test
    void aNarrowFailureDoesNotLookLikeAPass() {
        sheet.given("N", kN(310.2), "");
        assertEquals("310.2 kN at most 310 kN: not satisfied, 100.1 %",
                sheet.check("N <= 310 kN", "").verdict().toString());
    }

    @Test
    void comparesAcrossUnitsInTheUnitOfTheLimit() {
        sheet.given("N", kN(257), "");
        sheet.given("A", Quantity.of(1800, mm2), "");
        Verdict verdict = sheet.check("N/A <= 165 MPa", "").verdict();
        assertEquals("143 MPa at most 165 MPa: satisfied, 87 %", verdict.toString());
    }

    @Test
    void refusesToCompareAForceWithAStress() {
        sheet.given("N", kN(257), "");
        assertEquals("Check N <= 165 MPa: Cannot compare 257 kN with 165 MPa: force and stress or pressure; check the "
                + "units.", assertThrows(UnitMismatchException.class, () -> sheet.check("N <= 165 MPa", ""))
                .getMessage());
    }

    @ParameterizedTest
    @CsvSource({"N, at its end a comparison is missing", "N <= N <= N, there is a second comparison",
        "N <=, at its end a value is missing"})
    void saysWhatIsWrongWithACheck(String text, String message) {
        sheet.given("N", kN(257), "");
        String said = assertThrows(CalculationException.class, () -> sheet.check(text, "")).getMessage();
        assertTrue(said.contains(message), said);
    }

    @Test
    void aNameUsedAgainShowsAtEveryLineConcerned() {
        sheet.given("N", kN(257), "");
        sheet.formula("A_req", "N/165 [MPa]", mm2, "");
        sheet.formula("r", "sqrt(A_req/pi)", mm, "");
        sheet.given("N", kN(300), "");
        sheet.formula("M", "N*2 [m]", kNm, "");
        assertEquals(List.of("Line 1: N is replaced in line 4.",
                "Line 2: still with the earlier N, not the present one.",
                "Line 3: still with the earlier A_req, not the present one.",
                "Line 4: replaces N = 257 kN of line 1."), notes());
        assertEquals(600, sheet.value("M").in(kNm));
    }

    @Test
    void aCellRunTwiceWritesItsLinesOnce() {
        Line first = sheet.given("N", kN(257), "chord");
        Line formula = sheet.formula("x", "2*N", "");
        Line check = sheet.check("N <= 300 kN", "");
        assertSame(first, sheet.given("N", kN(257), "chord"));
        assertSame(formula, sheet.formula("x", "2*N", ""));
        assertSame(check, sheet.check("N <= 300 kN", ""));
        assertEquals(3, sheet.lines().size());
        sheet.given("N", kN(258), "chord");
        sheet.formula("x", "2*N", "");
        assertEquals(5, sheet.lines().size());
        assertEquals(516, sheet.value("x").in(kN));
    }

    @Test
    void aValueSetForThisRunIsShownBesideTheNotebooks() {
        sheet.override("P", Quantity.of(12_000, N)).override("Q", kN(1));
        assertEquals(12, sheet.given("P", kN(10), "load").value().in(kN));
        assertEquals(Set.of("Q"), sheet.unusedOverrides());
        assertEquals(List.of("Line 1: P is set to 12\u202f000 N for this run; the notebook says 10 kN."), notes());
    }

    @Test
    void aValueSetForThisRunMustBeOfTheSameKind() {
        sheet.override("P", Quantity.of(12, m));
        assertEquals("Parameter P: it is set to 12 m, a length, and the notebook gives 10 kN, a force; set a value in kN or a "
                + "unit of its kind.", assertThrows(SettingProblem.class, () -> sheet.given("P", kN(10), "load")).getMessage());
    }

    @Test
    void tabulatesOverARange() {
        sheet.given("N", kN(200), "");
        sheet.given("f_all", Quantity.of(165, MPa), "");
        Line.Tabulated table = sheet.table("Stress",
                Range.of("A", Quantity.of(1000, mm2), Quantity.of(2000, mm2), Quantity.of(5, cm2)),
                Column.of("sigma", "N/A", MPa), Column.of("eta", "sigma/f_all", percent), Column.of("F", "N/2"));
        assertEquals(3, table.rows().size());
        assertEquals(List.of(200.0, 400 / 3.0, 100.0),
                table.rows().stream().map(row -> row.get(0).in(MPa)).toList());
        assertEquals(100 / 165.0 * 100, table.rows().get(2).get(1).in(percent), 1e-12);
        assertThrows(CalculationException.class, () -> sheet.value("sigma"), "columns mean nothing afterwards");
    }

    @Test
    void sharesOneUnitInAColumnNobodyChoseAUnitFor() {
        Line.Tabulated table = sheet.table("", Range.of("L", Quantity.of(10, mm), Quantity.of(20, m)),
                Column.of("twice", "2*L"));
        assertEquals(List.of(m, m), table.rows().stream().map(row -> row.get(0).getUnit()).toList());
    }

    @Test
    void namesTheRowThatFails() {
        String said = assertThrows(CalculationException.class, () -> sheet.table("",
                Range.of("x", Quantity.of(2), Quantity.of(0), Quantity.of(-1)), Column.of("y", "1/x"))).getMessage();
        assertEquals("y = 1/x, where x = 0: Cannot divide 1 by 0: the divisor is zero; check the value below the line.",
                said);
    }

    @Test
    void rangesTakeInTheirEnd() {
        assertEquals(11, Range.of("x", Quantity.of(0, m), Quantity.of(1, m), Quantity.of(100, mm)).values().size());
        assertEquals(2, Range.of("x", Quantity.of(0, m), Quantity.of(1, m), Quantity.of(0.7, m)).values().size());
        for (Quantity step : List.of(Quantity.of(0, m), Quantity.of(-1, m), Quantity.of(1e-9, m), Quantity.of(1, sec))) {
            assertThrows(CalculationException.class,
                    () -> Range.of("x", Quantity.of(0, m), Quantity.of(1, m), step), step.toString());
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "1a", "a b", "a-b", "sin", "pi", "a'", "_x", "A.req"})
    void refusesWhatIsNoName(String name) {
        assertThrows(CalculationException.class, () -> sheet.given(name, kN(1), ""));
    }

    @Test
    void aUnitThatIsAlsoASymbolIsNotGuessedAt() {
        sheet.given("N", kN(257), "");
        assertEquals("x = 2 N: \"2 N\" in a formula: N is a unit and also a symbol of this sheet; write * between them "
                + "for the symbol, or [N] for the unit.",
                assertThrows(CalculationException.class, () -> sheet.formula("x", "2 N", "")).getMessage());
        assertEquals(514, sheet.formula("x", "2*N", "").value().in(kN));
        assertEquals(2, sheet.formula("y", "2 [N]", "").value().in(N));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"sigma_max|σ|max", "A_req|A|req", "L1|L|1", "f_c_d|f|c,d", "N|N|''",
        "Delta_L|Δ|L", "theta|θ|''", "Load|Load|''", "M_Ed1|M|Ed1", "δ_2|δ|2", "lambda|λ|''"})
    void showsNamesAsMathematics(String name, String letter, String subscript) {
        assertEquals(new Expression.Symbol(letter, subscript, 0), SymbolName.symbol(name));
    }

    @Test
    void refusesWhatIsNestedOrLongBeyondReason() {
        for (String text : List.of("(".repeat(5000) + "1" + ")".repeat(5000), "(".repeat(900) + "1" + ")".repeat(900),
                "2^".repeat(900) + "2", "-".repeat(1900) + "1", "sqrt(".repeat(300) + "1" + ")".repeat(300))) {
            assertThrows(CalculationException.class, () -> sheet.formula("x", text, ""));
        }
        assertEquals(1000, sheet.formula("x", "1" + "+1".repeat(999), "").value().getValue());
    }

    @Test
    void overflowIsAnErrorNotInfinity() {
        assertThrows(CalculationException.class, () -> sheet.formula("x", "10^400", ""));
        assertThrows(CalculationException.class, () -> sheet.formula("x", "1e400", ""));
    }
}
