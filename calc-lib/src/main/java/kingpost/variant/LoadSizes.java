package kingpost.variant;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import kingpost.exact.Fraction;

/**
 * Sizes for groups of loads under which forces come out as whole numbers or short decimals.
 *
 * <p>A size that is a whole multiple of the common denominator of the forces it causes makes them whole numbers; where
 * such multiples are too few or too far from the size given, halves, fifths, tenths ... of them are taken.
 */
final class LoadSizes {

    private static final List<String> STEPS = List.of("1000", "500", "200", "100", "50", "20", "10", "5", "2", "1", "0.5",
            "0.2", "0.1", "0.05", "0.02", "0.01", "0.005", "0.002", "0.001");
    private static final int TRIES = 12;
    private static final double LARGER = 2.1;
    private static final double WORTH = 4;
    private static final int ENDLESS = 6;
    private static final int FEW = 5;
    private static final int FINER = 4;

    private final UnitForces forces;
    private final LoadPlan plan;
    private final Map<Integer, List<List<Fraction>>> byFineness = new HashMap<>();

    LoadSizes(UnitForces forces, LoadPlan plan) {
        this.forces = forces;
        this.plan = plan;
    }

    /**
     * Sizes for the groups.
     *
     * @param awkward how far from clean: the decimals that forces and loads need, summed; large where some force has no
     *                end
     */
    record Choice(List<Fraction> sizes, int awkward) {
    }

    /**
     * The cleanest of several random choices.
     *
     * @param fineness 0 for few and round sizes to choose from; each step up gives four times as many
     */
    Choice choose(Random random, int fineness) {
        List<List<Fraction>> candidates = byFineness.computeIfAbsent(fineness, this::candidates);
        Choice best = null;
        for (int i = 0; i < TRIES; i++) {
            List<Fraction> sizes = candidates.stream().map(list -> list.get(random.nextInt(list.size()))).toList();
            int awkward = awkward(sizes) * 2 + awkward(forces.under(sizes));
            if (best == null || awkward < best.awkward()) {
                best = new Choice(sizes, awkward);
            }
        }
        return best;
    }

    private static int awkward(List<Fraction> values) {
        int sum = 0;
        for (Fraction value : values) {
            int decimals = Rationals.decimals(value);
            sum += decimals < 0 ? ENDLESS : decimals;
        }
        return sum;
    }

    private List<List<Fraction>> candidates(int fineness) {
        int enough = (int) (FEW * Math.pow(FINER, fineness));
        List<BigInteger> denominators = forces.denominators();
        List<List<Fraction>> candidates = new ArrayList<>();
        for (int g = 0; g < plan.sizes().size(); g++) {
            Fraction denominator = Fraction.of(denominators.get(g));
            List<Fraction> whole = fineness == 0 ? wholes(plan.sizes().get(g), denominator) : List.of();
            List<Fraction> clearing = whole.isEmpty() ? multiples(plan.sizes().get(g), denominator, enough) : whole;
            candidates.add(clearing.isEmpty() ? multiples(plan.sizes().get(g), Fraction.ONE, enough) : clearing);
        }
        return candidates;
    }

    /** Multiples that make every force a whole number; not so near {@code size}, as whole numbers are worth it. */
    private static List<Fraction> wholes(double size, Fraction denominator) {
        List<Fraction> found = new ArrayList<>();
        double unit = denominator.doubleValue();
        for (long k = Math.max(1, (long) Math.ceil(size / LARGER / unit - 1e-9)); k * unit <= size * WORTH; k++) {
            found.add(denominator.times(k));
        }
        return found;
    }

    /** Multiples, near {@code size}, of the largest step that has enough of them; empty where no step fits. */
    private static List<Fraction> multiples(double size, Fraction of, int enough) {
        List<Fraction> found = new ArrayList<>();
        for (String text : STEPS) {
            Fraction step = Rationals.of(text).times(of);
            double unit = step.doubleValue();
            if (found.size() < enough && unit <= size * LARGER) {
                found.clear();
                long first = Math.max(1, (long) Math.ceil(size / LARGER / unit - 1e-9));
                long last = (long) Math.floor(size * LARGER / unit + 1e-9);
                for (long k = first; k <= last; k++) {
                    found.add(step.times(k));
                }
            }
        }
        return found;
    }
}
