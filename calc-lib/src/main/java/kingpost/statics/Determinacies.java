package kingpost.statics;

import java.util.ArrayList;
import java.util.Arrays;
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
 * values of the full matrix of cosines, or for a large truss from sparse elimination.
 */
public final class Determinacies {

    /** Up to this many unknowns or equations the full matrix is decomposed. */
    static final int FULL = 240;
    /** A singular value below this part of the largest counts as zero. */
    private static final double RANK = 1e-10;
    /** So many mechanisms are looked at for the one that moves the fewest joints. */
    private static final int MOST_MOTIONS = 12;
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

    static Determinacy byElimination(Network network, SolutionOrder order) {
        return new Determinacies(network).byElimination(order);
    }

    private Determinacy determinacy(Route route) {
        SolutionOrder order = SolutionOrder.of(network, route.moves());
        if (unknowns == equations && route.isComplete()) {
            return determinate(order);
        }
        return Math.max(unknowns, equations) <= FULL ? byFullMatrix(order) : byElimination(order);
    }

    private Determinacy determinate(SolutionOrder order) {
        return new Determinacy.Determinate(count(equations), new EquilibriumSystem(network, order).condition());
    }

    private Determinacy byFullMatrix(SolutionOrder order) {
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
        return unknowns == equations ? determinate(order)
                : indeterminate(rank, columns(svd.getV(null, false), unknowns, lost));
    }

    /** As by the full matrix, in time that hardly grows faster than a long truss does. */
    private Determinacy byElimination(SolutionOrder order) {
        SparseRank elimination = new EquilibriumSystem(network, order).rank();
        if (elimination.rank() < equations) {
            List<double[]> motions = new ArrayList<>();
            elimination.motions(MOST_MOTIONS, motion -> motions.add(inTrussOrder(motion, order)));
            return mechanism(elimination.rank(), motions);
        }
        if (unknowns == equations) {
            return determinate(order);
        }
        boolean[] removable = new boolean[unknowns];
        elimination.selfStresses(forces -> mark(removable, forces, order));
        return indeterminate(elimination.rank(), removable);
    }

    private double[] inTrussOrder(double[] motion, SolutionOrder order) {
        int d = network.dimension();
        double[] ordered = new double[motion.length];
        for (int place = 0; place < network.joints(); place++) {
            System.arraycopy(motion, d * place, ordered, d * order.joint(place), d);
        }
        return ordered;
    }

    private static void mark(boolean[] removable, double[] forces, SolutionOrder order) {
        double largest = Arrays.stream(forces).map(Math::abs).max().orElse(0);
        for (int k = 0; k < forces.length; k++) {
            removable[order.unknown(k)] |= Math.abs(forces[k]) > NOTHING * largest;
        }
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

    private Determinacy indeterminate(int rank, List<double[]> selfStress) {
        boolean[] removable = new boolean[unknowns];
        for (int u = 0; u < unknowns; u++) {
            int unknown = u;
            removable[u] = selfStress.stream().anyMatch(s -> Math.abs(s[unknown]) > NOTHING);
        }
        return indeterminate(rank, removable);
    }

    /** An unknown that takes part in some set of forces without loads may go. */
    private Determinacy indeterminate(int rank, boolean[] removable) {
        List<String> members = new ArrayList<>();
        List<String> reactions = new ArrayList<>();
        for (int u = 0; u < unknowns; u++) {
            if (removable[u]) {
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
        int aside = 0;
        Vector line = network.place(far).minus(network.place(0));
        for (int j = 0; j < network.joints() && network.dimension() == 3; j++) {
            aside = line.cross(network.place(j).minus(network.place(0))).norm()
                    > line.cross(network.place(aside).minus(network.place(0))).norm() ? j : aside;
        }
        for (int j = 0; j < network.joints(); j++) {
            for (int base : new int[] {0, far, aside}) {
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
