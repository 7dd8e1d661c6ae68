package kingpost.variant;

import java.util.Comparator;
import java.util.List;
import kingpost.exact.Fraction;

/**
 * A right triangle with whole sides.
 *
 * @param run  along
 * @param rise up
 * @param side the long side
 */
record Triple(int run, int rise, int side) {

    /** Slopes that people meet, each both ways up. */
    static final List<Triple> ALL = List.of(new Triple(4, 3, 5), new Triple(3, 4, 5), new Triple(12, 5, 13),
            new Triple(5, 12, 13), new Triple(15, 8, 17), new Triple(8, 15, 17), new Triple(24, 7, 25),
            new Triple(21, 20, 29), new Triple(20, 21, 29), new Triple(7, 24, 25));

    private static final int SIMPLE = 4;

    /** Whether it is one of the two that everyone knows. */
    boolean isSimple() {
        return side <= 13;
    }

    Fraction slope() {
        return Fraction.of(rise, run);
    }

    /** The simple direction nearest to (x, y), neither of which is zero. */
    static Triple nearest(double x, double y) {
        double angle = Math.atan2(Math.abs(y), Math.abs(x));
        return ALL.stream().limit(SIMPLE).min(Comparator.comparingDouble(t -> Math.abs(Math.atan2(t.rise, t.run) - angle)))
                .orElseThrow();
    }
}
