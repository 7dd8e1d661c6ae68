package kingpost.kernel.session;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import kingpost.kernel.message.Replies.PastCell;

/** History of this session alone, for as long as it lasts: the newest cells, up to a bound. */
public final class MemoryHistory implements HistoryStore {

    private static final int CAPACITY = 10_000;
    private static final int SESSION = 1;

    private final List<PastCell> cells = new ArrayList<>();

    @Override
    public synchronized void add(int line, String input) {
        cells.add(new PastCell(SESSION, line, input, null));
        if (cells.size() > CAPACITY) {
            cells.subList(0, CAPACITY / 10).clear();
        }
    }

    @Override
    public synchronized void setOutput(int line, String text) {
        cells.replaceAll(cell -> cell.line() == line ? new PastCell(SESSION, line, cell.input(), text) : cell);
    }

    @Override
    public synchronized List<PastCell> range(int session, int start, Optional<Integer> stop) {
        boolean current = session == 0 || session == SESSION;
        return cells.stream().filter(cell -> current && cell.line() >= start
                && (stop.isEmpty() || cell.line() < stop.get())).toList();
    }

    @Override
    public synchronized List<PastCell> tail(int count) {
        return last(cells, count);
    }

    @Override
    public synchronized List<PastCell> search(String pattern, Optional<Integer> count, boolean unique) {
        Predicate<String> glob = new Glob(pattern);
        List<PastCell> found = new ArrayList<>();
        Set<String> inputs = new HashSet<>();
        for (int i = cells.size() - 1; i >= 0; i--) {
            PastCell cell = cells.get(i);
            if (glob.test(cell.input()) && (inputs.add(cell.input()) || !unique)) {
                found.add(cell);
            }
        }
        Collections.reverse(found);
        return last(found, count.orElse(Integer.MAX_VALUE));
    }

    @Override
    public void close() {
        // nothing outlives the session
    }

    private static List<PastCell> last(List<PastCell> cells, int count) {
        return List.copyOf(cells.subList(Math.max(0, cells.size() - count), cells.size()));
    }
}
