package kingpost.variant;

import kingpost.exact.Fraction;

/**
 * A geometry on a truss's lattice.
 *
 * @param along    one step along, in the truss's length unit
 * @param up       one step up
 * @param mirrored whether left and right change places
 * @param surds    members whose length is no fraction
 */
record Shape(Fraction along, Fraction up, boolean mirrored, int surds) {

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
