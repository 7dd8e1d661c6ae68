package kingpost.units;

import static kingpost.units.StructuralUnits.*;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.stream.Stream;
import javax.measure.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class StructuralUnitsTest {

    /**
     * Factors as printed in NIST Special Publication 811 (2008), Appendix B.8 and B.9.
     */
    private static Stream<Arguments> printedInNistSp811() {
        return Stream.of(
                Arguments.of(in, m, "0.0254"),
                Arguments.of(ft, m, "0.3048"),
                Arguments.of(yd, m, "0.9144"),
                Arguments.of(lb, kg, "0.4535924"),
                Arguments.of(lbf, N, "4.448222"),
                Arguments.of(kip, N, "4448.222"),
                Arguments.of(psi, Pa, "6894.757"));
    }

    @ParameterizedTest
    @MethodSource("printedInNistSp811")
    void roundsToThePrintedFactor(Unit<?> unit, Unit<?> si, String printed) {
        BigDecimal factor = BigDecimal.valueOf(Quantity.of(1, unit).in(si));
        BigDecimal published = new BigDecimal(printed);
        assertEquals(0, published.compareTo(factor.round(new MathContext(published.precision()))), factor::toString);
    }

    /**
     * Exact or many-figured factors, worked out in decimals from the exact values in the footnotes of NIST Special
     * Publication 811 (2008): pound 0.45359237 kg, standard gravity 9.80665 m/s^2, inch 0.0254 m.
     */
    private static Stream<Arguments> derivedFromNistSp811() {
        return Stream.of(
                Arguments.of(lb, kg, 0.45359237),
                Arguments.of(lbf, N, 4.4482216152605),
                Arguments.of(kip, N, 4448.2216152605),
                Arguments.of(psi, Pa, 6894.75729316836133672267),
                Arguments.of(ksi, Pa, 6894757.29316836133672),
                Arguments.of(plf, N_per_m, 14.5939029372063648),
                Arguments.of(klf, N_per_m, 14593.9029372063648),
                Arguments.of(lbf_ft, Nm, 1.3558179483314004),
                Arguments.of(kip_ft, Nm, 1355.8179483314004),
                Arguments.of(psf, Pa, 47.8802589803358426),
                Arguments.of(ksf, Pa, 47880.2589803358426),
                Arguments.of(in2, mm2, 25.4 * 25.4),
                Arguments.of(in3, mm3, 16387.064),
                Arguments.of(in4, mm4, 416231.4256),
                Arguments.of(ft2, m2, 0.09290304),
                Arguments.of(ft3, m3, 0.028316846592),
                Arguments.of(pcf, N.divide(m3), 157.087463846 /* lbf over ft3, to the figures written */));
    }

    @ParameterizedTest
    @MethodSource("derivedFromNistSp811")
    void agreesWithTheExactValues(Unit<?> unit, Unit<?> si, double factor) {
        double tolerance = unit.equals(pcf) ? 1e-9 : 1e-15;
        assertEquals(factor, Quantity.of(1, unit).in(si), factor * tolerance);
    }

    /** The SI prefixes; NIST Special Publication 811 (2008), section 4.4. */
    @Test
    void metricUnitsArePowersOfTen() {
        assertEquals(1000, Quantity.of(1, km).in(m));
        assertEquals(1000, Quantity.of(1, m).in(mm));
        assertEquals(100, Quantity.of(1, m).in(cm));
        assertEquals(1000, Quantity.of(1, kN).in(N));
        assertEquals(1000, Quantity.of(1, MN).in(kN));
        assertEquals(1000, Quantity.of(1, GPa).in(MPa));
        assertEquals(1, Quantity.of(1, MPa).in(N.divide(mm2)));
        assertEquals(1, Quantity.of(1, kPa).in(kN_per_m2));
        assertEquals(1, Quantity.of(1, N_per_mm).in(kN_per_m));
        assertEquals(1e4, Quantity.of(1, cm4).in(mm4));
        assertEquals(1e3, Quantity.of(1, cm3).in(mm3));
        assertEquals(1e6, Quantity.of(1, m2).in(mm2));
        assertEquals(1000, Quantity.of(1, t).in(kg));
    }

    @Test
    void halfATurnIsPi() {
        assertEquals(Math.PI, Quantity.of(180, deg).in(rad));
        assertEquals(1, Quantity.of(100, percent).in(one));
    }

    @Test
    void conversionAndBackGivesTheSameNumber() {
        java.util.Random random = new java.util.Random(20267);
        Unit<?>[][] pairs = {{in, mm}, {kip, kN}, {ksi, MPa}, {ft, m}, {klf, kN_per_m}, {kip_ft, kNm}, {deg, rad},
            {in4, cm4}, {psf, kN_per_m2}};
        for (Unit<?>[] pair : pairs) {
            for (int i = 0; i < 100; i++) {
                double x = random.nextDouble() * Math.pow(10, random.nextInt(9) - 4);
                assertEquals(x, Quantity.of(x, pair[0]).to(pair[1]).in(pair[0]), x * 3e-16);
            }
        }
    }
}
