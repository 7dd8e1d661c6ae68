package kingpost.truss;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;

/** Joints in order along the truss's longest axis, so that those near a place are found without looking at all. */
final class JointIndex {

    private final ToDoubleFunction<Joint> axis;
    private final List<Joint> sorted;
    private final double extent;

    JointIndex(Collection<Joint> joints) {
        ToDoubleFunction<Joint> longest = JointIndex::x;
        double length = 0;
        for (ToDoubleFunction<Joint> candidate : List.<ToDoubleFunction<Joint>>of(
                JointIndex::x, JointIndex::y, JointIndex::z)) {
            double along = extent(joints, candidate);
            if (along > length) {
                longest = candidate;
                length = along;
            }
        }
        axis = longest;
        extent = length;
        sorted = joints.stream().sorted(Comparator.comparingDouble(longest)).toList();
    }

    /** Largest extent of the truss along an axis, in its unit of length. */
    double extent() {
        return extent;
    }

    /** Joints between two others along the longest axis, the two included, and {@code margin} beyond each. */
    List<Joint> between(Joint a, Joint b, double margin) {
        double low = Math.min(axis.applyAsDouble(a), axis.applyAsDouble(b)) - margin;
        double high = Math.max(axis.applyAsDouble(a), axis.applyAsDouble(b)) + margin;
        return sorted.subList(firstFrom(low), firstFrom(Math.nextUp(high)));
    }

    private int firstFrom(double value) {
        int low = 0;
        int high = sorted.size();
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (axis.applyAsDouble(sorted.get(middle)) < value) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }

    private static double extent(Collection<Joint> joints, ToDoubleFunction<Joint> axis) {
        double low = joints.stream().mapToDouble(axis).min().orElse(0);
        double high = joints.stream().mapToDouble(axis).max().orElse(0);
        return high - low;
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
