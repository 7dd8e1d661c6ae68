package kingpost.statics;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;

/**
 * Ways to cut a plane truss in two: along straight lines in many directions, around each stiff part, and along such a
 * way bent round one joint. Each way is the set of joints on one side.
 */
final class CutSearch {

    private static final int DIRECTIONS = 24;
    /** Above this many joints only stiff parts and upright or level cuts are tried. */
    private static final int LARGE = 150;

    private final Network network;
    private final IntPredicate isOpen;
    private final int most;
    private final List<BitSet> parts = new ArrayList<>();
    private final Set<BitSet> seen = new HashSet<>();

    /**
     * @param isOpen which unknowns are not known yet
     * @param most   the most members and reactions not known yet that a cut may meet
     */
    CutSearch(Network network, IntPredicate isOpen, int most) {
        this.network = network;
        this.isOpen = isOpen;
        this.most = most;
    }

    /** Sides of cuts, straight ones first; each cut appears with one side or both, as they were met. */
    List<BitSet> parts() {
        clusters();
        int stiffOnes = parts.size();
        int directions = network.joints() > LARGE ? 2 : DIRECTIONS;
        List<BitSet> straight = new ArrayList<>();
        for (int k = 0; k < directions; k++) {
            double angle = Math.PI * k / directions;
            sweep(new Vector(Math.cos(angle), Math.sin(angle), 0), straight);
        }
        straight.forEach(this::add);
        if (network.joints() <= LARGE) {
            List<BitSet> stiff = new ArrayList<>(parts.subList(0, stiffOnes));
            straight.forEach(this::bend);
            stiff.forEach(this::bend);
        }
        return parts;
    }

    private void sweep(Vector direction, List<BitSet> into) {
        int[] order = IntStream.range(0, network.joints()).boxed()
                .sorted(Comparator.comparingDouble(j -> network.place(j).dot(direction)))
                .mapToInt(Integer::intValue).toArray();
        BitSet part = new BitSet();
        for (int i = 0; i < order.length - 1; i++) {
            part.set(order[i]);
            double gap = network.place(order[i + 1]).minus(network.place(order[i])).dot(direction);
            if (gap > Network.IN_LINE * network.extent()) {
                into.add((BitSet) part.clone());
            }
        }
    }

    /** Each stiff part, and each without the joints that it shares with others. */
    private void clusters() {
        List<BitSet> clusters = new Clusters(network).joints();
        for (BitSet cluster : clusters) {
            BitSet alone = (BitSet) cluster.clone();
            clusters.stream().filter(other -> other != cluster).forEach(alone::andNot);
            add(alone);
            cluster.stream().filter(j -> !alone.get(j)).forEach(shared -> {
                BitSet without = (BitSet) cluster.clone();
                without.clear(shared);
                add(without);
            });
            add(cluster);
        }
    }

    /** The same line passed on the other side of one joint beside it. */
    private void bend(BitSet part) {
        if (openAcross(part) <= most + 3) {
            for (int j = 0; j < network.joints(); j++) {
                if (isBeside(j, part)) {
                    BitSet bent = (BitSet) part.clone();
                    bent.flip(j);
                    add(bent);
                }
            }
        }
    }

    private boolean isBeside(int joint, BitSet part) {
        for (int u : network.unknownsAt(joint)) {
            if (network.isMember(u) && part.get(joint) != part.get(network.otherEnd(u, joint))) {
                return true;
            }
        }
        return false;
    }

    private void add(BitSet part) {
        int size = part.cardinality();
        int open = openAcross(part);
        if (size > 1 && size < network.joints() - 1 && open > 0 && open <= most && seen.add(part)) {
            parts.add(part);
        }
    }

    /** Members not known yet from one side to the other. */
    private int openAcross(BitSet part) {
        int open = 0;
        for (int m = 0; m < network.members(); m++) {
            int first = network.firstJoint(m);
            open += isOpen.test(m) && part.get(first) != part.get(network.otherEnd(m, first)) ? 1 : 0;
        }
        return open;
    }
}
