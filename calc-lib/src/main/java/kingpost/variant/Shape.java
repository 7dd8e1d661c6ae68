package kingpost.variant;

import kingpost.exact.Fraction;

/**
 * A geometry on a truss's lattice.
 *
 * @param along    one step along, in the truss's length unit
 * @param up       one step up
 * @param mirrored whether left and right change places
 * @param surds    members whose length is no fraction
 * @param simple   whether it was made for a 3-4-5 or 5-12-13 slope
 */
record Shape(Fraction along, Fraction up, boolean mirrored, int surds, boolean simple) {

    private static final int UNCOMMON = 4;

    /** How far its measures are from whole numbers and its slope from those that everyone knows. */
    int awkward() {
        return Rationals.decimals(along) + Rationals.decimals(up) + (simple ? 0 : UNCOMMON);
    }

    /** A vector of so many steps. */
    Way way(Lattice.Place steps) {
        return new Way(along.times(mirrored ? -steps.along() : steps.along()), up.times(steps.up()));
    }

    /** A vector in the plane, in fractions. */
    record Way(Fraction x, Fraction y) {
        Way negate() {
            return new Way(x.negate(), y.negate());
        }

        /** A quarter turn counter-clockwise. */
        Way turned() {
            return new Way(y.negate(), x);
        }

        boolean isAxis() {
            return x.isZero() || y.isZero();
        }
    }
}
