package kingpost.notebook;

import static kingpost.notebook.SheetWords.assume;
import static kingpost.notebook.SheetWords.check;
import static kingpost.notebook.SheetWords.column;
import static kingpost.notebook.SheetWords.formula;
import static kingpost.notebook.SheetWords.given;
import static kingpost.notebook.SheetWords.newSheet;
import static kingpost.notebook.SheetWords.over;
import static kingpost.notebook.SheetWords.setForThisRun;
import static kingpost.notebook.SheetWords.sheet;
import static kingpost.notebook.SheetWords.table;
import static kingpost.notebook.SheetWords.unusedSettings;
import static kingpost.units.StructuralUnits.MPa;
import static kingpost.units.StructuralUnits.kN;
import static kingpost.units.StructuralUnits.mm2;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import kingpost.calculation.SettingProblem;
import kingpost.render.Edition;
import kingpost.render.Exhibit;
import kingpost.units.Quantity;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class SheetWordsTest {

    private final CellDisplay.Sink before = CellDisplay.sink();
    private final List<String> shown = new ArrayList<>();

    @BeforeEach
    void listen() {
        newSheet("Tie");
        CellDisplay.connect(new CellDisplay.Sink() {
            @Override
            public void display(Object value, Optional<String> displayId) {
                shown.add(value.toString().strip());
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
    }

    @AfterEach
    void stopListening() {
        CellDisplay.connect(before);
    }

    @Test
    void eachLineIsShownAtOnceAndIsAQuantity() {
        Quantity force = given("N", UnitWords.kN(257), "largest chord force");
        given("f_all", UnitWords.MPa(165), "allowable stress", "Sheet 2");
        Quantity area = formula("A_req", "N / f_all", mm2, "required area");
        boolean enough = check("A_req <= 1800 mm2", "flat bar").satisfied();
        assertEquals(257, force.in(kN));
        assertEquals(257_000 / 165.0, area.in(mm2), 1e-10);
        assertTrue(enough);
        assertEquals(List.of("N = 257 kN   largest chord force", "f_all = 165 MPa   allowable stress (Sheet 2)",
                "A_req = N/f_all = 257 kN/165 MPa = 1560 mm²   required area",
                "A_req = 1560 mm² ≤ 1800 mm²   flat bar: satisfied, 87 %"), shown);
    }

    @Test
    void theSheetIsOneDocumentWithItsNumbersForMachines() {
        given("N", UnitWords.kN(257), "");
        table("Stress", over("A", UnitWords.mm2(1000), UnitWords.mm2(2000), UnitWords.mm2(500)),
                column("sigma", "N/A", MPa));
        Map<String, Object> forms = sheet().show();
        assertTrue(forms.get("text/plain").toString().startsWith("Tie\n==="));
        Map<?, ?> result = (Map<?, ?>) forms.get(Exhibit.RESULT);
        assertEquals("calculation", result.get("kind"));
        Map<?, ?> given = (Map<?, ?>) ((List<?>) result.get("lines")).get(0);
        assertEquals(List.of(257.0, "kN"), given.get("given"));
    }

    @Test
    void settingsOutliveANewSheet() {
        setForThisRun("P_set", "12kN");
        newSheet("Another");
        assertEquals(Set.of("P_set"), unusedSettings());
        assertEquals(12, given("P_set", UnitWords.kN(10), "load").in(kN));
        assertEquals(Set.of(), unusedSettings());
    }

    @Test
    void assumptionsAreNumberedShownAndHeadTheSheet() {
        assume("Joints are pins.", "drawing 3");
        assume("No wind.");
        assume("No wind.");
        assertEquals(List.of("Assumption 1. Joints are pins (drawing 3).", "Assumption 2. No wind.", "Assumption 2. No wind."),
                shown);
        assertEquals(2, sheet().sheet().assumptions().size());
        assertTrue(sheet().toString().contains("Units and rounding"), sheet()::toString);
    }

    @Test
    void theValueOfALineIsShownByTheLineAndNotAgain() {
        CellDisplay.statementBegins();
        Quantity force = given("N", UnitWords.kN(257), "");
        assertTrue(CellDisplay.isShown(force));
        CellDisplay.statementBegins();
        assertFalse(CellDisplay.isShown(force), "a later statement asks for it anew");
    }

    @Test
    void aVariableIsSetForThisRunInItsOwnKind() {
        assertEquals(15, setForThisRun("P", UnitWords.kN(12), "15 kN").in(kN));
        assertEquals(2.5, setForThisRun("x", 1.0, "2.5"));
        assertEquals(4, setForThisRun("n", 3, "4"));
        assertEquals("P is set to 15 kN for this run; the notebook says 12 kN.", shown.get(0));
        assertEquals("Parameter P: it is set to 15 m, a length, and the notebook gives 12 kN, a force; set a value in kN or a "
                + "unit of its kind.",
                assertThrows(SettingProblem.class, () -> setForThisRun("P", UnitWords.kN(12), "15 m")).getMessage());
        assertEquals("Parameter n: it is set to \"2.5\", and the notebook gives 3; set a whole number.",
                assertThrows(SettingProblem.class, () -> setForThisRun("n", 3, "2.5")).getMessage());
    }

    @Test
    void aCalculationIsInNoHandoutAndItsAnswersAreInTheKey() {
        SheetView line = SheetView.line(sheet().sheet(), sheet().sheet().given("b", UnitWords.mm(5), ""));
        assertEquals(Optional.empty(), line.show(Edition.HANDOUT));
        assertEquals(Optional.empty(), line.show(Edition.KEY));
        SheetView answer = SheetView.line(sheet().sheet(), sheet().sheet().formula("c", "2*b", "double"));
        assertEquals(Optional.empty(), answer.show(Edition.HANDOUT));
        assertEquals("c = 10 mm   double", answer.show(Edition.KEY).orElseThrow().get("text/plain").toString().strip());
    }

    @Test
    void theTitleBlockIsInEveryEdition() {
        TitleBlock block = SheetWords.titleBlock("Quay").revision("B").sheet("S-1");
        for (Edition edition : Edition.values()) {
            assertTrue(block.show(edition).orElseThrow().get("text/plain").toString().contains("S-1"), edition::word);
        }
    }
}
