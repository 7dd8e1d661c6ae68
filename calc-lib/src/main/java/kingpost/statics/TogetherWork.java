package kingpost.statics;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiConsumer;
import kingpost.statics.AxisEquation.Axis;
import kingpost.statics.AxisEquation.Role;
import kingpost.statics.Step.BodyForce;
import kingpost.statics.Step.JointEquation;
import org.ejml.data.DMatrixRMaj;
import org.ejml.data.DMatrixSparseCSC;
import org.ejml.data.DMatrixSparseTriplet;
import org.ejml.dense.row.CommonOps_DDRM;
import org.ejml.dense.row.factory.LinearSolverFactory_DDRM;
import org.ejml.interfaces.linsol.LinearSolver;
import org.ejml.interfaces.linsol.LinearSolverSparse;
import org.ejml.ops.DConvertMatrixStruct;
import org.ejml.sparse.FillReducing;
import org.ejml.sparse.csc.factory.LinearSolverFactory_DSCC;

/** Solves the equations of several joints at once, along x and y (and z) of each. */
final class TogetherWork {

    private final Network network;
    private final Progress progress;
    private final Values values;
    private final Move.Together move;
    private final List<Integer> unknowns;
    private final Map<Integer, Integer> columns = new HashMap<>();
    private final List<Axis> axes;
    /** Sum of the sizes of all that is known, N, and of the bounds of its errors. */
    private double spread;
    private double bound;

    TogetherWork(Network network, Progress progress, Values values, Move.Together move) {
        this.network = network;
        this.progress = progress;
        this.values = values;
        this.move = move;
        this.unknowns = move.unknowns();
        this.axes = JointAxes.conventional(network);
        unknowns.forEach(u -> columns.put(u, columns.size()));
    }

    /** Finds the unknowns, writes them into the values, and tells how. */
    Step.JointsTogether work() {
        solve();
        List<BodyForce> forces = new ArrayList<>();
        List<JointEquation> equations = new ArrayList<>();
        Role together = new Role.Together(unknowns.stream().map(network::source).toList());
        for (int joint : move.joints()) {
            List<JointForce> atJoint = forces(joint);
            atJoint.forEach(f -> forces.add(new BodyForce(network.name(joint), f)));
            axes.forEach(axis -> equations.add(new JointEquation(network.name(joint),
                    equation(axis, together, atJoint))));
        }
        List<Step.Answer> answers = unknowns.stream().map(u -> new Step.Answer(network.source(u), values.get(u)))
                .toList();
        return new Step.JointsTogether(new LookRound(network, progress, move.turn()),
                move.joints().stream().map(network::name).toList(), forces, equations, answers);
    }

    private interface Cell {
        void set(int row, int column, double value);
    }

    /** Hands out the coefficients of the unknowns, and moves what is known to the right side. */
    private double[] fill(Cell cell) {
        double[] right = new double[axes.size() * move.joints().size()];
        for (int i = 0; i < right.length; i++) {
            int joint = move.joints().get(i / axes.size());
            int axis = i % axes.size();
            for (int u : network.unknownsAt(joint)) {
                double cosine = network.unit(u, joint).part(axis);
                if (columns.containsKey(u)) {
                    cell.set(i, columns.get(u), cosine);
                } else if (!progress.isOmitted(u)) {
                    add(right, i, -cosine * values.get(u));
                    bound += Math.abs(cosine) * values.bound(u);
                }
            }
            for (Vector force : network.forcesAt(joint)) {
                add(right, i, -force.part(axis));
            }
        }
        return right;
    }

    private void add(double[] right, int row, double part) {
        right[row] += part;
        spread += Math.abs(part);
    }

    private void solve() {
        if (unknowns.size() <= EquilibriumSystem.FULL) {
            solveFull();
        } else {
            solveSparse();
        }
    }

    /** Equations may be more than unknowns; they agree, so least squares finds what satisfies them all. */
    private void solveFull() {
        DMatrixRMaj matrix = new DMatrixRMaj(axes.size() * move.joints().size(), unknowns.size());
        double[] right = fill(matrix::set);
        LinearSolver<DMatrixRMaj, DMatrixRMaj> solver = LinearSolverFactory_DDRM.leastSquares(matrix.numRows,
                matrix.numCols);
        double[] answer = answer(solver.setA(matrix.copy()), right, solver::solve);
        DMatrixRMaj inverse = new DMatrixRMaj(matrix.numCols, matrix.numRows);
        CommonOps_DDRM.pinv(matrix, inverse);
        double gain = CommonOps_DDRM.elementMaxAbs(inverse);
        for (int k = 0; k < answer.length; k++) {
            put(k, answer[k], 8 * gain * spread, gain * bound);
        }
    }

    /** The same for many unknowns; what rounding may have done is measured against the largest answer. */
    private void solveSparse() {
        int rows = axes.size() * move.joints().size();
        DMatrixSparseTriplet triplet = new DMatrixSparseTriplet(rows, unknowns.size(), 4 * rows);
        double[] right = fill((row, column, value) -> {
            if (value != 0) {
                triplet.addItem(row, column, value);
            }
        });
        LinearSolverSparse<DMatrixSparseCSC, DMatrixRMaj> solver = LinearSolverFactory_DSCC.qr(FillReducing.NONE);
        double[] answer = answer(solver.setA(DConvertMatrixStruct.convert(triplet, (DMatrixSparseCSC) null)), right,
                solver::solve);
        double largest = Arrays.stream(answer).map(Math::abs).max().orElse(0);
        for (int k = 0; k < answer.length; k++) {
            put(k, answer[k], 16 * largest, 0);
        }
    }

    private double[] answer(boolean regular, double[] right, BiConsumer<DMatrixRMaj, DMatrixRMaj> solver) {
        if (!regular) {
            throw new IllegalStateException("the joints taken together are singular");
        }
        DMatrixRMaj answer = new DMatrixRMaj(unknowns.size(), 1);
        solver.accept(DMatrixRMaj.wrap(right.length, 1, right), answer);
        return answer.getData();
    }

    private void put(int column, double force, double from, double known) {
        int unknown = unknowns.get(column);
        values.put(unknown, force, from, known);
        progress.sameAs(unknown).stream().filter(u -> u != unknown).forEach(u -> values.same(u, unknown));
    }

    private List<JointForce> forces(int joint) {
        List<JointForce> forces = new ArrayList<>();
        for (int u : network.unknownsAt(joint)) {
            if (!progress.isOmitted(u)) {
                forces.add(new JointForce(network.source(u), network.along(u, joint), !columns.containsKey(u),
                        values.get(u)));
            }
        }
        for (int i = 0; i < network.loadsAt(joint).size(); i++) {
            Source.OfLoad load = network.loadsAt(joint).get(i);
            forces.add(new JointForce(load, network.along(load), true, network.forcesAt(joint).get(i).norm()));
        }
        return forces;
    }

    private static AxisEquation equation(Axis axis, Role together, List<JointForce> forces) {
        List<AxisEquation.Term> unknown = new ArrayList<>();
        List<AxisEquation.Term> known = new ArrayList<>();
        double residual = 0;
        for (JointForce force : forces) {
            double cosine = force.along().unit().dot(axis.direction());
            if (Math.abs(cosine) > 1e-12) {
                (force.known() ? known : unknown).add(new AxisEquation.Term(force, cosine));
                residual += force.value() * cosine;
            }
        }
        Role role = unknown.isEmpty() ? new Role.Check() : together;
        unknown.addAll(known);
        return new AxisEquation(axis, unknown, role, residual);
    }
}
