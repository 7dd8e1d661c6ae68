package kingpost.exact;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.IntStream;
import kingpost.exact.ExactSystem.Solution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ExactSystemTest {

    private static List<Fraction> row(long... values) {
        return IntStream.range(0, values.length).mapToObj(i -> Fraction.of(values[i])).toList();
    }

    private static Fraction product(List<Fraction> row, List<Fraction> x) {
        Fraction sum = Fraction.ZERO;
        for (int i = 0; i < x.size(); i++) {
            sum = sum.plus(row.get(i).times(x.get(i)));
        }
        return sum;
    }

    private static List<List<Fraction>> randomMatrix(Random random, int rows, int columns, double filled) {
        List<List<Fraction>> matrix = new ArrayList<>();
        for (int i = 0; i < rows; i++) {
            List<Fraction> row = new ArrayList<>();
            for (int j = 0; j < columns; j++) {
                row.add(random.nextDouble() < filled ? FractionTest.random(random) : Fraction.ZERO);
            }
            matrix.add(row);
        }
        return matrix;
    }

    @Test
    void solvesTwoEquations() {
        Solution solution = ExactSystem.dense(List.of(row(0, 3), row(2, 5)), row(4, 1)).solve();
        assertEquals(new Solution.Unique(List.of(Fraction.of(-17, 6), Fraction.of(4, 3))), solution);
    }

    /** Formula for the inverse of a Hilbert matrix from memory; H times it is checked to be the unit matrix. */
    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 8, 15})
    void invertsHilbertMatrices(int n) {
        ExactSystem system = ExactSystem.of(n, n);
        List<List<Fraction>> hilbert = new ArrayList<>();
        for (int i = 1; i <= n; i++) {
            Map<Integer, Fraction> coefficients = new TreeMap<>();
            List<Fraction> unit = new ArrayList<>();
            List<Fraction> dense = new ArrayList<>();
            for (int j = 1; j <= n; j++) {
                coefficients.put(j - 1, Fraction.of(1, i + j - 1));
                dense.add(Fraction.of(1, i + j - 1));
                unit.add(i == j ? Fraction.ONE : Fraction.ZERO);
            }
            hilbert.add(dense);
            system.add(coefficients, unit);
        }
        for (int j = 1; j <= n; j++) {
            List<Fraction> column = assertInstanceOf(Solution.Unique.class, system.solve(j - 1)).values();
            for (int i = 1; i <= n; i++) {
                assertEquals(Fraction.of(hilbertInverse(n, i, j)), column.get(i - 1));
                assertEquals(i == j ? Fraction.ONE : Fraction.ZERO, product(hilbert.get(i - 1), column));
            }
        }
    }

    private static BigInteger hilbertInverse(int n, int i, int j) {
        BigInteger square = choose(i + j - 2, i - 1).pow(2);
        BigInteger size = choose(n + i - 1, n - j).multiply(choose(n + j - 1, n - i)).multiply(square)
                .multiply(BigInteger.valueOf(i + j - 1));
        return (i + j) % 2 == 0 ? size : size.negate();
    }

    private static BigInteger choose(int n, int k) {
        BigInteger result = BigInteger.ONE;
        for (int i = 1; i <= k; i++) {
            result = result.multiply(BigInteger.valueOf(n - k + i)).divide(BigInteger.valueOf(i));
        }
        return result;
    }

    @Test
    void whatItSolvesFulfilsEveryEquation() {
        Random random = new Random(20264);
        for (int run = 0; run < 200; run++) {
            int n = 1 + random.nextInt(12);
            List<List<Fraction>> matrix = randomMatrix(random, n, n, 0.2 + 0.8 * random.nextDouble());
            List<Fraction> right = randomMatrix(random, 1, n, 1).get(0);
            Solution solution = ExactSystem.dense(matrix, right).solve();
            if (solution instanceof Solution.Unique unique) {
                checkFulfils(matrix, right, unique.values());
            } else if (solution instanceof Solution.Many many) {
                checkFulfils(matrix, right, many.values());
            }
        }
    }

    private static void checkFulfils(List<List<Fraction>> matrix, List<Fraction> right, List<Fraction> x) {
        for (int i = 0; i < matrix.size(); i++) {
            assertEquals(right.get(i), product(matrix.get(i), x));
        }
    }

    @Test
    void findsTheRankOfProducts() {
        Random random = new Random(20265);
        for (int run = 0; run < 100; run++) {
            int n = 2 + random.nextInt(7);
            int inner = 1 + random.nextInt(n);
            List<List<Fraction>> left = randomMatrix(random, n, inner, 1);
            List<List<Fraction>> right = randomMatrix(random, n, inner, 1);
            List<List<Fraction>> matrix = left.stream()
                    .map(a -> right.stream().map(b -> product(a, b)).toList()).toList();
            ExactSystem system = ExactSystem.dense(matrix, row(new long[n]));
            assertEquals(inner, system.rank());
            assertEquals(n - inner, system.nullSpace().size());
            assertEquals(n - inner, system.freeUnknowns().size());
            assertEquals(n - inner, system.dependentEquations().size());
            for (List<Fraction> vector : system.nullSpace()) {
                checkFulfils(matrix, row(new long[n]), vector);
            }
        }
    }

    @Test
    void saysWhichEquationContradicts() {
        ExactSystem system = ExactSystem.dense(List.of(row(1, 1), row(2, 2), row(3, 3)), row(1, 2, 4));
        assertEquals(new Solution.None(2), system.solve());
        assertEquals(List.of(1, 2), system.dependentEquations());
    }

    @Test
    void tellsManyAnswersFromOne() {
        Solution.Many many = assertInstanceOf(Solution.Many.class,
                ExactSystem.dense(List.of(row(1, 1, 0), row(0, 1, 1)), row(3, 2)).solve());
        assertEquals(row(1, 2, 0), many.values());
        assertEquals(List.of(row(1, -1, 1)), many.nullSpace());
    }

    @Test
    void casesShareTheLeftHandSide() {
        ExactSystem system = ExactSystem.of(1, 2).add(Map.of(0, Fraction.of(2)), List.of(Fraction.of(6), Fraction.of(5)))
                .add(Map.of(0, Fraction.of(4)), List.of(Fraction.of(12), Fraction.of(9)));
        assertEquals(new Solution.Unique(row(3)), system.solve(0));
        assertEquals(new Solution.None(1), system.solve(1));
    }

    @Test
    void solvesALongBandInOrder() {
        int n = 400;
        ExactSystem system = ExactSystem.of(n);
        for (int i = 0; i < n; i++) {
            Map<Integer, Fraction> row = new TreeMap<>(Map.of(i, Fraction.of(2)));
            if (i > 0) {
                row.put(i - 1, Fraction.of(-1));
            }
            if (i < n - 1) {
                row.put(i + 1, Fraction.of(-1));
            }
            system.add(row, i == n - 1 ? Fraction.of(n + 1) : Fraction.ZERO);
        }
        List<Fraction> x = assertInstanceOf(Solution.Unique.class, system.solve()).values();
        for (int i = 0; i < n; i++) {
            assertEquals(Fraction.of(i + 1), x.get(i));
        }
    }

    @Test
    void refusesAnUnknownThatIsNotThere() {
        assertThrows(IllegalArgumentException.class, () -> ExactSystem.of(2).add(Map.of(2, Fraction.ONE), Fraction.ONE));
    }
}
