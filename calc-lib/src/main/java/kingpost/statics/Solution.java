package kingpost.statics;

import java.util.List;
import java.util.Optional;
import kingpost.truss.Member;
import kingpost.truss.TrussModel;
import kingpost.exact.Surd;

/**
 * A solved truss: the steps in the order a person takes them, what they gave, and how it was checked.
 *
 * @param truss       what was solved
 * @param determinacy the count that allowed it
 * @param inspection  what was seen before any equation
 * @param steps       in order
 * @param members     one for each member, in the truss's order
 * @param reactions   one for each reaction component, in the truss's order
 * @param checks      the checks
 */
public record Solution(TrussModel truss, Determinacy.Determinate determinacy, Inspection inspection,
                       List<Step> steps, List<MemberResult> members, List<ReactionResult> reactions,
                       Checks checks) {

    public Solution {
        steps = List.copyOf(steps);
        members = List.copyOf(members);
        reactions = List.copyOf(reactions);
    }

    /**
     * @param member the member
     * @param force  N, tension positive; zero exactly where the truss leaves only rounding
     * @param sense  tension, compression or nothing
     * @param found  how it was found
     * @param exact  the force as fraction times surd in the truss's force unit, where coordinates and loads are
     *               rational
     */
    public record MemberResult(Member member, double force, Sense sense, Found found, Optional<Surd> exact) {
    }

    /**
     * @param reaction which component
     * @param force    N along its direction, acting on the truss
     * @param exact    as for a member
     */
    public record ReactionResult(Source.OfReaction reaction, double force, Optional<Surd> exact) {
    }

    /** What a member does. */
    public enum Sense { TENSION, COMPRESSION, ZERO }

    /** How a member's force was found. */
    public enum Found {
        /** Zero, seen before any equation. */
        INSPECTION,
        /** The same as a member in line with it, seen before any equation. */
        SAME_AS_IN_LINE,
        /** From the equations of a joint. */
        JOINT,
        /** From the equilibrium of a part cut free. */
        SECTION,
        /** From the equations of several joints at once. */
        JOINTS_TOGETHER
    }
}
