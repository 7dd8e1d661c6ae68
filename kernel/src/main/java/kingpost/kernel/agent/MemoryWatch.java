package kingpost.kernel.agent;

import java.lang.management.GarbageCollectorMXBean;
import java.lang.management.ManagementFactory;
import kingpost.kernel.pipe.ExitCode;
import kingpost.kernel.pipe.Frame;
import kingpost.kernel.pipe.Kind;
import kingpost.kernel.pipe.Pipe;

/**
 * Ends the calc VM when it does little but collect garbage in a full heap. A heap that fills with small objects can go
 * on like that for minutes before an allocation fails, and the cell with it.
 */
final class MemoryWatch implements Runnable {

    private static final long MILLIS = 1_000;
    /** Looks in a row that must find the VM collecting. */
    private static final int LOOKS = 3;
    private static final double MOSTLY = 0.7;
    private static final double FULL = 0.9;

    private final Pipe pipe;

    MemoryWatch(Pipe pipe) {
        this.pipe = pipe;
    }

    void start() {
        var thread = new Thread(this, "memory watch");
        thread.setDaemon(true);
        thread.setPriority(Thread.MAX_PRIORITY);
        thread.start();
    }

    @Override
    public void run() {
        int inARow = 0;
        long collecting = 0;
        long now = System.nanoTime();
        while (inARow < LOOKS) {
            try {
                Thread.sleep(MILLIS);
                long collected = millisCollecting();
                long then = now;
                now = System.nanoTime();
                boolean mostly = collected - collecting > MOSTLY * (now - then) / 1_000_000;
                collecting = collected;
                inARow = mostly && isFull() ? inARow + 1 : 0;
            } catch (OutOfMemoryError full) {
                inARow++;
            } catch (InterruptedException ended) {
                return;
            }
        }
        end();
    }

    private void end() {
        try {
            pipe.send(Frame.of(Kind.DYING, "its memory of %d MB was full".formatted(
                    Runtime.getRuntime().maxMemory() >> 20)));
        } catch (Throwable broken) {
            // the end is the same
        } finally {
            Runtime.getRuntime().halt(ExitCode.MEMORY_FULL);
        }
    }

    private static long millisCollecting() {
        long millis = 0;
        for (GarbageCollectorMXBean collector : ManagementFactory.getGarbageCollectorMXBeans()) {
            millis += collector.getCollectionTime();
        }
        return millis;
    }

    private static boolean isFull() {
        Runtime vm = Runtime.getRuntime();
        return vm.totalMemory() - vm.freeMemory() > FULL * vm.maxMemory();
    }
}
