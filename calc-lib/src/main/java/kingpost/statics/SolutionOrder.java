package kingpost.statics;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * An order of joints and unknowns in which the joint equations keep close to a triangle: joints as they are worked,
 * unknowns as they are found. Reactions come last; in a large truss, which may have many, at their joints.
 */
final class SolutionOrder {

    private final int[] joints;
    private final int[] unknowns;
    private final int[] column;

    private SolutionOrder(List<Integer> joints, List<Integer> unknowns) {
        this.joints = joints.stream().mapToInt(Integer::intValue).toArray();
        this.unknowns = unknowns.stream().mapToInt(Integer::intValue).toArray();
        column = new int[this.unknowns.length];
        for (int k = 0; k < column.length; k++) {
            column[this.unknowns[k]] = k;
        }
    }

    /** The truss's own order. */
    static SolutionOrder natural(Network network) {
        return new SolutionOrder(numbers(network.joints()), numbers(network.unknowns()));
    }

    /**
     * The order of the work. Joints that it does not reach follow in the truss's order, those of a large truss along
     * its longest axis.
     */
    static SolutionOrder of(Network network, List<Move> moves) {
        boolean[] seenJoint = new boolean[network.joints()];
        boolean[] seen = new boolean[network.unknowns()];
        List<Integer> joints = new ArrayList<>();
        List<Integer> unknowns = new ArrayList<>();
        List<Integer> working = new ArrayList<>();
        for (Move move : moves) {
            if (move instanceof Move.AtJoint at) {
                working.add(at.joint());
            } else if (move instanceof Move.Together together) {
                working.addAll(together.joints());
            }
        }
        boolean large = network.unknowns() > EquilibriumSystem.FULL;
        working.addAll(large ? alongLongest(network) : numbers(network.joints()));
        for (int joint : working) {
            if (!seenJoint[joint]) {
                seenJoint[joint] = true;
                joints.add(joint);
                for (int u : network.unknownsAt(joint)) {
                    if ((large || network.isMember(u)) && !seen[u]) {
                        seen[u] = true;
                        unknowns.add(u);
                    }
                }
            }
        }
        for (int u = network.members(); u < network.unknowns(); u++) {
            if (!seen[u]) {
                unknowns.add(u);
            }
        }
        return new SolutionOrder(joints, unknowns);
    }

    int joint(int place) {
        return joints[place];
    }

    int unknown(int column) {
        return unknowns[column];
    }

    int column(int unknown) {
        return column[unknown];
    }

    /** Joints by their place along the truss's longest axis, so that members join neighbours in the list. */
    static List<Integer> alongLongest(Network network) {
        int axis = network.longestAxis();
        return numbers(network.joints()).stream()
                .sorted(Comparator.comparingDouble(j -> network.place(j).part(axis))).toList();
    }

    private static List<Integer> numbers(int count) {
        int[] numbers = new int[count];
        Arrays.setAll(numbers, i -> i);
        return Arrays.stream(numbers).boxed().toList();
    }
}
