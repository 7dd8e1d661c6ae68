package kingpost.graphic;

import kingpost.truss.Load;
import kingpost.truss.Member;

/** Where a force on a joint comes from, as a polygon draws it: all that a support does at a joint is one force. */
public sealed interface Cause {

    <R> R accept(Visitor<R> visitor);

    /** A member. */
    record OfMember(Member member) implements Cause {
        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.member(this);
        }
    }

    /** A load. */
    record OfLoad(Load load) implements Cause {
        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.load(this);
        }
    }

    /** The resultant of all reaction components at a joint. */
    record OfSupport(String joint) implements Cause {
        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.support(this);
        }
    }

    /** One method for each cause. */
    interface Visitor<R> {
        R member(OfMember cause);

        R load(OfLoad cause);

        R support(OfSupport cause);
    }
}
