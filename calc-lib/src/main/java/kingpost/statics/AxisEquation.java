package kingpost.statics;

import java.util.List;

/**
 * Forces on a joint summed along one axis: the sum of value times cosine is zero.
 *
 * @param axis     along which
 * @param terms    every force on the joint that has a part along the axis, unknowns first
 * @param role     what the equation was used for
 * @param residual N, the sum with every value put in; what rounding left
 */
public record AxisEquation(Axis axis, List<Term> terms, Role role, double residual) {

    public AxisEquation {
        terms = List.copyOf(terms);
    }

    /**
     * @param label     "x", "y", or "x′", "y′" where the axes are turned
     * @param direction unit vector
     */
    public record Axis(String label, Vector direction) {
    }

    /**
     * @param force  the force
     * @param cosine cosine of the angle between the force's {@code along} and the axis, with sign
     */
    public record Term(JointForce force, double cosine) {
    }

    /** What an equation was used for. */
    public sealed interface Role {

        /** It holds one unknown and gives it. */
        record Gives(Source unknown) implements Role {
        }

        /** It holds two unknowns (three in space) and is solved together with the others of its step. */
        record Together(List<Source> unknowns) implements Role {
            public Together {
                unknowns = List.copyOf(unknowns);
            }
        }

        /** It holds no unknown any more, and is used as a check. */
        record Check() implements Role {
        }
    }
}
