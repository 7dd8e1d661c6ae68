package kingpost.statics;

import java.util.List;
import kingpost.truss.Member;
import kingpost.truss.TrussModel;

/** What a section through chosen members gives. */
public sealed interface SectionResult {

    /** The truss that is cut. */
    TrussModel truss();

    /** The members asked for, in the order asked. */
    List<Member> asked();

    <R> R accept(Visitor<R> visitor);

    /**
     * The section parts the truss, and at least one of its equations holds one unknown alone.
     *
     * @param reactions the reactions, where the part kept needs them: one step, or none
     * @param section   the cut, the part kept and its equations
     * @param idle      members asked for that inspection found to carry nothing
     * @param notFound  members asked for that no equation of this section leaves alone
     * @param worst     largest difference from the full system of joint equations, over the largest force or load
     */
    record Solved(TrussModel truss, List<Member> asked, List<Step.Reactions> reactions, Step.AtSection section,
                  List<Member> idle, List<Member> notFound, double worst) implements SectionResult {
        public Solved {
            asked = List.copyOf(asked);
            reactions = List.copyOf(reactions);
            idle = List.copyOf(idle);
            notFound = List.copyOf(notFound);
        }

        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.solved(this);
        }
    }

    /**
     * The section gives nothing.
     *
     * @param why      what is wrong with it
     * @param joinedBy where it does not part the truss: members that still join the ends of the first one asked for,
     *                 one after the other
     * @param surplus  where it holds more than one cut: members asked for that both ends of which are on one side
     * @param offer    members of a section that gives as many of those asked for as may be; empty where none was found
     */
    record Impossible(TrussModel truss, List<Member> asked, Why why, List<Member> joinedBy, List<Member> surplus,
                      List<Member> offer) implements SectionResult {
        public Impossible {
            asked = List.copyOf(asked);
            joinedBy = List.copyOf(joinedBy);
            surplus = List.copyOf(surplus);
            offer = List.copyOf(offer);
        }

        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.impossible(this);
        }
    }

    /** Why a section gives nothing. */
    enum Why {
        /** With these members cut the truss still hangs together. */
        DOES_NOT_PART,
        /** The members are more than one cut: some of them join joints of the same side. */
        NOT_ONE_CUT,
        /** It meets more unknowns than three, and no point or direction leaves one of them alone. */
        TOO_MANY_UNKNOWNS,
        /** The members cut meet in one point or are parallel, so that no equation parts them. */
        NOT_INDEPENDENT
    }

    /** One method for each result. */
    interface Visitor<R> {
        R solved(Solved result);

        R impossible(Impossible result);
    }
}
