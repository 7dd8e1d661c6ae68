package kingpost.statics;

import java.util.BitSet;
import java.util.List;
import kingpost.statics.Step.Selection.Reason;

/** One move of the plan, by number and without values. Turns count all moves from 1. */
sealed interface Move {

    int turn();

    /** Numbers of the unknowns that it gives. */
    List<Integer> unknowns();

    <R> R accept(Visitor<R> visitor);

    /**
     * A joint.
     *
     * @param number   1 for the first joint worked
     * @param unknowns what its equations give; not all that is unknown there, where only one lies across the rest
     */
    record AtJoint(int turn, int number, int joint, List<Integer> unknowns, Reason reason) implements Move {
        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.joint(this);
        }
    }

    /**
     * A cut.
     *
     * @param part joints of the part that is kept
     * @param plan the equations of that part that are used
     */
    record AtSection(int turn, BitSet part, List<BodyPlan.Planned> plan) implements Move {
        @Override
        public List<Integer> unknowns() {
            return plan.stream().map(p -> p.unknown().unknown()).toList();
        }

        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.section(this);
        }
    }

    /**
     * The truss as one body once more, after something inside it has told one of the forces that hold it.
     *
     * @param plan the equations that now hold one unknown each
     */
    record OfWhole(int turn, List<BodyPlan.Planned> plan) implements Move {
        @Override
        public List<Integer> unknowns() {
            return plan.stream().map(p -> p.unknown().unknown()).toList();
        }

        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.whole(this);
        }
    }

    /** Several joints whose equations are solved at once. */
    record Together(int turn, List<Integer> joints, List<Integer> unknowns) implements Move {
        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.together(this);
        }
    }

    /** Two bodies with an equation each that holds the same two unknowns. */
    record TwoBodies(int turn, List<EquationPool.Entry> entries, List<Integer> unknowns) implements Move {
        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.twoBodies(this);
        }
    }

    /** One method for each kind of move. */
    interface Visitor<R> {
        R joint(AtJoint move);

        R section(AtSection move);

        R whole(OfWhole move);

        R together(Together move);

        R twoBodies(TwoBodies move);
    }
}
