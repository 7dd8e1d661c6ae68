package kingpost.truss;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;

/**
 * Joints by place: halved along the longest side of the box round them, and each half again, so that those near a
 * line are found without looking at all. Boxes fit tightly, so that neither a long nor a crowded truss takes long.
 */
final class JointIndex {

    /** So many joints are looked at one by one. */
    private static final int FEW = 8;

    private final Node root;
    private final double extent;
    private final Comparator<Joint> alongLongest;

    /** Joints in a box; with two halves, or few enough to be listed. */
    private record Node(double[] low, double[] high, Node first, Node second, List<Joint> joints) {
    }

    JointIndex(Collection<Joint> joints) {
        root = node(joints.toArray(Joint[]::new));
        int longest = longest(root);
        extent = joints.isEmpty() ? 0 : root.high[longest] - root.low[longest];
        alongLongest = Comparator.comparingDouble(j -> at(j, longest));
    }

    /** Largest extent of the truss along an axis, in its unit of length. */
    double extent() {
        return extent;
    }

    /**
     * Joints within a distance of the straight line between two places, and perhaps some a little farther off; in
     * order along the truss's longest axis.
     */
    List<Joint> near(Joint a, Joint b, double distance) {
        List<Joint> found = new ArrayList<>();
        collect(root, a, b, distance, found);
        found.sort(alongLongest);
        return found;
    }

    private static Node node(Joint[] joints) {
        double[] low = new double[3];
        double[] high = new double[3];
        for (int axis = 0; axis < 3; axis++) {
            int k = axis;
            low[k] = Arrays.stream(joints).mapToDouble(j -> at(j, k)).min().orElse(0);
            high[k] = Arrays.stream(joints).mapToDouble(j -> at(j, k)).max().orElse(0);
        }
        Node box = new Node(low, high, null, null, List.of(joints));
        if (joints.length <= FEW) {
            return box;
        }
        int axis = longest(box);
        Arrays.sort(joints, Comparator.comparingDouble(j -> at(j, axis)));
        int half = joints.length / 2;
        return new Node(low, high, node(Arrays.copyOfRange(joints, 0, half)),
                node(Arrays.copyOfRange(joints, half, joints.length)), List.of());
    }

    private static int longest(Node node) {
        int longest = 0;
        for (int axis = 1; axis < 3; axis++) {
            boolean longer = node.high[axis] - node.low[axis] > node.high[longest] - node.low[longest];
            longest = longer ? axis : longest;
        }
        return longest;
    }

    private static void collect(Node node, Joint a, Joint b, double distance, List<Joint> found) {
        if (!meets(node, a, b, distance)) {
            return;
        }
        if (node.first == null) {
            found.addAll(node.joints);
        } else {
            collect(node.first, a, b, distance, found);
            collect(node.second, a, b, distance, found);
        }
    }

    /** Whether the line between two places comes within a distance of a box: what each side leaves of the line. */
    private static boolean meets(Node node, Joint a, Joint b, double distance) {
        double from = 0;
        double to = 1;
        for (int axis = 0; axis < 3; axis++) {
            double start = at(a, axis);
            double reach = at(b, axis) - start;
            double low = node.low[axis] - distance - start;
            double high = node.high[axis] + distance - start;
            if (reach == 0) {
                to = low > 0 || high < 0 ? -1 : to;
            } else {
                from = Math.max(from, Math.min(low / reach, high / reach));
                to = Math.min(to, Math.max(low / reach, high / reach));
            }
        }
        return from <= to;
    }

    private static double at(Joint joint, int axis) {
        return axis == 0 ? x(joint) : axis == 1 ? y(joint) : z(joint);
    }

    static double x(Joint joint) {
        return joint.x().getValue();
    }

    static double y(Joint joint) {
        return joint.y().getValue();
    }

    static double z(Joint joint) {
        return joint.z().getValue();
    }
}
