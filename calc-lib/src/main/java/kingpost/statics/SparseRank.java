package kingpost.statics;

import java.util.Arrays;
import java.util.PriorityQueue;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.stream.IntStream;

/**
 * The rank of the joint equations of a large truss, and what a lost rank means: motions without resistance and forces
 * without loads. Rows are taken in order and freed of the unknowns settled before, and the largest coefficient left
 * settles one more; only what is not zero is kept. The sparse solvers of the matrix library stop at a lost rank and
 * tell no null vector, so this is done here.
 *
 * <p><b>Shape</b>: rows and columns are those of {@link EquilibriumSystem}.
 */
final class SparseRank {

    /** A coefficient below this part of those it came from is rounding. */
    private static final double ROUNDING = 1e-10;

    private final int[][] columns;
    private final double[][] coefficients;
    private final int[][] earlier;
    private final double[][] multiples;
    private final int[] pivotOf;
    private final int[] settledBy;
    private final double[] work;
    private int rank;

    /**
     * @param columns of the coefficients of each row that are not zero
     * @param values  the coefficients
     * @param unknowns number of columns
     */
    SparseRank(int[][] columns, double[][] values, int unknowns) {
        int rows = columns.length;
        this.columns = new int[rows][];
        coefficients = new double[rows][];
        earlier = new int[rows][];
        multiples = new double[rows][];
        pivotOf = new int[rows];
        settledBy = new int[unknowns];
        Arrays.fill(settledBy, -1);
        work = new double[unknowns];
        for (int row = 0; row < rows; row++) {
            take(row, columns[row], values[row]);
        }
    }

    int rank() {
        return rank;
    }

    private void take(int row, int[] at, double[] values) {
        TreeSet<Integer> filled = new TreeSet<>();
        PriorityQueue<Integer> settled = new PriorityQueue<>();
        double spread = 0;
        for (int i = 0; i < at.length; i++) {
            work[at[i]] = values[i];
            spread = Math.max(spread, Math.abs(values[i]));
            note(at[i], filled, settled);
        }
        Growing parts = new Growing();
        while (!settled.isEmpty()) {
            int before = settled.poll();
            double multiple = work[pivotOf[before]] / coefficient(before, pivotOf[before]);
            parts.add(before, multiple);
            for (int i = 0; i < columns[before].length; i++) {
                int column = columns[before][i];
                double change = multiple * coefficients[before][i];
                spread = Math.max(spread, Math.abs(change));
                work[column] -= change;
                note(column, filled, settled);
            }
            work[pivotOf[before]] = 0;
        }
        earlier[row] = parts.indices();
        multiples[row] = parts.values();
        settle(row, filled, ROUNDING * spread);
    }

    private void note(int column, TreeSet<Integer> filled, PriorityQueue<Integer> settled) {
        if (filled.add(column) && settledBy[column] >= 0) {
            settled.add(settledBy[column]);
        }
    }

    private double coefficient(int row, int column) {
        return coefficients[row][Arrays.binarySearch(columns[row], column)];
    }

    private void settle(int row, TreeSet<Integer> filled, double rounding) {
        Growing kept = new Growing();
        int pivot = -1;
        for (int column : filled) {
            double value = work[column];
            work[column] = 0;
            if (Math.abs(value) > rounding) {
                kept.add(column, value);
                pivot = pivot < 0 || Math.abs(value) > Math.abs(kept.values[pivot]) ? kept.size - 1 : pivot;
            }
        }
        columns[row] = kept.indices();
        coefficients[row] = kept.values();
        pivotOf[row] = pivot < 0 ? -1 : columns[row][pivot];
        if (pivot >= 0) {
            settledBy[pivotOf[row]] = row;
            rank++;
        }
    }

    /**
     * Ways to combine rows to nothing: virtual motions of the joints, one for each row that tells nothing new.
     *
     * @param most after so many the rest are left out
     */
    void motions(int most, Consumer<double[]> each) {
        IntStream.range(0, columns.length).filter(row -> pivotOf[row] < 0).limit(most)
                .forEach(row -> each.accept(motion(row)));
    }

    private double[] motion(int row) {
        double[] motion = new double[columns.length];
        motion[row] = 1;
        for (int r = row; r >= 0; r--) {
            if (motion[r] != 0) {
                for (int i = 0; i < earlier[r].length; i++) {
                    motion[earlier[r][i]] -= multiples[r][i] * motion[r];
                }
            }
        }
        return motion;
    }

    /** Ways to choose the unknowns so that every row is nothing: forces without loads, one for each free unknown. */
    void selfStresses(Consumer<double[]> each) {
        for (int column = 0; column < settledBy.length; column++) {
            if (settledBy[column] < 0) {
                each.accept(selfStress(column));
            }
        }
    }

    private double[] selfStress(int free) {
        double[] forces = new double[settledBy.length];
        forces[free] = 1;
        for (int row = columns.length - 1; row >= 0; row--) {
            if (pivotOf[row] >= 0) {
                double sum = 0;
                double pivot = 0;
                for (int i = 0; i < columns[row].length; i++) {
                    sum += coefficients[row][i] * forces[columns[row][i]];
                    pivot = columns[row][i] == pivotOf[row] ? coefficients[row][i] : pivot;
                }
                forces[pivotOf[row]] = -sum / pivot;
            }
        }
        return forces;
    }

    /** Pairs of a number and a value, as many as come. */
    private static final class Growing {
        private int[] indices = new int[8];
        private double[] values = new double[8];
        private int size;

        private void add(int index, double value) {
            if (size == indices.length) {
                indices = Arrays.copyOf(indices, 2 * size);
                values = Arrays.copyOf(values, 2 * size);
            }
            indices[size] = index;
            values[size++] = value;
        }

        private int[] indices() {
            return Arrays.copyOf(indices, size);
        }

        private double[] values() {
            return Arrays.copyOf(values, size);
        }
    }
}
