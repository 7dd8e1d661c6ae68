package kingpost.marking;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import kingpost.marking.Equations.Answer;
import kingpost.marking.Reading.Force;
import kingpost.marking.Reading.Said;
import kingpost.marking.Slip.Kind;
import kingpost.marking.Slip.Place;
import kingpost.marking.State.How;
import kingpost.marking.State.Outcome;

/**
 * The step from an answer that a working gives to the answer that a person states: it may be written down as it is, or
 * with a slip; and either what is written or what was found may be carried on.
 */
final class Recorder {

    private static final int PREFIXES = 6;
    /** An answer that may be off by more than this part of itself tells no slip in writing it. */
    private static final double SHARP = 0.02;

    private final Bodies bodies;
    private final Unknowns unknowns;
    private final double[] right;
    private final Map<Integer, Force> stated;
    private final double truss;
    private final double budget;
    private final Map<String, List<Double>> transposed = new HashMap<>();

    /**
     * @param right  the right values of all unknowns
     * @param stated what was stated, by unknown
     * @param truss  the largest force of the truss
     * @param budget the most that an explanation may cost
     */
    Recorder(Bodies bodies, double[] right, Map<Integer, Force> stated, double truss, double budget) {
        this.bodies = bodies;
        this.unknowns = bodies.unknowns();
        this.right = right;
        this.stated = stated;
        this.truss = truss;
        this.budget = budget;
    }

    boolean isStated(int unknown) {
        return stated.containsKey(unknown);
    }

    /** Whether the answer found is the answer stated, or none is stated. */
    boolean fits(int unknown, Answer found) {
        Force force = stated.get(unknown);
        return force == null || Figures.agree(force, found.value(), found.spread(), truss)
                || Figures.agreeCoarsely(force, found.value(), truss);
    }

    /**
     * What a slip in the equations explains: here, where it makes an answer fit that did not; later, perhaps, where it
     * changes an answer that is not stated.
     *
     * @param plain   without the slip; {@code null} where there is no answer
     * @param slipped with it, likewise
     */
    Help helps(List<Integer> wanted, Answer[] plain, Answer[] slipped) {
        Help help = Help.NONE;
        for (int i = 0; slipped != null && i < slipped.length; i++) {
            boolean changed = plain == null || Math.abs(plain[i].value() - slipped[i].value()) > 1e-7 * truss;
            if (changed && !isStated(wanted.get(i))) {
                help = Help.PERHAPS_LATER;
            } else if (changed && fits(wanted.get(i), slipped[i]) && (plain == null || !fits(wanted.get(i), plain[i]))) {
                return Help.HERE;
            }
        }
        return help;
    }

    /** What supposing a slip explains. */
    enum Help { NONE, PERHAPS_LATER, HERE }

    /** Every way to go on from {@code state} with {@code found} for {@code unknown}, within the budget. */
    List<State> record(State state, int unknown, Answer found) {
        Force force = stated.get(unknown);
        List<State> ways = force == null ? unstated(state, unknown, found) : stated(state, unknown, found, force);
        ways.removeIf(way -> way.cost() > budget);
        return ways;
    }

    private List<State> unstated(State state, int unknown, Answer found) {
        List<State> ways = new ArrayList<>();
        boolean zero = Figures.isZero(found.value(), truss);
        double rounding = zero ? 0 : Figures.halfUnit(found.value(), Figures.ASKED);
        ways.add(state.with(unknown, found.value(), found.spread() + rounding, found.trace()));
        if (!zero && found.own() == 0 && found.trace() == 0 && state.cost() + Price.SENSE_UNSTATED <= budget) {
            State slipped = state.slipping(slip(Kind.SENSE_REVERSED, unknown, true, ""), Price.SENSE_UNSTATED);
            ways.add(slipped.with(unknown, -found.value(), found.spread() + rounding,
                    found.trace() | slipped.trace()));
        }
        return ways;
    }

    private List<State> stated(State state, int unknown, Answer found, Force force) {
        List<State> ways = new ArrayList<>();
        if (Figures.agree(force, found.value(), truss)) {
            ways.add(matched(state, unknown, found, found.value(), spread(force), 0));
        } else if (Figures.agreeCoarsely(force, found.value(), truss)) {
            ways.add(matched(state, unknown, found, found.value(), force.halfUnit(), Price.COARSELY));
        } else if (Figures.agree(force, found.value(), found.spread(), truss)) {
            ways.add(matched(state, unknown, found, force.value(), spread(force), Price.NEARLY));
        } else {
            if (Figures.near(force, found.value(), truss)) {
                ways.add(matched(state, unknown, found, force.value(), spread(force), Price.NEAR));
            }
            if (Figures.agree(force, right[unknown], truss)) {
                ways.add(state.with(unknown, right[unknown], spread(force), 0)
                        .noting(new Outcome(unknown, How.ANOTHER_WAY, 0, 0), Price.ANOTHER_WAY));
            }
            if (state.cost() + Price.SLIP <= budget) {
                slipped(ways, state, unknown, found, force);
            }
        }
        return ways;
    }

    /** What a value written down may be off; a whole number is as good as three figures. */
    private static double spread(Force force) {
        return force.isZero() ? 0 : Math.min(force.halfUnit(), Figures.halfUnit(force.value(), Figures.ASKED));
    }

    private State matched(State state, int unknown, Answer found, double carried, double spread, double price) {
        boolean exact = Figures.agree(stated.get(unknown), right[unknown], truss) || found.trace() != 0;
        return state.with(unknown, carried, spread, found.trace())
                .noting(new Outcome(unknown, exact ? How.MATCHED : How.NEARLY, found.trace(), found.own()), price);
    }

    private void slipped(List<State> ways, State state, int unknown, Answer found, Force force) {
        reversed(ways, state, unknown, found, force);
        if (transposed.computeIfAbsent(force.digits(), Figures::transposed).stream()
                .anyMatch(number -> gives(force, number * force.scale(), found))) {
            both(ways, state, unknown, found, force, Kind.DIGITS_TRANSPOSED, "", Price.TRANSPOSED);
        }
        for (int k = -PREFIXES; k <= PREFIXES; k++) {
            if (k != 0 && gives(force, Math.abs(force.value()) * Math.pow(10, k), found)) {
                both(ways, state, unknown, found, force, Kind.POWER_OF_TEN, Integer.toString(-k), Price.POWER_OF_TEN);
            }
        }
        if (force.figures() < Figures.ASKED && !force.isZero()
                && force.value() == Figures.round(found.value(), force.figures())) {
            both(ways, state, unknown, found, force, Kind.ROUNDED_CARRIED, "", Price.SLIP);
        }
        ofAnother(ways, state, unknown, found, force);
        both(ways, state, unknown, found, force, Kind.UNEXPLAINED, "", Price.UNEXPLAINED);
    }

    /** Whether the answer stated, with {@code size} for its size, would be the answer found. */
    private boolean gives(Force force, double size, Answer found) {
        double off = Math.abs(Math.copySign(size, force.value()) - found.value());
        if (Figures.isZero(found.value(), truss) || force.isZero()) {
            return false;
        }
        double spread = found.spread() <= SHARP * Math.abs(found.value()) ? found.spread() : 0;
        return off <= Figures.halfUnit(found.value(), Figures.ASKED) * (1 + 1e-7) + spread;
    }

    private void reversed(List<State> ways, State state, int unknown, Answer found, Force force) {
        if (!gives(force.reversed(), Math.abs(force.value()), found)) {
            return;
        }
        boolean word = force.said() == Said.WORD && unknowns.isMember(unknown);
        add(ways, state, unknown, found, force, false,
                slip(word ? Kind.WRONG_SENSE_WORD : Kind.SENSE_REVERSED, unknown, false, ""),
                word ? Price.SENSE_WORD : Price.SENSE_SIGN);
        add(ways, state, unknown, found, force, true, slip(Kind.SENSE_REVERSED, unknown, true, ""),
                word ? Price.SENSE_WORD_CARRIED : Price.SENSE_SIGN);
    }

    private void ofAnother(List<State> ways, State state, int unknown, Answer found, Force force) {
        for (int other = 0; other < unknowns.count(); other++) {
            double value = state.isKnown(other) ? state.value(other) : right[other];
            if (other != unknown && unknowns.isMember(other) == unknowns.isMember(unknown)
                    && !Figures.isZero(value, truss) && Figures.agree(force, value, truss)) {
                both(ways, state, unknown, found, force, Kind.WRONG_MEMBER_CARRIED, bodies.name(other),
                        Price.WRONG_MEMBER_WRITTEN);
            }
        }
    }

    private void both(List<State> ways, State state, int unknown, Answer found, Force force, Kind kind, String other,
                      double price) {
        add(ways, state, unknown, found, force, false, slip(kind, unknown, false, other), price);
        add(ways, state, unknown, found, force, true, slip(kind, unknown, true, other), price);
    }

    /** A value reversed is carried as it was found; any other as it is written. */
    private static void add(List<State> ways, State state, int unknown, Answer found, Force force, boolean carried,
                            Slip slip, double price) {
        State slipped = state.slipping(slip, price);
        long trace = found.trace() | slipped.trace();
        double value = slip.kind() == Kind.SENSE_REVERSED ? -found.value() : force.value();
        State next = carried ? slipped.with(unknown, value, spread(force), trace)
                : slipped.with(unknown, found.value(), found.spread(), found.trace());
        ways.add(next.noting(new Outcome(unknown, How.SLIPPED, trace, slipped.trace()), 0));
    }

    private Slip slip(Kind kind, int unknown, boolean carried, String other) {
        return new Slip(kind, new Place.InAnswer(carried), bodies.name(unknown), other);
    }
}
