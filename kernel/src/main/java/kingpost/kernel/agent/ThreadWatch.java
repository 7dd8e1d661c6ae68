package kingpost.kernel.agent;

import java.util.Locale;
import java.util.concurrent.locks.LockSupport;
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

    /** So long may the memory be too full to look. */
    private static final long FULL_NANOS = 3_000_000_000L;

    private final Pipe pipe;
    private final ThreadGroup all;
    /** When the memory was first found full since it last was not; 0 when it is not. */
    private long fullSince;

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
        int code = ExitCode.TOO_MANY_THREADS;
        try {
            pause();
            boolean tooMany = false;
            while (!tooMany) {
                tooMany = areTooMany();
            }
            pipe.send(Frame.of(Kind.DYING, String.format(Locale.ROOT, "cells had started more than %,d threads", MOST)));
        } catch (OutOfMemoryError full) {
            code = ExitCode.MEMORY_FULL;
        } catch (Throwable broken) {
            // the end is the same
        } finally {
            LastResort.halt(code);
        }
    }

    /** Waits, then counts. A full memory is the cell's failure, which tells of itself unless it lasts. */
    private boolean areTooMany() {
        try {
            pause();
            boolean tooMany = all.activeCount() > MOST;
            fullSince = 0;
            return tooMany;
        } catch (OutOfMemoryError full) {
            long now = System.nanoTime();
            fullSince = fullSince == 0 ? now : fullSince;
            if (now - fullSince > FULL_NANOS) {
                throw full;
            }
            return false;
        }
    }

    /** Unlike a sleep, this needs no memory once it has been done. */
    private static void pause() {
        LockSupport.parkNanos(MILLIS * 1_000_000);
    }
}
