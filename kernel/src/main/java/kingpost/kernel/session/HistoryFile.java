package kingpost.kernel.session;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.sql.Types;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import kingpost.kernel.message.Replies.PastCell;

/**
 * One open history file. Its sessions are numbered in the order in which they kept their first cell; this session
 * takes its number then. For one thread; other processes may use the file at the same time.
 */
final class HistoryFile implements AutoCloseable {

    private static final int KEPT_CELLS = 100_000;
    private static final String[] SCHEMA = {
        "pragma busy_timeout = 5000", "pragma cache_size = -256", "pragma synchronous = normal",
        "create table if not exists session (id integer primary key autoincrement, started text not null)",
        "create table if not exists cell (id integer primary key autoincrement, session integer not null,"
            + " line integer not null, input text not null, output text)",
        "create unique index if not exists cell_of_session on cell (session, line)",
        "delete from cell where id <= (select max(id) from cell) - " + KEPT_CELLS};

    private final Connection connection;
    private int session;

    private HistoryFile(Connection connection) {
        this.connection = connection;
    }

    /**
     * @throws HistoryException when the file cannot be used
     */
    static HistoryFile open(Path file) {
        try {
            HistoryFile store = new HistoryFile(SqliteDriver.connect(file));
            try (Statement statement = store.connection.createStatement()) {
                for (String sql : SCHEMA) {
                    statement.execute(sql);
                }
            }
            return store;
        } catch (SQLException e) {
            throw unusable(e);
        }
    }

    /** Keeps inputs (cells with an input) and outputs (cells without) of this session. */
    void write(List<PastCell> cells) {
        try {
            connection.setAutoCommit(false);
            beginSession();
            for (PastCell cell : cells) {
                write(cell);
            }
            connection.commit();
            connection.setAutoCommit(true);
        } catch (SQLException e) {
            throw unusable(e);
        }
    }

    /** Cells of one session: 0 is this one, -1 the one before, and so on. */
    List<PastCell> range(int which, int start, Optional<Integer> stop) {
        String sql = "select session, line, input, output from cell where session = ? and line >= ? and line < ?"
                + " order by line";
        try (PreparedStatement statement = connection.prepareStatement(sql)) {
            statement.setInt(1, number(which));
            statement.setInt(2, start);
            statement.setInt(3, stop.orElse(Integer.MAX_VALUE));
            List<PastCell> found = new ArrayList<>();
            try (ResultSet rows = statement.executeQuery()) {
                while (rows.next()) {
                    found.add(cell(rows));
                }
            }
            return found;
        } catch (SQLException e) {
            throw unusable(e);
        }
    }

    /** The last cells that fit, oldest first; with {@code unique} only the last of those with the same input. */
    List<PastCell> last(Predicate<PastCell> fits, int count, boolean unique) {
        String sql = "select session, line, input, output from cell order by id desc";
        try (Statement statement = connection.createStatement(); ResultSet rows = statement.executeQuery(sql)) {
            List<PastCell> found = new ArrayList<>();
            Set<String> inputs = new HashSet<>();
            while (found.size() < count && rows.next()) {
                PastCell cell = cell(rows);
                if (fits.test(cell) && (!unique || inputs.add(cell.input()))) {
                    found.add(cell);
                }
            }
            Collections.reverse(found);
            return found;
        } catch (SQLException e) {
            throw unusable(e);
        }
    }

    @Override
    public void close() {
        try {
            connection.close();
        } catch (SQLException e) {
            throw unusable(e);
        }
    }

    private void beginSession() throws SQLException {
        if (session > 0) {
            return;
        }
        try (Statement statement = connection.createStatement()) {
            statement.executeUpdate("insert into session (started) values (datetime('now'))");
            try (ResultSet row = statement.executeQuery("select last_insert_rowid()")) {
                row.next();
                session = row.getInt(1);
            }
        }
    }

    private void write(PastCell cell) throws SQLException {
        boolean input = cell.input() != null;
        String sql = input ? "insert into cell (input, session, line) values (?, ?, ?)"
                : "update cell set output = ? where session = ? and line = ?";
        try (PreparedStatement statement = connection.prepareStatement(sql)) {
            statement.setObject(1, input ? cell.input() : cell.output(), Types.VARCHAR);
            statement.setInt(2, session);
            statement.setInt(3, cell.line());
            statement.executeUpdate();
        }
    }

    /** A session's own number; 0 when there is no such session. */
    private int number(int which) throws SQLException {
        if (which >= 0) {
            return which == 0 ? session : which;
        }
        String sql = "select id from session where id < ? order by id desc limit 1 offset ?";
        try (PreparedStatement statement = connection.prepareStatement(sql)) {
            statement.setInt(1, session > 0 ? session : Integer.MAX_VALUE);
            statement.setInt(2, -1 - which);
            try (ResultSet row = statement.executeQuery()) {
                return row.next() ? row.getInt(1) : 0;
            }
        }
    }

    private static PastCell cell(ResultSet row) throws SQLException {
        return new PastCell(row.getInt(1), row.getInt(2), row.getString(3), row.getString(4));
    }

    private static HistoryException unusable(SQLException e) {
        return new HistoryException("cannot be used (" + e.getMessage() + ")", e);
    }
}
