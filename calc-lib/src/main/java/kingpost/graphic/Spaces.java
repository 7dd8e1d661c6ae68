package kingpost.graphic;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import kingpost.statics.Vector;

/**
 * Bow's notation: the spaces between the outside forces are lettered clockwise, those inside numbered from the left.
 * Letters that are names of joints are passed over.
 */
final class Spaces {

    private final PlaneTruss truss;
    private final Embedding embedding;
    private final int[] left;
    private final List<Crossed> outside = new ArrayList<>();
    private final List<String> names = new ArrayList<>();
    private final List<List<String>> joints = new ArrayList<>();
    private final int lettered;

    /** An outside force, and the joint on which it acts; it leads from the space before it to the one after. */
    record Crossed(Side side, int joint) {
    }

    /** Every load and reaction acts on the outline, and there is at least one. */
    Spaces(PlaneTruss truss, Embedding embedding) {
        this.truss = truss;
        this.embedding = embedding;
        this.left = new int[2 * truss.members()];
        walk();
        lettered = outside.size();
        number();
    }

    /** Outside forces clockwise; the i-th leads to space i, from the one before it. */
    List<Crossed> outside() {
        return outside;
    }

    /** How many spaces are outside; they come first. */
    int lettered() {
        return lettered;
    }

    int count() {
        return names.size();
    }

    String name(int space) {
        return names.get(space);
    }

    /** See {@link ForceDiagram.Space#joints}. */
    List<String> joints(int space) {
        return joints.get(space);
    }

    /** The space to the left of a half-edge, which is the one before it clockwise round its origin. */
    int before(int half) {
        return left[half];
    }

    /** The space after it. */
    int after(int half) {
        return left[half ^ 1];
    }

    private void walk() {
        List<Integer> boundary = embedding.boundary(embedding.outer().get(0));
        List<Crossed> met = new ArrayList<>();
        List<Integer> upTo = new ArrayList<>();
        for (int half : boundary) {
            upTo.add(met.size());
            int joint = embedding.head(half);
            Round round = new Round(truss, embedding, joint,
                    k -> embedding.outer().contains(embedding.cornerFace(joint, k)));
            round.corner(embedding.position(half ^ 1)).forEach(side -> met.add(new Crossed(side, joint)));
        }
        int first = first(met);
        int n = met.size();
        for (int i = 0; i < n; i++) {
            Crossed force = met.get((first + i) % n);
            outside.add(force);
            joints.add(new ArrayList<>(List.of(truss.name(force.joint))));
        }
        Set<String> taken = truss.truss().joints().stream().map(j -> j.name().toUpperCase(java.util.Locale.ROOT))
                .collect(Collectors.toCollection(HashSet::new));
        for (int i = 0; names.size() < n; i++) {
            if (!taken.contains(letters(i))) {
                names.add(letters(i));
            }
        }
        for (int i = 0; i < boundary.size(); i++) {
            int space = Math.floorMod(upTo.get(i) - 1 - first, n);
            left[boundary.get(i)] = space;
        }
        int start = startOf(boundary, upTo, first, n);
        for (int i = 0; i < boundary.size(); i++) {
            int half = boundary.get((start + i) % boundary.size());
            joints.get(left[half]).add(truss.name(embedding.head(half)));
        }
    }

    /** The half-edge after the corner in which the first force lies, so that each space meets its joints in order. */
    private static int startOf(List<Integer> boundary, List<Integer> upTo, int first, int n) {
        for (int i = 0; i < boundary.size(); i++) {
            int here = upTo.get(i);
            int next = i + 1 < boundary.size() ? upTo.get(i + 1) : n;
            if (here <= first && first < next) {
                return (i + 1) % boundary.size();
            }
        }
        return 0;
    }

    /** The reaction farthest to the left, or the load where nothing is held by one. */
    private int first(List<Crossed> met) {
        Comparator<Crossed> leftmost = Comparator.comparing((Crossed c) -> !(c.side.cause() instanceof Cause.OfSupport))
                .thenComparingDouble(c -> truss.place(c.joint).x()).thenComparingDouble(c -> truss.place(c.joint).y());
        return met.indexOf(met.stream().min(leftmost).orElseThrow());
    }

    /** A to Z without I and O, which look like figures; then AA, AB ... */
    private static String letters(int number) {
        String alphabet = "ABCDEFGHJKLMNPQRSTUVWXYZ";
        int size = alphabet.length();
        String last = alphabet.substring(number % size, number % size + 1);
        return number < size ? last : letters(number / size - 1) + last;
    }

    private void number() {
        Integer[] inside = java.util.stream.IntStream.range(0, embedding.faces()).boxed()
                .filter(f -> !embedding.outer().contains(f)).toArray(Integer[]::new);
        double slack = 1e-9;
        Arrays.sort(inside, Comparator.comparingDouble((Integer f) -> Math.rint(middle(f).x() / slack) * slack)
                .thenComparing(f -> -middle(f).y()));
        for (int i = 0; i < inside.length; i++) {
            List<Integer> boundary = embedding.boundary(inside[i]);
            for (int half : boundary) {
                left[half] = names.size();
            }
            names.add(Integer.toString(i + 1));
            joints.add(boundary.stream().map(half -> truss.name(embedding.origin(half))).toList());
        }
    }

    private Vector middle(int face) {
        Vector sum = new Vector(0, 0, 0);
        List<Integer> boundary = embedding.boundary(face);
        for (int half : boundary) {
            sum = sum.plus(truss.place(embedding.origin(half)));
        }
        return sum.times(1.0 / boundary.size());
    }
}
