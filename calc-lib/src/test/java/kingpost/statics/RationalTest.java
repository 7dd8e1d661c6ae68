package kingpost.statics;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigInteger;
import java.util.Optional;
import kingpost.exact.Fraction;
import org.junit.jupiter.api.Test;

class RationalTest {

    private static Optional<Fraction> fraction(long numerator, long denominator) {
        return Optional.of(new Fraction(BigInteger.valueOf(numerator), BigInteger.valueOf(denominator)));
    }

    @Test
    void readsADecimalOfUpToTwelveFiguresAsWritten() {
        assertEquals(fraction(-9, 4), Rational.of(-2.25));
        assertEquals(fraction(123456789012L, 1000), Rational.of(123456789.012));
        assertEquals(Optional.empty(), Rational.of(123456789.0123));
    }

    @Test
    void readsAQuotientOfSmallNumbers() {
        assertEquals(fraction(1, 3), Rational.of(1 / 3.0));
        assertEquals(fraction(-22, 7), Rational.of(-22 / 7.0));
        assertEquals(fraction(355, 997), Rational.of(355 / 997.0));
        assertEquals(fraction(12345678901001L, 1000), Rational.of(12345678901.001));
        assertEquals(Optional.empty(), Rational.of(355 / 1009.0));
    }

    @Test
    void takesNoNumberWithoutRoomForItsFraction() {
        assertEquals(fraction(999_999_999_999_999L, 7), Rational.of(999_999_999_999_999L / 7.0));
        assertEquals(Optional.empty(), Rational.of(1_000_000_000_000_001L / 3.0));
    }

    @Test
    void takesARootForNoFraction() {
        assertEquals(Optional.empty(), Rational.of(Math.sqrt(3)));
        assertEquals(Optional.empty(), Rational.of(Math.PI));
    }
}
