package kingpost.kernel.agent;

import java.lang.ref.ReferenceQueue;
import java.lang.ref.WeakReference;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.ForkJoinWorkerThread;

/**
 * Which cell a thread works for: the cell that started it, or, for the common pool's threads, which everybody
 * shares, the cell that runs now. Tells when nothing is left that could write to a cell.
 */
final class Cells {

    private final InheritableThreadLocal<Cell> own = new InheritableThreadLocal<>();
    private final ReferenceQueue<Cell> unreachable = new ReferenceQueue<>();
    private final Set<Trace> traces = Collections.synchronizedSet(new HashSet<>());
    private volatile Cell latest = new Cell(0);

    /** The current thread works for this cell from now on. */
    void enter(int number) {
        if (latest.number != number) {
            latest = new Cell(number);
            traces.add(new Trace(latest, unreachable));
        }
        own.set(latest);
    }

    /** The number of the cell that the current thread works for. */
    int current() {
        Thread thread = Thread.currentThread();
        if (thread instanceof ForkJoinWorkerThread worker && worker.getPool() == ForkJoinPool.commonPool()) {
            return latest.number;
        }
        Cell cell = own.get();
        return cell == null ? latest.number : cell.number;
    }

    /** The cells that no thread works for any more, each told once. */
    List<Integer> forgotten() {
        var numbers = new ArrayList<Integer>();
        while (unreachable.poll() instanceof Trace trace) {
            traces.remove(trace);
            numbers.add(trace.number);
        }
        return numbers;
    }

    private static final class Cell {
        private final int number;

        private Cell(int number) {
            this.number = number;
        }
    }

    private static final class Trace extends WeakReference<Cell> {
        private final int number;

        private Trace(Cell cell, ReferenceQueue<Cell> queue) {
            super(cell, queue);
            number = cell.number;
        }
    }
}
