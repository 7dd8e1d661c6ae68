package kingpost.marking;

/**
 * A slip supposed at one stage, as a change to its equations.
 *
 * @param slip    what it is
 * @param price   in slips
 * @param force   number of the force in the stage's list that it happens to, or -1 for all of them
 * @param row     number of the equation that it happens in, or -1 for all of them
 * @param change  what happens
 * @param lasting whether it goes on in later stages
 */
record Tweak(Slip slip, double price, int force, int row, Change change, boolean lasting) {

    /** What happens to a force's term. */
    sealed interface Change {

        /** It is left out. */
        record LeftOut() implements Change {
        }

        /** Its sign is turned round. */
        record Reversed() implements Change {
        }

        /** Sine and cosine of its angle change places. */
        record Swapped() implements Change {
        }

        /** It is put in with another value, in the truss's force unit. */
        record Valued(double value) implements Change {
        }
    }

    boolean hits(int aForce, int aRow) {
        return (force < 0 || force == aForce) && (row < 0 || row == aRow);
    }
}
