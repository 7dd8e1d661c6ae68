package kingpost.kernel.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import kingpost.kernel.evaluation.Outcome;
import kingpost.kernel.message.Output;

/**
 * One run of a cell without a client: its number, how it ended, and its outputs as a notebook file stores them. The
 * outputs may still change after the run: a later cell may update a value shown here, a background thread of this
 * cell may put out more. Safe for several threads.
 */
public final class CellRun {

    private final int executionCount;
    private final List<Output> outputs = new ArrayList<>();
    private boolean clearBeforeNext;
    private volatile Outcome outcome;

    CellRun(int executionCount) {
        this.executionCount = executionCount;
    }

    public int executionCount() {
        return executionCount;
    }

    /** How the cell ended. */
    public Outcome outcome() {
        return outcome;
    }

    /**
     * The outputs at this moment, in order: {@link Output.Stream} (neighbours on one stream joined),
     * {@link Output.DisplayData} (without display id, which files do not store), at most one
     * {@link Output.ExecuteResult}, and last an {@link Output.Error} if the cell failed. Their {@code type()} is the
     * file's {@code output_type}, their {@code fields()} the file's other fields.
     */
    public synchronized List<Output> outputs() {
        return outputs.stream().map(output -> output instanceof Output.DisplayData shown
                ? new Output.DisplayData(shown.data(), shown.about(), Optional.empty()) : output).toList();
    }

    void ended(Outcome how) {
        outcome = how;
    }

    synchronized void updated(Output.UpdateDisplayData update) {
        Optional<String> id = Optional.of(update.displayId());
        outputs.replaceAll(output -> output instanceof Output.DisplayData shown && shown.displayId().equals(id)
                ? new Output.DisplayData(update.data(), update.about(), id) : output);
    }

    /** Takes outputs in; an update goes to {@code updates}, since it may concern other cells too. */
    Output.Visitor<Void> recorder(Consumer<Output.UpdateDisplayData> updates) {
        return new Recorder(updates);
    }

    private synchronized void append(Output output) {
        if (clearBeforeNext) {
            clearBeforeNext = false;
            outputs.clear();
        }
        int last = outputs.size() - 1;
        if (output instanceof Output.Stream more && last >= 0 && outputs.get(last) instanceof Output.Stream before
                && before.name().equals(more.name())) {
            outputs.set(last, new Output.Stream(more.name(), before.text() + more.text()));
        } else {
            outputs.add(output);
        }
    }

    private synchronized void clear(boolean wait) {
        clearBeforeNext = wait;
        if (!wait) {
            outputs.clear();
        }
    }

    private final class Recorder implements Output.Visitor<Void> {

        private final Consumer<Output.UpdateDisplayData> updates;

        Recorder(Consumer<Output.UpdateDisplayData> updates) {
            this.updates = updates;
        }

        @Override
        public Void stream(Output.Stream stream) {
            return keep(stream);
        }

        @Override
        public Void display(Output.DisplayData display) {
            return keep(display);
        }

        @Override
        public Void update(Output.UpdateDisplayData update) {
            updates.accept(update);
            return null;
        }

        @Override
        public Void result(Output.ExecuteResult result) {
            return keep(result);
        }

        @Override
        public Void error(Output.Error error) {
            return keep(error);
        }

        @Override
        public Void clear(Output.ClearOutput clear) {
            CellRun.this.clear(clear.waits());
            return null;
        }

        @Override
        public Void comm(Output.Comm comm) {
            return null;
        }

        private Void keep(Output output) {
            append(output);
            return null;
        }
    }
}
