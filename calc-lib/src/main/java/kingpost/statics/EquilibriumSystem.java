package kingpost.statics;

import java.util.Arrays;
import java.util.function.BiConsumer;
import java.util.function.UnaryOperator;
import org.ejml.data.DMatrixRMaj;
import org.ejml.data.DMatrixSparseCSC;
import org.ejml.data.DMatrixSparseTriplet;
import org.ejml.dense.row.CommonOps_DDRM;
import org.ejml.dense.row.factory.LinearSolverFactory_DDRM;
import org.ejml.interfaces.linsol.LinearSolver;
import org.ejml.interfaces.linsol.LinearSolverSparse;
import org.ejml.ops.DConvertMatrixStruct;
import org.ejml.sparse.FillReducing;
import org.ejml.sparse.csc.CommonOps_DSCC;
import org.ejml.sparse.csc.factory.LinearSolverFactory_DSCC;

/**
 * Every joint equation of a truss at once.
 *
 * <p><b>Shape</b>: with {@code d} = 2 in the plane and 3 in space, row {@code d * place + i} is the sum along axis i of
 * the joint at that place of the order; column k the k-th unknown of the order; the right side is minus the loads.
 * <b>Units</b>: forces in N; the coefficients are cosines. Small systems are held full, large ones sparse.
 */
final class EquilibriumSystem {

    /** Up to this many unknowns a full matrix is quicker than a sparse one. */
    private static final int FULL = 120;

    private final Network network;
    private final SolutionOrder order;
    private final int size;

    EquilibriumSystem(Network network, SolutionOrder order) {
        this.network = network;
        this.order = order;
        this.size = network.unknowns();
    }

    /** The full matrix, for counting its rank. */
    DMatrixRMaj full() {
        DMatrixRMaj matrix = new DMatrixRMaj(network.joints() * network.dimension(), size);
        fill(matrix::set);
        return matrix;
    }

    /** Forces by number of unknown, N; the system has as many equations as unknowns and is not singular. */
    double[] solve() {
        double[] answer = factored(false).apply(right());
        double[] forces = new double[size];
        for (int k = 0; k < size; k++) {
            forces[order.unknown(k)] = answer[k];
        }
        return forces;
    }

    /**
     * Estimate of the condition number in the 1-norm, from a few solutions with the matrix and its transpose. A lower
     * bound that is seldom far below.
     */
    double condition() {
        UnaryOperator<double[]> solve = factored(false);
        UnaryOperator<double[]> solveTransposed = factored(true);
        double[] x = new double[size];
        Arrays.fill(x, 1.0 / size);
        double estimate = 0;
        for (int i = 0; i < 5; i++) {
            double[] y = solve.apply(x);
            estimate = Math.max(estimate, Arrays.stream(y).map(Math::abs).sum());
            double[] z = solveTransposed.apply(Arrays.stream(y).map(v -> v < 0 ? -1 : 1).toArray());
            int largest = largest(z);
            if (x[largest] == 1) {
                break;
            }
            Arrays.fill(x, 0);
            x[largest] = 1;
        }
        return estimate * norm();
    }

    private static int largest(double[] z) {
        int largest = 0;
        for (int k = 1; k < z.length; k++) {
            largest = Math.abs(z[k]) > Math.abs(z[largest]) ? k : largest;
        }
        return largest;
    }

    /** Largest column sum of the sizes of the cosines. */
    private double norm() {
        double[] sums = new double[size];
        fill((row, column, value) -> sums[column] += Math.abs(value));
        return Arrays.stream(sums).max().orElse(0);
    }

    private UnaryOperator<double[]> factored(boolean transposed) {
        if (size <= FULL) {
            LinearSolver<DMatrixRMaj, DMatrixRMaj> solver = LinearSolverFactory_DDRM.lu(size);
            DMatrixRMaj matrix = full();
            accept(solver.setA(transposed ? CommonOps_DDRM.transpose(matrix, null) : matrix));
            return right -> solve(solver::solve, right);
        }
        LinearSolverSparse<DMatrixSparseCSC, DMatrixRMaj> solver = LinearSolverFactory_DSCC.lu(FillReducing.NONE);
        DMatrixSparseCSC matrix = sparse();
        accept(solver.setA(transposed ? CommonOps_DSCC.transpose(matrix, null, null) : matrix));
        return right -> solve(solver::solve, right);
    }

    private double[] solve(BiConsumer<DMatrixRMaj, DMatrixRMaj> solver, double[] right) {
        DMatrixRMaj answer = new DMatrixRMaj(size, 1);
        solver.accept(DMatrixRMaj.wrap(size, 1, right.clone()), answer);
        return answer.getData();
    }

    private static void accept(boolean regular) {
        if (!regular) {
            throw new IllegalStateException("the joint equations are singular");
        }
    }

    private DMatrixSparseCSC sparse() {
        DMatrixSparseTriplet triplet = new DMatrixSparseTriplet(size, size, 2 * network.dimension() * size);
        fill(triplet::addItem);
        return DConvertMatrixStruct.convert(triplet, (DMatrixSparseCSC) null);
    }

    private double[] right() {
        int d = network.dimension();
        double[] right = new double[network.joints() * d];
        for (int place = 0; place < network.joints(); place++) {
            for (Vector force : network.forcesAt(order.joint(place))) {
                for (int axis = 0; axis < d; axis++) {
                    right[d * place + axis] -= force.part(axis);
                }
            }
        }
        return right;
    }

    private interface Cell {
        void set(int row, int column, double value);
    }

    private void fill(Cell cell) {
        int d = network.dimension();
        for (int place = 0; place < network.joints(); place++) {
            int joint = order.joint(place);
            for (int unknown : network.unknownsAt(joint)) {
                Vector unit = network.unit(unknown, joint);
                for (int axis = 0; axis < d; axis++) {
                    if (unit.part(axis) != 0) {
                        cell.set(d * place + axis, order.column(unknown), unit.part(axis));
                    }
                }
            }
        }
    }
}
