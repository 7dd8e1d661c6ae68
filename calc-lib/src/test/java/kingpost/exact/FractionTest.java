package kingpost.exact;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigInteger;
import java.util.Random;
import org.junit.jupiter.api.Test;

class FractionTest {

    static Fraction random(Random random) {
        return Fraction.of(random.nextInt(2001) - 1000, 1 + random.nextInt(60));
    }

    @Test
    void standsInLowestTermsWithThePlusBelow() {
        assertEquals(Fraction.of(3, 4), Fraction.of(-9, -12));
        assertEquals("\u22123/4", Fraction.of(9, -12).toString());
        assertEquals(Fraction.ZERO, Fraction.of(0, -7));
        assertEquals(BigInteger.ONE, Fraction.of(0, -7).denominator());
    }

    @Test
    void readsDecimalsAsPrinted() {
        assertEquals(Fraction.of(1, 10), Fraction.ofDecimal(0.1));
        assertEquals(Fraction.of(-9, 4), Fraction.ofDecimal(-2.25));
        assertEquals(Fraction.of(1_200_000), Fraction.ofDecimal(1.2e6));
        assertEquals(new Fraction(BigInteger.valueOf(15), BigInteger.TEN.pow(21)), Fraction.ofDecimal(1.5e-20));
        assertEquals(Fraction.of(BigInteger.TEN.pow(300)), Fraction.ofDecimal(1e300));
    }

    @Test
    void refusesZeroBelowTheLine() {
        assertThrows(ArithmeticException.class, () -> Fraction.of(1, 0));
        assertThrows(ArithmeticException.class, () -> Fraction.ONE.over(Fraction.ZERO));
        assertThrows(ArithmeticException.class, () -> Fraction.ofDecimal(Double.NaN));
    }

    @Test
    void obeysTheLawsOfAField() {
        Random random = new Random(20261);
        for (int i = 0; i < 500; i++) {
            Fraction a = random(random);
            Fraction b = random(random);
            Fraction c = random(random);
            assertEquals(a.plus(b).plus(c), a.plus(b.plus(c)));
            assertEquals(a.times(b.plus(c)), a.times(b).plus(a.times(c)));
            assertEquals(Fraction.ZERO, a.minus(a));
            if (!b.isZero()) {
                assertEquals(a, a.over(b).times(b));
            }
            assertEquals(a.minus(b).signum(), a.compareTo(b));
            assertEquals(a.hashCode(), a.plus(b).minus(b).hashCode());
        }
    }

    @Test
    void roundTripsEveryDouble() {
        Random random = new Random(20262);
        for (int i = 0; i < 500; i++) {
            double x = (random.nextDouble() - 0.5) * Math.pow(10, random.nextInt(40) - 20);
            assertEquals(x, Fraction.ofDecimal(x).doubleValue());
        }
    }

    @Test
    void longFractionsBecomeTheNearestDouble() {
        BigInteger big = BigInteger.TEN.pow(400);
        assertEquals(1 / 3.0, new Fraction(big, big.multiply(BigInteger.valueOf(3))).doubleValue());
        Fraction huge = new Fraction(big.add(BigInteger.ONE), BigInteger.TEN.pow(399));
        assertEquals(10.0, huge.doubleValue());
        assertTrue(huge.compareTo(Fraction.of(10)) > 0);
    }

    @Test
    void writesItselfForPeople() {
        assertEquals("3/4", Fraction.of(3, 4).toString());
        assertEquals("\u22122", Fraction.of(-2).toString());
        assertEquals("-\\frac{3}{4}", Fraction.of(-3, 4).toLatex());
        assertEquals("7", Fraction.of(7).toLatex());
    }
}
