package kingpost.form;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.function.Function;
import java.util.stream.IntStream;
import kingpost.statics.Solution;
import kingpost.statics.Solver;
import kingpost.truss.Direction;
import kingpost.truss.TrussBuilder;
import kingpost.truss.TrussModel;
import kingpost.units.StructuralUnits;
import org.junit.jupiter.api.Test;

/** Ready-made forms against formulas and tables for them; kilonewtons. */
class PublishedFormsTest {

    private static TrussBuilder<TrussModel> written(Form form, double span, double rise, int panels) {
        return form.of(span, rise, panels, Function.<TrussModel>identity())
                .units(StructuralUnits.m, StructuralUnits.kN);
    }

    private static Solution deck(Form form, double panel, double rise, int panels, double load) {
        String inner = String.join(" ", IntStream.range(1, panels).mapToObj(i -> "L" + i).toList());
        return Solver.solve(written(form, panel * panels, rise, panels).loads(inner, load, Direction.DOWN).build());
    }

    private static double force(Solution solution, String member) {
        return solution.members().stream().filter(r -> r.member().name().equals(member)).findFirst().orElseThrow()
                .force() / 1000;
    }

    /** Moment of the equal loads at panel point i over simple supports. */
    private static double moment(double load, double panel, int panels, int i) {
        return load * panel * i * (panels - i) / 2;
    }

    private static double shear(double load, int panels, int panel) {
        return load * (panels + 1 - 2 * panel) / 2;
    }

    /** HB-02: six panels of 5 m, 6 m high, 10 kN; derived from statics, no published source. */
    @Test
    void prattAndHoweOfSixPanels() {
        Solution pratt = deck(Form.PRATT, 5, 6, 6, 10);
        Solution howe = deck(Form.HOWE, 5, 6, 6, 10);

        List<String> prattNames = List.of("L0-L1", "L1-L2", "L2-L3", "U1-U2", "U2-U3", "L0-U1", "U1-L1", "U2-L2",
                "U3-L3", "U1-L2", "U2-L3");
        double[] prattForces = {20.8333, 20.8333, 33.3333, -33.3333, -37.5, -32.5427, 10, -5, 0, 19.5256, 6.5085};
        List<String> howeNames = List.of("L0-L1", "L1-L2", "L2-L3", "U1-U2", "U2-U3", "L0-U1", "U1-L1", "U2-L2",
                "U3-L3", "L1-U2", "L2-U3");
        double[] howeForces = {20.8333, 33.3333, 37.5, -20.8333, -33.3333, -32.5427, 25, 15, 10, -19.5256, -6.5085};
        for (int i = 0; i < prattNames.size(); i++) {
            assertEquals(prattForces[i], force(pratt, prattNames.get(i)), 0.5e-4, prattNames.get(i));
            assertEquals(howeForces[i], force(howe, howeNames.get(i)), 0.5e-4, howeNames.get(i));
        }
    }

    /** HB-02, Warren without verticals: chords from the moment, diagonals from the shear; derived, no source. */
    @Test
    void warrenWithoutVerticals() {
        double p = 4;
        double h = 3;
        double w = 12;
        double d = Math.hypot(p / 2, h);
        for (int n = 3; n <= 12; n++) {
            Solution s = deck(Form.WARREN, p, h, n, w);
            for (int i = 1; i <= n; i++) {
                double v = shear(w, n, i);
                double tie = (moment(w, p, n, i - 1) + v * p / 2) / h;
                assertEquals(tie, force(s, "L" + (i - 1) + "-L" + i), 1e-9);
                assertEquals(-v * d / h, force(s, "L" + (i - 1) + "-U" + i), 1e-9);
                assertEquals(v * d / h, force(s, "U" + i + "-L" + i), 1e-9);
                if (i < n) {
                    assertEquals(-moment(w, p, n, i) / h, force(s, "U" + i + "-U" + (i + 1)), 1e-9);
                }
            }
        }
    }

    /** The chords of a K truss and of a Baltimore truss from the moment of a beam; derived, no source. */
    @Test
    void chordsOfKAndBaltimore() {
        for (int n = 6; n <= 12; n += 2) {
            Solution k = deck(Form.K, 4, 6, n, 15);
            for (int i = 2; i <= n / 2; i++) {
                assertEquals(-moment(15, 4, n, i - 1) / 6, force(k, "U" + (i - 1) + "-U" + i), 1e-9);
                assertEquals(moment(15, 4, n, i - 1) / 6, force(k, "L" + (i - 1) + "-L" + i), 1e-9);
            }
        }
        for (int n = 8; n <= 12; n += 4) {
            Solution baltimore = deck(Form.BALTIMORE, 4, 6, n, 15);
            for (int i = 2; i < n / 2; i += 2) {
                // a cut through the lower half of the diagonal, moments about its lower end
                double moment = moment(15, 4, n, i + 2);
                assertEquals(-moment / 6, force(baltimore, "U" + i + "-U" + (i + 2)), 1e-9);
            }
        }
    }

    /**
     * Coefficients of W for a compound Fink roof of eight panels at 30 degrees (HB-01). Source: S. S. Bhavikatti,
     * Mechanics of Solids, chapter 3, example 3.10, for U3-U4, M1-U4 and L2-L3; the other ones are a pocket-book
     * table given from memory and checked by an independent joint solution.
     */
    @Test
    void finkOfEightPanelsAtThirtyDegrees() {
        Solution s = Solver.solve(written(Form.FINK, 18, 9 / Math.sqrt(3), 8)
                .loads("U1 U2 U3 U4 U5 U6 U7", 20, Direction.DOWN).build());

        double root = Math.sqrt(3);
        double[] rafter = {-7, -6.5, -6, -5.5};
        for (int i = 0; i < 4; i++) {
            assertEquals(20 * rafter[i], force(s, i == 0 ? "L0-U1" : "U" + i + "-U" + (i + 1)), 1e-9);
        }
        assertEquals(20 * 3.5 * root, force(s, "L0-L1"), 1e-9);
        assertEquals(20 * 3 * root, force(s, "L1-L2"), 1e-9);
        assertEquals(20 * 2 * root, force(s, "L2-L3"), 1e-9);
        assertEquals(-20 * root / 2, force(s, "U1-L1"), 1e-9);
        assertEquals(-20 * root / 2, force(s, "U3-M1"), 1e-9);
        assertEquals(-20 * root, force(s, "U2-L2"), 1e-9);
        assertEquals(20 * root / 2, force(s, "L1-U2"), 1e-9);
        assertEquals(20 * root / 2, force(s, "U2-M1"), 1e-9);
        assertEquals(20 * root, force(s, "L2-M1"), 1e-9);
        assertEquals(20 * 1.5 * root, force(s, "M1-U4"), 1e-9);
    }

    /**
     * Howe roof of six panels of 4, rise 8 (OER-5): forces for a unit load at each lower joint. Source: D. Baker and W.
     * Haynes, Engineering Statics: Open and Interactive, chapter 6 exercises, question "Method of sections: Howe
     * Truss", whose formulas give these ordinates.
     */
    @Test
    void howeRoofUnderAUnitLoadAtEachLowerJoint() {
        double[][] ordinates = {
            {-0.60093, -1.20185, -0.90139, -0.60093, -0.30046}, {0.5, 1, 0, 0, 0}, {0.5, 1, 0.75, 0.5, 0.25},
            {-0.30046, -0.60093, -0.90139, -0.60093, -0.30046}, {0, 0, 0, -0.83333, -0.41667},
            {0.25, 0.5, 0.75, 1, 0.5}};
        List<String> members = List.of("U1-U2", "U2-L2", "L2-L3", "U3-U4", "L3-U4", "L3-L4");
        for (int joint = 1; joint <= 5; joint++) {
            Solution s = Solver.solve(written(Form.HOWE_ROOF, 24, 8, 6).load("L" + joint, 1, Direction.DOWN).build());
            for (int m = 0; m < members.size(); m++) {
                assertEquals(ordinates[m][joint - 1], force(s, members.get(m)), 0.51e-5, members.get(m) + " " + joint);
            }
        }
    }
}
