package kingpost.units;

import static kingpost.units.StructuralUnits.*;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import javax.measure.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class QuantityTest {

    private static void assertQuantity(double value, Unit<?> unit, Quantity actual) {
        assertEquals(value, actual.getValue(), Math.abs(value) * 1e-14, () -> "got " + actual);
        assertEquals(unit, actual.getUnit());
    }

    @Test
    void keepsValueAndUnitAsGiven() {
        assertQuantity(2.25, m, Quantity.of(2.25, m));
        assertEquals(0.1 + 0.2, Quantity.of(0.1 + 0.2, kN).getValue());
    }

    @Test
    void convertsWithoutRoundingNoise() {
        assertEquals(0.07, Quantity.of(70, mm).to(m).getValue());
        assertEquals(70.0, Quantity.of(0.07, m).to(mm).getValue());
        assertEquals(1.0, Quantity.of(12, in).to(ft).getValue());
        assertEquals(36000.0, Quantity.of(36, ksi).to(psi).getValue());
        assertEquals(180.0, Quantity.of(Math.PI, rad).to(deg).getValue());
    }

    @Test
    void forceOverStressIsAnArea() {
        assertQuantity(12_000.0 / 165, mm2, Quantity.of(12, kN).divide(Quantity.of(165, MPa)).to(mm2));
        assertQuantity(4, in2, Quantity.of(80, kip).divide(Quantity.of(20, ksi)));
        assertQuantity(3, m2, Quantity.of(12, kN).divide(Quantity.of(4, kN_per_m2)));
    }

    @Test
    void forceOverAreaIsAStress() {
        assertQuantity(250, MPa, Quantity.of(1000, N).divide(Quantity.of(4, mm2)));
        assertQuantity(20, ksi, Quantity.of(80, kip).divide(Quantity.of(4, in2)));
        assertQuantity(4, kN_per_m2, Quantity.of(12, kN).divide(Quantity.of(3, m2)));
    }

    @Test
    void forceTimesLengthIsAMoment() {
        assertQuantity(36, kNm, Quantity.of(12, kN).multiply(Quantity.of(3, m)));
        assertQuantity(36, kip_ft, Quantity.of(12, kip).multiply(Quantity.of(3, ft)));
    }

    @Test
    void sameKindsCancelWhateverTheirUnits() {
        assertQuantity(1.5, one, Quantity.of(3, m).divide(Quantity.of(2000, mm)));
        assertQuantity(0.6, m2, Quantity.of(3, m).multiply(Quantity.of(200, mm)));
    }

    @Test
    void loadPerAreaTimesSpacingIsLoadPerLength() {
        assertQuantity(7.5, kN_per_m, Quantity.of(2.5, kN_per_m2).multiply(Quantity.of(3, m)));
        assertQuantity(400, plf, Quantity.of(20, psf).multiply(Quantity.of(20, ft)));
    }

    @Test
    void elongationComesOutAsALength() {
        Quantity load = Quantity.of(100, kN);
        Quantity length = Quantity.of(3, m);
        Quantity stiffness = Quantity.of(200, GPa).multiply(Quantity.of(1500, mm2));
        assertEquals(1.0, load.multiply(length).divide(stiffness).in(mm), 1e-12);
    }

    @Test
    void anAngleTimesARadiusIsAnArc() {
        assertEquals(Math.PI, Quantity.of(90, deg).multiply(Quantity.of(2, m)).in(m), 1e-15);
        assertQuantity(60, deg, Quantity.of(30, deg).multiply(2));
        assertQuantity(3, one, Quantity.of(90, deg).divide(Quantity.of(30, deg)));
    }

    @Test
    void percentScalesAndVanishes() {
        assertQuantity(1, kN, Quantity.of(20, kN).multiply(Quantity.of(5, percent)));
        assertQuantity(1, kN, Quantity.of(5, percent).multiply(Quantity.of(20, kN)));
    }

    @Test
    void addsAndSubtractsInTheFirstUnit() {
        assertQuantity(3.5, m, Quantity.of(3, m).add(Quantity.of(500, mm)));
        assertQuantity(2.5, m, Quantity.of(3, m).subtract(Quantity.of(500, mm)));
    }

    @Test
    void refusesToAddAForceAndALength() {
        UnitMismatchException slip = assertThrows(UnitMismatchException.class,
                () -> Quantity.of(3, kN).add(Quantity.of(2, m)));
        assertEquals("Cannot add 3 kN and 2 m: force and length; check the units.", slip.getMessage());
        assertEquals(kN, slip.left());
        assertEquals(m, slip.right());
    }

    @Test
    void refusesToConvertAcrossKinds() {
        assertEquals("Cannot express 3 kN in MPa: force and stress or pressure; check the units.",
                assertThrows(UnitMismatchException.class, () -> Quantity.of(3, kN).to(MPa)).getMessage());
        assertThrows(UnitMismatchException.class, () -> Quantity.of(3, percent).to(deg));
        assertThrows(UnitMismatchException.class, () -> Quantity.of(3, deg).add(Quantity.of(1)));
    }

    @Test
    void aPlainNumberMayBeReadAsRadians() {
        assertEquals(45, Quantity.of(1).divide(Quantity.of(4)).multiply(Math.PI).to(deg).getValue(), 1e-13);
    }

    @Test
    void comparesAcrossUnits() {
        assertEquals(0, Quantity.of(1, m).compareTo(Quantity.of(1000, mm)));
        assertTrue(Quantity.of(1, kip).compareTo(Quantity.of(4, kN)) > 0);
        assertThrows(UnitMismatchException.class, () -> Quantity.of(1, kip).compareTo(Quantity.of(4, m)));
        assertFalse(Quantity.of(1, m).equals(Quantity.of(1000, mm)));
    }

    @Test
    void takesRootsAndPowers() {
        assertQuantity(300, mm, Quantity.of(90_000, mm2).sqrt());
        assertQuantity(8, m3, Quantity.of(2, m).pow(3));
        assertThrows(CalculationException.class, () -> Quantity.of(4, kN).sqrt());
        assertThrows(CalculationException.class, () -> Quantity.of(-4, m2).sqrt());
    }

    @Test
    void zeroHasNoSign() {
        assertEquals(1 / 0.0, 1 / Quantity.of(-0.0, kN).getValue());
        assertEquals(1 / 0.0, 1 / Quantity.of(0, kN).negate().getValue());
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
    void refusesWhatIsNoNumber(double value) {
        assertThrows(CalculationException.class, () -> Quantity.of(value, kN));
    }

    @Test
    void refusesDivisionByZero() {
        assertEquals("Cannot divide 3 kN by 0 mm²: the divisor is zero; check the value below the line.",
                assertThrows(CalculationException.class,
                        () -> Quantity.of(3, kN).divide(Quantity.of(0, mm2))).getMessage());
    }
}
