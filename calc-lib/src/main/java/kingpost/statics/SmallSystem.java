package kingpost.statics;

/** Two or three equations of a joint, or six of a body, solved by elimination with row exchange. */
final class SmallSystem {

    private SmallSystem() {
    }

    /** The determinant of a square matrix; rows are equations. */
    static double determinant(double[][] matrix) {
        double[][] a = copy(matrix);
        double determinant = 1;
        for (int k = 0; k < a.length; k++) {
            int pivot = pivot(a, k);
            if (pivot != k) {
                determinant = -determinant;
            }
            swap(a, k, pivot);
            determinant *= a[k][k];
            if (a[k][k] == 0) {
                return 0;
            }
            eliminate(a, new double[a.length], k);
        }
        return determinant;
    }

    /** Solves matrix times x = right; the matrix is not singular. */
    static double[] solve(double[][] matrix, double[] right) {
        double[][] a = copy(matrix);
        double[] b = right.clone();
        for (int k = 0; k < a.length; k++) {
            int pivot = pivot(a, k);
            swap(a, k, pivot);
            double moved = b[k];
            b[k] = b[pivot];
            b[pivot] = moved;
            eliminate(a, b, k);
        }
        for (int k = a.length - 1; k >= 0; k--) {
            for (int c = k + 1; c < a.length; c++) {
                b[k] -= a[k][c] * b[c];
            }
            b[k] /= a[k][k];
        }
        return b;
    }

    private static void eliminate(double[][] a, double[] b, int k) {
        for (int r = k + 1; r < a.length; r++) {
            double factor = a[r][k] / a[k][k];
            for (int c = k; c < a.length; c++) {
                a[r][c] -= factor * a[k][c];
            }
            b[r] -= factor * b[k];
        }
    }

    private static int pivot(double[][] a, int k) {
        int pivot = k;
        for (int r = k + 1; r < a.length; r++) {
            if (Math.abs(a[r][k]) > Math.abs(a[pivot][k])) {
                pivot = r;
            }
        }
        return pivot;
    }

    private static void swap(double[][] a, int i, int k) {
        double[] row = a[i];
        a[i] = a[k];
        a[k] = row;
    }

    private static double[][] copy(double[][] matrix) {
        double[][] copy = new double[matrix.length][];
        for (int i = 0; i < copy.length; i++) {
            copy[i] = matrix[i].clone();
        }
        return copy;
    }
}
