package kingpost.kernel.evaluation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import org.junit.jupiter.api.Test;

class LifeSignsTest {

    private final LifeSigns signs = new LifeSigns();

    private int looksUntilMissing() {
        int looks = 1;
        while (!signs.areMissing()) {
            looks++;
        }
        return looks;
    }

    @Test
    void missesAVmThatStaysSilent() {
        assertEquals(11, looksUntilMissing());
    }

    @Test
    void countsAgainAfterAFrameAndAfterANewCall() {
        for (int i = 0; i < 9; i++) {
            assertFalse(signs.areMissing());
        }
        signs.begin();
        signs.end();
        assertEquals(11, looksUntilMissing());
        signs.reset();
        assertEquals(11, looksUntilMissing());
    }

    @Test
    void doesNotBlameTheVmWhileItsFrameIsBeingTaken() {
        signs.begin();
        for (int i = 0; i < 50; i++) {
            assertFalse(signs.areMissing());
        }
    }
}
