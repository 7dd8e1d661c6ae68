package kingpost.units;

import static kingpost.units.StructuralUnits.*;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Random;
import javax.measure.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class EngineeringFormatTest {

    /** A value as given, its unit's name, and how it is to be written; common practice, no source. */
    @ParameterizedTest
    @CsvSource({
        "12500, N, 12.5 kN", "0.003, m, 3 mm", "12, kN, 12 kN", "-0.75, m, \u22120.75 m", "0, kN, 0 kN",
        "-0.0, kN, 0 kN", "1557.575, mm2, 1560 mm²", "0.001557575, m2, 1560 mm²", "25000, mm2, 25\u202f000 mm²",
        "33200000, mm4, 3320 cm⁴", "200000, MPa, 200 GPa", "29000, ksi, 29\u202f000 ksi", "36000, psi, 36 ksi",
        "12500, lbf, 12.5 kip", "0.05, ft, 0.6 in", "1250, plf, 1250 plf", "45000, plf, 45 kip/ft",
        "3.5, klf, 3.5 kip/ft", "2.5, kN/m2, 2.5 kN/m²", "250000, kN/m2, 250 MPa", "0.04, kN*m, 40 N·m",
        "15000, N*m, 15 kN·m", "30, deg, 30°", "5, %, 5 %", "150, pcf, 150 pcf", "7850, kg/m3, 7850 kg/m³",
        "12500, kN, 12.5 MN", "1250, kN, 1250 kN", "11.998, kN, 12.0 kN", "2.9996, kN, 3.00 kN",
        "0.1, m, 0.1 m", "0.09996, m, 0.100 m", "9999.6, N, 10.0 kN", "9994, N, 9990 N",
        "0.0004, mm, 0.0004 mm", "0.00000125, mm, 1.25×10⁻⁶ mm", "123456, m, 123 km", "4.4482216152605, N, 4.45 N"})
    void writesAsAnEngineerWould(double value, String unit, String text) {
        assertEquals(text, Quantity.of(value, UnitLabel.parse(unit)).toString());
    }

    @Test
    void roundingNoiseDoesNotShowAsZeros() {
        assertEquals("0.3 m", Quantity.of(0.1 + 0.2, m).toString());
        assertEquals("12 kN", Quantity.of(11.999999999999998, kN).toString());
    }

    @Test
    void halvesGoAwayFromZero() {
        assertEquals("1.24 kN", Quantity.of(1.235, kN).toString());
        assertEquals("\u22121.24 kN", Quantity.of(-1.235, kN).toString());
    }

    @Test
    void halvesThatACalculationMissesByTheLastBitAreHalves() {
        assertEquals("74.3 kN", Quantity.of(Math.nextDown(74.25), kN).toString());
        assertEquals("74.3 kN", Quantity.of(Math.nextUp(74.25), kN).toString());
        assertEquals("74.2 kN", Quantity.of(74.2499, kN).toString());
    }

    @Test
    void givenDataKeepsItsUnitAndFigures() {
        assertEquals("2.2375 m", EngineeringFormat.given().format(Quantity.of(2.2375, m)));
        assertEquals("12\u202f500 N", EngineeringFormat.given().format(Quantity.of(12_500, N)));
        assertEquals("0.3 m", EngineeringFormat.given().format(Quantity.of(0.1 + 0.2, m)));
    }

    @Test
    void figuresCanBeSet() {
        assertEquals("12.346 kN", EngineeringFormat.standard().withFigures(5).format(Quantity.of(12345.67, N)));
        assertEquals("1\u202f234\u202f567.8 N", EngineeringFormat.standard().withFigures(8).keepingUnits()
                .format(Quantity.of(1234567.8, N)));
        assertThrows(CalculationException.class, () -> EngineeringFormat.standard().withFigures(0));
    }

    @Test
    void digitsForProgramsArePlain() {
        EngineeringFormat format = EngineeringFormat.standard();
        assertEquals("-12500", format.digits(-12_500));
        assertEquals("12.0", format.digits(11.998));
        assertEquals("0", format.digits(-0.0));
        assertEquals("1.25e-6", format.digits(0.00000125));
        assertEquals("-4.50e12", format.digits(-4.4999e12));
    }

    @Test
    void aColumnTakesTheUnitOfItsLargest() {
        List<Quantity> column = List.of(Quantity.of(5, N), Quantity.of(-25_000, N), Quantity.of(700, N));
        assertEquals(kN, EngineeringFormat.standard().unitFor(column));
        assertEquals(one, EngineeringFormat.standard().unitFor(List.of()));
    }

    @Test
    void readingGivesBackWhatWasWritten() {
        Random random = new Random(20266);
        for (String name : UnitNames.all()) {
            Unit<?> unit = UnitNames.unit(name);
            for (int i = 0; i < 100; i++) {
                Quantity q = Quantity.of((random.nextDouble() - 0.5) * Math.pow(10, random.nextInt(16) - 6), unit);
                String text = q.toString();
                Quantity read = Quantity.parse(text);
                assertEquals(read, Quantity.parse(read.toString()), text);
                assertEquals(q.getValue(), read.in(unit), Math.abs(q.getValue()) * 0.00501, text);
                assertFalse(text.contains("-"), text);
                String given = EngineeringFormat.given().format(q);
                assertEquals(q.getValue(), Quantity.parse(given).in(unit), Math.abs(q.getValue()) * 1e-11, given);
            }
        }
    }

    @Test
    void readingGivesBackTheLabelOfEveryProduct() {
        for (Unit<?> unit : List.of(mm4, kNm, kip_ft, kip_in, klf, N_per_mm, kN_per_m2, kN_per_m3, kg_per_m3, in4, m3,
                m.divide(kN), one.divide(m), kN.divide(m.multiply(sec)), N.multiply(mm2), kg.divide(sec.pow(2)))) {
            assertEquals(unit, UnitLabel.parse(UnitLabel.of(unit)), UnitLabel.of(unit));
        }
    }
}
