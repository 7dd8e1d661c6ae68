package kingpost.marking;

import static kingpost.units.StructuralUnits.kN;
import static kingpost.units.StructuralUnits.kip;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import kingpost.marking.Reading.Blank;
import kingpost.marking.Reading.Force;
import kingpost.marking.Reading.Said;
import kingpost.marking.Reading.Unread;
import kingpost.truss.Direction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class AnswerReaderTest {

    private final AnswerReader reader = new AnswerReader(kN, Convention.TENSION_POSITIVE);

    private Force force(String text) {
        return assertInstanceOf(Force.class, reader.member(text), text);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "12.5 kN C | -12.5", "-12.5 | -12.5", "12.5 T | 12.5", "T 12.5 | 12.5", "12.5kN (C) | -12.5", "12.5 | 12.5",
        "+12.5 | 12.5", "\u221212.5 | -12.5", "\u201312.5 kN | -12.5", "12.5 kN tension | 12.5",
        "12.5 kN in compression | -12.5", "comp. 12.5 | -12.5", "C: 12.5 kN | -12.5", "12500 N T | 12.5",
        "12.5 KN [t] | 12.5", "-12.5 C | -12.5", "1.25e1 kN C | -12.5", ".5 T | 0.5", "12. | 12", "= 12.5 kN T. | 12.5",
        "0.0125 MN C | -12.5", "12.5\u00A0kN\u00A0C | -12.5", "25/2 C | -12.5", "12.5C | -12.5", "12.5 t | 12.5",
        "\u2248 12.5 T | 12.5", "12,5 kN C | -12.5", "\u22120,125 | -0.125", "12,50 | 12.5", "T 40 | 40", "- 12.5 | -12.5", "12.5 kN compressive force | -12.5"})
    void readsForces(String text, double value) {
        assertEquals(value, force(text).value(), 1e-12, text);
    }

    @Test
    void readsSurds() {
        assertEquals(-12 * Math.sqrt(2), force("12\u221A2 kN C").value(), 1e-12);
        assertEquals(5 * Math.sqrt(3) / 2, force("5 sqrt(3)/2 T").value(), 1e-12);
        assertEquals(-Math.sqrt(13), force("-\u221A13").value(), 1e-12);
        assertEquals("", force("12\u221A2").digits());
        assertEquals(10 / Math.sqrt(3), force("10/\u221A3 T").value(), 1e-12);
        assertEquals(-2.5 * Math.sqrt(13), force("(5/2)\u221A13 kN C").value(), 1e-12);
        assertEquals(-2.5 * Math.sqrt(13), force("C 5/2*sqrt(13)").value(), 1e-12);
        assertEquals(50 / 3.0, force("16 2/3 kN T").value(), 1e-12);
    }

    @Test
    void readsOneForceInTwoForms() {
        assertEquals(-14.1, force("10\u221A2 = 14.1 kN C").value(), 1e-12);
        assertEquals(16.7, force("50/3 \u2248 16.7 T").value(), 1e-12);
        assertInstanceOf(Unread.class, reader.member("10\u221A2 = 14.2 C"));
        assertInstanceOf(Unread.class, reader.member("5 = T"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"0", "0.0", "-0", "0 kN", "zero", "Zero", "none", "NONE", "nil", "zero-force", "0 T", "0.00 kN C",
        "no force", "Zero force member", "\u22120"})
    void readsZero(String text) {
        assertTrue(force(text).isZero(), text);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "  ", "-", "\u2014", "?", "??", "\u00A0", "--"})
    void readsNothingAsBlank(String text) {
        assertInstanceOf(Blank.class, reader.member(text), text);
    }

    @ParameterizedTest
    @ValueSource(strings = {"1,250 N", "12,500", "1,250,000 N", "12,5.0", "12, 5", "n/a", "12.5 m", "12.5 kPa", "12.5 or 13", "12.5 T C", "-12.5 T", "abc", "12.5 X",
        "12.5 kN 12 T", "T", "12.5.3", "1 250 N", "12.5 lb kN", "--12.5", "12 . 5", "10-12", "12.5 kN up", "1e999", "NaN",
        "same as BC", "12.5?", "C or T 12", "5/0"})
    void refusesWhatIsNotClear(String text) {
        Unread unread = assertInstanceOf(Unread.class, reader.member(text), text);
        assertTrue(unread.reason().startsWith("\"" + text + "\": "), unread.reason());
    }

    @Test
    void saysWhyACommaIsRefused() {
        assertEquals("\"1,250\": a comma before three figures may be a decimal comma or mark thousands; write 1.25 or 1250.",
                ((Unread) reader.member("1,250")).reason());
    }

    @Test
    void keepsHowTheSenseWasSaid() {
        assertEquals(Said.WORD, force("12.5 C").said());
        assertEquals(Said.SIGN, force("-12.5").said());
        assertEquals(Said.NOTHING, force("12.5").said());
    }

    @Test
    void countsTheFiguresStated() {
        assertEquals(3, force("12.5").figures());
        assertEquals(1, force("0.05").figures());
        assertEquals(3, force("0.0500").figures());
        assertEquals(5, force("12500 N").figures());
        assertEquals(0.0005, force("12500 N").halfUnit(), 1e-15);
    }

    @Test
    void readsCustomaryUnits() {
        AnswerReader inKips = new AnswerReader(kip, Convention.TENSION_POSITIVE);
        assertEquals(-12.5, ((Force) inKips.member("12.5 k C")).value(), 1e-12);
        assertEquals(12.5, ((Force) inKips.member("12500 lb T")).value(), 1e-12);
        assertInstanceOf(Unread.class, reader.member("12.5 k C"));
    }

    @Test
    void turnsBareNumbersRoundWhereCompressionIsPositive() {
        AnswerReader turned = new AnswerReader(kN, Convention.COMPRESSION_POSITIVE);
        assertEquals(-12.5, ((Force) turned.member("12.5")).value());
        assertEquals(12.5, ((Force) turned.member("-12.5")).value());
        assertEquals(12.5, ((Force) turned.member("12.5 T")).value());
        assertEquals(12.5, ((Force) turned.member("-12.5 T")).value());
        assertInstanceOf(Unread.class, turned.member("-12.5 C"));
    }

    @Test
    void readsReactionsByTheirWay() {
        assertEquals(6, ((Force) reader.reaction("6 kN up", Direction.UP)).value());
        assertEquals(-6, ((Force) reader.reaction("6 kN \u2193", Direction.UP)).value());
        assertEquals(-4, ((Force) reader.reaction("4 left", Direction.RIGHT)).value());
        assertInstanceOf(Unread.class, reader.reaction("6 kN left", Direction.UP));
        assertInstanceOf(Unread.class, reader.reaction("6 kN T", Direction.UP));
    }
}
