package kingpost.marking;

import java.util.List;

/** One stage of a working: what becomes known at once, and from what. */
sealed interface Stage {

    <R> R accept(Visitor<R> visitor);

    /** The bodies whose balance may give what this stage gives. */
    default List<Balance> balances() {
        return List.of();
    }

    /** Members seen to carry nothing. */
    record Seen(List<Integer> unknowns) implements Stage {
        public Seen {
            unknowns = List.copyOf(unknowns);
        }

        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.seen(this);
        }
    }

    /** A member seen to carry the same force as another. */
    record Same(int unknown, int as) implements Stage {
        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.same(this);
        }
    }

    /**
     * Unknowns from equations of equilibrium.
     *
     * @param joint    the joint in balance, or empty text for the whole truss
     * @param acting   every force that has a part in it
     * @param choices  sets of equations any one of which gives the unknowns, the likeliest first; as many equations
     *                 as unknowns in each
     * @param unknowns what is found, in the order found
     */
    record Balance(String joint, List<Acting> acting, List<List<Measure>> choices, List<Integer> unknowns)
            implements Stage {
        public Balance {
            acting = List.copyOf(acting);
            choices = choices.stream().map(List::copyOf).toList();
            unknowns = List.copyOf(unknowns);
        }

        boolean isWhole() {
            return joint.isEmpty();
        }

        @Override
        public List<Balance> balances() {
            return List.of(this);
        }

        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.balance(this);
        }
    }

    /** A member that is the last unknown at both its ends, so that either end may give it. */
    record Either(Balance here, Balance there) implements Stage {
        @Override
        public List<Balance> balances() {
            return List.of(here, there);
        }

        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.either(this);
        }
    }

    /** One method for each kind. */
    interface Visitor<R> {
        R seen(Seen stage);

        R same(Same stage);

        R balance(Balance stage);

        R either(Either stage);
    }
}
