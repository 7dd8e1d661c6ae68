package kingpost.statics;

import java.util.List;
import java.util.Map;

/** What counting and the rank of the joint equations say of a truss before anything is solved. */
public sealed interface Determinacy {

    /** The count. */
    Count count();

    <R> R accept(Visitor<R> visitor);

    /**
     * m + r against 2j (3j in space).
     *
     * @param members   m
     * @param reactions r
     * @param joints    j
     * @param dimension 2 or 3
     * @param rank      rank of the joint equations
     */
    record Count(int members, int reactions, int joints, int dimension, int rank) {
        public int unknowns() {
            return members + reactions;
        }

        public int equations() {
            return dimension * joints;
        }
    }

    /**
     * As many unknowns as equations, and they are independent.
     *
     * @param condition estimate of the condition of the joint equations, in the 1-norm: how much a change of a force
     *                  or of a direction may be magnified
     */
    record Determinate(Count count, double condition) implements Determinacy {

        /**
         * Whether it comes near a mechanism: its condition is far beyond what its size explains. The condition of a
         * long truss of good shape grows as the square of its length: found 0.03 to 0.2 times the square of the
         * unknowns on strips of 1,000 to 100,000 members. The bound is ours, no source.
         */
        public boolean isNearlyAMechanism() {
            double size = count.unknowns();
            return condition > 1000 + 10 * size * size;
        }

        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.determinate(this);
        }
    }

    /**
     * Stable, with more unknowns than equations.
     *
     * @param degree     by how many
     * @param removable  names of members any one of which could go and leave it stable
     * @param removableReactions names of reaction components of which the same holds
     */
    record Indeterminate(Count count, int degree, List<String> removable, List<String> removableReactions)
            implements Determinacy {
        public Indeterminate {
            removable = List.copyOf(removable);
            removableReactions = List.copyOf(removableReactions);
        }

        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.indeterminate(this);
        }
    }

    /**
     * It moves.
     *
     * @param cause  missing member, or a count that is right over a geometry that is not
     * @param motion joint to its movement in the first mechanism, scaled so that the largest is 1; joints that stay
     *               are left out
     * @param freedoms number of independent mechanisms
     */
    record Mechanism(Count count, Cause cause, Map<String, Vector> motion, int freedoms) implements Determinacy {
        public Mechanism {
            motion = Map.copyOf(motion);
        }

        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.mechanism(this);
        }
    }

    /** Why a truss moves. */
    enum Cause {
        /** Fewer members and reactions than equations. */
        TOO_FEW,
        /** The count is right or more, but the reactions are parallel or meet in a point: the whole truss moves. */
        REACTIONS_DO_NOT_HOLD,
        /** The count is right or more, but the members leave a part that moves. */
        MEMBERS_MISPLACED
    }

    /** One method for each answer. */
    interface Visitor<R> {
        R determinate(Determinate determinacy);

        R indeterminate(Indeterminate determinacy);

        R mechanism(Mechanism determinacy);
    }
}
