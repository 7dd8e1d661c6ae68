package kingpost.marking;

import java.util.Arrays;
import java.util.List;

/**
 * How far a working has come under the slips supposed so far. Immutable from outside; a step makes a new one.
 *
 * <p>Each unknown has a value that is carried on, a spread (how much that value may be off because it was rounded), and
 * a trace: which of the slips it depends on, one bit each.
 */
final class State {

    private static final long ALL = -1;
    private static final double NOTHING = 1e-9;

    private final double[] values;
    private final double[] spreads;
    private final long[] traces;
    private final double cost;
    private final Chain<Slip> slips;
    private final Chain<Outcome> outcomes;
    private final Lasting lasting;

    private State(double[] values, double[] spreads, long[] traces, double cost, Chain<Slip> slips,
                  Chain<Outcome> outcomes, Lasting lasting) {
        this.values = values;
        this.spreads = spreads;
        this.traces = traces;
        this.cost = cost;
        this.slips = slips;
        this.outcomes = outcomes;
        this.lasting = lasting;
    }

    /** How a stated answer came about. */
    enum How {
        /** As the working gives it. */
        MATCHED,
        /** As the working gives it with values carried at the figures stated. */
        NEARLY,
        /** Right, though the working does not give it: found in another way. */
        ANOTHER_WAY,
        /** By the slip last noted. */
        SLIPPED
    }

    /**
     * @param unknown which answer
     * @param how     how it came about
     * @param trace   the slips on which the answer depends
     * @param own     those of them that were made in finding or writing this very answer
     */
    record Outcome(int unknown, How how, long trace, long own) {
    }

    /**
     * Slips that go on.
     *
     * @param forgotten loads left out for good, one bit each
     * @param swapped   unknowns whose sine and cosine change places for good, one bit each; all bits for every force
     * @param trace     the bits of these slips
     */
    private record Lasting(long forgotten, long swapped, long trace) {
    }

    static State start(int unknowns, double cost) {
        double[] values = new double[unknowns];
        Arrays.fill(values, Double.NaN);
        return new State(values, new double[unknowns], new long[unknowns], cost, Chain.empty(), Chain.empty(),
                new Lasting(0, 0, 0));
    }

    double value(int unknown) {
        return values[unknown];
    }

    double spread(int unknown) {
        return spreads[unknown];
    }

    long trace(int unknown) {
        return traces[unknown];
    }

    boolean isKnown(int unknown) {
        return !Double.isNaN(values[unknown]);
    }

    double cost() {
        return cost;
    }

    List<Slip> slips() {
        return slips.list();
    }

    List<Outcome> outcomes() {
        return outcomes.list();
    }

    /** What sets it apart from states with the same history. */
    List<Object> history() {
        return List.of(slips, outcomes);
    }

    /** Whether a load has been forgotten for good. */
    boolean forgets(int load) {
        return load < Long.SIZE && (lasting.forgotten() >> load & 1) == 1;
    }

    /** The bit of the slip last noted. */
    long trace() {
        return slips.size() == 0 ? 0 : 1L << slips.size() - 1;
    }

    /** The bits of the slips that go on. */
    long lasting() {
        return lasting.trace();
    }

    /** Whether the sine and cosine of a force change places for good. */
    boolean swaps(Acting force) {
        boolean itsOwn = !force.isLoad() && force.unknown() < Long.SIZE - 1
                && (lasting.swapped() >> force.unknown() & 1) == 1;
        return itsOwn || lasting.swapped() == ALL;
    }

    /** With a slip more. */
    State slipping(Slip slip, double price) {
        return new State(values, spreads, traces, cost + price, slips.and(slip), outcomes, lasting);
    }

    State paying(double price) {
        return new State(values, spreads, traces, cost + price, slips, outcomes, lasting);
    }

    /** The slip last noted is that {@code load} is left out from here on. */
    State forgetting(int load) {
        return lasting(new Lasting(lasting.forgotten() | 1L << load, lasting.swapped(), lasting.trace() | trace()));
    }

    /** The slip last noted is that the sine and cosine of every force change places from here on. */
    State swappingAll() {
        return lasting(new Lasting(lasting.forgotten(), ALL, lasting.trace() | trace()));
    }

    /** The slip last noted is that the sine and cosine of an unknown change places from here on. */
    State swapping(int unknown) {
        return lasting(new Lasting(lasting.forgotten(), lasting.swapped() | 1L << unknown,
                lasting.trace() | trace()));
    }

    private State lasting(Lasting now) {
        return new State(values, spreads, traces, cost, slips, outcomes, now);
    }

    /** With a value found, or another in its place. */
    State with(int unknown, double value, double spread, long trace) {
        double[] v = values.clone();
        double[] s = spreads.clone();
        long[] t = traces.clone();
        v[unknown] = value;
        s[unknown] = spread;
        t[unknown] = trace;
        return new State(v, s, t, cost, slips, outcomes, lasting);
    }

    /** With the way noted in which a stated answer came about. */
    State noting(Outcome outcome, double price) {
        return new State(values, spreads, traces, cost + price, slips, outcomes.and(outcome), lasting);
    }

    /**
     * What decides how the state goes on: values that are {@code needed}, to seven figures, and slips that go on. Two
     * states with the same key differ only in how they came about.
     */
    Key key(boolean[] needed) {
        int[] bits = new int[values.length];
        for (int i = 0; i < values.length; i++) {
            boolean counts = needed[i] && !Double.isNaN(values[i]) && Math.abs(values[i]) > NOTHING;
            bits[i] = counts ? Float.floatToIntBits((float) values[i]) : 0;
        }
        return new Key(bits, lasting.forgotten(), lasting.swapped());
    }

    /** See {@link #key}. */
    static final class Key {
        private final int[] bits;
        private final long forgotten;
        private final long swapped;

        Key(int[] bits, long forgotten, long swapped) {
            this.bits = bits;
            this.forgotten = forgotten;
            this.swapped = swapped;
        }

        @Override
        public boolean equals(Object other) {
            return other instanceof Key key && forgotten == key.forgotten && swapped == key.swapped
                    && Arrays.equals(bits, key.bits);
        }

        @Override
        public int hashCode() {
            return 31 * Arrays.hashCode(bits) + Long.hashCode(forgotten ^ Long.rotateLeft(swapped, 17));
        }
    }
}
