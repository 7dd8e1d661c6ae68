package kingpost.statics;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import kingpost.statics.BodyEquation.Kind;

/**
 * Equations of equilibrium that could be written for a plane truss, before any number is put in: of each joint, of the
 * whole, of each part that a section leaves.
 */
final class EquationPool {

    /** Members that a section of the pool may meet. */
    private static final int MOST_CUT = 5;
    /** In a truss of so many joints, parts of two and three joints are tried as well. */
    private static final int SMALL = 40;
    /** Unknowns that an equation of the pool may hold. */
    private static final int MOST_UNKNOWNS = 5;

    private final Network network;
    private final Inspections inspections;
    private final IntPredicate isOpen;

    /**
     * @param part     joints of the body, all of them for the whole truss
     * @param unknowns the open unknowns that have a part in the equation
     */
    record Entry(BitSet part, Body body, Kind kind, List<Body.Force> unknowns) {

        boolean isOfJoint() {
            return part.cardinality() == 1;
        }
    }

    /** @param isOpen which unknowns are not known yet */
    EquationPool(Network network, Inspections inspections, IntPredicate isOpen) {
        this.network = network;
        this.inspections = inspections;
        this.isOpen = isOpen;
    }

    /** Sums along x, y and across each unknown of each joint. */
    List<Entry> ofJoints() {
        List<Entry> entries = new ArrayList<>();
        for (int joint = 0; joint < network.joints(); joint++) {
            if (!inspections.isUsedUp(joint)) {
                BitSet part = new BitSet();
                part.set(joint);
                add(part, entries);
            }
        }
        entries.removeIf(entry -> entry.kind() instanceof Kind.Moment);
        return entries;
    }

    /** Of the truss as one body. */
    List<Entry> ofWhole() {
        BitSet all = new BitSet();
        all.set(0, network.joints());
        List<Entry> entries = new ArrayList<>();
        add(all, entries);
        return entries;
    }

    /** Of the parts that sections leave, each with its other part. */
    List<Entry> ofSections() {
        List<Entry> entries = new ArrayList<>();
        Set<BitSet> parts = new LinkedHashSet<>();
        Stream.concat(new CutSearch(network, isOpen, MOST_CUT).parts().stream(), small().stream())
                .forEach(part -> parts.addAll(List.of(part, Cut.other(network, part))));
        parts.stream().filter(part -> part.cardinality() > 1 && hangsTogether(part)).forEach(part -> add(part, entries));
        entries.sort(Comparator.comparing(EquationPool::awkwardness).thenComparing(e -> e.body().forces().size()));
        return entries;
    }

    /** Each joint, to be cut off; in a small truss also two and three joints that members join. */
    private List<BitSet> small() {
        List<BitSet> all = new ArrayList<>();
        List<BitSet> last = new ArrayList<>();
        for (int joint = 0; joint < network.joints(); joint++) {
            BitSet one = new BitSet();
            one.set(joint);
            last.add(one);
        }
        for (int size = 1; !last.isEmpty(); size++) {
            all.addAll(last);
            Set<BitSet> next = new LinkedHashSet<>();
            if (size < 3 && network.joints() <= SMALL) {
                last.forEach(part -> part.stream().forEach(joint -> neighbours(joint).filter(n -> !part.get(n)).forEach(n -> {
                    BitSet larger = (BitSet) part.clone();
                    larger.set(n);
                    next.add(larger);
                })));
            }
            last = List.copyOf(next);
        }
        return all;
    }

    private IntStream neighbours(int joint) {
        return Arrays.stream(network.unknownsAt(joint)).filter(network::isMember).map(u -> network.otherEnd(u, joint));
    }

    /** 0 for moments about a joint and sums along x or y, 1 for what needs a point or an axis of its own. */
    private static int awkwardness(Entry entry) {
        return entry.kind() instanceof Kind.Moment moment ? (moment.joint().isEmpty() ? 1 : 0)
                : ((Kind.Along) entry.kind()).axis().label().length() - 1;
    }

    /** Whether members that are not cut join all joints of a part. */
    private boolean hangsTogether(BitSet part) {
        BitSet reached = new BitSet();
        List<Integer> front = new ArrayList<>(List.of(part.nextSetBit(0)));
        reached.set(front.get(0));
        for (int i = 0; i < front.size(); i++) {
            for (int u : network.unknownsAt(front.get(i))) {
                int other = network.isMember(u) ? network.otherEnd(u, front.get(i)) : front.get(i);
                if (part.get(other) && !reached.get(other)) {
                    reached.set(other);
                    front.add(other);
                }
            }
        }
        return reached.equals(part);
    }

    boolean isWhole(Entry entry) {
        return entry.part().cardinality() == network.joints();
    }

    private void add(BitSet part, List<Entry> entries) {
        Body body = Body.part(network, part);
        List<Body.Force> open = body.unknowns().stream().filter(f -> isOpen.test(f.unknown())).toList();
        for (Kind kind : BodyPlan.kinds(network, body, open)) {
            List<Body.Force> inIt = open.stream().filter(f -> body.factor(f, kind) != 0).toList();
            long apart = inIt.stream().mapToInt(f -> inspections.leader(f.unknown())).distinct().count();
            if (!inIt.isEmpty() && inIt.size() <= MOST_UNKNOWNS && apart == inIt.size()) {
                entries.add(new Entry(part, body, kind, inIt));
            }
        }
    }
}
