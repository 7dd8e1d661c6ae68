package kingpost.marking;

import kingpost.statics.Vector;

/** What an equation of equilibrium takes of each force: its part along an axis, or its moment about a point. */
sealed interface Measure {

    Measure X = new Along(Vector.X);
    Measure Y = new Along(Vector.Y);

    /** Coefficient of a force of that place and direction. */
    double of(Acting force);

    /**
     * The coefficient when the sine and the cosine of the force's angle change places and the signs stay; the same as
     * {@code of} for a force along an axis.
     */
    double swapped(Acting force);

    /** The part along {@code axis}, a unit vector in the plane. */
    record Along(Vector axis) implements Measure {
        @Override
        public double of(Acting force) {
            return force.along().dot(axis);
        }

        @Override
        public double swapped(Acting force) {
            Vector across = new Vector(-axis.y(), axis.x(), 0);
            return swap(of(force), force.along().dot(across));
        }
    }

    /** The moment about {@code point}, counter-clockwise. */
    record About(Vector point) implements Measure {
        @Override
        public double of(Acting force) {
            return force.at().minus(point).cross(force.along()).z();
        }

        @Override
        public double swapped(Acting force) {
            Vector along = force.along();
            Vector turned = new Vector(swap(along.x(), along.y()), swap(along.y(), along.x()), 0);
            return force.at().minus(point).cross(turned).z();
        }
    }

    private static double swap(double here, double there) {
        boolean inclined = Math.abs(here) > 1e-9 && Math.abs(there) > 1e-9;
        return inclined ? Math.copySign(Math.abs(there), here) : here;
    }
}
