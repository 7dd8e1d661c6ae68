package kingpost.marking;

/** A handful of linear equations. */
final class SmallSystem {

    private static final double SINGULAR = 1e-7;

    private SmallSystem() {
    }

    /** The inverse, by Gauss and Jordan with row exchange; {@code null} when there is none. */
    static double[][] inverse(double[][] matrix) {
        int n = matrix.length;
        if (n == 1) {
            return matrix[0][0] == 0 ? null : new double[][] {{1 / matrix[0][0]}};
        }
        double[][] work = new double[n][2 * n];
        double size = 0;
        for (int i = 0; i < n; i++) {
            System.arraycopy(matrix[i], 0, work[i], 0, n);
            work[i][n + i] = 1;
            for (double each : matrix[i]) {
                size = Math.max(size, Math.abs(each));
            }
        }
        for (int column = 0; column < n; column++) {
            int pivot = column;
            for (int row = column + 1; row < n; row++) {
                pivot = Math.abs(work[row][column]) > Math.abs(work[pivot][column]) ? row : pivot;
            }
            if (Math.abs(work[pivot][column]) <= SINGULAR * size) {
                return null;
            }
            double[] swap = work[pivot];
            work[pivot] = work[column];
            work[column] = swap;
            clear(work, column);
        }
        double[][] inverse = new double[n][n];
        for (int i = 0; i < n; i++) {
            System.arraycopy(work[i], n, inverse[i], 0, n);
        }
        return inverse;
    }

    private static void clear(double[][] work, int column) {
        double pivot = work[column][column];
        for (int k = 0; k < work[column].length; k++) {
            work[column][k] /= pivot;
        }
        for (int row = 0; row < work.length; row++) {
            double factor = work[row][column];
            for (int k = 0; row != column && factor != 0 && k < work[row].length; k++) {
                work[row][k] -= factor * work[column][k];
            }
        }
    }
}
