package kingpost.kernel.session;

import java.lang.System.Logger;
import java.lang.System.Logger.Level;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.ScheduledThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.Function;
import kingpost.kernel.message.Replies.PastCell;

/**
 * History in one SQLite file that many kernels share. The file is opened only when there is something to keep or to
 * find, and all of it happens on a thread of its own: a cell never waits. When the file cannot be used, the log says
 * so once and this session's history stays in memory.
 */
public final class SqliteHistory implements HistoryStore {

    private static final Logger LOG = System.getLogger("kingpost.history");
    private static final long DELAY_MILLIS = 2_000;
    private static final long PATIENCE_MILLIS = 5_000;

    private final Path file;
    private final ScheduledThreadPoolExecutor worker = new ScheduledThreadPoolExecutor(1, SqliteHistory::thread);
    private final HistoryStore memory = new MemoryHistory();
    private final List<PastCell> unkept = new ArrayList<>();
    private boolean keepingPlanned;
    private Optional<HistoryFile> open = Optional.empty();
    private volatile boolean broken;

    public SqliteHistory(Path file) {
        this.file = file;
    }

    @Override
    public void add(int line, String input) {
        memory.add(line, input);
        keepSoon(new PastCell(0, line, input, null));
    }

    @Override
    public void setOutput(int line, String text) {
        memory.setOutput(line, text);
        keepSoon(new PastCell(0, line, null, text));
    }

    @Override
    public List<PastCell> range(int session, int start, Optional<Integer> stop) {
        return find(store -> store.range(session, start, stop), () -> memory.range(session, start, stop));
    }

    @Override
    public List<PastCell> tail(int count) {
        return find(store -> store.last(cell -> true, count, false), () -> memory.tail(count));
    }

    @Override
    public List<PastCell> search(String pattern, Optional<Integer> count, boolean unique) {
        Glob glob = new Glob(pattern);
        return find(store -> store.last(cell -> glob.test(cell.input()), count.orElse(Integer.MAX_VALUE), unique),
                () -> memory.search(pattern, count, unique));
    }

    @Override
    public void close() {
        try {
            onWorker(() -> {
                keep();
                open.ifPresent(HistoryFile::close);
                open = Optional.empty();
                return null;
            });
        } catch (HistoryException e) {
            giveUp(e);
        } finally {
            worker.shutdownNow();
        }
    }

    private void keepSoon(PastCell cell) {
        synchronized (unkept) {
            unkept.add(cell);
            if (keepingPlanned || worker.isShutdown()) {
                return;
            }
            keepingPlanned = true;
        }
        worker.schedule(this::keepOrGiveUp, DELAY_MILLIS, TimeUnit.MILLISECONDS);
    }

    private void keepOrGiveUp() {
        try {
            keep();
        } catch (HistoryException e) {
            giveUp(e);
        }
    }

    /** On the worker: writes what waits, in one transaction. */
    private void keep() {
        List<PastCell> cells;
        synchronized (unkept) {
            cells = List.copyOf(unkept);
            unkept.clear();
            keepingPlanned = false;
        }
        if (!cells.isEmpty() && !broken) {
            store().write(cells);
        }
    }

    private HistoryFile store() {
        if (open.isEmpty()) {
            open = Optional.of(HistoryFile.open(file));
        }
        return open.get();
    }

    private List<PastCell> find(Function<HistoryFile, List<PastCell>> query, Callable<List<PastCell>> otherwise) {
        try {
            return onWorker(() -> {
                keep();
                return broken ? otherwise.call() : query.apply(store());
            });
        } catch (HistoryException e) {
            giveUp(e);
            try {
                return otherwise.call();
            } catch (Exception impossible) {
                throw new IllegalStateException(impossible);
            }
        }
    }

    private <T> T onWorker(Callable<T> work) {
        try {
            return worker.submit(work).get(PATIENCE_MILLIS, TimeUnit.MILLISECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new HistoryException("interrupted while waiting for it", e);
        } catch (TimeoutException e) {
            throw new HistoryException("no answer in " + PATIENCE_MILLIS + " ms", e);
        } catch (RejectedExecutionException e) {
            throw new HistoryException("closed", e);
        } catch (ExecutionException e) {
            throw e.getCause() instanceof HistoryException cause ? cause
                    : new HistoryException(e.getCause().toString(), e.getCause());
        }
    }

    private void giveUp(HistoryException e) {
        boolean first = !broken;
        broken = true;
        if (first) {
            LOG.log(Level.WARNING, "History file " + file + ": " + e.getMessage()
                    + "; this session's history is kept in memory only");
        }
    }

    private static Thread thread(Runnable task) {
        Thread thread = new Thread(task, "kingpost-history");
        thread.setDaemon(true);
        return thread;
    }
}
