package kingpost.statics;

import java.util.Arrays;
import java.util.List;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
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
    static final int FULL = 120;
    /** A joint of more unknowns is put off in elimination. */
    private static final double CROWDED = 16;
    /** By so much the last joint is put behind the first where both would do. */
    private static final double SLIGHTLY = 1e-3;

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

    /** Its rank by sparse elimination. */
    SparseRank rank() {
        int d = network.dimension();
        int[][] columns = new int[network.joints() * d][];
        double[][] values = new double[columns.length][];
        int[] filled = new int[columns.length];
        fill((row, column, value) -> filled[row]++);
        for (int row = 0; row < columns.length; row++) {
            columns[row] = new int[filled[row]];
            values[row] = new double[filled[row]];
        }
        fill((row, column, value) -> {
            columns[row][--filled[row]] = column;
            values[row][filled[row]] = value;
        });
        return new SparseRank(columns, values, size);
    }

    /** Forces by number of unknown, N; the system has as many equations as unknowns and is not singular. */
    double[] solve() {
        return byUnknown(factored(false).apply(right()));
    }

    private double[] byUnknown(double[] answer) {
        double[] forces = new double[size];
        for (int k = 0; k < size; k++) {
            forces[order.unknown(k)] = answer[k];
        }
        return forces;
    }

    /**
     * Forces by number of unknown for the same force on each of some joints in turn, from one factorization; the truss's
     * own loads play no part.
     *
     * @param force any unit; the answers are in the same
     * @param taken is given the forces for one joint after the other
     */
    void solve(List<Integer> joints, Vector force, Consumer<double[]> taken) {
        int d = network.dimension();
        int[] places = new int[network.joints()];
        for (int place = 0; place < places.length; place++) {
            places[order.joint(place)] = place;
        }
        UnaryOperator<double[]> solve = factored(false);
        for (int joint : joints) {
            double[] right = new double[network.joints() * d];
            for (int axis = 0; axis < d; axis++) {
                right[d * places[joint] + axis] = -force.part(axis);
            }
            taken.accept(byUnknown(solve.apply(right)));
        }
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

    /** Solves the system, or that with the transposed matrix, for any right side. */
    private UnaryOperator<double[]> factored(boolean transposed) {
        if (size <= FULL) {
            LinearSolver<DMatrixRMaj, DMatrixRMaj> solver = LinearSolverFactory_DDRM.lu(size);
            DMatrixRMaj matrix = full();
            accept(solver.setA(transposed ? CommonOps_DDRM.transpose(matrix, null) : matrix));
            return right -> solve(solver::solve, right);
        }
        LinearSolverSparse<DMatrixSparseCSC, DMatrixRMaj> solver = LinearSolverFactory_DSCC.lu(FillReducing.NONE);
        double[] weights = weights();
        DMatrixSparseCSC matrix = sparse(weights);
        if (transposed) {
            accept(solver.setA(CommonOps_DSCC.transpose(matrix, null, null)));
            return right -> product(weights, solve(solver::solve, right));
        }
        accept(solver.setA(matrix));
        return right -> solve(solver::solve, product(weights, right));
    }

    private static double[] product(double[] a, double[] b) {
        return IntStream.range(0, a.length).mapToDouble(i -> a[i] * b[i]).toArray();
    }

    /**
     * Weights of the rows. Exchange of rows picks the largest number of a column; so an earlier joint is preferred to
     * a later one with the same cosine, and a joint of many members, whose rows would fill others, is put off.
     */
    private double[] weights() {
        int d = network.dimension();
        double[] weights = new double[network.joints() * d];
        for (int place = 0; place < network.joints(); place++) {
            double crowd = Math.max(1, network.unknownsAt(order.joint(place)).length / CROWDED);
            Arrays.fill(weights, d * place, d * place + d, (1 - SLIGHTLY * place / network.joints()) / crowd);
        }
        return weights;
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

    private DMatrixSparseCSC sparse(double[] weights) {
        DMatrixSparseTriplet triplet = new DMatrixSparseTriplet(size, size, 2 * network.dimension() * size);
        fill((row, column, value) -> triplet.addItem(row, column, weights[row] * value));
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
