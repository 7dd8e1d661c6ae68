package kingpost.kernel.session;

import kingpost.kernel.evaluation.Evaluator;

/**
 * What an interrupt is meant for: the cell that runs at that moment, or else the cells that wait. It holds until that
 * cell has ended, since a cell that clients see begin may reach the evaluator only later; it never reaches the next.
 */
final class CellStop {

    private final ShellQueue queue;
    private final EvaluatorSlot evaluator;
    private final InputDesk input;
    private Exchange running;
    private Exchange meant;

    CellStop(ShellQueue queue, EvaluatorSlot evaluator, InputDesk input) {
        this.queue = queue;
        this.evaluator = evaluator;
        this.input = input;
    }

    /** A cell begins; call it before a client can know. */
    synchronized void begins(Exchange cell) {
        running = cell;
    }

    synchronized void ends() {
        running = null;
        meant = null;
    }

    /** Whether the cell is to stop. */
    synchronized boolean isMeant(Exchange cell) {
        return cell == meant;
    }

    /** An interrupt has come. */
    synchronized void order() {
        if (running == null) {
            queue.abortCells();
            stop();
        } else {
            meant = running;
        }
    }

    /** Tells the evaluator, and whoever waits for input, to stop; true when that is to be said again soon. */
    synchronized boolean pursue() {
        if (meant != null) {
            stop();
        }
        return meant != null;
    }

    private void stop() {
        evaluator.ifReady().ifPresent(Evaluator::interrupt);
        input.cancel();
    }
}
