package kingpost.kernel.agent;

import java.util.Optional;
import kingpost.kernel.pipe.Frame;
import kingpost.kernel.pipe.Kind;

/** Asks the user for a line, through the kernel, and waits for the answer. One question at a time. */
final class Questions {

    private final CellThread thread;
    private final Cells cells;
    private final Outbox outbox;
    private int asked;
    private Frame answer;

    Questions(CellThread thread, Cells cells, Outbox outbox) {
        this.thread = thread;
        this.cells = cells;
        this.outbox = outbox;
    }

    /**
     * What the user typed; empty at the end of input, and on any thread but the cell's own.
     *
     * @throws IllegalStateException when this run does not allow questions
     * @throws CellStopped           when the cell is interrupted
     */
    synchronized Optional<String> ask(String prompt, boolean password) {
        if (thread.runningHere() == 0) {
            return Optional.empty();
        }
        asked++;
        answer = null;
        outbox.frame(Frame.of(Kind.INPUT, asked, cells.current(), prompt, password));
        while (answer == null) {
            thread.check();
            try {
                wait(50);
            } catch (InterruptedException interrupted) {
                throw new CellStopped(interrupted);
            }
        }
        return switch (answer.text(1)) {
            case "line" -> Optional.of(answer.text(2));
            case "end" -> Optional.empty();
            case "stopped" -> throw new CellStopped("The cell was interrupted.");
            default -> throw new IllegalStateException("Input: nobody can be asked in this run; "
                    + "write the value in the cell.");
        };
    }

    /** The kernel's answer, from the reading thread. */
    synchronized void answered(Frame frame) {
        if (frame.number(0) == asked) {
            answer = frame;
            notifyAll();
        }
    }
}
