package kingpost.truss;

import java.util.List;
import kingpost.units.Quantity;

/** A force on a joint. */
public sealed interface Load {

    /** Name of the joint it acts on. */
    String joint();

    /** Component to the right. */
    Quantity fx();

    /** Component upwards. */
    Quantity fy();

    /** Component towards the reader. */
    Quantity fz();

    /** Size, never negative. */
    Quantity magnitude();

    /** Where it points. */
    Direction direction();

    /** The same load, multiplied; a factor below zero turns it round, and none may be zero. */
    Load times(double factor);

    /** Given by size and direction. */
    record Directed(String joint, Quantity magnitude, Direction direction) implements Load {
        @Override
        public Load times(double factor) {
            return new Directed(joint, magnitude.multiply(Math.abs(factor)), factor < 0 ? direction.reversed() : direction);
        }

        @Override
        public Quantity fx() {
            return magnitude.multiply(direction.cosX());
        }

        @Override
        public Quantity fy() {
            return magnitude.multiply(direction.cosY());
        }

        @Override
        public Quantity fz() {
            return magnitude.multiply(direction.cosZ());
        }
    }

    /** Given by components. */
    record Components(String joint, Quantity fx, Quantity fy, Quantity fz) implements Load {
        @Override
        public Load times(double factor) {
            return new Components(joint, fx.multiply(factor), fy.multiply(factor), fz.multiply(factor));
        }

        @Override
        public Quantity magnitude() {
            return Quantity.of(direction().norm(), fx.getUnit());
        }

        @Override
        public Direction direction() {
            return new Direction(fx.getValue(), fy.in(fx.getUnit()), fz.in(fx.getUnit()), "by components", true);
        }
    }

    /**
     * Gathered from loads that are spread over members or along a chord.
     *
     * @param parts  what it is made of
     * @param factor by which the parts were multiplied, 1 where no combination did
     */
    record Gathered(String joint, Quantity magnitude, Direction direction, List<Tributary> parts, double factor)
            implements Load {
        public Gathered {
            parts = List.copyOf(parts);
        }

        @Override
        public Load times(double by) {
            return new Gathered(joint, magnitude.multiply(Math.abs(by)), by < 0 ? direction.reversed() : direction, parts,
                    factor * by);
        }

        @Override
        public Quantity fx() {
            return magnitude.multiply(direction.cosX());
        }

        @Override
        public Quantity fy() {
            return magnitude.multiply(direction.cosY());
        }

        @Override
        public Quantity fz() {
            return magnitude.multiply(direction.cosZ());
        }
    }
}
