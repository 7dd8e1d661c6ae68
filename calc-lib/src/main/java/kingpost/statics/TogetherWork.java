package kingpost.statics;

import java.util.ArrayList;
import java.util.List;
import kingpost.statics.AxisEquation.Axis;
import kingpost.statics.AxisEquation.Role;
import kingpost.statics.Step.BodyForce;
import kingpost.statics.Step.JointEquation;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import org.ejml.dense.row.factory.LinearSolverFactory_DDRM;
import org.ejml.interfaces.linsol.LinearSolver;

/** Solves the equations of several joints at once, along x and y (and z) of each. */
final class TogetherWork {

    private final Network network;
    private final Progress progress;
    private final Values values;
    private final Move.Together move;
    private final List<Integer> unknowns;
    private final List<Axis> axes;

    TogetherWork(Network network, Progress progress, Values values, Move.Together move) {
        this.network = network;
        this.progress = progress;
        this.values = values;
        this.move = move;
        this.unknowns = move.unknowns();
        this.axes = JointAxes.conventional(network);
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

    private void solve() {
        int rows = axes.size() * move.joints().size();
        DMatrixRMaj matrix = new DMatrixRMaj(rows, unknowns.size());
        DMatrixRMaj right = new DMatrixRMaj(rows, 1);
        double spread = 0;
        double bound = 0;
        for (int i = 0; i < rows; i++) {
            int joint = move.joints().get(i / axes.size());
            int axis = i % axes.size();
            for (int u : network.unknownsAt(joint)) {
                double cosine = network.unit(u, joint).part(axis);
                int column = unknowns.indexOf(u);
                if (column >= 0) {
                    matrix.set(i, column, cosine);
                } else if (!progress.isOmitted(u)) {
                    right.add(i, 0, -cosine * values.get(u));
                    spread += Math.abs(cosine * values.get(u));
                    bound += Math.abs(cosine) * values.bound(u);
                }
            }
            for (Vector force : network.forcesAt(joint)) {
                right.add(i, 0, -force.part(axis));
                spread += Math.abs(force.part(axis));
            }
        }
        put(matrix, right, spread, bound);
    }

    /** Equations may be more than unknowns; they agree, so least squares finds what satisfies them all. */
    private void put(DMatrixRMaj matrix, DMatrixRMaj right, double spread, double bound) {
        LinearSolver<DMatrixRMaj, DMatrixRMaj> solver = LinearSolverFactory_DDRM.leastSquares(matrix.numRows,
                matrix.numCols);
        DMatrixRMaj answer = new DMatrixRMaj(unknowns.size(), 1);
        if (!solver.setA(matrix.copy())) {
            throw new IllegalStateException("the joints taken together are singular");
        }
        solver.solve(right.copy(), answer);
        DMatrixRMaj inverse = new DMatrixRMaj(matrix.numCols, matrix.numRows);
        CommonOps_DDRM.pinv(matrix, inverse);
        double gain = CommonOps_DDRM.elementMaxAbs(inverse);
        for (int k = 0; k < unknowns.size(); k++) {
            int unknown = unknowns.get(k);
            values.put(unknown, answer.get(k, 0), 8 * gain * spread, gain * bound);
            progress.sameAs(unknown).stream().filter(u -> u != unknown).forEach(u -> values.same(u, unknown));
        }
    }

    private List<JointForce> forces(int joint) {
        List<JointForce> forces = new ArrayList<>();
        for (int u : network.unknownsAt(joint)) {
            if (!progress.isOmitted(u)) {
                forces.add(new JointForce(network.source(u), network.along(u, joint), !unknowns.contains(u),
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
