package kingpost.kernel.session;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import kingpost.kernel.message.Replies.PastCell;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What every history store does. */
abstract class HistoryStoreContract {

    protected HistoryStore store;

    abstract HistoryStore open();

    @BeforeEach
    void fill() {
        store = open();
        store.add(1, "var a = 1");
        store.add(2, "a + 1");
        store.setOutput(2, "2");
        store.add(3, "var a = 1");
        store.add(4, "for (;;)\n  a[0]");
    }

    @AfterEach
    void closeStore() {
        store.close();
    }

    @Test
    void givesTheLastCellsOldestFirst() {
        assertEquals(List.of(3, 4), lines(store.tail(2)));
        assertEquals(List.of(1, 2, 3, 4), lines(store.tail(100)));
        assertEquals(List.of(), lines(store.tail(0)));
    }

    @Test
    void keepsOutputWithItsCell() {
        List<PastCell> cells = store.range(0, 2, Optional.of(4));
        assertEquals(List.of(2, 3), lines(cells));
        assertEquals("2", cells.get(0).output());
        assertEquals(null, cells.get(1).output());
    }

    @Test
    void readsARangeWithoutEnd() {
        assertEquals(List.of(3, 4), lines(store.range(0, 3, Optional.empty())));
    }

    @Test
    void findsNoCellsOfASessionThatIsNotThere() {
        assertEquals(List.of(), store.range(-77, 1, Optional.empty()));
        assertEquals(List.of(), store.range(4711, 1, Optional.empty()));
    }

    @Test
    void searchesWholeCellsByPattern() {
        assertEquals(List.of(1, 3), lines(store.search("var*", Optional.empty(), false)));
        assertEquals(List.of(3), lines(store.search("var*", Optional.empty(), true)));
        assertEquals(List.of(2), lines(store.search("? + ?", Optional.empty(), false)));
        assertEquals(List.of(3), lines(store.search("var*", Optional.of(1), false)));
        assertEquals(List.of(4), lines(store.search("for*a[0]", Optional.empty(), false)));
        assertEquals(List.of(), lines(store.search("ar a", Optional.empty(), false)));
    }

    private static List<Integer> lines(List<PastCell> cells) {
        return cells.stream().map(PastCell::line).toList();
    }
}
