package kingpost.statics;

import java.util.List;

/** Makes the vectors of a null space readable: each with as few parts as may be. */
final class NullSpace {

    private NullSpace() {
    }

    /**
     * The vector with the fewest parts among those that elimination makes of a basis.
     *
     * @param basis   independent vectors of one length; changed by the elimination
     * @param nothing a part below this is set to zero
     */
    static double[] fewestParts(List<double[]> basis, double nothing) {
        for (int k = 0; k < basis.size(); k++) {
            int pivot = largest(basis.get(k));
            scale(basis.get(k), 1 / basis.get(k)[pivot]);
            for (int i = 0; i < basis.size(); i++) {
                if (i != k) {
                    subtract(basis.get(i), basis.get(k), basis.get(i)[pivot]);
                }
            }
        }
        double[] best = basis.get(0);
        for (double[] vector : basis) {
            clean(vector, nothing);
            best = parts(vector) < parts(best) ? vector : best;
        }
        return best;
    }

    private static int largest(double[] vector) {
        int largest = 0;
        for (int i = 1; i < vector.length; i++) {
            largest = Math.abs(vector[i]) > Math.abs(vector[largest]) * (1 + 1e-6) ? i : largest;
        }
        return largest;
    }

    private static void scale(double[] vector, double factor) {
        for (int i = 0; i < vector.length; i++) {
            vector[i] *= factor;
        }
    }

    private static void subtract(double[] from, double[] vector, double times) {
        for (int i = 0; i < from.length; i++) {
            from[i] -= times * vector[i];
        }
    }

    private static void clean(double[] vector, double nothing) {
        for (int i = 0; i < vector.length; i++) {
            vector[i] = Math.abs(vector[i]) <= nothing ? 0 : vector[i];
        }
    }

    private static int parts(double[] vector) {
        int parts = 0;
        for (double v : vector) {
            parts += v == 0 ? 0 : 1;
        }
        return parts;
    }
}
