package kingpost.statics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import kingpost.truss.Direction;
import kingpost.truss.Load;
import kingpost.truss.Member;
import kingpost.truss.Support;
import kingpost.truss.TrussModel;
import kingpost.units.StructuralUnits;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * The published cases tell a right solver from a wrong one: the same small solver, right and with one fault at a time,
 * is held against them.
 */
class WrongSolversTest {

    private static final List<String> CASES = List.of("MJ-01", "MJ-02", "MJ-04", "MJ-06", "MJ-07", "MJ-08", "MJ-09",
            "MJ-10", "MJ-13", "MJ-15", "MS-01", "MS-02", "MS-05", "MS-07", "MS-09");

    /** One slip that a person makes when writing the equations of joints down. */
    enum Fault {
        NONE, LOADS_TURNED_ROUND, SINE_FOR_COSINE, BOTH_ENDS_THE_SAME_WAY, X_LOADS_LEFT_OUT, COMPRESSION_POSITIVE,
        REACTIONS_TURNED_ROUND
    }

    @Test
    void aRightSolverAgreesWithEveryPublishedForce() {
        CASES.forEach(id -> assertEquals(0, disagreements(id, Fault.NONE), id));
    }

    @ParameterizedTest
    @EnumSource(value = Fault.class, mode = EnumSource.Mode.EXCLUDE, names = {"NONE", "REACTIONS_TURNED_ROUND"})
    void aWrongSolverIsFoundOut(Fault fault) {
        long foundOut = CASES.stream().filter(id -> disagreements(id, fault) > 0).count();

        assertTrue(foundOut >= CASES.size() / 2, fault + " is found out by " + foundOut + " cases only");
    }

    /** Member forces do not tell which way a reaction was drawn; the published reactions do. */
    @Test
    void reactionsTurnedRoundAreFoundOut() {
        PublishedCase published = PublishedCase.of("MJ-02");

        Map<String, Double> forces = forces(published.truss(), Fault.REACTIONS_TURNED_ROUND);

        assertTrue(published.publishedReactions.entrySet().stream().anyMatch(e -> Math.abs(
                published.inUnit(forces.get(e.getKey())) - e.getValue()) > PublishedCase.precision(e.getValue())));
    }

    private static long disagreements(String id, Fault fault) {
        PublishedCase published = PublishedCase.of(id);
        Map<String, Double> forces = forces(published.truss(), fault);
        return published.published.entrySet().stream().filter(e -> {
            double force = forces.get(published.truss().member(e.getKey()).orElseThrow().name());
            return !Double.isFinite(force) || Math.abs(published.inUnit(force) - e.getValue())
                    > PublishedCase.precision(e.getValue());
        }).count();
    }

    /** Newtons by name of member or reaction; all joint equations at once, eliminated with the largest pivot. */
    private static Map<String, Double> forces(TrussModel truss, Fault fault) {
        List<String> joints = truss.joints().stream().map(j -> j.name()).toList();
        List<String> names = new ArrayList<>();
        int n = 2 * joints.size();
        double[][] a = new double[n][n + 1];
        for (Member member : truss.members()) {
            double dx = x(truss, member.to()) - x(truss, member.from());
            double dy = y(truss, member.to()) - y(truss, member.from());
            double cosine = (fault == Fault.SINE_FOR_COSINE ? dy : dx) / Math.hypot(dx, dy);
            double sine = (fault == Fault.SINE_FOR_COSINE ? dx : dy) / Math.hypot(dx, dy);
            double pull = fault == Fault.COMPRESSION_POSITIVE ? -1 : 1;
            double far = fault == Fault.BOTH_ENDS_THE_SAME_WAY ? pull : -pull;
            put(a, joints.indexOf(member.from()), names.size(), pull * cosine, pull * sine);
            put(a, joints.indexOf(member.to()), names.size(), far * cosine, far * sine);
            names.add(member.name());
        }
        for (Support support : truss.supports()) {
            for (Direction reaction : support.reactions()) {
                double way = fault == Fault.REACTIONS_TURNED_ROUND ? -1 : 1;
                put(a, joints.indexOf(support.joint()), names.size(), way * reaction.cosX(), way * reaction.cosY());
                names.add(support.joint() + (reaction.cosX() == 1 ? "_x" : "_y"));
            }
        }
        for (Load load : truss.loads()) {
            double way = fault == Fault.LOADS_TURNED_ROUND ? -1 : 1;
            double across = fault == Fault.X_LOADS_LEFT_OUT ? 0 : way;
            a[2 * joints.indexOf(load.joint())][n] -= across * load.fx().in(StructuralUnits.N);
            a[2 * joints.indexOf(load.joint()) + 1][n] -= way * load.fy().in(StructuralUnits.N);
        }
        eliminate(a);
        Map<String, Double> forces = new TreeMap<>();
        for (int u = 0; u < n; u++) {
            forces.put(names.get(u), a[u][n] / a[u][u]);
        }
        return forces;
    }

    private static void put(double[][] a, int joint, int column, double x, double y) {
        a[2 * joint][column] += x;
        a[2 * joint + 1][column] += y;
    }

    private static void eliminate(double[][] a) {
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
    }

    private static double x(TrussModel truss, String joint) {
        return truss.joint(joint).orElseThrow().x().in(StructuralUnits.m);
    }

    private static double y(TrussModel truss, String joint) {
        return truss.joint(joint).orElseThrow().y().in(StructuralUnits.m);
    }
}
