package kingpost.kernel.session;

import java.util.List;
import java.util.Optional;
import kingpost.kernel.message.Replies.PastCell;

/**
 * Cells that were run, of this session and of those before. A store that cannot keep or find cells says so in the
 * log and goes on with what it can: history never stops a cell. Safe for several threads.
 */
public interface HistoryStore extends AutoCloseable {

    /** Keeps a cell of this session under its number; returns at once. */
    void add(int line, String input);

    /** Keeps what the cell with this number showed as its value; returns at once. */
    void setOutput(int line, String text);

    /**
     * Cells of one session from {@code start} to before {@code stop}, oldest first.
     *
     * @param session 0 for this session, -1 for the one before, or a session's own number
     */
    List<PastCell> range(int session, int start, Optional<Integer> stop);

    /** The last cells of all sessions, oldest first. */
    List<PastCell> tail(int count);

    /**
     * The last cells whose whole input matches, oldest first.
     *
     * @param pattern {@code *} stands for any text, {@code ?} for one character
     * @param unique  of cells with the same input only the last
     */
    List<PastCell> search(String pattern, Optional<Integer> count, boolean unique);

    /** Keeps what is still to be kept, then lets go of the store. */
    @Override
    void close();
}
