package kingpost.variant;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.Optional;
import kingpost.exact.Fraction;
import kingpost.exact.Surd;

/** Questions about fractions that clean numbers raise. */
final class Rationals {

    private static final BigInteger TWO = BigInteger.TWO;
    private static final BigInteger FIVE = BigInteger.valueOf(5);

    private Rationals() {
    }

    /** The root of {@code square} where it is a fraction itself. */
    static Optional<Fraction> root(Fraction square) {
        Surd root = Surd.squareRoot(square);
        return root.isRational() ? Optional.of(root.coefficient()) : Optional.empty();
    }

    /** The length of (x, y) where it is a fraction. */
    static Optional<Fraction> length(Fraction x, Fraction y) {
        return root(x.squared().plus(y.squared()));
    }

    /** The largest fraction of which both are whole multiples. */
    static Fraction common(Fraction a, Fraction b) {
        BigInteger denominator = a.denominator().multiply(b.denominator());
        BigInteger left = a.numerator().multiply(b.denominator());
        BigInteger right = b.numerator().multiply(a.denominator());
        return new Fraction(left.gcd(right), denominator);
    }

    /** Decimals that the fraction needs; -1 where it has no end. */
    static int decimals(Fraction value) {
        BigInteger rest = value.denominator();
        int twos = 0;
        int fives = 0;
        while (rest.mod(TWO).signum() == 0) {
            rest = rest.divide(TWO);
            twos++;
        }
        while (rest.mod(FIVE).signum() == 0) {
            rest = rest.divide(FIVE);
            fives++;
        }
        return rest.equals(BigInteger.ONE) ? Math.max(twos, fives) : -1;
    }

    static BigInteger lcm(BigInteger a, BigInteger b) {
        return a.divide(a.gcd(b)).multiply(b);
    }

    static Fraction of(String decimal) {
        return Fraction.ofDecimal(new BigDecimal(decimal));
    }
}
