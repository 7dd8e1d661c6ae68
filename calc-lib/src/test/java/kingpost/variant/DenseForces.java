package kingpost.variant;

import java.util.List;
import kingpost.truss.Direction;
import kingpost.truss.Load;
import kingpost.truss.Member;
import kingpost.truss.Support;
import kingpost.truss.TrussModel;

/** Forces of a truss by all its joint equations at once and plain elimination; shares nothing with the solver. */
final class DenseForces {

    private DenseForces() {
    }

    /** Member forces in the truss's unit, in its order. */
    static double[] of(TrussModel truss) {
        List<String> joints = truss.joints().stream().map(j -> j.name()).toList();
        int n = 2 * joints.size();
        double[][] a = new double[n][n + 1];
        int column = 0;
        for (Member member : truss.members()) {
            double dx = x(truss, member.to()) - x(truss, member.from());
            double dy = y(truss, member.to()) - y(truss, member.from());
            double length = Math.hypot(dx, dy);
            put(a, joints.indexOf(member.from()), column, dx / length, dy / length);
            put(a, joints.indexOf(member.to()), column++, -dx / length, -dy / length);
        }
        for (Support support : truss.supports()) {
            for (Direction reaction : support.reactions()) {
                put(a, joints.indexOf(support.joint()), column++, reaction.cosX(), reaction.cosY());
            }
        }
        for (Load load : truss.loads()) {
            a[2 * joints.indexOf(load.joint())][n] -= load.fx().in(truss.forceUnit());
            a[2 * joints.indexOf(load.joint()) + 1][n] -= load.fy().in(truss.forceUnit());
        }
        return java.util.Arrays.copyOf(eliminate(a), truss.members().size());
    }

    private static void put(double[][] a, int joint, int column, double x, double y) {
        a[2 * joint][column] += x;
        a[2 * joint + 1][column] += y;
    }

    private static double[] eliminate(double[][] a) {
        int n = a.length;
        for (int c = 0; c < n; c++) {
            int pivot = c;
            for (int r = c; r < n; r++) {
                pivot = Math.abs(a[r][c]) > Math.abs(a[pivot][c]) ? r : pivot;
            }
            double[] swap = a[c];
            a[c] = a[pivot];
            a[pivot] = swap;
            for (int r = 0; r < n; r++) {
                double factor = r == c ? 0 : a[r][c] / a[c][c];
                for (int k = c; factor != 0 && k <= n; k++) {
                    a[r][k] -= factor * a[c][k];
                }
            }
        }
        double[] x = new double[n];
        for (int i = 0; i < n; i++) {
            x[i] = a[i][n] / a[i][i];
        }
        return x;
    }

    private static double x(TrussModel truss, String joint) {
        return truss.joint(joint).orElseThrow().x().in(truss.lengthUnit());
    }

    private static double y(TrussModel truss, String joint) {
        return truss.joint(joint).orElseThrow().y().in(truss.lengthUnit());
    }
}
