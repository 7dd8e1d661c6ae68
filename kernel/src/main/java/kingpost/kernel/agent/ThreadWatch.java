package kingpost.kernel.agent;

import kingpost.kernel.pipe.ExitCode;
import kingpost.kernel.pipe.Frame;
import kingpost.kernel.pipe.Kind;
import kingpost.kernel.pipe.Pipe;

/**
 * Ends the calc VM when cells have started too many threads, before the machine runs out of them, and when its memory
 * stays full. The limit of threads is the system property {@value #PROPERTY}.
 */
final class ThreadWatch implements Runnable {

    static final String PROPERTY = "kingpost.calc.threads";
    private static final int MOST = Integer.getInteger(PROPERTY, 2_000);
    private static final long MILLIS = 200;

    /** So often in a row may the memory be too full to look: a few seconds. */
    private static final int FULL_LOOKS = 12;

    private final Pipe pipe;
    private final ThreadGroup all;
    private int fullInARow;

    ThreadWatch(Pipe pipe) {
        this.pipe = pipe;
        ThreadGroup group = Thread.currentThread().getThreadGroup();
        while (group.getParent() != null) {
            group = group.getParent();
        }
        all = group;
    }

    void start() {
        var thread = new Thread(this, "thread watch");
        thread.setDaemon(true);
        thread.setPriority(Thread.MAX_PRIORITY);
        thread.start();
    }

    @Override
    public void run() {
        try {
            boolean tooMany = false;
            while (!tooMany) {
                tooMany = areTooMany();
            }
            pipe.send(Frame.of(Kind.DYING, "cells had started more than %,d threads".formatted(MOST)));
        } catch (Throwable broken) {
            // the end is the same
        } finally {
            Runtime.getRuntime().halt(ExitCode.TOO_MANY_THREADS);
        }
    }

    /** Waits, then counts. A full memory is the cell's failure, which tells of itself unless it lasts. */
    private boolean areTooMany() throws InterruptedException {
        try {
            Thread.sleep(MILLIS);
            boolean tooMany = all.activeCount() > MOST;
            fullInARow = 0;
            return tooMany;
        } catch (OutOfMemoryError full) {
            fullInARow++;
            if (fullInARow == FULL_LOOKS) {
                Runtime.getRuntime().halt(ExitCode.MEMORY_FULL);
            }
            return false;
        }
    }
}
