package kingpost.kernel.session;

import java.util.Optional;
import kingpost.kernel.message.Announcement.Status;

/**
 * Says busy and idle. While a cell runs, other requests may be answered beside it; front ends take their idle for
 * the kernel's, so busy is said again for the cell after each of them. The cell's own idle stays its last word.
 */
final class Activity {

    private Optional<Exchange> served = Optional.empty();

    /** A request of the shell queue begins. */
    synchronized void beginInOrder(Exchange exchange) {
        served = Optional.of(exchange);
        exchange.publish(Status.BUSY);
    }

    synchronized void endInOrder(Exchange exchange) {
        served = Optional.empty();
        exchange.publish(Status.IDLE);
    }

    /** A request that is answered beside the shell queue begins. */
    synchronized void beginBeside(Exchange exchange) {
        exchange.publish(Status.BUSY);
    }

    synchronized void endBeside(Exchange exchange) {
        exchange.publish(Status.IDLE);
        runningCell().ifPresent(running -> running.publish(Status.BUSY));
    }

    synchronized boolean isRunningCell() {
        return runningCell().isPresent();
    }

    private Optional<Exchange> runningCell() {
        return served.filter(exchange -> exchange.type().equals("execute_request"));
    }
}
