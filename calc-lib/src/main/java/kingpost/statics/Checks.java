package kingpost.statics;

import java.util.List;
import java.util.Map;

/**
 * How the answers were checked.
 *
 * @param unused       equations that no answer needed, summed with the answers put in
 * @param loadsAndReactions sums over the whole truss of loads and reactions: along x, along y and moments
 *                     (along z and three moments in space)
 * @param secondMethod answers of the full system of joint equations, solved at once by elimination (EJML)
 * @param scale        N, the largest force or load in the truss: what residuals are measured against
 * @param worst        the largest residual or difference of all, over {@code scale}
 * @param condition    estimate of the condition of the joint equations; large means nearly a mechanism
 */
public record Checks(List<UnusedEquation> unused, List<BodyEquation> loadsAndReactions,
                     Map<String, SecondAnswer> secondMethod, double scale, double worst, double condition) {

    public Checks {
        unused = List.copyOf(unused);
        loadsAndReactions = List.copyOf(loadsAndReactions);
    }

    /** Largest {@code worst} that passes: rounding of a well-shaped truss stays far below it. */
    public static final double TOLERANCE = 1e-9;

    public boolean pass() {
        return worst <= TOLERANCE;
    }

    /** An equation of a joint that was not needed. */
    public record UnusedEquation(String joint, AxisEquation equation) {
    }

    /**
     * @param first  N, by the steps
     * @param second N, by the full system
     */
    public record SecondAnswer(double first, double second) {
    }
}
