package kingpost.statics;

/**
 * A force as the free body of a joint shows it.
 *
 * @param source where it comes from
 * @param along  direction in which it is positive, not scaled to 1: for a member the way from the joint to the other
 *               end in the numbers of the truss's length unit (so that a 3-4-5 slope stays 3-4-5), which is the way
 *               tension pulls; for a load or reaction its {@code Direction}
 * @param known  whether its value was known before this joint was worked
 * @param value  N along {@code along}; for an unknown, the answer found at this joint, or {@code NaN} where it is not
 *               found here
 */
public record JointForce(Source source, Vector along, boolean known, double value) {
}
