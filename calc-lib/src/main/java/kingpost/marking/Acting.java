package kingpost.marking;

import kingpost.statics.Vector;

/**
 * A force as an equation meets it: one of the unknowns of the truss, or a load.
 *
 * @param unknown number of the unknown, or -1 for a load
 * @param load    number of the load in the truss's list, or -1 for an unknown
 * @param along   unit vector along which it is positive
 * @param at      a point on its line, in the truss's length unit
 */
record Acting(int unknown, int load, Vector along, Vector at) {

    static Acting unknown(int number, Vector along, Vector at) {
        return new Acting(number, -1, along.unit(), at);
    }

    static Acting load(int number, Vector along, Vector at) {
        return new Acting(-1, number, along.unit(), at);
    }

    boolean isLoad() {
        return load >= 0;
    }

    /** Whether it is the same unknown or load, as met on another body. */
    boolean isSameSource(Acting other) {
        return unknown == other.unknown && load == other.load;
    }
}
