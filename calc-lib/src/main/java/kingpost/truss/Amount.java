package kingpost.truss;

import kingpost.units.Quantity;

/** A number as the user gave it: bare, in the truss's own unit, or with a unit beside it. */
sealed interface Amount {

    /** In the truss's own unit. */
    record Bare(double value) implements Amount {
        @Override
        public String toString() {
            return String.valueOf(value);
        }
    }

    /** With its unit; {@code quantity} may be null where the user passed null. */
    record WithUnit(Quantity quantity) implements Amount {
        @Override
        public String toString() {
            return String.valueOf(quantity);
        }
    }

    static Amount of(double value) {
        return new Bare(value);
    }

    static Amount of(Quantity quantity) {
        return new WithUnit(quantity);
    }
}
