package kingpost.marking;

import java.util.List;
import kingpost.marking.Tweak.Change;

/** The equations of one stage in numbers, with the slips of a state and perhaps one more put in. */
final class Equations {

    private static final double SMALL = 1e-10;

    private final Bodies bodies;
    private final Terms terms;
    private final Tweak tweak;

    /** @param tweak one more slip, or {@code null} */
    Equations(Bodies bodies, Terms terms, Tweak tweak) {
        this.bodies = bodies;
        this.terms = terms;
        this.tweak = tweak;
    }

    int rows() {
        return terms.rows();
    }

    /**
     * One unknown's answer.
     *
     * @param spread how much it may be off through rounding of what it is made from
     * @param trace  the slips it depends on
     * @param own    those of them made in these very equations
     */
    record Answer(double value, double spread, long trace, long own) {
    }

    /** The unknowns {@code wanted} from as many {@code rows}; {@code null} where they do not give them. */
    Answer[] solve(List<Integer> rows, List<Integer> wanted, State state) {
        int n = wanted.size();
        double[][] matrix = new double[n][n];
        for (int i = 0; i < n; i++) {
            for (int k = 0; k < n; k++) {
                matrix[i][k] = coefficient(rows.get(i), terms.column(wanted.get(k)), state);
            }
        }
        double[][] inverse = SmallSystem.inverse(matrix);
        if (inverse == null) {
            return null;
        }
        long lasting = lasting(state);
        Answer[] answers = new Answer[n];
        for (int i = 0; i < n; i++) {
            answers[i] = answer(inverse[i], rows, wanted, state, isTouched(inverse[i], rows) ? lasting | state.trace() : lasting);
        }
        return answers;
    }

    /**
     * Whether the slip put in has a part in the equations that an answer is made of; at a joint it counts for all that is
     * found there.
     */
    private boolean isTouched(double[] weights, List<Integer> rows) {
        if (tweak != null && tweak.slip().where() instanceof Slip.Place.AtJoint) {
            return true;
        }
        for (int k = 0; tweak != null && k < weights.length; k++) {
            for (int f = 0; Math.abs(weights[k]) > SMALL && f < terms.acting().size(); f++) {
                if (tweak.hits(f, rows.get(k)) && terms.has(rows.get(k), f)) {
                    return true;
                }
            }
        }
        return false;
    }

    private Answer answer(double[] weights, List<Integer> rows, List<Integer> wanted, State state, long own) {
        double value = 0;
        double spread = 0;
        long trace = own;
        for (int f = 0; f < terms.acting().size(); f++) {
            Acting force = terms.acting().get(f);
            if (!force.isLoad() && wanted.contains(force.unknown())) {
                continue;
            }
            double factor = 0;
            for (int k = 0; k < weights.length; k++) {
                factor -= weights[k] * coefficient(rows.get(k), f, state);
            }
            if (Math.abs(factor) > SMALL) {
                value += factor * carried(f, state);
                spread += force.isLoad() ? 0 : Math.abs(factor) * state.spread(force.unknown());
                trace |= force.isLoad() ? 0 : state.trace(force.unknown());
            }
        }
        return new Answer(value, spread, trace, own);
    }

    private double carried(int f, State state) {
        if (tweak != null && tweak.force() == f && tweak.change() instanceof Change.Valued valued) {
            return valued.value();
        }
        Acting force = terms.acting().get(f);
        return force.isLoad() ? bodies.load(force.load()) : state.value(force.unknown());
    }

    private double coefficient(int row, int f, State state) {
        Acting force = terms.acting().get(f);
        if (force.isLoad() && state.forgets(force.load())) {
            return 0;
        }
        double here = state.swaps(force) ? terms.swapped(row, f) : terms.plain(row, f);
        if (tweak == null || !tweak.hits(f, row)) {
            return here;
        }
        if (tweak.change() instanceof Change.LeftOut) {
            return 0;
        }
        if (tweak.change() instanceof Change.Reversed) {
            return -here;
        }
        return tweak.change() instanceof Change.Swapped ? terms.swapped(row, f) : here;
    }

    /** The slips that go on, where they touch these equations. */
    private long lasting(State state) {
        boolean touched = state.lasting() != 0 && terms.acting().stream()
                .anyMatch(force -> state.swaps(force) || force.isLoad() && state.forgets(force.load()));
        return touched ? state.lasting() : 0;
    }
}
