package kingpost.explain;

import java.math.BigInteger;
import java.util.Optional;

import kingpost.derivation.Expression;
import kingpost.derivation.Expressions;
import kingpost.exact.Fraction;
import kingpost.statics.Vector;
import kingpost.units.EngineeringFormat;

/**
 * What share of a force acts along an axis, as one writes it: nothing where it is whole, a fraction where the slope
 * triangle has a whole-numbered hypotenuse, else the cosine or sine of an angle.
 *
 * @param fraction its size, where that is a simple fraction
 * @param degrees  acute angle between the force and the first axis
 * @param first    whether this is the share along the first axis (its cosine) or across it (its sine)
 * @param plain    whether its number stands in the equation at once, as in space, where a table tells it
 */
record Cosine(Optional<Fraction> fraction, double degrees, boolean first, boolean plain) {

    private static final BigInteger LARGEST = BigInteger.valueOf(150);
    private static final EngineeringFormat ANGLE = EngineeringFormat.standard().keepingUnits().withFigures(4);
    /** A sine smaller than this is rounding of the coordinates: thirds of a span, say. */
    private static final double ROUNDING = 1e-9;

    /**
     * @param force direction of the force, in numbers that may be exact
     * @param axis  direction of the axis, likewise
     * @param first whether the axis is the first of its pair
     */
    static Cosine of(Vector force, Vector axis, boolean first) {
        double along = Math.abs(force.dot(axis));
        double across = force.cross(axis).norm();
        double degrees = first ? Math.toDegrees(Math.atan2(across, along)) : Math.toDegrees(Math.atan2(along, across));
        boolean inLine = across <= ROUNDING * along;
        return new Cosine(inLine ? Optional.of(Fraction.ONE) : fraction(force, axis), degrees, first, false);
    }

    /** In space: a fraction where it is a simple one, else a decimal. */
    static Cosine inSpace(Vector force, Vector axis) {
        Cosine cosine = of(force, axis, true);
        return new Cosine(cosine.fraction, cosine.degrees, true, true);
    }

    boolean isWhole() {
        return fraction.isPresent() && fraction.get().equals(Fraction.ONE);
    }

    /** Whether the symbols hide a number: a cosine or sine still to be put in. */
    boolean isTrigonometric() {
        return fraction.isEmpty() && !plain;
    }

    /** With the slope's fraction or the angle. */
    Expression symbolic() {
        return plain ? numeric() : fraction.<Expression>map(Cosine::fraction).orElseGet(() -> first
                ? Expressions.cos(angle(degrees)) : Expressions.sin(angle(degrees)));
    }

    /** With the slope's fraction or a decimal. */
    Expression numeric() {
        double radians = Math.toRadians(degrees);
        return fraction.<Expression>map(Cosine::fraction)
                .orElseGet(() -> Notation.four(first ? Math.cos(radians) : Math.sin(radians)));
    }

    /** An angle to four significant figures. */
    static Expression angle(double degrees) {
        return Expressions.amount(ANGLE.digits(degrees), "°");
    }

    /** The share of {@code force} along {@code axis}, without its sign, if it is a fraction worth writing. */
    static Optional<Fraction> fraction(Vector force, Vector axis) {
        Fraction dot = product(force, axis).abs();
        Fraction squares = product(force, force).times(product(axis, axis));
        return root(squares).map(dot::over).filter(f -> f.denominator().compareTo(LARGEST) <= 0);
    }

    private static Fraction product(Vector a, Vector b) {
        return Fraction.ofDecimal(a.x()).times(Fraction.ofDecimal(b.x()))
                .plus(Fraction.ofDecimal(a.y()).times(Fraction.ofDecimal(b.y())))
                .plus(Fraction.ofDecimal(a.z()).times(Fraction.ofDecimal(b.z())));
    }

    private static Optional<Fraction> root(Fraction square) {
        BigInteger[] above = square.numerator().sqrtAndRemainder();
        BigInteger[] below = square.denominator().sqrtAndRemainder();
        boolean whole = above[1].signum() == 0 && below[1].signum() == 0 && above[0].signum() != 0;
        return whole ? Optional.of(new Fraction(above[0], below[0])) : Optional.empty();
    }

    private static Expression fraction(Fraction fraction) {
        Expression above = Expressions.number(fraction.numerator().toString());
        return fraction.denominator().equals(BigInteger.ONE) ? above
                : Expressions.fraction(above, Expressions.number(fraction.denominator().toString()));
    }
}
