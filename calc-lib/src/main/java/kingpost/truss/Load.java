package kingpost.truss;

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

    /** Given by size and direction. */
    record Directed(String joint, Quantity magnitude, Direction direction) implements Load {
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
        public Quantity magnitude() {
            return Quantity.of(direction().norm(), fx.getUnit());
        }

        @Override
        public Direction direction() {
            return new Direction(fx.getValue(), fy.in(fx.getUnit()), fz.in(fx.getUnit()), "by components", true);
        }
    }
}
