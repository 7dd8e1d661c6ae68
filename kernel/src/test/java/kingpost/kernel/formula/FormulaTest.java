package kingpost.kernel.formula;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringReader;
import java.util.Random;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.xml.sax.InputSource;

class FormulaTest {

    private static String body(String tex) {
        return Formula.inline(tex).replaceFirst("^<math [^>]*>", "").replaceFirst("</math>$", "");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '@', value = {
        "x@ <mi>x</mi>",
        "F_{AB}@ <msub><mi>F</mi><mrow><mi>A</mi><mi>B</mi></mrow></msub>",
        "x_1^2@ <msubsup><mi>x</mi><mn>1</mn><mn>2</mn></msubsup>",
        "x'@ <msup><mi>x</mi><mo>′</mo></msup>",
        "x^23@ <msup><mi>x</mi><mn>2</mn></msup><mn>3</mn>",
        "\\frac12@ <mfrac><mn>1</mn><mn>2</mn></mfrac>",
        "\\frac{12}{5}@ <mfrac><mn>12</mn><mn>5</mn></mfrac>",
        "200\\sqrt{2}@ <mn>200</mn><msqrt><mn>2</mn></msqrt>",
        "\\sqrt[3]{8}@ <mroot><mn>8</mn><mn>3</mn></mroot>",
        "3.75@ <mn>3.75</mn>",
        "12{,}000@ <mn>12,000</mn>",
        "\\mathrm{kN}@ <mi>kN</mi>",
        "\\mathrm{N}@ <mi mathvariant=\"normal\">N</mi>",
        "\\text{ kN/m}@ <mtext>\u00a0kN/m</mtext>",
        "\\alpha@ <mi>α</mi>",
        "\\sin\\theta@ <mi>sin</mi><mspace width=\"0.167em\"></mspace><mi>θ</mi>",
        "30^\\circ@ <msup><mn>30</mn><mo>∘</mo></msup>",
        "a < b@ <mi>a</mi><mo>&lt;</mo><mi>b</mi>",
        "\\vec{F}@ <mover accent=\"true\"><mi>F</mi><mo stretchy=\"false\">→</mo></mover>",
        "5\\%@ <mn>5</mn><mi mathvariant=\"normal\">%</mi>",
    })
    void showsWhatIsWritten(String tex, String mathml) {
        assertEquals(mathml, body(tex));
    }

    @Test
    void bindsASignToTheNumberAfterIt() {
        assertEquals("<mi>F</mi><mo>=</mo><mo form=\"prefix\">−</mo><mn>3</mn><mo>−</mo><mn>2</mn>", body("F = -3 - 2"));
    }

    @Test
    void keepsAFaceInsideItsGroup() {
        assertEquals("<mn>2</mn><mi mathvariant=\"normal\">N</mi><mo stretchy=\"false\">/</mo>"
                + "<msup><mi>mm</mi><mn>2</mn></msup><mi>x</mi>", body("2\\mathrm{N}/\\mathrm{mm}^2 x"));
    }

    @Test
    void putsLimitsOverAndUnderSums() {
        assertTrue(body("\\sum_{i=1}^n x_i").startsWith("<munderover><mo>∑</mo>"));
        assertTrue(body("\\int_0^1 x").startsWith("<msubsup><mo>∫</mo>"));
    }

    @Test
    void stretchesFencesOnlyWhereAsked() {
        assertTrue(body("\\left( x \\right)").contains("stretchy=\"true\">(</mo>"));
        assertTrue(body("( x )").contains("stretchy=\"false\">(</mo>"));
    }

    @Test
    void alignsLinesAtTheirSigns() {
        String table = body("\\begin{aligned} a &= b \\\\ c &= d \\end{aligned}");
        assertEquals(2, table.split("<mtr>", -1).length - 1);
        assertEquals(4, table.split("<mtd ", -1).length - 1);
        assertEquals(table, body("a &= b \\\\ c &= d"), "lines without an environment align too");
    }

    @Test
    void showsAnUnknownCommandAsTyped() {
        assertTrue(body("\\nosuch x").startsWith("<mtext class=\"tex-source\">\\nosuch</mtext>"));
    }

    @Test
    void showsAFormulaThatNestsTooDeepAsItsSource() {
        assertTrue(body("{".repeat(5000)).startsWith("<mtext class=\"tex-source\">"));
    }

    @Test
    void letsNoMarkupThrough() {
        for (String tex : new String[] {"<script>", "\\text{<img src=x>}", "\\color{red\" onx=\"1}{x}", "\\foo<b>",
            "\\hspace{1em\" a=\"}", "\\operatorname{<i>}", "\\begin{<u>}x\\end{<u>}"}) {
            String math = Formula.display(tex);
            assertFalse(math.matches("(?s).*<(script|img|b|i|u)[ >].*"), math);
            assertFalse(math.contains("onx=\"1\""), math);
        }
    }

    @Test
    void alwaysGivesWellFormedMarkup() throws Exception {
        String[] pieces = {"\\frac", "{", "}", "\\left(", "\\right)", "x", "1", "^", "_", "&", "\\\\", "\\begin{array}{lr}",
            "\\end{array}", "\\text{a $b$}", "\\sqrt[", "]", "'", "$", "\\", "\\not", "\\big", "<", "\\underbrace{x}_y",
            "\uD835\uDF0E", "\\color{red}", "\\displaystyle ", "-", "\\begin{cases}", "\\limits"};
        Random random = new Random(20261125);
        for (int i = 0; i < 3000; i++) {
            StringBuilder tex = new StringBuilder();
            random.ints(random.nextInt(14), 0, pieces.length).forEach(p -> tex.append(pieces[p]));
            DocumentBuilderFactory.newInstance().newDocumentBuilder()
                    .parse(new InputSource(new StringReader(Formula.display(tex.toString()))));
        }
    }
}
