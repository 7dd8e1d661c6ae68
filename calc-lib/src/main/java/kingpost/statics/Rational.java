package kingpost.statics;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.Optional;
import kingpost.exact.Fraction;

/** Reads a double as the fraction that the user meant by it. */
final class Rational {

    /** A decimal with more figures than this is a rounded root or quotient, not a number someone wrote. */
    private static final int FIGURES = 12;
    private static final int LARGEST_DENOMINATOR = 1000;

    private Rational() {
    }

    /**
     * The short decimal that the number prints as, or the fraction with a denominator up to 1000 of which it is the
     * nearest double (4.0 / 3); empty for anything else.
     */
    static Optional<Fraction> of(double number) {
        BigDecimal decimal = BigDecimal.valueOf(number).stripTrailingZeros();
        if (decimal.precision() <= FIGURES) {
            return Optional.of(Fraction.ofDecimal(decimal));
        }
        for (int q = 3; q <= LARGEST_DENOMINATOR; q++) {
            double p = Math.rint(number * q);
            if (p / q == number && Math.abs(p) < 1e15) {
                return Optional.of(new Fraction(BigInteger.valueOf((long) p), BigInteger.valueOf(q)));
            }
        }
        return Optional.empty();
    }
}
