package kingpost.kernel.session;

import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicLong;

/**
 * Requests of the shell channel in order of arrival. A cell that fails aborts the cells that were queued at that
 * moment, not those that come later and not other requests.
 *
 * <p>Source: messaging protocol 5.5, "Execution errors" ({@code stop_on_error}).
 */
final class ShellQueue {

    private static final int ROOM = 4_096;

    private final BlockingQueue<Exchange> waiting = new LinkedBlockingQueue<>();
    private final AtomicLong arrivals = new AtomicLong();
    private final AtomicInteger cells = new AtomicInteger();
    private volatile long abortedUpTo;

    /** The number for the next message that arrives. */
    long nextArrival() {
        return arrivals.incrementAndGet();
    }

    void add(Exchange exchange) {
        if (isCell(exchange)) {
            cells.incrementAndGet();
        }
        waiting.add(exchange);
    }

    Exchange take() throws InterruptedException {
        Exchange next = waiting.take();
        if (isCell(next)) {
            cells.decrementAndGet();
        }
        return next;
    }

    boolean hasRoom() {
        return waiting.size() < ROOM;
    }

    boolean holdsCells() {
        return cells.get() > 0;
    }

    /** From now on every cell that has arrived already is not run. */
    void abortCells() {
        abortedUpTo = arrivals.get();
    }

    boolean isAborted(Exchange exchange) {
        return exchange.arrival() <= abortedUpTo;
    }

    private static boolean isCell(Exchange exchange) {
        return exchange.type().equals("execute_request");
    }
}
