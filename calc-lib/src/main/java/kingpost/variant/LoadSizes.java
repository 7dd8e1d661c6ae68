package kingpost.variant;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import kingpost.exact.Fraction;

/** Sizes for groups of loads under which forces come out as whole numbers or short decimals. */
final class LoadSizes {

    private static final List<String> STEPS = List.of("1000", "500", "200", "100", "50", "20", "10", "5", "2", "1", "0.5",
            "0.2", "0.1", "0.05", "0.02", "0.01", "0.001");
    private static final int TRIES = 24;
    private static final int ENOUGH = 5;
    private static final double LARGER = 2.1;
    private static final int ENDLESS = 6;

    private final UnitForces forces;
    private final List<List<Fraction>> candidates = new ArrayList<>();

    LoadSizes(UnitForces forces, LoadPlan plan) {
        this.forces = forces;
        List<BigInteger> multiples = forces.endless();
        for (int g = 0; g < plan.sizes().size(); g++) {
            candidates.add(near(plan.sizes().get(g), multiples.get(g)));
        }
    }

    /**
     * Sizes for the groups.
     *
     * @param awkward how far from clean: the decimals that forces and loads need, summed; large where some force has no
     *                end
     */
    record Choice(List<Fraction> sizes, int awkward) {
    }

    /** The cleanest of several random choices. */
    Choice choose(Random random) {
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

    /** Multiples of the number that clears the fractions, near the size given; plain round numbers where none is. */
    private static List<Fraction> near(double size, BigInteger multiple) {
        List<Fraction> cleared = multiples(size, Fraction.of(multiple), ENOUGH);
        return cleared.isEmpty() ? multiples(size, Fraction.ONE, 1) : cleared;
    }

    private static List<Fraction> multiples(double size, Fraction of, int enough) {
        List<Fraction> found = new ArrayList<>();
        for (String text : STEPS) {
            Fraction step = Rationals.of(text).times(of);
            double unit = step.doubleValue();
            if (found.size() >= enough || unit > size * LARGER) {
                continue;
            }
            found.clear();
            long first = (long) Math.ceil(size / LARGER / unit - 1e-9);
            long last = (long) Math.floor(size * LARGER / unit + 1e-9);
            for (long k = Math.max(1, first); k <= last && found.size() < 4L * ENOUGH; k++) {
                found.add(step.times(k));
            }
        }
        return found;
    }
}
