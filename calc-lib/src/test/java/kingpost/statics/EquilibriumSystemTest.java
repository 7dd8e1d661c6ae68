package kingpost.statics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.stream.Stream;
import kingpost.truss.Direction;
import kingpost.truss.TrussModel;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import org.ejml.dense.row.NormOps_DDRM;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The second method on its own, full and sparse. */
class EquilibriumSystemTest {

    /** 160 unknowns: more than a full matrix is used for. */
    private static final TrussModel LARGE = ParallelChords.pratt(40, 5, 6, 10);

    private static EquilibriumSystem natural(TrussModel truss) {
        Network network = new Network(truss);
        return new EquilibriumSystem(network, SolutionOrder.natural(network));
    }

    private static EquilibriumSystem worked(TrussModel truss) {
        Network network = new Network(truss);
        return new EquilibriumSystem(network, SolutionOrder.of(network,
                Route.of(network, new Inspections(network)).moves()));
    }

    /** Chords from the moment of a beam, diagonals from its shear: derived from statics, no published source. */
    @Test
    void givesTheForcesOfALongGirderInEitherOrder() {
        for (EquilibriumSystem system : new EquilibriumSystem[] {natural(LARGE), worked(LARGE)}) {
            double[] forces = system.solve();

            for (int i = 2; i <= 20; i++) {
                double moment = 10_000.0 * 5 * (i - 1) * (40 - i + 1) / 2;
                assertEquals(moment / 6, force(forces, "L" + (i - 1) + "-L" + i), 1e-9 * moment);
                double shear = 10_000.0 * (41 - 2 * i) / 2;
                assertEquals(shear * Math.hypot(5, 6) / 6, force(forces, "U" + (i - 1) + "-L" + i), 1e-9 * moment);
            }
        }
    }

    private static double force(double[] forces, String member) {
        return forces[LARGE.members().indexOf(LARGE.member(member).orElseThrow())];
    }

    static Stream<TrussModel> trusses() {
        return Stream.concat(Stream.of(LARGE, Trusses.canopy(), flat(1e-3), flat(1e-6)), RandomTrusses.simple(20, 77));
    }

    /** Two bars that are nearly in line. */
    private static TrussModel flat(double rise) {
        return Trusses.named("Flat").joint("A", 0, 0).joint("B", 1, rise).joint("C", 2, 0).members("AB BC").pin("A")
                .pin("C").load("B", 1, Direction.DOWN).build();
    }

    /** The estimate against the norm of the matrix times that of its inverse, computed in full (EJML). */
    @ParameterizedTest
    @MethodSource("trusses")
    void estimatesTheConditionFromBelow(TrussModel truss) {
        DMatrixRMaj matrix = natural(truss).full();
        DMatrixRMaj inverse = new DMatrixRMaj(matrix.numRows, matrix.numCols);
        assertTrue(CommonOps_DDRM.invert(matrix.copy(), inverse));
        double condition = NormOps_DDRM.inducedP1(matrix) * NormOps_DDRM.inducedP1(inverse);

        for (EquilibriumSystem system : new EquilibriumSystem[] {natural(truss), worked(truss)}) {
            double estimate = system.condition();
            assertTrue(estimate <= condition * (1 + 1e-9), estimate + " of " + condition);
            assertTrue(estimate >= condition / 2, estimate + " of " + condition);
        }
    }

    @Test
    void theConditionGrowsAsAJointComesInLine() {
        assertTrue(natural(flat(1e-6)).condition() > 900 * natural(flat(1e-3)).condition());
    }
}
