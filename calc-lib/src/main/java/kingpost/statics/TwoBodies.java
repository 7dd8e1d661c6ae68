package kingpost.statics;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import kingpost.statics.BodyEquation.Kind;
import kingpost.statics.EquationPool.Entry;

/**
 * Where no equation holds one unknown alone: two equations, of the whole truss or of parts, that hold the same two. A
 * three-hinged arch with supports at two levels is the usual case.
 */
final class TwoBodies {

    /** Sine of the angle below which two equations say the same. */
    private static final double SAME = 1e-6;

    private final Network network;
    private final Inspections inspections;
    private final EquationPool pool;

    TwoBodies(Network network, Inspections inspections, Progress progress) {
        this.network = network;
        this.inspections = inspections;
        this.pool = new EquationPool(network, inspections, u -> !progress.isSolved(u));
    }

    /** @param opens whether joints can go on with these unknowns known */
    Optional<List<Entry>> find(Predicate<List<Integer>> opens) {
        Map<List<Integer>, List<Entry>> byPair = new LinkedHashMap<>();
        Stream.concat(pool.ofWhole().stream(), pool.ofSections().stream()).filter(e -> e.unknowns().size() == 2)
                .forEach(e -> byPair.computeIfAbsent(unknowns(e), key -> new ArrayList<>()).add(e));
        return byPair.entrySet().stream().filter(each -> opens.test(each.getKey()))
                .sorted(Comparator.comparing(each -> each.getKey().stream().anyMatch(network::isMember)))
                .flatMap(each -> independent(each.getValue()).stream()).findFirst();
    }

    /** The two unknowns, each by the number that stands for all members in line that carry the same. */
    List<Integer> unknowns(Entry entry) {
        return entry.unknowns().stream().map(f -> inspections.leader(f.unknown())).sorted().toList();
    }

    /** The two simplest that do not say the same: moments about joints before others, fewer forces before more. */
    private Optional<List<Entry>> independent(List<Entry> entries) {
        List<Entry> simple = entries.stream().sorted(Comparator.comparing(this::awkwardness)
                .thenComparing(e -> e.body().forces().size())).toList();
        for (int i = 0; i < simple.size(); i++) {
            for (int k = 0; k < i; k++) {
                if (Math.abs(determinant(simple.get(k), simple.get(i))) > SAME) {
                    return Optional.of(List.of(simple.get(k), simple.get(i)));
                }
            }
        }
        return Optional.empty();
    }

    private int awkwardness(Entry entry) {
        boolean joint = entry.kind() instanceof Kind.Moment moment && !moment.joint().isEmpty();
        return (joint ? 0 : 2) + (pool.isWhole(entry) ? 0 : 1);
    }

    private double determinant(Entry a, Entry b) {
        double[] first = factors(a);
        double[] second = factors(b);
        return (first[0] * second[1] - first[1] * second[0])
                / (Math.hypot(first[0], first[1]) * Math.hypot(second[0], second[1]));
    }

    /** In the order of {@link #unknowns}. */
    double[] factors(Entry entry) {
        return unknowns(entry).stream().mapToDouble(u -> entry.body().factor(force(entry, u), entry.kind())).toArray();
    }

    private Body.Force force(Entry entry, int leader) {
        return entry.unknowns().stream().filter(f -> inspections.leader(f.unknown()) == leader).findFirst().orElseThrow();
    }
}
