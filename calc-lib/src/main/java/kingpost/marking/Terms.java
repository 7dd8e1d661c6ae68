package kingpost.marking;

import java.util.List;

/**
 * The coefficients of a set of equations, as they are and with sines and cosines in each other's places.
 *
 * <p><b>Shape</b>: one row for each equation, one column for each force of the stage.
 */
final class Terms {

    private static final double SMALL = 1e-9;

    private final List<Acting> acting;
    private final double[][] plain;
    private final double[][] swapped;

    Terms(List<Acting> acting, List<Measure> measures) {
        this.acting = acting;
        this.plain = new double[measures.size()][acting.size()];
        this.swapped = new double[measures.size()][acting.size()];
        for (int row = 0; row < plain.length; row++) {
            for (int f = 0; f < acting.size(); f++) {
                plain[row][f] = measures.get(row).of(acting.get(f));
                swapped[row][f] = measures.get(row).swapped(acting.get(f));
            }
        }
    }

    List<Acting> acting() {
        return acting;
    }

    int rows() {
        return plain.length;
    }

    double plain(int row, int f) {
        return plain[row][f];
    }

    double swapped(int row, int f) {
        return swapped[row][f];
    }

    /** Whether a force has a part in an equation. */
    boolean has(int row, int f) {
        return Math.abs(plain[row][f]) > SMALL;
    }

    /** Whether it matters that sine and cosine of a force change places. */
    boolean turns(int f) {
        for (int row = 0; row < plain.length; row++) {
            if (Math.abs(plain[row][f] - swapped[row][f]) > SMALL) {
                return true;
            }
        }
        return false;
    }

    int column(int unknown) {
        for (int f = 0; f < acting.size(); f++) {
            if (acting.get(f).unknown() == unknown) {
                return f;
            }
        }
        throw new IllegalArgumentException("unknown " + unknown + " takes no part here");
    }
}
