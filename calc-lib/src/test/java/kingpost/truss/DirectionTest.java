package kingpost.truss;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class DirectionTest {

    @Test
    void hasExactComponentsAtEveryEighthOfATurn() {
        double[][] expected = {{1, 0}, {1, 1}, {0, 1}, {-1, 1}, {-1, 0}, {-1, -1}, {0, -1}, {1, -1}};
        for (int i = 0; i < 8; i++) {
            for (int turn : new int[] {-360, 0, 720}) {
                Direction d = Direction.at(45 * i + turn);
                assertTrue(d.exact());
                assertEquals(expected[i][0], d.x(), 45 * i + " degrees");
                assertEquals(expected[i][1], d.y(), 45 * i + " degrees");
            }
        }
    }

    @Test
    void turnsCounterClockwiseFromX() {
        Direction d = Direction.at(120);

        assertFalse(d.exact());
        assertEquals(-0.5, d.cosX(), 1e-15);
        assertEquals(Math.sqrt(3) / 2, d.cosY(), 1e-15);
    }

    @Test
    void saysItselfInWords() {
        assertEquals("at 225\u00b0", Direction.at(225).words());
        assertEquals("at \u221230.5\u00b0", Direction.at(-30.5).words());
        assertEquals("3 across, 4 down", Direction.slope(3, -4).words());
    }

    @Test
    void keepsASlopeAsItWasGiven() {
        Direction d = Direction.slope(3, -4);

        assertEquals(5, d.norm());
        assertEquals(0.6, d.cosX());
        assertEquals(-0.8, d.cosY());
    }
}
