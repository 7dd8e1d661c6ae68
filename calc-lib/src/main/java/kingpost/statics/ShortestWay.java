package kingpost.statics;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The fewest equations of a pool that lead to one unknown, each giving one unknown by means of those before it. The
 * cost of an equation is one and what its other unknowns cost; the search is exact but for unknowns that two others
 * need, which it counts twice before the chain is put together.
 *
 * <p>Source: D. E. Knuth, A generalization of Dijkstra's algorithm, Information Processing Letters 6 (1977) 1-5.
 */
final class ShortestWay {

    private static final int UNREACHED = 1 << 24;

    private final Inspections inspections;
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
        return Optional.of(links);
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
