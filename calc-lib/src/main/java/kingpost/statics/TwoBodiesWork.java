package kingpost.statics;

import java.util.ArrayList;
import java.util.List;
import kingpost.statics.AxisEquation.Role;
import kingpost.statics.EquationPool.Entry;

/** Solves two equations of bodies for the two unknowns that both hold. */
final class TwoBodiesWork {

    private final Network network;
    private final Progress progress;
    private final Values values;
    private final Move.TwoBodies move;

    TwoBodiesWork(Network network, Progress progress, Values values, Move.TwoBodies move) {
        this.network = network;
        this.progress = progress;
        this.values = values;
        this.move = move;
    }

    /** Finds the unknowns, writes them into the values, and tells how. */
    Step.TwoBodies work() {
        solve();
        Role together = new Role.Together(move.unknowns().stream().map(network::source).toList());
        List<Step.AtSection> bodies = new ArrayList<>();
        for (Entry entry : move.entries()) {
            List<Integer> open = entry.unknowns().stream().map(Body.Force::unknown).toList();
            bodies.add(new SectionWork(network, progress, values, entry.part(), move.turn())
                    .told(entry.body().equation(entry.kind(), together, values, open)));
        }
        return new Step.TwoBodies(new LookRound(network, progress, move.turn()), bodies,
                move.unknowns().stream().map(u -> new Step.Answer(network.source(u), values.get(u))).toList());
    }

    private void solve() {
        double[][] matrix = new double[2][];
        double[] right = new double[2];
        double spread = 0;
        double bound = 0;
        for (int i = 0; i < 2; i++) {
            Entry entry = move.entries().get(i);
            matrix[i] = move.unknowns().stream().mapToDouble(u -> factor(entry, u)).toArray();
            double scale = Math.hypot(matrix[i][0], matrix[i][1]);
            matrix[i][0] /= scale;
            matrix[i][1] /= scale;
            for (Body.Force force : entry.body().forces()) {
                double factor = entry.unknowns().contains(force) ? 0 : entry.body().factor(force, entry.kind()) / scale;
                if (factor != 0) {
                    double part = factor * Body.value(force, values);
                    right[i] -= part;
                    spread += Math.abs(part);
                    bound += force.unknown() < 0 ? 0 : Math.abs(factor) * values.bound(force.unknown());
                }
            }
        }
        double pivot = Math.abs(SmallSystem.determinant(matrix));
        double[] answers = SmallSystem.solve(matrix, right);
        for (int i = 0; i < 2; i++) {
            int unknown = move.unknowns().get(i);
            values.put(unknown, answers[i], spread / pivot, bound / pivot);
            progress.sameAs(unknown).stream().filter(u -> u != unknown).forEach(u -> values.same(u, unknown));
        }
    }

    private double factor(Entry entry, int unknown) {
        List<Integer> same = progress.sameAs(unknown);
        return entry.unknowns().stream().filter(f -> same.contains(f.unknown()))
                .mapToDouble(f -> entry.body().factor(f, entry.kind())).findFirst().orElseThrow();
    }
}
