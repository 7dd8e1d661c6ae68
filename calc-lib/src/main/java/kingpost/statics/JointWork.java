package kingpost.statics;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import kingpost.statics.AxisEquation.Axis;
import kingpost.statics.AxisEquation.Role;
import kingpost.truss.Member;

/** Works one joint: its free body, its axes, its equations in the order in which they give the unknowns. */
final class JointWork {

    /** A cosine smaller than this is rounding: the force has no part along the axis. */
    private static final double NO_PART = 1e-12;

    private final Network network;
    private final Progress progress;
    private final Values values;
    private final Move.AtJoint turn;
    private final int joint;
    private final List<Integer> others;
    private final JointAxes axes;
    private final Map<Axis, Role> used = new LinkedHashMap<>();
    private final List<Integer> found = new ArrayList<>();

    /** The equations of a joint whose forces are all known, along x and y, as checks. */
    static List<AxisEquation> checks(Network network, Progress progress, Values values, int joint) {
        Move.AtJoint none = new Move.AtJoint(Integer.MAX_VALUE, 0, joint, List.of(), Step.Selection.Reason.ONLY_ONE);
        return new JointWork(network, progress, values, none).work().equations();
    }

    JointWork(Network network, Progress progress, Values values, Move.AtJoint turn) {
        this.network = network;
        this.progress = progress;
        this.values = values;
        this.turn = turn;
        this.joint = turn.joint();
        this.others = progress.unknownsAt(joint, turn.turn()).stream().filter(u -> !turn.unknowns().contains(u))
                .toList();
        this.axes = JointAxes.of(network, joint, turn.unknowns(), others);
    }

    /** Finds the unknowns, writes them into the values, and tells how. */
    Step.AtJoint work() {
        List<Axis> pending = new ArrayList<>(axes.list());
        List<Integer> unknowns = new ArrayList<>(turn.unknowns());
        while (!unknowns.isEmpty()) {
            if (!solveAlone(pending, unknowns)) {
                solveTogether(pending, unknowns);
            }
        }
        pending.stream().filter(this::isFreeOfOthers).forEach(axis -> used.put(axis, new Role.Check()));
        return step();
    }

    /** Finds the equation with one unknown, and in it that unknown; false where there is none. */
    private boolean solveAlone(List<Axis> pending, List<Integer> unknowns) {
        Axis best = null;
        int only = -1;
        double cosine = 0;
        for (Axis axis : pending) {
            List<Integer> inIt = unknowns.stream().filter(u -> cosine(u, axis) != 0).toList();
            if (inIt.size() == 1 && isFreeOfOthers(axis) && Math.abs(cosine(inIt.get(0), axis)) > cosine) {
                best = axis;
                only = inIt.get(0);
                cosine = Math.abs(cosine(only, axis));
            }
        }
        if (best == null) {
            return false;
        }
        Sum known = known(best);
        double pivot = cosine(only, best);
        found(only, -known.sum / pivot, known.spread / cosine, known.bound / cosine);
        used.put(best, new Role.Gives(network.source(only)));
        pending.remove(best);
        unknowns.remove(Integer.valueOf(only));
        return true;
    }

    private boolean isFreeOfOthers(Axis axis) {
        return others.stream().allMatch(u -> cosine(u, axis) == 0);
    }

    /** Solves as many equations as there are unknowns at once, those that part the unknowns best. */
    private void solveTogether(List<Axis> pending, List<Integer> unknowns) {
        List<Axis> chosen = bestFor(pending, unknowns);
        double[][] cosines = matrix(chosen, unknowns);
        double[] right = new double[chosen.size()];
        double spread = 0;
        double bound = 0;
        for (int i = 0; i < right.length; i++) {
            Sum known = known(chosen.get(i));
            right[i] = -known.sum;
            spread += known.spread;
            bound += known.bound;
        }
        double pivot = Math.abs(SmallSystem.determinant(cosines));
        double[] answers = SmallSystem.solve(cosines, right);
        for (int i = 0; i < answers.length; i++) {
            found(unknowns.get(i), answers[i], spread / pivot, bound / pivot);
        }
        Role together = new Role.Together(unknowns.stream().map(network::source).toList());
        chosen.forEach(axis -> used.put(axis, together));
        pending.removeAll(chosen);
        unknowns.clear();
    }

    private List<Axis> bestFor(List<Axis> pending, List<Integer> unknowns) {
        if (pending.size() == unknowns.size()) {
            return List.copyOf(pending);
        }
        List<Axis> best = List.of();
        double largest = -1;
        for (Axis left : pending) {
            List<Axis> rest = new ArrayList<>(pending);
            rest.remove(left);
            List<Axis> chosen = bestFor(rest, unknowns);
            double size = Math.abs(SmallSystem.determinant(matrix(chosen, unknowns)));
            if (size > largest) {
                largest = size;
                best = chosen;
            }
        }
        return best;
    }

    private double[][] matrix(List<Axis> rows, List<Integer> columns) {
        double[][] matrix = new double[rows.size()][columns.size()];
        for (int i = 0; i < rows.size(); i++) {
            for (int k = 0; k < columns.size(); k++) {
                matrix[i][k] = cosine(columns.get(k), rows.get(i));
            }
        }
        return matrix;
    }

    private void found(int unknown, double force, double spread, double bound) {
        values.put(unknown, force, spread, bound);
        progress.sameAs(unknown).stream().filter(u -> u != unknown).forEach(u -> values.same(u, unknown));
        found.add(unknown);
    }

    private double cosine(int unknown, Axis axis) {
        return part(network.unit(unknown, joint), axis);
    }

    private static double part(Vector unit, Axis axis) {
        double cosine = unit.dot(axis.direction());
        return Math.abs(cosine) <= NO_PART ? 0 : cosine;
    }

    /** Sum of known forces along an axis, of their sizes, and of the bounds of their errors. */
    private static final class Sum {
        private double sum;
        private double spread;
        private double bound;

        private void add(double part, double error) {
            sum += part;
            spread += Math.abs(part);
            bound += error;
        }
    }

    private Sum known(Axis axis) {
        Sum sum = new Sum();
        for (int u : network.unknownsAt(joint)) {
            if (progress.isKnownBefore(u, turn.turn()) || found.contains(u)) {
                double cosine = cosine(u, axis);
                sum.add(values.get(u) * cosine, values.bound(u) * Math.abs(cosine));
            }
        }
        network.forcesAt(joint).forEach(f -> sum.add(part(f.unit(), axis) * f.norm(), 0));
        return sum;
    }

    private Step.AtJoint step() {
        List<JointForce> forces = new ArrayList<>();
        List<Vector> units = new ArrayList<>();
        List<Member> omitted = new ArrayList<>();
        collect(forces, units, omitted);
        List<AxisEquation> equations = new ArrayList<>();
        used.forEach((axis, role) -> equations.add(equation(axis, role, forces, units)));
        List<Step.Answer> answers = found.stream().map(u -> new Step.Answer(network.source(u), values.get(u))).toList();
        Step.Selection selection = new Step.Selection(new LookRound(network, progress, turn.turn()), turn.reason());
        return new Step.AtJoint(turn.number(), network.name(joint), selection, forces, omitted, axes.axes(), equations,
                answers);
    }

    private void collect(List<JointForce> forces, List<Vector> units, List<Member> omitted) {
        for (int u : network.unknownsAt(joint)) {
            if (progress.isOmitted(u)) {
                omitted.add(network.member(u));
            } else {
                forces.add(new JointForce(network.source(u), network.along(u, joint),
                        progress.isKnownBefore(u, turn.turn()), values.get(u)));
                units.add(network.unit(u, joint));
            }
        }
        for (int i = 0; i < network.loadsAt(joint).size(); i++) {
            Vector force = network.forcesAt(joint).get(i);
            forces.add(new JointForce(network.loadsAt(joint).get(i), network.along(network.loadsAt(joint).get(i)),
                    true, force.norm()));
            units.add(force.unit());
        }
    }

    private static AxisEquation equation(Axis axis, Role role, List<JointForce> forces, List<Vector> units) {
        List<AxisEquation.Term> unknown = new ArrayList<>();
        List<AxisEquation.Term> known = new ArrayList<>();
        double residual = 0;
        for (int i = 0; i < forces.size(); i++) {
            double cosine = part(units.get(i), axis);
            if (cosine != 0) {
                (forces.get(i).known() ? known : unknown).add(new AxisEquation.Term(forces.get(i), cosine));
                residual += forces.get(i).value() * cosine;
            }
        }
        unknown.addAll(known);
        return new AxisEquation(axis, unknown, role, residual);
    }
}
