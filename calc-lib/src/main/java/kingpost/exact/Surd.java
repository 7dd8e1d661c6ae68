package kingpost.exact;

import java.math.BigInteger;

/**
 * A fraction times a square root: numerator / denominator times the root of a whole number, as 200√2 or 5/3.
 *
 * @param numerator   whole number with the sign
 * @param denominator positive
 * @param radicand    positive, free of square factors; 1 for a plain fraction
 */
public record Surd(BigInteger numerator, BigInteger denominator, BigInteger radicand) {
}
