package kingpost.exact;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Linear equations with fractional coefficients, solved without rounding.
 *
 * <p>Rows are taken in the order in which they are added, and each is freed of the unknowns already settled, lowest
 * first; so equations numbered along a structure keep their band. Coefficients are held as whole numbers without a
 * common factor in each row, which keeps them short.
 *
 * <p><b>Shape</b>: unknowns are numbered from 0; every equation has one right-hand side for each case.
 */
public final class ExactSystem {

    private final int unknowns;
    private final int cases;
    private final TreeMap<Integer, TreeMap<Integer, BigInteger>> pivotRows = new TreeMap<>();
    private final List<Integer> redundant = new ArrayList<>();
    private final Map<Integer, Integer> contradictions = new TreeMap<>();
    private int rows;

    private ExactSystem(int unknowns, int cases) {
        this.unknowns = unknowns;
        this.cases = cases;
    }

    /** No equations yet, for {@code unknowns} unknowns and one right-hand side. */
    public static ExactSystem of(int unknowns) {
        return of(unknowns, 1);
    }

    /** No equations yet, for {@code unknowns} unknowns and {@code cases} right-hand sides. */
    public static ExactSystem of(int unknowns, int cases) {
        if (unknowns < 0 || cases < 0) {
            throw new IllegalArgumentException(unknowns + " unknowns, " + cases + " cases");
        }
        return new ExactSystem(unknowns, cases);
    }

    /** The equations {@code matrix x = right}, every coefficient given. */
    public static ExactSystem dense(List<List<Fraction>> matrix, List<Fraction> right) {
        ExactSystem system = of(matrix.isEmpty() ? 0 : matrix.get(0).size());
        for (int i = 0; i < matrix.size(); i++) {
            Map<Integer, Fraction> row = new TreeMap<>();
            for (int j = 0; j < matrix.get(i).size(); j++) {
                row.put(j, matrix.get(i).get(j));
            }
            system.add(row, right.get(i));
        }
        return system;
    }

    /** Adds the equation: unknown times coefficient, summed, equals {@code right}. */
    public ExactSystem add(Map<Integer, Fraction> coefficients, Fraction right) {
        return add(coefficients, List.of(right));
    }

    /**
     * Adds an equation with a right-hand side for each case.
     *
     * @throws IllegalArgumentException when it names an unknown that is not there, or has not one right-hand side for
     *                                  each case
     */
    public ExactSystem add(Map<Integer, Fraction> coefficients, List<Fraction> right) {
        if (right.size() != cases) {
            throw new IllegalArgumentException(right.size() + " right-hand sides for " + cases + " cases");
        }
        TreeMap<Integer, Fraction> row = new TreeMap<>();
        coefficients.forEach((unknown, coefficient) -> {
            if (unknown < 0 || unknown >= unknowns) {
                throw new IllegalArgumentException("unknown " + unknown + " of " + unknowns);
            }
            row.put(unknown, coefficient);
        });
        for (int i = 0; i < cases; i++) {
            row.put(unknowns + i, right.get(i));
        }
        settle(reduce(IntegerRows.of(row)));
        rows++;
        return this;
    }

    /** The number of equations that say something new. */
    public int rank() {
        return pivotRows.size();
    }

    /** The equations, numbered from 0 as added, whose left-hand sides follow from those before them. */
    public List<Integer> dependentEquations() {
        return List.copyOf(redundant);
    }

    /** The unknowns that may be chosen freely. */
    public List<Integer> freeUnknowns() {
        List<Integer> free = new ArrayList<>();
        for (int i = 0; i < unknowns; i++) {
            if (!pivotRows.containsKey(i)) {
                free.add(i);
            }
        }
        return free;
    }

    /** What can be said of the unknowns in the first case. */
    public Solution solve() {
        return solve(0);
    }

    /** What can be said of the unknowns in case {@code number}, from 0. */
    public Solution solve(int number) {
        Integer contradiction = contradictions.get(number);
        if (contradiction != null) {
            return new Solution.None(contradiction);
        }
        List<Fraction> values = backSubstitute(unknowns + number, -1);
        List<List<Fraction>> freedom = nullSpace();
        return freedom.isEmpty() ? new Solution.Unique(values) : new Solution.Many(values, freedom);
    }

    /** Independent ways to change the unknowns without changing any left-hand side; one for each free unknown. */
    public List<List<Fraction>> nullSpace() {
        return freeUnknowns().stream().map(free -> backSubstitute(-1, free)).toList();
    }

    /** Takes from {@code row} the unknowns that have a pivot row, lowest first; new ones that enter stand higher. */
    private TreeMap<Integer, BigInteger> reduce(TreeMap<Integer, BigInteger> row) {
        Integer column = row.isEmpty() ? null : row.firstKey();
        while (column != null && column < unknowns) {
            TreeMap<Integer, BigInteger> pivot = pivotRows.get(column);
            if (pivot != null) {
                IntegerRows.eliminate(row, pivot, column);
            }
            column = row.higherKey(column);
        }
        IntegerRows.removeCommonFactor(row);
        return row;
    }

    private void settle(TreeMap<Integer, BigInteger> row) {
        if (!row.isEmpty() && row.firstKey() < unknowns) {
            pivotRows.put(row.firstKey(), row);
            return;
        }
        redundant.add(rows);
        row.keySet().forEach(column -> contradictions.putIfAbsent(column - unknowns, rows));
    }

    /** All unknowns, for one right-hand column (or none) and one free unknown set to 1 (or none). */
    private List<Fraction> backSubstitute(int rightColumn, int free) {
        List<Fraction> values = new ArrayList<>(Collections.nCopies(unknowns, Fraction.ZERO));
        if (free >= 0) {
            values.set(free, Fraction.ONE);
        }
        pivotRows.descendingMap().forEach((pivot, row) -> {
            Fraction sum = Fraction.of(row.getOrDefault(rightColumn, BigInteger.ZERO));
            for (Map.Entry<Integer, BigInteger> term : row.subMap(pivot + 1, unknowns).entrySet()) {
                Fraction value = values.get(term.getKey());
                if (!value.isZero()) {
                    sum = sum.minus(value.times(Fraction.of(term.getValue())));
                }
            }
            values.set(pivot, sum.over(Fraction.of(row.get(pivot))));
        });
        return List.copyOf(values);
    }

    /** What linear equations say of their unknowns. */
    public sealed interface Solution {

        /** One value for each unknown. */
        record Unique(List<Fraction> values) implements Solution {
            public Unique {
                values = List.copyOf(values);
            }
        }

        /**
         * More than one answer.
         *
         * @param values    the answer with every free unknown zero
         * @param nullSpace what may be added to it, any number of times each
         */
        record Many(List<Fraction> values, List<List<Fraction>> nullSpace) implements Solution {
            public Many {
                values = List.copyOf(values);
                nullSpace = nullSpace.stream().map(List::copyOf).toList();
            }
        }

        /**
         * No answer.
         *
         * @param equation the first equation, numbered from 0, that contradicts those before it
         */
        record None(int equation) implements Solution {
        }
    }
}
