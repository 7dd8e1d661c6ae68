package kingpost.units;

import java.util.Optional;
import javax.measure.Unit;

/**
 * A number with its unit: 12 kN, 2.25 m, 165 MPa.
 *
 * <p><b>Units</b>: the value is a double in the unit given; nothing is rounded. A conversion reads the value as the
 * decimal that it prints as and uses exact factors, so 70 mm is 0.07 m and 12 in is 1 ft, to the last digit.
 *
 * <p>The kind of quantity is checked when the program runs, not by the compiler, so that a cell reads without type
 * tokens: {@code s.force("AB").divide(MPa(165)).to(mm2)}. Never NaN or infinite.
 */
public final class Quantity implements Comparable<Quantity> {

    private final double value;
    private final Unit<?> unit;

    private Quantity(double value, Unit<?> unit) {
        this.value = value == 0 ? 0.0 : value;
        this.unit = unit;
    }

    /**
     * {@code value} of {@code unit}.
     *
     * @throws CalculationException when the value is not a number or is infinite, or the unit's scale does not start
     *                              at zero (degrees Celsius)
     */
    public static Quantity of(double value, Unit<?> unit) {
        UnitFactor.of(unit);
        if (!Double.isFinite(value)) {
            String label = UnitLabel.of(unit);
            throw new CalculationException("Quantity" + (label.isEmpty() ? "" : " in " + label) + ": the value is "
                    + (Double.isNaN(value) ? "not a number" : "infinite")
                    + "; look for a division by zero or a missing value.");
        }
        return new Quantity(value, unit);
    }

    /** {@code value} as a plain number. */
    public static Quantity of(double value) {
        return of(value, StructuralUnits.one);
    }

    /**
     * The quantity that {@code text} says: {@code "12 kN"}, {@code "3.5 kip/ft"}, {@code "30 deg"}.
     *
     * @throws CalculationException when the number or the unit cannot be read
     */
    public static Quantity parse(String text) {
        return QuantityParser.parse(text);
    }

    /** The number of units. */
    public Double getValue() {
        return value;
    }

    /** The unit that the value is in. */
    public Unit<?> getUnit() {
        return unit;
    }

    /** What it measures, in words: "force", "length", "stress or pressure", "plain number". */
    public String kind() {
        return DimensionName.of(unit);
    }

    /**
     * The number of {@code target} units that this quantity is.
     *
     * @throws UnitMismatchException when {@code target} measures something else
     */
    public double in(Unit<?> target) {
        if (target == null) {
            throw new CalculationException("Cannot express " + this + " in another unit: the unit is missing; give one,"
                    + " as in .to(kN).");
        }
        if (!isConvertible(target)) {
            throw UnitMismatchException.converting(this, target);
        }
        return UnitFactor.convert(value, unit, target);
    }

    /**
     * This quantity in another unit. A plain number may be read as an angle in radians, and back.
     *
     * @throws UnitMismatchException when {@code target} measures something else
     */
    public Quantity to(Unit<?> target) {
        return of(in(target), target);
    }

    /** True when {@code other} measures the same kind of thing, so that quantities in it can be added to this one. */
    public boolean isCompatible(Unit<?> other) {
        return unit.getDimension().equals(other.getDimension())
                && DimensionName.isAngle(unit) == DimensionName.isAngle(other);
    }

    /**
     * The sum, in this quantity's unit.
     *
     * @throws UnitMismatchException when the two are of different kinds
     */
    public Quantity add(Quantity other) {
        requireSameKind("add", "and", other);
        return of(value + other.in(unit), unit);
    }

    /**
     * The difference, in this quantity's unit.
     *
     * @throws UnitMismatchException when the two are of different kinds
     */
    public Quantity subtract(Quantity other) {
        requirePresent("subtract", "from", other);
        if (!isCompatible(other.unit)) {
            throw UnitMismatchException.between("subtract", "from", other, this);
        }
        return of(value - other.in(unit), unit);
    }

    /** The product, in a unit made of both: kN times m is kN·m, an angle times a length is a length (an arc). */
    public Quantity multiply(Quantity other) {
        requirePresent("multiply", "by", other);
        return converted(value * other.value, unit.multiply(other.unit), UnitAlgebra.product(unit, other.unit));
    }

    /** This quantity {@code factor} times. */
    public Quantity multiply(double factor) {
        return of(value * factor, unit);
    }

    /**
     * The quotient, in a unit made of both: kN over MPa is an area, kN over kN a plain number.
     *
     * @throws CalculationException when {@code other} is zero
     */
    public Quantity divide(Quantity other) {
        requirePresent("divide", "by", other);
        if (other.value == 0) {
            throw divisionByZero(other.toString());
        }
        return converted(value / other.value, unit.divide(other.unit), UnitAlgebra.quotient(unit, other.unit));
    }

    /**
     * One {@code divisor}-th of this quantity.
     *
     * @throws CalculationException when {@code divisor} is zero
     */
    public Quantity divide(double divisor) {
        if (divisor == 0) {
            throw divisionByZero("0");
        }
        return of(value / divisor, unit);
    }

    /** The opposite. */
    public Quantity negate() {
        return of(-value, unit);
    }

    /** The size without the sign. */
    public Quantity abs() {
        return of(Math.abs(value), unit);
    }

    /** This quantity multiplied by itself {@code exponent} times; zero gives the plain number 1. */
    public Quantity pow(int exponent) {
        if (exponent < 0 && value == 0) {
            throw new CalculationException("Cannot raise " + this + " to the power \u2212" + -(long) exponent
                    + ": it is zero; check the value.");
        }
        return converted(Math.pow(value, exponent), unit.pow(exponent), UnitAlgebra.power(unit, exponent));
    }

    /**
     * The square root: of an area a length.
     *
     * @throws CalculationException when the quantity is negative, or its unit is not the square of a unit
     */
    public Quantity sqrt() {
        if (value < 0) {
            throw new CalculationException("Cannot take the square root of " + this + ": it is negative; check the "
                    + "signs.");
        }
        return root(2).orElseThrow(() -> new CalculationException("Cannot take the square root of " + this + ": "
                + DimensionName.of(unit) + " is not the square of anything; check the units."));
    }

    /**
     * What gives this quantity when it is multiplied by itself so often: of a volume and 3, a length. Empty where its
     * unit is no such power, or it is negative.
     */
    public Optional<Quantity> root(int degree) {
        Unit<?> root = UnitAlgebra.root(unit, degree);
        if (root == null || value < 0) {
            return Optional.empty();
        }
        double inRoots = UnitFactor.convert(value, unit, root.pow(degree));
        return Optional.of(of(degree == 2 ? Math.sqrt(inRoots) : degree == 3 ? Math.cbrt(inRoots)
                : Math.pow(inRoots, 1.0 / degree), root));
    }

    /**
     * Compares by size, whatever the units.
     *
     * @throws UnitMismatchException when the two are of different kinds
     */
    @Override
    public int compareTo(Quantity other) {
        requireSameKind("compare", "with", other);
        return Double.compare(value, other.in(unit));
    }

    /** The same number of the same unit; {@code compareTo} is the one that sees 1 m and 1000 mm as equal. */
    @Override
    public boolean equals(Object other) {
        return other instanceof Quantity that && value == that.value && unit.equals(that.unit);
    }

    @Override
    public int hashCode() {
        return 31 * Double.hashCode(value) + unit.hashCode();
    }

    /** In engineering format: three significant figures and a unit that an engineer would choose. */
    @Override
    public String toString() {
        return EngineeringFormat.standard().format(this);
    }

    private boolean isConvertible(Unit<?> target) {
        boolean radians = unit.equals(StructuralUnits.one) && DimensionName.isAngle(target)
                || target.equals(StructuralUnits.one) && DimensionName.isAngle(unit);
        return radians || isCompatible(target);
    }

    private static Quantity converted(double value, Unit<?> from, Unit<?> to) {
        of(value, to);
        return of(UnitFactor.convert(value, from, to), to);
    }

    private void requirePresent(String verb, String joint, Quantity other) {
        if (other == null) {
            boolean first = verb.equals("subtract");
            throw new CalculationException("Cannot " + verb + " " + (first ? "anything" : this) + " " + joint + " "
                    + (first ? this : "anything") + ": the second quantity is missing; give one, as in kN(12).");
        }
    }

    private void requireSameKind(String verb, String joint, Quantity other) {
        requirePresent(verb, joint, other);
        if (!isCompatible(other.unit)) {
            throw UnitMismatchException.between(verb, joint, this, other);
        }
    }

    private CalculationException divisionByZero(String divisor) {
        return new CalculationException("Cannot divide " + this + " by " + divisor
                + ": the divisor is zero; check the value below the line.");
    }
}
