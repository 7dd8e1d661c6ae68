package kingpost.kernel.evaluation;

import java.time.Duration;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;

/**
 * Stops one running cell: asks, throws through the debug interface, interrupts, and at last ends the calc VM. Never
 * reaches the cell after the one it was made for.
 */
final class Interrupter {

    private static final long SECOND_TRY_MILLIS = 150;
    private static final long PAUSE_MILLIS = 100;

    private final PipeExecutionControl control;
    private final Duration limit;
    private final AtomicBoolean asked = new AtomicBoolean();
    private volatile boolean over;
    private Thread asking;

    Interrupter(PipeExecutionControl control, Duration limit) {
        this.control = control;
        this.limit = limit;
    }

    boolean isAsked() {
        return asked.get();
    }

    /** Begins to stop the cell; returns at once. */
    void stop() {
        if (asked.compareAndSet(false, true)) {
            begin("interrupt", this::pursue);
            begin("interrupt limit", this::endAtTheLimit);
        }
    }

    /** What is to be done with the calc VM in use. */
    private interface Work {
        void with(CalcLink link) throws InterruptedException;
    }

    private void begin(String name, Work work) {
        var thread = new Thread(() -> {
            try {
                work.with(control.link());
            } catch (CalcLost gone) {
                // the cell ends by that
            } catch (InterruptedException nobodyDoes) {
                Thread.currentThread().interrupt();
            }
        }, name);
        thread.setDaemon(true);
        thread.start();
    }

    /** Apart from the attempts, since a calc VM that has been halted answers none of them. */
    private void endAtTheLimit(CalcLink link) throws InterruptedException {
        long start = System.nanoTime();
        while (!over && !link.isLost()) {
            if (!link.isCalling()) {
                start = System.nanoTime(); // JShell compiles; what the calc VM is asked next is not begun any more
            } else if (System.nanoTime() - start > limit.toNanos()) {
                link.destroy("the cell could not be stopped within %.1f s, so it was ended"
                        .formatted(limit.toMillis() / 1000.0));
            }
            Thread.sleep(PAUSE_MILLIS / 4);
        }
    }

    private void pursue(CalcLink link) {
        long start = System.nanoTime();
        for (int attempt = 0; ; attempt++) {
            long millis = TimeUnit.NANOSECONDS.toMillis(System.nanoTime() - start);
            synchronized (this) {
                if (over || link.isLost()) {
                    return;
                }
                attempt(link, millis);
                pause(attempt == 0 ? SECOND_TRY_MILLIS : PAUSE_MILLIS);
            }
        }
    }

    private void attempt(CalcLink link, long millis) {
        if (asking != null) {
            asking.interrupt();
        }
        if (millis < SECOND_TRY_MILLIS) {
            link.stop();
        } else {
            link.stopHard();
        }
    }

    private void pause(long millis) {
        try {
            wait(millis);
        } catch (InterruptedException nobodyDoes) {
            Thread.currentThread().interrupt();
        }
    }

    /** The current thread begins, or ends, to wait for the user's answer. */
    synchronized void asking(boolean waits) {
        asking = waits ? Thread.currentThread() : null;
        if (waits && asked.get()) {
            Thread.currentThread().interrupt();
        } else if (!waits) {
            Thread.interrupted();
        }
    }

    /** The cell has ended: no attempt is under way when this returns, and none follows. */
    synchronized void over() {
        over = true;
        notifyAll();
    }
}
