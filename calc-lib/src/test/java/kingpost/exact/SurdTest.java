package kingpost.exact;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigInteger;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SurdTest {

    @ParameterizedTest
    @CsvSource({"8, 1, 2\u221a2", "25, 1, 5", "1, 2, \u221a2/2", "45, 16, 3\u221a5/4", "13, 1, \u221a13", "0, 1, 0",
        "9, 4, 3/2", "225, 16, 15/4", "1000000007, 1, \u221a1000000007"})
    void rootsComeOutInNormalForm(long numerator, long denominator, String text) {
        assertEquals(text, Surd.squareRoot(Fraction.of(numerator, denominator)).toString());
    }

    @Test
    void takesOutSquaresOfLargePrimes() {
        BigInteger p = BigInteger.valueOf(999_983);
        Surd root = Surd.squareRoot(Fraction.of(p.pow(2).multiply(BigInteger.valueOf(6))));
        assertEquals(BigInteger.valueOf(6), root.radicand());
        assertEquals(Fraction.of(p), root.coefficient());
    }

    @Test
    void equalityHoldsEvenWhereASquareIsTooLargeToFind() {
        BigInteger p = BigInteger.valueOf(2_147_483_647);
        BigInteger q = BigInteger.valueOf(2_147_483_629);
        Surd hidden = new Surd(Fraction.ONE, p.pow(2).multiply(q));
        Surd plain = new Surd(Fraction.of(p), q);
        assertEquals(plain, hidden);
        assertEquals(plain.hashCode(), hidden.hashCode());
    }

    @Test
    void squaringARootGivesBackTheFraction() {
        Random random = new Random(20263);
        for (int i = 0; i < 500; i++) {
            Fraction x = FractionTest.random(random).abs();
            Surd root = Surd.squareRoot(x);
            assertEquals(x, root.squared());
            assertEquals(Surd.of(x), root.times(root));
            assertEquals(Math.sqrt(x.doubleValue()), root.doubleValue(), 1e-15 * (1 + root.doubleValue()));
            for (long d = 2; d * d <= 60_000; d++) {
                assertFalse(root.radicand().mod(BigInteger.valueOf(d * d)).signum() == 0, () -> root + " holds a square");
            }
        }
    }

    @Test
    void dividesByRoots() {
        assertEquals("\u221a2/2", Surd.of(1, 1).over(Surd.of(1, 2)).toString());
        assertEquals(Surd.of(200, 2), Surd.of(400, 1).over(Surd.of(1, 2)));
        assertEquals(Surd.of(Fraction.of(3, 2)), Surd.of(3, 5).over(Surd.of(2, 5)));
        assertThrows(ArithmeticException.class, () -> Surd.of(1, 2).over(Surd.ZERO));
    }

    @Test
    void comparesBySize() {
        assertTrue(Surd.of(2, 2).compareTo(Surd.of(3, 1)) < 0);
        assertTrue(Surd.of(-2, 2).compareTo(Surd.of(-3, 1)) > 0);
        assertTrue(Surd.of(-1, 2).compareTo(Surd.ZERO) < 0);
        assertEquals(0, Surd.of(1, 8).compareTo(Surd.of(2, 2)));
    }

    @Test
    void refusesRootsOfNegativeNumbers() {
        assertThrows(ArithmeticException.class, () -> Surd.squareRoot(Fraction.of(-1)));
    }

    @Test
    void writesItselfForPeople() {
        assertEquals("\u2212200\u221a2", Surd.of(-200, 2).toString());
        assertEquals("-200\\sqrt{2}", Surd.of(-200, 2).toLatex());
        assertEquals("-\\frac{\\sqrt{5}}{4}", new Surd(Fraction.of(-1, 4), BigInteger.valueOf(5)).toLatex());
        assertEquals("\\frac{3}{2}", Surd.squareRoot(Fraction.of(9, 4)).toLatex());
        assertTrue(Surd.of(200, 2).isReadable());
        assertFalse(Surd.of(200, 1_000_003).isReadable());
    }
}
