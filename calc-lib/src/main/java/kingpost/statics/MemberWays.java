package kingpost.statics;

import java.util.List;
import java.util.Optional;
import kingpost.truss.Member;
import kingpost.truss.TrussModel;

/**
 * How to come at the force in one member: by looking, or by the way that takes the fewest equations.
 *
 * @param truss  the truss
 * @param member the member asked for
 * @param seen   what inspection tells of it, in the order found; empty where it tells nothing
 * @param zero   whether inspection shows that it carries nothing
 * @param ways   the ways compared, the shortest first; empty where the member is zero by inspection
 * @param steps  the shortest way, worked
 * @param force  N, tension positive
 * @param worst  difference from the full system of joint equations, over the largest force
 */
public record MemberWays(TrussModel truss, Member member, List<Inspection.Finding> seen, boolean zero, List<Way> ways,
                         List<Step> steps, double force, double worst) {

    public MemberWays {
        seen = List.copyOf(seen);
        ways = List.copyOf(ways);
        steps = List.copyOf(steps);
    }

    /** What a way may use. */
    public enum Means {
        /** The equations of joints and nothing else. */
        JOINTS,
        /** Reactions from the whole truss, and joints. */
        REACTIONS_AND_JOINTS,
        /** Sections, and reactions where the part kept needs them. */
        SECTIONS,
        /** Sections and joints as they come. */
        MIXED
    }

    /**
     * @param means what it may use
     * @param count what it takes; empty where it does not lead to the member
     */
    public record Way(Means means, Optional<Count> count) {
    }

    /**
     * @param equations   all of them
     * @param ofReactions those of the whole truss
     * @param joints      joints worked, in order
     * @param cuts        sections taken, in order, each as the members cut
     */
    public record Count(int equations, int ofReactions, List<String> joints, List<List<Member>> cuts) {
        public Count {
            joints = List.copyOf(joints);
            cuts = List.copyOf(cuts);
        }
    }
}
