package kingpost.statics;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The fewest equations of a pool that lead to one unknown, each giving one unknown by means of those before it. The
 * cost of an equation is one and what its other unknowns cost. Unknowns that two others need are counted twice by that,
 * so a chain found is then held against all shorter ones, as far as their number allows.
 *
 * <p>Source: D. E. Knuth, A generalization of Dijkstra's algorithm, Information Processing Letters 6 (1977) 1-5.
 */
final class ShortestWay {

    private static final int UNREACHED = 1 << 24;

    /** Looks at an equation with some unknowns known, before the search for shorter chains is given up. */
    private static final int MOST_LOOKS = 300_000;

    private final Inspections inspections;
    private final List<EquationPool.Entry> pool;
    private final int[] cost;
    private final Link[] via;

    /** An equation and the one unknown that is taken from it. */
    record Link(EquationPool.Entry entry, Body.Force unknown) {
        int number() {
            return unknown.unknown();
        }
    }

    ShortestWay(Network network, Inspections inspections, List<EquationPool.Entry> pool) {
        this.inspections = inspections;
        this.pool = pool;
        cost = new int[network.unknowns()];
        via = new Link[cost.length];
        Arrays.fill(cost, UNREACHED);
        boolean more = true;
        while (more) {
            more = false;
            for (EquationPool.Entry entry : pool) {
                more |= relax(entry);
            }
        }
    }

    private boolean relax(EquationPool.Entry entry) {
        int all = 1;
        for (Body.Force force : entry.unknowns()) {
            all = Math.min(2 * UNREACHED, all + cost[leader(force)]);
        }
        boolean cheaper = false;
        for (Body.Force force : entry.unknowns()) {
            int others = 1;
            for (Body.Force other : entry.unknowns()) {
                others = Math.min(UNREACHED, others + (other == force ? 0 : cost[leader(other)]));
            }
            if (others < cost[leader(force)]) {
                cost[leader(force)] = others;
                via[leader(force)] = new Link(entry, force);
                cheaper = true;
            }
        }
        return cheaper;
    }

    private int leader(Body.Force force) {
        return inspections.leader(force.unknown());
    }

    /** The equations in an order in which each can be solved; empty where the pool does not lead to it. */
    Optional<List<Link>> to(int unknown) {
        int target = inspections.leader(unknown);
        if (cost[target] >= UNREACHED) {
            return Optional.empty();
        }
        Set<Integer> seen = new LinkedHashSet<>();
        List<Link> links = new ArrayList<>();
        collect(target, seen, links);
        return Optional.of(shorter(target, links.size()).orElse(links));
    }

    /** What is known after some equations, and these. */
    private record Reached(BitSet known, List<Link> links) {
        Reached with(int unknown, Link link) {
            BitSet more = (BitSet) known.clone();
            more.set(unknown);
            List<Link> longer = new ArrayList<>(links);
            longer.add(link);
            return new Reached(more, longer);
        }
    }

    /** A chain of fewer equations than this, if there is one: every set of unknowns that so many can tell is tried. */
    private Optional<List<Link>> shorter(int target, int than) {
        List<EquationPool.Entry> different = different();
        List<Reached> level = List.of(new Reached(new BitSet(), List.of()));
        int looks = 0;
        for (int length = 1; length < than; length++) {
            Map<BitSet, Reached> next = new LinkedHashMap<>();
            for (Reached reached : level) {
                looks += different.size();
                if (looks > MOST_LOOKS) {
                    return Optional.empty();
                }
                for (EquationPool.Entry entry : different) {
                    Body.Force only = only(entry, reached.known);
                    if (only != null && leader(only) == target) {
                        return Optional.of(reached.with(target, new Link(entry, only)).links);
                    }
                    if (only != null && length + 1 < than) {
                        Reached on = reached.with(leader(only), new Link(entry, only));
                        next.putIfAbsent(on.known, on);
                    }
                }
            }
            level = List.copyOf(next.values());
        }
        return Optional.empty();
    }

    /** One equation, the first, of those that hold the same unknowns. */
    private List<EquationPool.Entry> different() {
        Map<BitSet, EquationPool.Entry> different = new LinkedHashMap<>();
        for (EquationPool.Entry entry : pool) {
            BitSet unknowns = new BitSet();
            entry.unknowns().forEach(force -> unknowns.set(leader(force)));
            different.putIfAbsent(unknowns, entry);
        }
        return List.copyOf(different.values());
    }

    /** The one unknown of an equation that is not known, or null. */
    private Body.Force only(EquationPool.Entry entry, BitSet known) {
        Body.Force only = null;
        for (Body.Force force : entry.unknowns()) {
            if (!known.get(leader(force))) {
                if (only != null) {
                    return null;
                }
                only = force;
            }
        }
        return only;
    }

    private void collect(int unknown, Set<Integer> seen, List<Link> links) {
        if (seen.add(unknown)) {
            Link link = via[unknown];
            for (Body.Force force : link.entry().unknowns()) {
                if (force != link.unknown()) {
                    collect(leader(force), seen, links);
                }
            }
            links.add(link);
        }
    }
}
