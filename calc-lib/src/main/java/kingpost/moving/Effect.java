package kingpost.moving;

import kingpost.statics.Source;
import kingpost.truss.Member;

/** What a moving load changes. */
public sealed interface Effect {

    <R> R accept(Visitor<R> visitor);

    /** The force in a member, tension positive. */
    record OfMember(Member member) implements Effect {
        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.member(this);
        }
    }

    /** A reaction component along its direction, acting on the truss. */
    record OfReaction(Source.OfReaction reaction) implements Effect {
        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.reaction(this);
        }
    }

    /**
     * The shear in a panel of the loaded chord: all vertical forces from outside on the part to its left, upwards
     * positive.
     */
    record OfShear(String left, String right) implements Effect {
        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.shear(this);
        }
    }

    /** One method for each effect. */
    interface Visitor<R> {
        R member(OfMember effect);

        R reaction(OfReaction effect);

        R shear(OfShear effect);
    }
}
