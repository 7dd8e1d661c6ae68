package kingpost.kernel.session;

import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicLong;
import kingpost.kernel.message.ContentException;
import kingpost.kernel.message.Request;

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

    /**
     * Whether a widget's update has been overtaken: the next of its comm that waits sets the same parts of its state
     * anew, with nothing but comm messages before it. A slider that is dragged while a cell runs sends many of them.
     */
    boolean isOvertaken(Exchange exchange) {
        if (!exchange.type().equals("comm_msg")) {
            return false;
        }
        Optional<Request.Comm> update = comm(exchange).filter(comm -> !comm.updated().isEmpty());
        if (update.isEmpty()) {
            return false;
        }
        for (Exchange later : waiting) {
            if (!later.type().equals("comm_msg")) {
                return false;
            }
            Optional<Request.Comm> next = comm(later).filter(comm -> comm.id().equals(update.get().id()));
            if (next.isPresent()) {
                return next.get().updated().containsAll(update.get().updated());
            }
        }
        return false;
    }

    private static Optional<Request.Comm> comm(Exchange exchange) {
        try {
            return Optional.of(Request.Comm.of(exchange.fields()));
        } catch (ContentException e) {
            return Optional.empty();
        }
    }

    private static boolean isCell(Exchange exchange) {
        return exchange.type().equals("execute_request");
    }
}
