package kingpost.statics;

import java.util.Arrays;
import java.util.Optional;
import java.util.function.IntPredicate;

/**
 * Forces found so far, N, each with a bound on what rounding may have done to it. A result within its bound is
 * written as exactly zero.
 */
final class Values {

    private static final double EPS = Math.ulp(1.0);
    /** No force larger than this part of those it came from is taken for rounding, whatever the bound says. */
    private static final double NOISE = 1e-9;

    private final double[] value;
    private final double[] bound;
    private final IntPredicate exactlyZero;
    private final IntPredicate exactlyKnown;

    /**
     * @param exactlyKnown whether the exact route knows an unknown
     * @param exactlyZero  whether it knows that it is zero
     */
    private Values(int unknowns, IntPredicate exactlyKnown, IntPredicate exactlyZero) {
        value = new double[unknowns];
        bound = new double[unknowns];
        Arrays.fill(value, Double.NaN);
        this.exactlyKnown = exactlyKnown;
        this.exactlyZero = exactlyZero;
    }

    /** No force found yet; zeros are known exactly where the truss has an exact solution. */
    static Values of(Network network, Route route) {
        return of(network, ExactRoute.of(network, SolutionOrder.of(network, route.moves())));
    }

    /** As {@link #of(Network, Route)}, with the exact solution at hand. */
    static Values of(Network network, Optional<ExactRoute.ExactForces> exact) {
        return new Values(network.unknowns(), u -> exact.isPresent(), u -> exact.get().densities().get(u).isZero());
    }

    double get(int unknown) {
        return value[unknown];
    }

    double bound(int unknown) {
        return bound[unknown];
    }

    void zero(int unknown) {
        value[unknown] = 0;
    }

    void same(int unknown, int as) {
        value[unknown] = value[as];
        bound[unknown] = bound[as];
    }

    /**
     * Keeps a result.
     *
     * @param force  N
     * @param spread sum of the sizes of what it was computed from, over the pivot
     * @param known  bound of the errors of what it was computed from, over the pivot
     */
    void put(int unknown, double force, double spread, double known) {
        bound[unknown] = known + 4 * EPS * spread;
        boolean noise = Math.abs(force) <= 8 * bound[unknown] && Math.abs(force) <= NOISE * spread;
        boolean zero = exactlyKnown.test(unknown) ? exactlyZero.test(unknown) : noise;
        value[unknown] = zero ? 0 : force;
    }
}
