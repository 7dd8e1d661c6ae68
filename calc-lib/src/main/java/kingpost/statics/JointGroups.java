package kingpost.statics;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.factory.DecompositionFactory_DDRM;
import org.ejml.interfaces.decomposition.SingularValueDecomposition_F64;

/** Finds joints that can be solved together: as few as may be, with as many equations as unknowns. */
final class JointGroups {

    private static final double RANK = 1e-9;

    private final Network network;
    private final Progress progress;

    /**
     * @param joints   solved together
     * @param unknowns what they give: all that is unknown there
     */
    record Group(List<Integer> joints, List<Integer> unknowns) {
    }

    JointGroups(Network network, Progress progress) {
        this.network = network;
        this.progress = progress;
    }

    /** The smallest group found by growing from each joint in turn, or empty. */
    Optional<Group> smallest() {
        Group best = null;
        for (int joint = 0; joint < network.joints(); joint++) {
            if (!unknownsAt(joint).isEmpty()) {
                Group group = grow(joint, best == null ? Integer.MAX_VALUE : best.joints.size());
                best = group != null ? group : best;
            }
        }
        return Optional.ofNullable(best);
    }

    /** Adds, one by one, the neighbour that brings the fewest new unknowns, until the equations are enough. */
    private Group grow(int seed, int below) {
        Set<Integer> joints = new LinkedHashSet<>(List.of(seed));
        Set<Integer> unknowns = new LinkedHashSet<>(unknownsAt(seed));
        while (joints.size() < below) {
            if (unknowns.size() <= network.dimension() * joints.size() && isSolvable(joints, unknowns)) {
                return new Group(List.copyOf(joints), List.copyOf(unknowns));
            }
            int next = nextFor(joints, unknowns);
            if (next < 0) {
                return null;
            }
            joints.add(next);
            unknowns.addAll(unknownsAt(next));
        }
        return null;
    }

    private int nextFor(Set<Integer> joints, Set<Integer> unknowns) {
        int best = -1;
        long fewest = Long.MAX_VALUE;
        for (int unknown : unknowns) {
            for (int joint : network.jointsOf(unknown)) {
                if (!joints.contains(joint) && !unknownsAt(joint).isEmpty()) {
                    long fresh = unknownsAt(joint).stream().filter(u -> !unknowns.contains(u)).count();
                    if (fresh < fewest) {
                        fewest = fresh;
                        best = joint;
                    }
                }
            }
        }
        return best;
    }

    private List<Integer> unknownsAt(int joint) {
        return progress.unknownsAt(joint, Integer.MAX_VALUE);
    }

    private boolean isSolvable(Set<Integer> joints, Set<Integer> unknowns) {
        List<Integer> columns = List.copyOf(unknowns);
        int d = network.dimension();
        DMatrixRMaj matrix = new DMatrixRMaj(d * joints.size(), columns.size());
        int row = 0;
        for (int joint : joints) {
            for (int u : network.unknownsAt(joint)) {
                int column = columns.indexOf(u);
                for (int axis = 0; axis < d && column >= 0; axis++) {
                    matrix.set(row + axis, column, network.unit(u, joint).part(axis));
                }
            }
            row += d;
        }
        SingularValueDecomposition_F64<DMatrixRMaj> svd = DecompositionFactory_DDRM.svd(matrix.numRows, matrix.numCols,
                false, false, true);
        svd.decompose(matrix);
        double[] values = svd.getSingularValues();
        double largest = java.util.Arrays.stream(values).max().orElse(0);
        double smallest = java.util.Arrays.stream(values, 0, columns.size()).min().orElse(0);
        return smallest > RANK * largest;
    }
}
