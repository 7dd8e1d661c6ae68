package kingpost.statics;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class NullSpaceTest {

    private static final double NOTHING = 1e-8;

    private static List<double[]> basis(double[]... vectors) {
        return List.of(vectors);
    }

    @Test
    void makesASingleVectorOneInItsLargestPart() {
        assertArrayEquals(new double[] {0.25, -0.5, 1}, NullSpace.fewestParts(basis(new double[] {-2, 4, -8}), NOTHING));
    }

    @Test
    void takesMixedMotionsApart() {
        assertArrayEquals(new double[] {0, 0, 0, 1}, NullSpace.fewestParts(
                basis(new double[] {1, 1, 0, 3}, new double[] {2, 2, 0, -1}), NOTHING), 1e-15);
        assertArrayEquals(new double[] {1, 0, 0, 0}, NullSpace.fewestParts(
                basis(new double[] {4, 1, 1, 1}, new double[] {0, 2, 2, 2}), NOTHING), 1e-15);
    }

    @Test
    void takesThreeMotionsApart() {
        double[] found = NullSpace.fewestParts(basis(new double[] {1, 2, 3, 3, 5}, new double[] {2, -1, 1, 1, 0},
                new double[] {0, 1, -7, -7, 1}), NOTHING);

        int parts = 0;
        for (double part : found) {
            parts += part == 0 ? 0 : 1;
        }
        assertTrue(parts <= 3, parts + " parts");
    }

    @Test
    void clearsWhatIsNothing() {
        assertArrayEquals(new double[] {1, 0, 2e-8},
                NullSpace.fewestParts(basis(new double[] {2, 2e-8, 4e-8}), NOTHING), 1e-22);
    }

    @Test
    void takesTheFirstOfPartsThatAreAllButEqual() {
        assertArrayEquals(new double[] {1, 1 + 1e-9}, NullSpace.fewestParts(
                basis(new double[] {3, 3 * (1 + 1e-9)}), NOTHING), 1e-15);
    }
}
