package kingpost.units;

import static kingpost.units.StructuralUnits.*;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class QuantityParserTest {

    @Test
    void readsWhatPeopleType() {
        assertEquals(Quantity.of(12, kN), Quantity.parse("12kN"));
        assertEquals(Quantity.of(12, kN), Quantity.parse("  12 kN "));
        assertEquals(Quantity.of(3.5, klf), Quantity.parse("3.5 kip/ft"));
        assertEquals(Quantity.of(2, kNm), Quantity.parse("2 kN*m"));
        assertEquals(Quantity.of(2, kNm), Quantity.parse("2 kN m"));
        assertEquals(Quantity.of(2, kNm), Quantity.parse("2 kNm"));
        assertEquals(Quantity.of(2, kip_ft), Quantity.parse("2 kip-ft"));
        assertEquals(Quantity.of(2, kip_ft), Quantity.parse("2 ft-kip"));
        assertEquals(Quantity.of(-0.75, kN_per_m2), Quantity.parse("-.75 kN/m^2"));
        assertEquals(Quantity.of(-0.75, kN_per_m2), Quantity.parse("\u22120.75 kN/m²"));
        assertEquals(Quantity.of(12, in), Quantity.parse("12 in"));
        assertEquals(Quantity.of(8, in4), Quantity.parse("8 in4"));
        assertEquals(Quantity.of(30, deg), Quantity.parse("30°"));
        assertEquals(Quantity.of(30, deg), Quantity.parse("30 deg"));
        assertEquals(Quantity.of(1500, N), Quantity.parse("1.5e3 N"));
        assertEquals(Quantity.of(1.5e-7, m), Quantity.parse("1.5×10⁻⁷ m"));
        assertEquals(Quantity.of(29_000, ksi), Quantity.parse("29\u202f000 ksi"));
        assertEquals(Quantity.of(0.6), Quantity.parse("0.6"));
        assertEquals(Quantity.of(3, kN.divide(m.multiply(sec))), Quantity.parse("3 kN/(m s)"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "kN", "twelve kN", "12,5 kN", "1,250 N", "--3 m", "1.2.3 m", "NaN kN", "Infinity N"})
    void refusesWhatHasNoClearNumber(String text) {
        assertEquals("Quantity \"" + text + "\": there is no number that can be read; write it as 12 kN, 3.5 kip/ft or "
                        + "-0.75 m, with a point for decimals and no commas.",
                assertThrows(CalculationException.class, () -> Quantity.parse(text)).getMessage());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "12 KN | Unit \"KN\": there is no unit called KN; did you mean kN?",
        "12 kM | Unit \"kM\": there is no unit called kM; did you mean km?",
        "12 Mpa | Unit \"Mpa\": there is no unit called Mpa; did you mean MPa?",
        "12 kips/feet2 x | Unit \"kips/feet2 x\": there is no unit called x; known are",
        "12 kipp | Unit \"kipp\": there is no unit called kipp; did you mean kip or kips?",
        "12 kN/ | Unit \"kN/\": cannot be read at \"\"; write units as kN, kN/m^2, mm^4 or kip*ft.",
        "12 kN/(m | Unit \"kN/(m\": cannot be read at \"\"; write units as kN, kN/m^2, mm^4 or kip*ft.",
        "12 kN) | Unit \"kN)\": cannot be read at \")\"; write units as kN, kN/m^2, mm^4 or kip*ft.",
        "12 m$ | Unit \"m$\": cannot be read at \"$\"; write units as kN, kN/m^2, mm^4 or kip*ft."})
    void saysWhatIsWrongWithTheUnit(String text, String message) {
        String said = assertThrows(CalculationException.class, () -> Quantity.parse(text)).getMessage();
        assertEquals(message, said.replaceFirst("known are .*", "known are"));
    }

    @Test
    void listsTheUnitsWhenNoneIsNear() {
        String said = assertThrows(CalculationException.class, () -> Quantity.parse("3 furlong")).getMessage();
        assertTrue(said.startsWith("Unit \"furlong\": there is no unit called furlong; known are m, mm, cm, km, in,"),
                said);
    }

    @Test
    void hugeNumbersAreRefusedNotInfinite() {
        assertThrows(CalculationException.class, () -> Quantity.parse("1e999 kN"));
    }
}
