package kingpost.units;

import javax.measure.Unit;

/** Two units that do not go together: a force added to a length, a stress asked for in metres. */
public final class UnitMismatchException extends CalculationException {

    private static final long serialVersionUID = 1L;

    private final transient Unit<?> left;
    private final transient Unit<?> right;

    private UnitMismatchException(String message, Unit<?> left, Unit<?> right) {
        super(message);
        this.left = left;
        this.right = right;
    }

    /** The operation {@code verb} ("add", joined by "and") between two quantities of different kinds. */
    static UnitMismatchException between(String verb, String joint, Quantity left, Quantity right) {
        return of("Cannot " + verb + " " + left + " " + joint + " " + right, left.getUnit(), right.getUnit());
    }

    /** A conversion of {@code quantity} to a unit of another kind. */
    static UnitMismatchException converting(Quantity quantity, Unit<?> target) {
        return of("Cannot express " + quantity + " in " + UnitLabel.of(target), quantity.getUnit(), target);
    }

    private static UnitMismatchException of(String what, Unit<?> left, Unit<?> right) {
        return new UnitMismatchException(what + ": " + DimensionName.of(left) + " and " + DimensionName.of(right)
                + "; check the units.", left, right);
    }

    /** The same slip, with the place where it happened said first: {@code "A_req: Cannot add ..."}. */
    public UnitMismatchException at(String place) {
        UnitMismatchException placed = new UnitMismatchException(place + ": " + getMessage(), left, right);
        placed.initCause(this);
        return placed;
    }

    /** The unit of the first quantity. */
    public Unit<?> left() {
        return left;
    }

    /** The unit of the second quantity, or the unit asked for. */
    public Unit<?> right() {
        return right;
    }
}
