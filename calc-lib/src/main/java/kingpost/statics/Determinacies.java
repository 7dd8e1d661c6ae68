package kingpost.statics;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import kingpost.truss.TrussModel;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.factory.DecompositionFactory_DDRM;
import org.ejml.interfaces.decomposition.SingularValueDecomposition_F64;

/**
 * Counts members, reactions and joints, and the rank of the joint equations. Where joint after joint can be worked to
 * the end, the equations are a triangle and the rank needs no further arithmetic; else it comes from the singular
 * values of the full matrix of cosines.
 */
public final class Determinacies {

    /** A singular value below this part of the largest counts as zero. */
    private static final double RANK = 1e-10;
    /** A part of a motion or of a set of forces below this is rounding. */
    private static final double NOTHING = 1e-8;

    private final Network network;
    private final int equations;
    private final int unknowns;

    private Determinacies(Network network) {
        this.network = network;
        this.equations = network.joints() * network.dimension();
        this.unknowns = network.unknowns();
    }

    /** What counting and rank say of a truss. */
    public static Determinacy of(TrussModel model) {
        Network network = new Network(model);
        return of(network, Route.of(network, new Inspections(network)));
    }

    static Determinacy of(Network network, Route route) {
        return new Determinacies(network).determinacy(route);
    }

    private Determinacy determinacy(Route route) {
        if (unknowns == equations && route.isComplete()) {
            return new Determinacy.Determinate(count(equations));
        }
        DMatrixRMaj matrix = new EquilibriumSystem(network, SolutionOrder.natural(network)).full();
        SingularValueDecomposition_F64<DMatrixRMaj> svd = DecompositionFactory_DDRM.svd(equations, unknowns, true, true,
                false);
        svd.decompose(matrix);
        double[] singular = svd.getSingularValues();
        double largest = 0;
        for (double value : singular) {
            largest = Math.max(largest, value);
        }
        boolean[] lost = new boolean[Math.max(equations, unknowns)];
        int rank = 0;
        for (int i = 0; i < lost.length; i++) {
            lost[i] = i >= singular.length || singular[i] <= RANK * largest;
            rank += lost[i] ? 0 : 1;
        }
        if (rank < equations) {
            return mechanism(rank, columns(svd.getU(null, false), equations, lost));
        }
        return unknowns == equations ? new Determinacy.Determinate(count(rank))
                : indeterminate(rank, columns(svd.getV(null, false), unknowns, lost));
    }

    /** Columns of an orthogonal matrix that belong to lost singular values. */
    private static List<double[]> columns(DMatrixRMaj matrix, int size, boolean[] lost) {
        List<double[]> columns = new ArrayList<>();
        for (int c = 0; c < size; c++) {
            if (lost[c]) {
                double[] column = new double[size];
                for (int r = 0; r < size; r++) {
                    column[r] = matrix.get(r, c);
                }
                columns.add(column);
            }
        }
        return columns;
    }

    private Determinacy.Count count(int rank) {
        return new Determinacy.Count(network.members(), network.reactions(), network.joints(), network.dimension(),
                rank);
    }

    /** An unknown that takes part in some set of forces without loads may go. */
    private Determinacy indeterminate(int rank, List<double[]> selfStress) {
        List<String> members = new ArrayList<>();
        List<String> reactions = new ArrayList<>();
        for (int u = 0; u < unknowns; u++) {
            int unknown = u;
            if (selfStress.stream().anyMatch(s -> Math.abs(s[unknown]) > NOTHING)) {
                (network.isMember(u) ? members : reactions).add(network.unknownName(u));
            }
        }
        return new Determinacy.Indeterminate(count(rank), unknowns - rank, members, reactions);
    }

    private Determinacy mechanism(int rank, List<double[]> motions) {
        double[] motion = NullSpace.fewestParts(motions, NOTHING);
        Map<String, Vector> moving = new LinkedHashMap<>();
        double largest = 0;
        for (int j = 0; j < network.joints(); j++) {
            largest = Math.max(largest, at(motion, j).norm());
        }
        for (int j = 0; j < network.joints(); j++) {
            Vector v = at(motion, j).times(1 / largest);
            if (v.norm() > NOTHING) {
                moving.put(network.name(j), v);
            }
        }
        return new Determinacy.Mechanism(count(rank), cause(motion), moving, equations - rank);
    }

    private Determinacy.Cause cause(double[] motion) {
        if (unknowns < equations) {
            return Determinacy.Cause.TOO_FEW;
        }
        return isOfOneBody(motion) ? Determinacy.Cause.REACTIONS_DO_NOT_HOLD : Determinacy.Cause.MEMBERS_MISPLACED;
    }

    /** Whether all joints move as one rigid body: no two of them nearer or farther. */
    private boolean isOfOneBody(double[] motion) {
        int far = 0;
        for (int j = 1; j < network.joints(); j++) {
            far = network.place(j).minus(network.place(0)).norm() > network.place(far).minus(network.place(0)).norm()
                    ? j : far;
        }
        for (int j = 0; j < network.joints(); j++) {
            for (int base : new int[] {0, far}) {
                Vector apart = network.place(j).minus(network.place(base));
                if (j != base && Math.abs(at(motion, j).minus(at(motion, base)).dot(apart.unit())) > NOTHING) {
                    return false;
                }
            }
        }
        return true;
    }

    private Vector at(double[] motion, int joint) {
        int d = network.dimension();
        return new Vector(motion[d * joint], motion[d * joint + 1], d == 3 ? motion[d * joint + 2] : 0);
    }
}
