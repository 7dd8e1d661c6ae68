package kingpost.kernel.print;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringReader;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.w3c.dom.Element;
import org.xml.sax.InputSource;

class MathLayoutTest {

    private static Element math(String content) {
        try {
            return DocumentBuilderFactory.newInstance().newDocumentBuilder()
                    .parse(new InputSource(new StringReader("<math display=\"block\">" + content + "</math>")))
                    .getDocumentElement();
        } catch (Exception e) {
            throw new IllegalStateException(e);
        }
    }

    private static MathBox box(String content) {
        return new MathLayout().of(math(content));
    }

    /** What is drawn, whatever it is read as. */
    private static List<Mark> marks(MathBox box) {
        return box.marks().stream().flatMap(mark -> mark instanceof Mark.Said said ? said.marks().stream() : Stream.of(mark))
                .toList();
    }

    private static List<Mark.Letters> letters(MathBox box) {
        return marks(box).stream().filter(Mark.Letters.class::isInstance).map(Mark.Letters.class::cast).toList();
    }

    private static String text(MathBox box) {
        return letters(box).stream().map(Mark.Letters::text).collect(Collectors.joining());
    }

    /** Source: the widths in the font's own table, read with another tool: digits 1024 of 2048, F italic 1251. */
    @Test
    void lettersAreAsWideAsTheFontSays() {
        assertEquals(2 * 1024 / 2048.0, box("<mn>24</mn>").width(), 1e-9);
        assertEquals(1251 / 2048.0, box("<mi>F</mi>").width(), 1e-9);
        assertEquals(PrintFont.SERIF_ITALIC, letters(box("<mi>F</mi>")).get(0).font());
        assertEquals(PrintFont.SERIF, letters(box("<mi>sin</mi>")).get(0).font());
    }

    @Test
    void subscriptsAreSmallerAndLower() {
        List<Mark.Letters> letters = letters(box("<msub><mi>F</mi><mtext>AB</mtext></msub>"));
        assertTrue(letters.get(1).size() < 0.8 && letters.get(1).y() > 0.1, letters::toString);
        assertTrue(letters.get(1).x() > 0.5, letters::toString);
    }

    @Test
    void aFractionsPartsLieClearOfItsBar() {
        MathBox box = box("<mfrac><mn>3</mn><mn>5</mn></mfrac>");
        Mark.Bar bar = (Mark.Bar) marks(box).stream().filter(Mark.Bar.class::isInstance).findFirst().orElseThrow();
        List<Mark.Letters> letters = letters(box);
        assertTrue(letters.get(0).y() < bar.y() - 0.1, "3 stands above the bar");
        assertTrue(letters.get(1).y() - 0.68 > bar.y() + bar.height() + 0.1, "5 hangs below the bar");
    }

    @Test
    void columnsLineUpAtTheirRelation() {
        String right = "<mtd style=\"text-align:right;padding:0\">";
        String left = "<mtd style=\"text-align:left;padding:0\">";
        MathBox box = box("<mtable><mtr>" + right + "<mi>a</mi></mtd>" + left + "<mo>=</mo></mtd></mtr><mtr>" + right
                + "<mi>a</mi><mi>b</mi><mi>c</mi></mtd>" + left + "<mo>=</mo></mtd></mtr></mtable>");
        List<Double> places = letters(box).stream().filter(l -> l.text().equals("=")).map(Mark.Letters::x).toList();
        assertEquals(2, places.size());
        assertEquals(places.get(0), places.get(1), 1e-9);
    }

    @Test
    void bracketsGrowWithWhatTheyEnclose() {
        MathBox box = box("<mrow><mo>(</mo><mfrac><mi>a</mi><mi>b</mi></mfrac><mo>)</mo></mrow>");
        assertTrue(letters(box).get(0).stretch() > 1.5, box::toString);
        assertEquals(1, letters(box("<mrow><mo>(</mo><mi>a</mi><mo>)</mo></mrow>")).get(0).stretch());
    }

    @Test
    void everySignIsKeptAsTextAndInvisibleOnesAreNot() {
        assertEquals("F\u22123\u2264\u03c3", text(box("<mi>F</mi><mo>&#x2062;</mo><mo>\u2212</mo><mn>3</mn><mo>\u2264</mo>"
                + "<mi>\u03c3</mi>")));
    }

    @Test
    void saysAFormulaInOneLine() {
        assertEquals("(3/5)F_AD + A_y = 0", MathWords.of(math("<mrow><mrow><mfrac><mn>3</mn><mn>5</mn></mfrac></mrow>"
                + "<msub><mi>F</mi><mtext>AD</mtext></msub><mo>+</mo><msub><mi>A</mi><mi>y</mi></msub><mo>=</mo><mn>0</mn>"
                + "</mrow>")).replaceFirst("^3/5", "(3/5)"));
        assertEquals("\u221a(a/b)", MathWords.of(math("<msqrt><mfrac><mi>a</mi><mi>b</mi></mfrac></msqrt>")));
    }

    private static List<String> said(MathBox box) {
        return box.marks().stream().map(mark -> ((Mark.Said) mark).text()).toList();
    }

    /** A fraction is 4/5, never 45; in brackets where it would run into what follows. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '"', value = {
        "4/5|<mfrac><mn>4</mn><mn>5</mn></mfrac>",
        "(4/5) F_AD|<mfrac><mn>4</mn><mn>5</mn></mfrac><mo>\u2062</mo><msub><mi>F</mi><mtext>AD</mtext></msub>",
        "\u2212(24/25) F_BD = 0|<mo form='prefix'>\u2212</mo><mfrac><mn>24</mn><mn>25</mn></mfrac><mo>\u2062</mo><msub><mi>F</mi>"
            + "<mtext>BD</mtext></msub><mo>=</mo><mn>0</mn>",
        "A = 473 mm^2|<mi>A</mi><mo>=</mo><mn>473</mn><mspace width='0.2em'/><msup><mi>mm</mi><mn>2</mn></msup>",
        "(567\u221a5)/20|<mfrac><mrow><mn>567</mn><msqrt><mn>5</mn></msqrt></mrow><mn>20</mn></mfrac>",
        "\u03a3F_x\u2032|<mi>\u03a3</mi><msub><mi>F</mi><msup><mi>x</mi><mo>\u2032</mo></msup></msub>",
        "(a + b)/(2 c)|<mfrac><mrow><mi>a</mi><mo>+</mo><mi>b</mi></mrow><mrow><mn>2</mn><mo>\u2062</mo><mi>c</mi></mrow></mfrac>",
    })
    void isCopiedAsItIsRead(String words, String content) {
        assertEquals(List.of(words), said(box(content)));
    }

    @Test
    void theLinesOfATableAreCopiedOneByOne() {
        String line = "<mtr><mtd><mi>%s</mi></mtd><mtd><mo>=</mo><mfrac><mn>1</mn><mn>%s</mn></mfrac></mtd></mtr>";
        assertEquals(List.of("a = 1/2", "b = 1/3"),
                said(box("<mtable>" + line.formatted("a", "2") + line.formatted("b", "3") + "</mtable>")));
        assertEquals(1, said(box("<mi>x</mi><mo>=</mo><mtable>" + line.formatted("a", "2") + "</mtable>")).size());
    }
}
