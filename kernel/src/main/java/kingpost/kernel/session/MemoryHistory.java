package kingpost.kernel.session;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import kingpost.kernel.message.Replies.PastCell;

/** History of this session alone, for as long as it lasts: the newest cells, up to a number and an amount of text. */
public final class MemoryHistory implements HistoryStore {

    private static final int CAPACITY = 10_000;
    /** Inputs and outputs together; the newest cell stays however long it is. */
    private static final long MOST_CHARACTERS = 2_000_000;
    private static final int SESSION = 1;

    private final List<PastCell> cells = new ArrayList<>();
    private long characters;

    @Override
    public synchronized void add(int line, String input) {
        cells.add(new PastCell(SESSION, line, input, null));
        characters += input.length();
        leaveOutOldest();
    }

    @Override
    public synchronized void setOutput(int line, String text) {
        for (int i = cells.size() - 1; i >= 0; i--) {
            PastCell cell = cells.get(i);
            if (cell.line() == line) {
                cells.set(i, new PastCell(SESSION, line, cell.input(), text));
                characters += text.length();
                break;
            }
        }
        leaveOutOldest();
    }

    /** A tenth at a time, so that it is seldom done. */
    private void leaveOutOldest() {
        while (cells.size() > 1 && (cells.size() > CAPACITY || characters > MOST_CHARACTERS)) {
            List<PastCell> oldest = cells.subList(0, Math.max(1, cells.size() / 10));
            characters -= oldest.stream().mapToLong(MemoryHistory::length).sum();
            oldest.clear();
        }
    }

    private static long length(PastCell cell) {
        return cell.input().length() + (cell.output() == null ? 0 : cell.output().length());
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
