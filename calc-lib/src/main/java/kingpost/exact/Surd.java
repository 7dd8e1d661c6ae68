package kingpost.exact;

import java.math.BigInteger;
import java.util.Objects;

/**
 * A fraction times the square root of a whole number: 200\u221a2, 3\u221a5/4, or a plain fraction when the root is 1.
 *
 * <p>Normal form: no square divides the radicand, so that equal numbers have equal parts. Squares of primes above
 * a million in a radicand above 10^18 are not looked for; equality compares values and is right even there.
 *
 * @param coefficient the fraction, with the sign
 * @param radicand    the positive whole number under the root; 1 when the coefficient is zero
 */
public record Surd(Fraction coefficient, BigInteger radicand) implements Comparable<Surd> {

    public static final Surd ZERO = new Surd(Fraction.ZERO, BigInteger.ONE);

    private static final int READABLE_BITS = 14;

    /**
     * Takes squares out from under the root.
     *
     * @throws ArithmeticException when the radicand is not positive
     */
    public Surd {
        if (radicand.signum() <= 0) {
            throw new ArithmeticException("the square root of " + radicand + " in a surd");
        }
        if (coefficient.isZero()) {
            radicand = BigInteger.ONE;
        } else if (!radicand.equals(BigInteger.ONE)) {
            SquareFactor squares = SquareFactor.of(radicand);
            coefficient = coefficient.times(Fraction.of(squares.root()));
            radicand = squares.rest();
        }
    }

    /** The fraction itself. */
    public static Surd of(Fraction fraction) {
        return new Surd(fraction, BigInteger.ONE);
    }

    public static Surd of(long coefficient, long radicand) {
        return new Surd(Fraction.of(coefficient), BigInteger.valueOf(radicand));
    }

    /**
     * The square root of a fraction.
     *
     * @throws ArithmeticException when the fraction is negative
     */
    public static Surd squareRoot(Fraction square) {
        if (square.isZero()) {
            return ZERO;
        }
        return new Surd(new Fraction(BigInteger.ONE, square.denominator()),
                square.numerator().multiply(square.denominator()));
    }

    public Surd times(Fraction factor) {
        return new Surd(coefficient.times(factor), radicand);
    }

    public Surd times(Surd other) {
        return new Surd(coefficient.times(other.coefficient), radicand.multiply(other.radicand));
    }

    /**
     * The quotient.
     *
     * @throws ArithmeticException when {@code other} is zero
     */
    public Surd over(Surd other) {
        Fraction scale = coefficient.over(other.coefficient.times(Fraction.of(other.radicand)));
        return new Surd(scale, radicand.multiply(other.radicand));
    }

    public Surd negate() {
        return new Surd(coefficient.negate(), radicand);
    }

    public Surd abs() {
        return new Surd(coefficient.abs(), radicand);
    }

    /** The square, always a fraction. */
    public Fraction squared() {
        return coefficient.squared().times(Fraction.of(radicand));
    }

    public boolean isRational() {
        return radicand.equals(BigInteger.ONE);
    }

    public boolean isZero() {
        return coefficient.isZero();
    }

    /** -1, 0 or 1. */
    public int signum() {
        return coefficient.signum();
    }

    /** The nearest double, or the one next to it. */
    public double doubleValue() {
        return coefficient.doubleValue() * Math.sqrt(radicand.doubleValue());
    }

    /** True when its whole numbers are short enough that a person gains by reading it: each below 16,384. */
    public boolean isReadable() {
        return coefficient.numerator().bitLength() <= READABLE_BITS
                && coefficient.denominator().bitLength() <= READABLE_BITS
                && radicand.bitLength() <= READABLE_BITS;
    }

    @Override
    public int compareTo(Surd other) {
        if (signum() != other.signum()) {
            return Integer.compare(signum(), other.signum());
        }
        return signum() * squared().compareTo(other.squared());
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Surd that && compareTo(that) == 0;
    }

    @Override
    public int hashCode() {
        return Objects.hash(signum(), squared());
    }

    /** As in "200\u221a2" or "\u22123\u221a5/4", with a real minus sign. */
    @Override
    public String toString() {
        if (isRational()) {
            return coefficient.toString();
        }
        String below = coefficient.isWhole() ? "" : "/" + coefficient.denominator();
        return (signum() < 0 ? "\u2212" : "") + factor() + "\u221a" + radicand + below;
    }

    /** As in {@code 200\sqrt{2}} or {@code -\frac{3\sqrt{5}}{4}}. */
    public String toLatex() {
        if (isRational()) {
            return coefficient.toLatex();
        }
        String above = factor() + "\\sqrt{" + radicand + "}";
        return (signum() < 0 ? "-" : "")
                + (coefficient.isWhole() ? above : "\\frac{" + above + "}{" + coefficient.denominator() + "}");
    }

    private String factor() {
        BigInteger size = coefficient.numerator().abs();
        return size.equals(BigInteger.ONE) ? "" : size.toString();
    }
}
