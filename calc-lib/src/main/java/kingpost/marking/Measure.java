package kingpost.marking;

import java.util.List;
import kingpost.statics.Vector;

/** What an equation of equilibrium takes of each force: its part along an axis, or its moment. */
sealed interface Measure {

    Measure X = new Along(Vector.X);
    Measure Y = new Along(Vector.Y);
    Measure Z = new Along(Vector.Z);

    /** Coefficient of a force of that place and direction. */
    double of(Acting force);

    /**
     * The coefficient when the sine and the cosine of the force's angle in the plane change places and the signs stay;
     * the same as {@code of} for a force along an axis, and for one that leaves the plane.
     */
    double swapped(Acting force);

    /** The part along {@code axis}, a unit vector. */
    record Along(Vector axis) implements Measure {
        @Override
        public double of(Acting force) {
            return force.along().dot(axis);
        }

        @Override
        public double swapped(Acting force) {
            if (leavesThePlane(force.along()) || leavesThePlane(axis)) {
                return of(force);
            }
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

    /** In space: the moment about the line through {@code point} along {@code axis}, by the right-hand rule. */
    record AboutLine(Vector point, Vector axis) implements Measure {
        @Override
        public double of(Acting force) {
            return force.at().minus(point).cross(force.along()).dot(axis);
        }

        @Override
        public double swapped(Acting force) {
            return of(force);
        }
    }

    /** A measure of the forces on one of several bodies that are worked together; nothing of forces on the others. */
    record On(List<Acting> body, Measure measure) implements Measure {
        public On {
            body = List.copyOf(body);
        }

        @Override
        public double of(Acting force) {
            return body.stream().filter(force::isSameSource).mapToDouble(measure::of).sum();
        }

        @Override
        public double swapped(Acting force) {
            return body.stream().filter(force::isSameSource).mapToDouble(measure::swapped).sum();
        }
    }

    private static boolean leavesThePlane(Vector vector) {
        return Math.abs(vector.z()) > 1e-9;
    }

    private static double swap(double here, double there) {
        boolean inclined = Math.abs(here) > 1e-9 && Math.abs(there) > 1e-9;
        return inclined ? Math.copySign(Math.abs(there), here) : here;
    }
}
