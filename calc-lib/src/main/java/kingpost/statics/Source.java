package kingpost.statics;

import java.util.List;
import kingpost.truss.Direction;
import kingpost.truss.Load;
import kingpost.truss.Member;
import kingpost.truss.TrussModel;

/** Where a force on a joint comes from: a member, a reaction or a load. */
public sealed interface Source {

    <R> R accept(Visitor<R> visitor);

    /** A member: its force is positive in tension. */
    record OfMember(Member member) implements Source {
        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.member(this);
        }
    }

    /**
     * One reaction component.
     *
     * @param joint     where it acts
     * @param index     0, 1 ... among the components of this joint
     * @param letter    subscript of its symbol: "x", "y" for a pin; "" where a joint has one inclined component;
     *                  "1", "2" where links give several
     * @param direction positive direction, acting on the truss
     */
    record OfReaction(String joint, int index, String letter, Direction direction) implements Source {

        /** Its symbol in plain text: {@code A_x} for a pin's component, {@code R_C} for a single inclined one. */
        public String symbol() {
            return letter.isEmpty() ? "R_" + joint : joint + "_" + letter;
        }


        /** Every reaction component of a truss, in the order of its supports. */
        public static List<OfReaction> of(TrussModel truss) {
            return Network.reactionsOf(truss);
        }

        /** Joint and letter, as in "A_x"; "R_C" for an inclined component alone at its joint. */
        public String name() {
            return letter.isEmpty() ? "R_" + joint : joint + "_" + letter;
        }

        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.reaction(this);
        }
    }

    /** A load; {@code index} counts the loads of its joint from 0. */
    record OfLoad(Load load, int index) implements Source {
        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.load(this);
        }
    }

    /** One method for each kind of source. */
    interface Visitor<R> {
        R member(OfMember source);

        R reaction(OfReaction source);

        R load(OfLoad source);
    }
}
