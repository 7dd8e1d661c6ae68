package kingpost.kernel.agent;

import java.util.List;
import java.util.Optional;
import kingpost.kernel.pipe.Frame;
import kingpost.kernel.pipe.Kind;
import kingpost.units.CalculationException;

/** Asks the kernel for something that the cell waits for: a line from the user, a longer class path. One at a time. */
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
     * @throws CalculationException when this run does not allow questions
     * @throws CellStopped          when the cell is interrupted
     */
    synchronized Optional<String> ask(String prompt, boolean password) {
        if (thread.runningHere() == 0) {
            return Optional.empty();
        }
        asked++;
        Frame told = answerTo(Frame.of(Kind.INPUT, asked, cells.current(), prompt, password));
        return switch (told.text(1)) {
            case "line" -> Optional.of(told.text(2));
            case "end" -> Optional.empty();
            case "stopped" -> throw new CellStopped("The cell was interrupted.");
            default -> throw new CalculationException("Input: nobody can be asked in this run; "
                    + "write the value in the cell.");
        };
    }

    /** The kernel hears such a question only while the cell's own thread waits for its answer. */
    void checkCellThread(String what) {
        if (thread.runningHere() == 0) {
            throw new CalculationException(what + ": only the cell's own thread can add it, while the cell runs; "
                    + "add it in a statement of its own.");
        }
    }

    /** Has cells compiled and run with these jars and folders from now on. */
    synchronized void addToClassPath(List<String> paths) {
        asked++;
        if (answerTo(Frame.of(Kind.CLASS_PATH, asked, cells.current(), paths)).text(1).equals("stopped")) {
            throw new CellStopped("The cell was interrupted.");
        }
    }

    private Frame answerTo(Frame question) {
        answer = null;
        outbox.frame(question);
        while (answer == null) {
            thread.check();
            try {
                wait(50);
            } catch (InterruptedException interrupted) {
                throw new CellStopped(interrupted);
            }
        }
        return answer;
    }

    /** The kernel's answer, from the reading thread. */
    synchronized void answered(Frame frame) {
        if (frame.number(0) == asked) {
            answer = frame;
            notifyAll();
        }
    }
}
