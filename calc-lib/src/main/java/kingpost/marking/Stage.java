package kingpost.marking;

import java.util.List;
import kingpost.marking.Slip.Place;

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

    /** Every force at once, as found by someone who has read the truss in a certain way; by number of the unknown. */
    record Given(List<Double> values) implements Stage {
        public Given {
            values = List.copyOf(values);
        }

        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.given(this);
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
     * @param place    the joint, the joints taken together, the part or the whole truss that is in balance
     * @param acting   every force that has a part in it
     * @param choices  sets of equations any one of which gives the unknowns, the likeliest first; as many equations
     *                 as unknowns in each
     * @param unknowns what is found, in the order found
     */
    record Balance(Place place, List<Acting> acting, List<List<Measure>> choices, List<Integer> unknowns)
            implements Stage {
        public Balance {
            acting = List.copyOf(acting);
            choices = choices.stream().map(List::copyOf).toList();
            unknowns = List.copyOf(unknowns);
        }

        boolean isPart() {
            return place instanceof Place.AtSection;
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

    /** What either of two bodies may give: the joints at both ends of a member, or both parts of a cut truss. */
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

        R given(Given stage);

        R same(Same stage);

        R balance(Balance stage);

        R either(Either stage);
    }
}
