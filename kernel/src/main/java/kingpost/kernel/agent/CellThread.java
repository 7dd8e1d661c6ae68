package kingpost.kernel.agent;

import java.lang.reflect.InvocationTargetException;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import jdk.jshell.spi.SPIResolutionException;
import kingpost.kernel.pipe.ExitCode;
import kingpost.kernel.pipe.Frame;
import kingpost.kernel.pipe.Kind;

/**
 * The one thread on which cells run. The kernel finds it by its name and stops it only while {@link #userCode} is
 * on its stack with nothing of the agent above; whatever arrives late all the same, the loop survives.
 */
final class CellThread extends Thread implements StopSign {

    private static final int SPARE_BYTES = 4 << 20;
    /** Made beforehand, because there is no room for it when it is needed. */
    private static final byte[] NONE = new byte[0];
    private static final List<Map<String, Object>> MEMORY_FULL = List.of(Map.of(
            "class", OutOfMemoryError.class.getName(), "ours", false, "frames", List.of()));

    /** The thread's name, for whoever looks at a thread dump. */
    static final String NAME = "cell";

    private record Task(int id, int cell, Call call) { }

    /** Something that runs user code. */
    interface Call {
        Object run() throws Throwable;
    }

    private final BlockingQueue<Task> tasks = new LinkedBlockingQueue<>();
    private final Cells cells;
    private final Outbox outbox;
    private final ClassLoader cellClasses;
    /** Held here so that it exists before the kernel looks for it. */
    private final CellStopped stop = CellStopped.FROM_OUTSIDE;
    /** Given up when a cell has filled the memory, so that there is room to tell of it. */
    private volatile byte[] spare = newSpare();
    private volatile int running;
    private volatile int toStop = -1;
    private volatile Instant started = Instant.now();

    CellThread(Cells cells, Outbox outbox, ClassLoader loader) {
        super(NAME);
        this.cells = cells;
        this.outbox = outbox;
        cellClasses = loader;
        setDaemon(true);
        Blocker.forget();
    }

    /** Runs the call after those before it; its end is told in an ENDED frame with this id. */
    void submit(int id, int cell, Call call) {
        tasks.add(new Task(id, cell, call));
    }

    /** The call with this id is to stop where the agent waits. */
    void stopRequested(int id) {
        toStop = id;
    }

    /** The second try: wakes whatever heeds an interrupt, a closed stream, or the end of a child process. */
    void stopHard(int id) {
        toStop = id;
        if (running == id) {
            Blocker.closeFound();
            interrupt();
            Children.destroySince(started);
        }
    }

    @Override
    public void check() {
        if (Thread.currentThread() == this && running == toStop) {
            throw stop;
        }
    }

    /** The id of the call that runs on the current thread, or 0. */
    int runningHere() {
        return Thread.currentThread() == this ? running : 0;
    }

    @Override
    public void run() {
        while (true) {
            try {
                perform(tasks.take());
            } catch (InterruptedException | CellStopped late) {
                Thread.interrupted();
            } catch (OutOfMemoryError untold) {
                LastResort.halt(ExitCode.MEMORY_FULL);
            } catch (Throwable broken) {
                LastResort.halt(ExitCode.BROKEN);
            }
        }
    }

    private void perform(Task task) {
        Thread.interrupted();
        setContextClassLoader(cellClasses);
        spare = spare.length == 0 ? newSpare() : spare;
        started = Instant.now();
        running = task.id;
        cells.enter(task.cell);
        Frame stopped = stopped(task);
        Frame full = ended(task, "threw", MEMORY_FULL);
        Frame end = full;
        try {
            end = endOf(task, full);
        } catch (CellStopped late) {
            end = stopped;
            throw late;
        } finally {
            if (toStop == task.id) {
                Children.destroySince(started);
            }
            running = 0;
            outbox.frame(end);
        }
        cells.forgotten().forEach(number -> outbox.frame(Frame.of(Kind.FORGET, number)));
    }

    private Frame endOf(Task task, Frame full) {
        try {
            return ended(task, "returned", userCode(task.call));
        } catch (SPIResolutionException unresolved) {
            return ended(task, "unresolved", List.of(unresolved.id(), Thrown.frames(unresolved.getStackTrace())));
        } catch (Unshown unshown) {
            return failed(task, "unshown", unshown.getCause(), full);
        } catch (Throwable failure) {
            return failed(task, "threw", failure, full);
        }
    }

    /** {@code full} is what to tell when there is no room to tell more. */
    private Frame failed(Task task, String how, Throwable failure, Frame full) {
        spare = failure instanceof Error ? NONE : spare;
        try {
            return CellStopped.isIn(failure) ? stopped(task) : ended(task, how, chainOf(failure));
        } catch (OutOfMemoryError again) {
            return full;
        }
    }

    private static byte[] newSpare() {
        try {
            return new byte[SPARE_BYTES];
        } catch (OutOfMemoryError stillFull) {
            return NONE;
        }
    }

    /** The border: below it the agent, above it the user's code. */
    private static Object userCode(Call call) throws Throwable {
        try {
            return call.run();
        } catch (InvocationTargetException thrown) {
            throw thrown.getCause();
        } catch (ExceptionInInitializerError thrown) {
            throw thrown.getCause() == null ? thrown : thrown.getCause();
        }
    }

    private static List<Map<String, Object>> chainOf(Throwable failure) {
        try {
            return Thrown.chain(failure);
        } catch (OutOfMemoryError again) {
            return List.of(Map.of("class", failure.getClass().getName(), "ours", false, "frames", List.of()));
        }
    }

    private static Frame stopped(Task task) {
        return Frame.of(Kind.ENDED, task.id, "stopped", null);
    }

    private static Frame ended(Task task, String ending, Object detail) {
        return Frame.of(Kind.ENDED, task.id, ending, detail);
    }
}
