package kingpost.moving;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.List;
import java.util.Optional;
import kingpost.exact.Fraction;
import kingpost.exact.Surd;
import kingpost.moving.InfluenceLine.Ordinate;

/**
 * An influence line in fractions: every ordinate of one effect is a fraction times the same root, the member's length.
 *
 * @param root    under the root
 * @param places  of the joints
 * @param heights ordinates over the root
 */
record ExactSum(BigInteger root, List<Fraction> places, List<Fraction> heights) {

    private static final int FIGURES = 12;

    static Optional<ExactSum> of(InfluenceLine line) {
        BigInteger root = BigInteger.ONE;
        for (Ordinate ordinate : line.ordinates()) {
            if (ordinate.exact().isEmpty() || fraction(ordinate.x()).isEmpty()) {
                return Optional.empty();
            }
            root = ordinate.exact().get().isZero() ? root : ordinate.exact().get().radicand();
        }
        for (Ordinate ordinate : line.ordinates()) {
            if (!ordinate.exact().get().isZero() && !ordinate.exact().get().radicand().equals(root)) {
                return Optional.empty();
            }
        }
        return Optional.of(new ExactSum(root, line.ordinates().stream().map(o -> fraction(o.x()).get()).toList(),
                line.ordinates().stream().map(o -> o.exact().get().coefficient()).toList()));
    }

    /** The short decimal that a number prints as, or nothing for one that came from a calculation. */
    static Optional<Fraction> fraction(double number) {
        BigDecimal decimal = BigDecimal.valueOf(number).stripTrailingZeros();
        return decimal.precision() <= FIGURES ? Optional.of(Fraction.ofDecimal(decimal)) : Optional.empty();
    }

    /** Ordinate over the root at a place on the chord. */
    Fraction at(Fraction x) {
        int next = 1;
        while (next < places.size() - 1 && places.get(next).compareTo(x) < 0) {
            next++;
        }
        Fraction part = x.minus(places.get(next - 1)).over(places.get(next).minus(places.get(next - 1)));
        return heights.get(next - 1).plus(heights.get(next).minus(heights.get(next - 1)).times(part));
    }

    Surd surd(Fraction sum) {
        return new Surd(sum, root);
    }
}
