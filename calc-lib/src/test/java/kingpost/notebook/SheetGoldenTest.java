package kingpost.notebook;

import static kingpost.notebook.UnitWords.MPa;
import static kingpost.notebook.UnitWords.deg;
import static kingpost.notebook.UnitWords.kN_per_m2;
import static kingpost.notebook.UnitWords.m;
import static kingpost.notebook.UnitWords.mm2;
import static kingpost.units.StructuralUnits.kN;
import static kingpost.units.StructuralUnits.kNm;
import static kingpost.units.StructuralUnits.kN_per_m;
import static kingpost.units.StructuralUnits.mm;
import static kingpost.units.StructuralUnits.percent;

import kingpost.GoldenFile;
import kingpost.calculation.CalculationSheet;
import kingpost.calculation.Line.Column;
import kingpost.calculation.Range;
import kingpost.render.HtmlRenderer;
import kingpost.render.LatexRenderer;
import kingpost.render.MarkdownRenderer;
import kingpost.render.PlainRenderer;
import kingpost.render.Renderer;
import kingpost.units.StructuralUnits;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** One sheet with every kind of line, as each renderer writes it. */
class SheetGoldenTest {

    private static CalculationSheet sheet() {
        CalculationSheet sheet = CalculationSheet.titled("Tie of the loading dock");
        sheet.override("q", kN_per_m2(3));
        sheet.given("q", kN_per_m2(2.5), "load on the roof", "drawing 3");
        sheet.given("s", m(4), "spacing of the trusses");
        sheet.given("L", m(12.25), "span");
        sheet.given("theta", deg(30), "slope of the roof");
        sheet.formula("w", "q*s", kN_per_m, "load on one truss");
        sheet.formula("M_max", "w*L^2/8", kNm, "largest moment");
        sheet.formula("N_1", "M_max/(1.5 m) + w*L/2*sin(theta) - min(w*L, 10 [kN])", kN, "chord force");
        sheet.given("f_all", MPa(165), "allowable stress");
        sheet.formula("A_req", "N_1/f_all", StructuralUnits.mm2, "required area");
        sheet.given("A", mm2(1050), "area of the tie");
        sheet.formula("r", "sqrt(A/pi)", mm, "radius of a round bar of that area");
        sheet.check("A_req <= A", "tie");
        sheet.table("Stress", Range.of("A", mm2(1000), mm2(2000), mm2(250)),
                Column.of("sigma", "N_1/A", StructuralUnits.MPa), Column.of("eta", "sigma/f_all", percent));
        sheet.given("A", mm2(1500), "area of the tie, next size");
        sheet.check("N_1/A <= f_all", "stress in the tie, which governs everywhere in this truss", "clause 4");
        return sheet;
    }

    @ParameterizedTest
    @ValueSource(strings = {"txt", "md", "html", "tex"})
    void writesTheSheetAsKept(String ending) {
        Renderer renderer = switch (ending) {
            case "txt" -> new PlainRenderer();
            case "md" -> new MarkdownRenderer();
            case "html" -> new HtmlRenderer();
            default -> new LatexRenderer();
        };
        GoldenFile.check("kingpost/notebook/tie-sheet." + ending, renderer.render(sheet().derivation()));
    }
}
