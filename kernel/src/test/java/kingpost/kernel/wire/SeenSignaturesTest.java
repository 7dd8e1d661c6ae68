package kingpost.kernel.wire;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;

class SeenSignaturesTest {

    private final SeenSignatures seen = new SeenSignatures(3);

    @Test
    void refusesTheSameAgain() {
        assertTrue(seen.add(signature(1)));
        assertFalse(seen.add(signature(1)));
        assertTrue(seen.add(signature(2)));
    }

    @Test
    void forgetsTheOldestWhenFull() {
        for (int i = 1; i <= 4; i++) {
            assertTrue(seen.add(signature(i)));
        }
        assertEquals(3, seen.size());
        assertFalse(seen.add(signature(2)));
        assertTrue(seen.add(signature(1)));
    }

    private static byte[] signature(int number) {
        return Signer.of("hmac-sha256", "k").sign(List.of(String.valueOf(number).getBytes(StandardCharsets.UTF_8)));
    }
}
