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
     * @param why       why they are found here
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

    /** Why the reactions are found here; mostly, why they come first. */
    enum WhyReactions {
        /** No joint has two unknowns or fewer until they are known. */
        NO_JOINT_TO_START,
        /** Joints could be started, but they do not reach every member. */
        JOINTS_STOP_SHORT,
        /** Some could not be found before; what the inside of the truss has told now brings them within reach. */
        WITHIN_REACH_NOW,
        /** The user asked for them. */
        ASKED_FOR,
        /** They act on the part that a section leaves. */
        SECTION_NEEDS_THEM,
        /** The way to one member leads through them; only those that it needs are found. */
        MEMBER_NEEDS_THEM
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
     * A cut through the truss, and the equilibrium of one part of it.
     *
     * @param stuck     joints not yet done where the work by joints had stopped, in the truss's order; empty when the
     *                  user asked for the cut
     * @param cut       members cut, those not known before it first
     * @param omitted   members cut that were found to carry nothing before
     * @param part      joints of the part kept, in the truss's order
     * @param keep      why this part and not the other
     * @param forces    every force on the part: members cut, reactions, loads; an unknown that is not found here has
     *                  the value {@code NaN}
     * @param equations in the order used; one with role Check comes last, where everything is known after it
     * @param answers   found here, in the order found
     */
    record AtSection(List<JointCount> stuck, List<Member> cut, List<Member> omitted, List<String> part, Keep keep,
                     List<BodyForce> forces, List<BodyEquation> equations, List<Answer> answers) implements Step {
        public AtSection {
            stuck = stuck instanceof LookRound ? stuck : List.copyOf(stuck);
            cut = List.copyOf(cut);
            omitted = List.copyOf(omitted);
            part = List.copyOf(part);
            forces = List.copyOf(forces);
            equations = List.copyOf(equations);
            answers = List.copyOf(answers);
        }

        AtSection keptFor(Keep reason) {
            return new AtSection(stuck, cut, omitted, part, reason, forces, equations, answers);
        }

        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.section(this);
        }
    }

    /** Why one part of a cut truss is kept. */
    enum Keep {
        /** No support holds it, so that no reaction is needed. */
        NO_REACTIONS,
        /** Fewer forces act on it. */
        FEWER_FORCES,
        /** Its equation leaves the wanted force alone. */
        LEAVES_ONE_ALONE,
        /** Neither is simpler. */
        EITHER
    }

    /** A force on a part, and the joint of the part at which it acts. */
    record BodyForce(String joint, JointForce force) {
    }

    /**
     * Several joints whose equations are solved at once, because none of them can be solved alone.
     *
     * @param stuck     joints not yet done where the work stopped, in the truss's order
     * @param joints    the joints taken together
     * @param forces    every force on each of them; members found to carry nothing are left out
     * @param equations along x and y of each joint; those not needed have role Check
     * @param answers   found here
     */
    record JointsTogether(List<JointCount> stuck, List<String> joints, List<BodyForce> forces,
                          List<JointEquation> equations, List<Answer> answers) implements Step {
        public JointsTogether {
            stuck = stuck instanceof LookRound ? stuck : List.copyOf(stuck);
            joints = List.copyOf(joints);
            forces = List.copyOf(forces);
            equations = List.copyOf(equations);
            answers = List.copyOf(answers);
        }

        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.together(this);
        }
    }

    /**
     * Two bodies, the whole truss or parts of it, with an equation each that holds the same two unknowns.
     *
     * @param stuck   joints not yet done where the work stopped, in the truss's order
     * @param bodies  each with its one equation; the whole truss has no members cut
     * @param answers found here
     */
    record TwoBodies(List<JointCount> stuck, List<AtSection> bodies, List<Answer> answers) implements Step {
        public TwoBodies {
            stuck = stuck instanceof LookRound ? stuck : List.copyOf(stuck);
            bodies = List.copyOf(bodies);
            answers = List.copyOf(answers);
        }

        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.twoBodies(this);
        }
    }

    /** An equation of one of several joints. */
    record JointEquation(String joint, AxisEquation equation) {
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
            FIRST_NAMED,
            /**
             * No joint can be solved whole, but here one unknown lies across all the others, which are in line, or in
             * space in one plane.
             */
            ONE_ACROSS
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

        /**
         * In space: a first axis n across the plane of two unknowns, so that the third is alone in its equation.
         *
         * @param plane  the two unknowns, or more, that lie in the plane
         * @param direction of n, of length 1
         */
        record Across(List<Source> plane, Vector direction) implements Axes {
            public Across {
                plane = List.copyOf(plane);
            }
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

        R section(AtSection step);

        R together(JointsTogether step);

        R twoBodies(TwoBodies step);
    }
}
