package kingpost.exact;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;

/**
 * A fraction of whole numbers in lowest terms.
 *
 * @param numerator   above the line, with the sign
 * @param denominator below the line, positive, without a common factor
 */
public record Fraction(BigInteger numerator, BigInteger denominator) implements Comparable<Fraction> {

    public static final Fraction ZERO = new Fraction(BigInteger.ZERO, BigInteger.ONE);
    public static final Fraction ONE = new Fraction(BigInteger.ONE, BigInteger.ONE);

    /**
     * Brings the fraction to lowest terms.
     *
     * @throws ArithmeticException when the denominator is zero
     */
    public Fraction {
        if (denominator.signum() == 0) {
            throw new ArithmeticException("a fraction of " + numerator + " over zero");
        }
        if (!denominator.equals(BigInteger.ONE)) {
            BigInteger common = numerator.gcd(denominator);
            if (denominator.signum() < 0) {
                common = common.negate();
            }
            if (!common.equals(BigInteger.ONE)) {
                numerator = numerator.divide(common);
                denominator = denominator.divide(common);
            }
        }
    }

    public static Fraction of(long whole) {
        return of(BigInteger.valueOf(whole));
    }

    public static Fraction of(BigInteger whole) {
        return new Fraction(whole, BigInteger.ONE);
    }

    public static Fraction of(long numerator, long denominator) {
        return new Fraction(BigInteger.valueOf(numerator), BigInteger.valueOf(denominator));
    }

    /**
     * The decimal that {@code number} prints as: 0.1 is one tenth, not the binary fraction nearest to it.
     *
     * @throws ArithmeticException when {@code number} is not a number or infinite
     */
    public static Fraction ofDecimal(double number) {
        if (!Double.isFinite(number)) {
            throw new ArithmeticException("a fraction of " + number);
        }
        return ofDecimal(BigDecimal.valueOf(number));
    }

    /** The decimal itself. */
    public static Fraction ofDecimal(BigDecimal decimal) {
        return decimal.scale() <= 0
                ? of(decimal.toBigIntegerExact())
                : new Fraction(decimal.unscaledValue(), BigInteger.TEN.pow(decimal.scale()));
    }

    public Fraction plus(Fraction other) {
        if (denominator.equals(other.denominator)) {
            return new Fraction(numerator.add(other.numerator), denominator);
        }
        return new Fraction(numerator.multiply(other.denominator).add(other.numerator.multiply(denominator)),
                denominator.multiply(other.denominator));
    }

    public Fraction minus(Fraction other) {
        return plus(other.negate());
    }

    public Fraction times(Fraction other) {
        return new Fraction(numerator.multiply(other.numerator), denominator.multiply(other.denominator));
    }

    public Fraction times(long whole) {
        return times(of(whole));
    }

    /**
     * The quotient.
     *
     * @throws ArithmeticException when {@code other} is zero
     */
    public Fraction over(Fraction other) {
        return new Fraction(numerator.multiply(other.denominator), denominator.multiply(other.numerator));
    }

    public Fraction negate() {
        return new Fraction(numerator.negate(), denominator);
    }

    public Fraction abs() {
        return numerator.signum() < 0 ? negate() : this;
    }

    public Fraction squared() {
        return times(this);
    }

    public boolean isZero() {
        return numerator.signum() == 0;
    }

    public boolean isWhole() {
        return denominator.equals(BigInteger.ONE);
    }

    /** -1, 0 or 1. */
    public int signum() {
        return numerator.signum();
    }

    @Override
    public int compareTo(Fraction other) {
        return numerator.multiply(other.denominator).compareTo(other.numerator.multiply(denominator));
    }

    /** The nearest double. */
    public double doubleValue() {
        if (numerator.bitLength() <= 53 && denominator.bitLength() <= 53) {
            return numerator.doubleValue() / denominator.doubleValue();
        }
        return new BigDecimal(numerator).divide(new BigDecimal(denominator), MathContext.DECIMAL128).doubleValue();
    }

    /** As in "3/4" or "\u22122", with a real minus sign. */
    @Override
    public String toString() {
        String above = sign() + numerator.abs();
        return isWhole() ? above : above + "/" + denominator;
    }

    /** As in {@code -\frac{3}{4}}. */
    public String toLatex() {
        String minus = signum() < 0 ? "-" : "";
        return isWhole() ? minus + numerator.abs() : minus + "\\frac{" + numerator.abs() + "}{" + denominator + "}";
    }

    private String sign() {
        return signum() < 0 ? "\u2212" : "";
    }
}
