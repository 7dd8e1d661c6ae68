package kingpost.statics;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Random;
import org.junit.jupiter.api.Test;

class SmallSystemTest {

    @Test
    void solvesTwoEquationsWithAZeroAtTheTop() {
        assertArrayEquals(new double[] {3, 4}, SmallSystem.solve(new double[][] {{0, 2}, {5, 1}}, new double[] {8, 19}));
    }

    @Test
    void solvesThreeEquationsWithExchangeOfRows() {
        double[][] matrix = {{1, 2, 3}, {2, 4, 1}, {3, -1, 2}};

        assertArrayEquals(new double[] {1, 2, 3}, SmallSystem.solve(matrix, new double[] {14, 13, 7}), 1e-14);
        assertArrayEquals(new double[] {1, 2, 3}, matrix[0], "what is given is left as it is");
    }

    @Test
    void givesTheDeterminantWithItsSign() {
        assertEquals(-10, SmallSystem.determinant(new double[][] {{0, 2}, {5, 1}}));
        assertEquals(10, SmallSystem.determinant(new double[][] {{5, 1}, {0, 2}}));
        assertEquals(-35, SmallSystem.determinant(new double[][] {{1, 2, 3}, {2, 4, 1}, {3, -1, 2}}), 1e-13);
        assertEquals(0, SmallSystem.determinant(new double[][] {{1, 2}, {2, 4}}));
        assertEquals(0, SmallSystem.determinant(new double[][] {{0, 0}, {1, 4}}));
    }

    @Test
    void satisfiesRandomSystems() {
        Random random = new Random(5);
        for (int trial = 0; trial < 200; trial++) {
            int n = 2 + random.nextInt(5);
            double[][] matrix = new double[n][n];
            double[] wanted = new double[n];
            double[] right = new double[n];
            for (int r = 0; r < n; r++) {
                wanted[r] = random.nextGaussian();
                for (int c = 0; c < n; c++) {
                    matrix[r][c] = random.nextGaussian();
                }
            }
            for (int r = 0; r < n; r++) {
                for (int c = 0; c < n; c++) {
                    right[r] += matrix[r][c] * wanted[c];
                }
            }
            assertArrayEquals(wanted, SmallSystem.solve(matrix, right), 1e-8);
        }
    }
}
