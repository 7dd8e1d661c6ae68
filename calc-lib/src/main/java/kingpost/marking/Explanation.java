package kingpost.marking;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import kingpost.marking.Slip.Kind;
import kingpost.marking.Slip.Place;
import kingpost.marking.State.How;
import kingpost.marking.State.Outcome;

/**
 * What the search found for a sheet: the cheapest end and those about as cheap; one that names a slip stands before one
 * that leaves the answer unexplained.
 *
 * @param cost  of the cheapest, in slips
 * @param ends  the cheapest first
 * @param whole a slip of the sheet as a whole that was supposed beforehand
 */
record Explanation(double cost, List<State> ends, Optional<Slip> whole) {

    /** So many answers without explanation leave little trust in the slips named beside them. */
    private static final int HEAP = 2;

    Explanation {
        ends = List.copyOf(ends);
    }

    static Explanation of(List<State> ends, Optional<Slip> whole, double price) {
        double least = ends.get(0).cost();
        return new Explanation(least + price, ends.stream().filter(end -> end.cost() <= least + Price.TIE)
                .sorted(Comparator.comparingLong(Explanation::unexplained)).toList(), whole);
    }

    private static long unexplained(State end) {
        return end.slips().stream().filter(slip -> slip.kind() == Kind.UNEXPLAINED).count();
    }

    /** The slips of the likeliest explanation. */
    List<Slip> slips() {
        return named(ends.get(0));
    }

    /** The slips of each other explanation, without those that say the same. */
    List<List<Slip>> others() {
        Set<List<Slip>> all = new LinkedHashSet<>();
        ends.forEach(end -> all.add(named(end)));
        all.remove(slips());
        return List.copyOf(all);
    }

    private List<Slip> named(State end) {
        List<Slip> named = new ArrayList<>();
        whole.ifPresent(named::add);
        end.slips().stream().filter(slip -> slip.kind() != Kind.UNEXPLAINED).map(Explanation::settled)
                .forEach(named::add);
        if (unexplained(end) > HEAP) {
            named.retainAll(told(verdicts(end)));
        }
        return named;
    }

    /** Slips that verdicts tell of; among many answers that nothing explains others mean nothing. */
    private static Set<Slip> told(Map<Integer, Verdict> verdicts) {
        Set<Slip> told = new LinkedHashSet<>();
        verdicts.values().forEach(verdict -> {
            if (verdict instanceof Verdict.Slipped slipped) {
                told.addAll(slipped.candidates());
            } else if (verdict instanceof Verdict.FollowThrough follows) {
                told.addAll(follows.from());
            }
        });
        return told;
    }

    /** Whether a written value was also carried tells nothing apart that a person would name differently. */
    private static Slip settled(Slip slip) {
        return slip.where() instanceof Place.InAnswer
                ? new Slip(slip.kind(), new Place.InAnswer(false), slip.subject(), slip.other()) : slip;
    }

    /** Verdicts on answers that are not right, by unknown; one that the search never met is unexplained. */
    Map<Integer, Verdict> verdicts() {
        Map<Integer, Verdict> verdicts = new HashMap<>();
        Map<Integer, Set<Slip>> others = new HashMap<>();
        for (State end : ends) {
            Map<Integer, Verdict> here = verdicts(end);
            here.forEach((unknown, verdict) -> {
                verdicts.putIfAbsent(unknown, verdict);
                if (verdict instanceof Verdict.Slipped slipped) {
                    others.computeIfAbsent(unknown, u -> new LinkedHashSet<>()).addAll(slipped.candidates());
                }
            });
        }
        verdicts.replaceAll((unknown, verdict) -> verdict instanceof Verdict.Slipped slipped
                ? new Verdict.Slipped(List.copyOf(others.get(unknown))) : verdict);
        return verdicts;
    }

    private static Map<Integer, Verdict> verdicts(State end) {
        Map<Integer, Verdict> verdicts = new HashMap<>();
        long shown = 0;
        for (Outcome outcome : end.outcomes()) {
            shown |= outcome.own();
        }
        for (Outcome outcome : end.outcomes()) {
            long hidden = outcome.trace() & ~shown;
            verdicts.put(outcome.unknown(), verdict(end, outcome, hidden));
            shown |= hidden;
        }
        return verdicts;
    }

    /** A slip that no answer shows is told at the first answer that depends on it. */
    private static Verdict verdict(State end, Outcome outcome, long hidden) {
        long here = outcome.own() != 0 ? outcome.own() : hidden;
        if (here != 0) {
            List<Slip> slips = pick(end, here);
            return slips.get(0).kind() == Kind.UNEXPLAINED ? new Verdict.Unexplained()
                    : new Verdict.Slipped(slips.stream().map(Explanation::settled).toList());
        }
        if (outcome.trace() != 0) {
            return new Verdict.FollowThrough(pick(end, outcome.trace()).stream().map(Explanation::settled).toList());
        }
        return outcome.how() == How.MATCHED ? new Verdict.Right(false)
                : new Verdict.Slipped(List.of(new Slip(Kind.ROUNDED_CARRIED, new Place.Throughout(), "", "")));
    }

    private static List<Slip> pick(State end, long bits) {
        List<Slip> slips = new ArrayList<>();
        for (int i = 0; i < end.slips().size(); i++) {
            if ((bits >> i & 1) == 1) {
                slips.add(end.slips().get(i));
            }
        }
        return slips;
    }
}
