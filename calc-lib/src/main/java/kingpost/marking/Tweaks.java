package kingpost.marking;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.IntPredicate;
import kingpost.marking.Slip.Kind;
import kingpost.marking.Slip.Place;
import kingpost.marking.Tweak.Change;

/** Every slip that may be supposed in the equations of a stage. */
final class Tweaks {

    private static final double SMALL = 1e-9;
    private static final int FEW_FIGURES = 2;

    private final Bodies bodies;
    private final Unknowns unknowns;
    private final Stage.Balance stage;
    private final Terms terms;
    private final State state;
    private final List<Tweak> tweaks = new ArrayList<>();

    private Tweaks(Bodies bodies, Stage.Balance stage, Terms terms, State state) {
        this.bodies = bodies;
        this.unknowns = bodies.unknowns();
        this.stage = stage;
        this.terms = terms;
        this.state = state;
    }

    /** @param later tells of a load whether it is met again after this stage */
    static List<Tweak> of(Bodies bodies, Stage.Balance stage, Terms terms, State state,
                          IntPredicate later) {
        Tweaks all = new Tweaks(bodies, stage, terms, state);
        for (int f = 0; f < stage.acting().size(); f++) {
            Acting force = stage.acting().get(f);
            if (force.isLoad() && !state.forgets(force.load())) {
                all.load(f, later.test(force.load()));
            } else if (!force.isLoad() && state.isKnown(force.unknown())) {
                all.known(f);
            }
            all.swap(f);
        }
        all.swapAll();
        return all.tweaks;
    }

    private void load(int f, boolean later) {
        if (later) {
            tweaks.add(new Tweak(new Slip(Kind.LOAD_FORGOTTEN, new Place.Throughout(), name(f), ""), Price.LOAD, f, -1,
                    new Change.LeftOut(), true));
        }
        add(Kind.LOAD_FORGOTTEN, f, -1, new Change.LeftOut(), Price.LOAD, "");
        rows(f, Kind.LOAD_FORGOTTEN, new Change.LeftOut(), Price.LOAD_IN_ONE_EQUATION);
        add(Kind.SENSE_REVERSED, f, -1, new Change.Reversed(), Price.SENSE_IN_EQUATION, "");
        rows(f, Kind.SENSE_REVERSED, new Change.Reversed(), Price.SENSE_IN_EQUATION + 0.1);
    }

    private void known(int f) {
        int unknown = stage.acting().get(f).unknown();
        double value = state.value(unknown);
        if (Math.abs(value) < SMALL) {
            return;
        }
        add(Kind.SENSE_REVERSED, f, -1, new Change.Reversed(), Price.SENSE_IN_EQUATION, "");
        add(Kind.FORCE_FORGOTTEN, f, -1, new Change.LeftOut(), Price.FORCE, "");
        rounded(f, value);
        List<Double> met = new ArrayList<>(List.of(value));
        for (int other = 0; other < unknowns.truss().members().size(); other++) {
            double instead = state.value(other);
            if (unknowns.isMember(unknown) && other != unknown && state.isKnown(other)
                    && met.stream().allMatch(each -> Math.abs(each - instead) > SMALL)) {
                met.add(instead);
                add(Kind.WRONG_MEMBER_CARRIED, f, -1, new Change.Valued(state.value(other)), Price.WRONG_MEMBER,
                        bodies.name(other));
            }
        }
    }

    private void rounded(int f, double value) {
        Set<Double> rounded = new LinkedHashSet<>();
        for (int figures = 1; figures <= FEW_FIGURES; figures++) {
            rounded.add(Figures.roundFast(value, figures));
        }
        for (int decimals = 0; decimals <= 1; decimals++) {
            rounded.add(Figures.roundDecimals(value, decimals));
        }
        double enough = 0.1 * Figures.halfUnit(value, Figures.ASKED);
        for (double each : rounded) {
            if (Math.abs(each - value) > enough && each != 0) {
                tweaks.add(new Tweak(new Slip(Kind.ROUNDED_CARRIED, place(), name(f), number(each)), Price.ROUNDED, f,
                        -1, new Change.Valued(each), true));
            }
        }
    }

    private void swap(int f) {
        Acting force = stage.acting().get(f);
        if (!terms.turns(f) || state.swaps(force)) {
            return;
        }
        add(Kind.SINE_COSINE_SWAPPED, f, -1, new Change.Swapped(), Price.SWAP, "");
        rows(f, Kind.SINE_COSINE_SWAPPED, new Change.Swapped(), Price.SWAP_IN_ONE_EQUATION);
        if (!force.isLoad() && !state.isKnown(force.unknown()) && force.unknown() < Long.SIZE - 1) {
            tweaks.add(new Tweak(new Slip(Kind.SINE_COSINE_SWAPPED, new Place.Throughout(), name(f), ""),
                    Price.SWAP_OF_ONE_THROUGHOUT, f, -1, new Change.Swapped(), true));
        }
    }

    private void swapAll() {
        int inclined = 0;
        for (int f = 0; f < stage.acting().size(); f++) {
            inclined += terms.turns(f) && !state.swaps(stage.acting().get(f)) ? 1 : 0;
        }
        if (inclined > 0) {
            tweaks.add(new Tweak(new Slip(Kind.SINE_COSINE_SWAPPED, new Place.Throughout(), "", ""),
                    Price.SWAP_THROUGHOUT, -1, -1, new Change.Swapped(), true));
        }
        if (inclined > 1) {
            tweaks.add(new Tweak(new Slip(Kind.SINE_COSINE_SWAPPED, place(), "", ""), Price.SWAP, -1, -1,
                    new Change.Swapped(), false));
        }
    }

    private void add(Kind kind, int f, int row, Change change, double price, String other) {
        tweaks.add(new Tweak(new Slip(kind, place(), name(f), other), price, f, row, change, false));
    }

    /** The same in one equation only, where the force has a part in more than one. */
    private void rows(int f, Kind kind, Change change, double price) {
        List<Integer> parts = new ArrayList<>();
        for (int row = 0; row < terms.rows(); row++) {
            if (terms.has(row, f)) {
                parts.add(row);
            }
        }
        if (parts.size() > 1) {
            parts.forEach(row -> add(kind, f, row, change, price, ""));
        }
    }

    private Place place() {
        return stage.place();
    }

    private String name(int f) {
        Acting force = stage.acting().get(f);
        return force.isLoad() ? bodies.loadName(force.load()) : bodies.name(force.unknown());
    }

    private static String number(double value) {
        return java.math.BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
    }
}
