package kingpost.statics;

import java.util.List;
import kingpost.truss.Member;

/** One step of the solution by hand, in the order in which it is taken. */
public sealed interface Step {

    <R> R accept(Visitor<R> visitor);

    /** The answers found in this step. */
    List<Answer> answers();

    /**
     * @param unknown what was found
     * @param value   N; member: tension positive; reaction: along its direction
     */
    record Answer(Source unknown, double value) {
    }

    /**
     * Reactions from the equilibrium of the whole truss.
     *
     * @param why       why they are needed first
     * @param equations in the order solved; those with role Check come last
     */
    record Reactions(WhyReactions why, List<BodyEquation> equations, List<Answer> answers) implements Step {
        public Reactions {
            equations = List.copyOf(equations);
            answers = List.copyOf(answers);
        }

        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.reactions(this);
        }
    }

    /** Why the reactions come first. */
    enum WhyReactions {
        /** No joint has two unknowns or fewer until they are known. */
        NO_JOINT_TO_START,
        /** Joints could be started, but they do not reach every member. */
        JOINTS_STOP_SHORT,
        /** The user asked for them. */
        ASKED_FOR
    }

    /**
     * One joint.
     *
     * @param number    1 for the first joint worked
     * @param joint     its name
     * @param selection why this joint
     * @param forces    every force of its free body; members found zero before are left out, and named in
     *                  {@code omitted}
     * @param omitted   members at this joint that were found to carry nothing before
     * @param axes      conventional or turned
     * @param equations in the order used
     * @param answers   found here, in the order found
     */
    record AtJoint(int number, String joint, Selection selection, List<JointForce> forces, List<Member> omitted,
                   Axes axes, List<AxisEquation> equations, List<Answer> answers) implements Step {
        public AtJoint {
            forces = List.copyOf(forces);
            omitted = List.copyOf(omitted);
            equations = List.copyOf(equations);
            answers = List.copyOf(answers);
        }

        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.joint(this);
        }
    }

    /**
     * The look round before a joint is chosen.
     *
     * @param counts every joint not yet done, in the truss's order
     * @param reason why the chosen one
     */
    record Selection(List<JointCount> counts, Reason reason) {
        public Selection {
            counts = counts instanceof LookRound ? counts : List.copyOf(counts);
        }

        /** Why a joint was chosen among those that could be worked. */
        public enum Reason {
            /** The only one with few enough unknowns. */
            ONLY_ONE,
            /** The fewest unknowns. */
            FEWEST_UNKNOWNS,
            /** Next to the joint just worked, so the eye moves on along the truss. */
            NEXT_ALONG,
            /** Several as good; the first in the truss's order. */
            FIRST_NAMED
        }
    }

    /**
     * @param joint    a joint
     * @param unknowns what is still unknown there
     * @param ready    whether it can be worked now: at least one unknown, and no more than its equations can give
     */
    record JointCount(String joint, List<Source> unknowns, boolean ready) {
        public JointCount {
            unknowns = List.copyOf(unknowns);
        }
    }

    /** How the axes of a joint lie. */
    sealed interface Axes {

        /** x right, y up. */
        record Conventional() implements Axes {
        }

        /**
         * Turned so that x′ lies along a force.
         *
         * @param along   the force x′ lies along
         * @param degrees from x to x′, counter-clockwise
         * @param reason  what that wins
         */
        record Turned(Source along, double degrees, Reason reason) implements Axes {
        }

        /** What turning wins. */
        enum Reason {
            /** The two unknowns are perpendicular: each equation holds one. */
            UNKNOWNS_PERPENDICULAR,
            /** Across one unknown, the other is alone in an equation. */
            FREES_ONE
        }
    }

    /** One method for each kind of step. */
    interface Visitor<R> {
        R reactions(Reactions step);

        R joint(AtJoint step);
    }
}
