package kingpost.kernel.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class MemoryHistoryTest extends HistoryStoreContract {

    @Override
    HistoryStore open() {
        return new MemoryHistory();
    }

    @Test
    void keepsTheNewestCellsWhenTheirTextIsLong() {
        try (HistoryStore history = open()) {
            for (int line = 1; line <= 100; line++) {
                history.add(line, "cell " + line);
                history.setOutput(line, "x".repeat(100_000));
            }
            var kept = history.tail(100);
            assertEquals("cell 100", kept.get(kept.size() - 1).input());
            assertTrue(kept.size() >= 15 && kept.size() <= 20, kept.size() + " cells");
        }
    }

    @Test
    void keepsTheNewestCellHoweverLong() {
        try (HistoryStore history = open()) {
            history.add(1, "first");
            history.add(2, "second");
            history.setOutput(2, "x".repeat(3_000_000));
            assertEquals(1, history.tail(5).size());
            assertEquals("second", history.tail(5).get(0).input());
        }
    }
}
