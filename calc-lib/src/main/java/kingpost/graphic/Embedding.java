package kingpost.graphic;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import kingpost.statics.Vector;

/**
 * A truss as lines on paper: members round each joint, and the faces that they enclose. A member has two half-edges, one
 * each way; half-edge {@code 2m} runs from its first end to its second, {@code 2m + 1} back. A <em>corner</em> of a joint
 * lies clockwise after one of its members, up to the next.
 *
 * <p>Source: M. de Berg and others, Computational Geometry, 3rd edition, section 2.2 (half-edges).
 */
final class Embedding {

    private static final double TURN = 2 * Math.PI;

    private final PlaneTruss truss;
    private final int[][] out;
    private final int[] position;
    private final int[] face;
    private final List<List<Integer>> faces = new ArrayList<>();
    private final List<Integer> outer = new ArrayList<>();

    Embedding(PlaneTruss truss) {
        this.truss = truss;
        out = new int[truss.joints()][];
        position = new int[2 * truss.members()];
        face = new int[2 * truss.members()];
        sort();
        trace();
    }

    int origin(int half) {
        return truss.number(half % 2 == 0 ? truss.member(half / 2).from() : truss.member(half / 2).to());
    }

    int head(int half) {
        return origin(half ^ 1);
    }

    /** Half-edges that leave a joint, clockwise. */
    int[] out(int joint) {
        return out[joint];
    }

    /** Which corner of a joint lies clockwise after a half-edge that leaves it. */
    int position(int half) {
        return position[half];
    }

    /** The half-edge clockwise after one that leaves a joint. */
    int clockwise(int half) {
        int[] round = out[origin(half)];
        return round[(position[half] + 1) % round.length];
    }

    /** The face to the left of a half-edge. */
    int face(int half) {
        return face[half];
    }

    /** The half-edges with a face to their left, one after the other. */
    List<Integer> boundary(int number) {
        return faces.get(number);
    }

    int faces() {
        return faces.size();
    }

    /** Faces that lie outside: one for a truss in one piece. */
    List<Integer> outer() {
        return outer;
    }

    /** The face in the corner of a joint after its k-th member, clockwise. */
    int cornerFace(int joint, int corner) {
        return face[out[joint][corner] ^ 1];
    }

    Vector way(int half) {
        return truss.place(head(half)).minus(truss.place(origin(half))).unit();
    }

    /** Two members that cross between their ends. */
    Optional<int[]> crossing() {
        Integer[] order = new Integer[truss.members()];
        Arrays.setAll(order, m -> m);
        Arrays.sort(order, Comparator.comparingDouble(this::left));
        List<Integer> open = new ArrayList<>();
        for (int m : order) {
            double left = left(m);
            open.removeIf(o -> right(o) < left);
            for (int other : open) {
                if (cross(m, other)) {
                    return Optional.of(new int[] {Math.min(m, other), Math.max(m, other)});
                }
            }
            open.add(m);
        }
        return Optional.empty();
    }

    /** Angle from the k-th member of a joint clockwise to the next, more than 0 and at most a whole turn. */
    double width(int joint, int corner) {
        int[] round = out[joint];
        double width = after(angle(way(round[corner])), angle(way(round[(corner + 1) % round.length])));
        return width == 0 ? TURN : width;
    }

    /** How far clockwise after the k-th member of a joint a way lies, 0 up to a whole turn. */
    double after(int joint, int corner, Vector way) {
        return after(angle(way(out[joint][corner])), angle(way));
    }

    private static double after(double start, double end) {
        double turn = start - end;
        return turn - TURN * Math.floor(turn / TURN);
    }

    private static double angle(Vector way) {
        return Math.atan2(way.y(), way.x());
    }

    private void sort() {
        List<List<Integer>> leaving = new ArrayList<>();
        for (int j = 0; j < truss.joints(); j++) {
            leaving.add(new ArrayList<>());
        }
        for (int half = 0; half < face.length; half++) {
            leaving.get(origin(half)).add(half);
        }
        for (int j = 0; j < out.length; j++) {
            leaving.get(j).sort(Comparator.comparingDouble(half -> -angle(way(half))));
            out[j] = leaving.get(j).stream().mapToInt(Integer::intValue).toArray();
            for (int k = 0; k < out[j].length; k++) {
                position[out[j][k]] = k;
            }
        }
    }

    /** Keeps to the left all the way: at each joint on to the member clockwise after the one it came by. */
    private void trace() {
        Arrays.fill(face, -1);
        for (int start = 0; start < face.length; start++) {
            if (face[start] < 0) {
                List<Integer> boundary = new ArrayList<>();
                double area = 0;
                for (int half = start; face[half] < 0; half = clockwise(half ^ 1)) {
                    face[half] = faces.size();
                    boundary.add(half);
                    area += truss.place(origin(half)).cross(truss.place(head(half))).z();
                }
                if (area <= 0) {
                    outer.add(faces.size());
                }
                faces.add(boundary);
            }
        }
    }

    private double left(int member) {
        return Math.min(truss.place(origin(2 * member)).x(), truss.place(head(2 * member)).x());
    }

    private double right(int member) {
        return Math.max(truss.place(origin(2 * member)).x(), truss.place(head(2 * member)).x());
    }

    private boolean cross(int one, int other) {
        int a = origin(2 * one);
        int b = head(2 * one);
        int c = origin(2 * other);
        int d = head(2 * other);
        if (a == c || a == d || b == c || b == d) {
            return false;
        }
        return turn(a, b, c) * turn(a, b, d) < 0 && turn(c, d, a) * turn(c, d, b) < 0;
    }

    private double turn(int a, int b, int c) {
        return truss.place(b).minus(truss.place(a)).cross(truss.place(c).minus(truss.place(a))).z();
    }
}
