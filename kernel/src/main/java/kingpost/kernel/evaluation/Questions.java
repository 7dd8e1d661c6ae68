package kingpost.kernel.evaluation;

import java.util.Optional;
import kingpost.kernel.pipe.Frame;
import kingpost.kernel.pipe.Kind;

/** Answers what a running call asks of the kernel: a line from the user, a longer class path. */
final class Questions {

    private final Shell shell;
    private final CellOutput output;
    private final Interrupter interrupter;
    private final boolean allowed;

    Questions(Shell shell, CellOutput output, Interrupter interrupter, boolean allowed) {
        this.shell = shell;
        this.output = output;
        this.interrupter = interrupter;
        this.allowed = allowed;
    }

    void answer(Frame question) {
        try {
            if (question.kind() == Kind.INPUT) {
                shell.control().link().send(input(question));
            } else if (question.kind() == Kind.CLASS_PATH) {
                shell.addToClassPath(question.texts(2));
                shell.control().link().send(answer(question, "line", ""));
            }
        } catch (CalcLost gone) {
            // the call ends by that, too
        }
    }

    private Frame input(Frame question) {
        if (!allowed) {
            return answer(question, "refused", null);
        }
        interrupter.asking(true);
        try {
            Optional<String> line = output.input(question.text(2), question.flag(3));
            return answer(question, line.isPresent() ? "line" : "end", line.orElse(null));
        } catch (InterruptedException stopped) {
            return answer(question, "stopped", null);
        } finally {
            interrupter.asking(false);
        }
    }

    private static Frame answer(Frame question, String state, String line) {
        return Frame.of(Kind.INPUT_ANSWER, question.number(0), state, line);
    }
}
