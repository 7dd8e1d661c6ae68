package kingpost.kernel.session;

import java.util.Optional;
import kingpost.kernel.display.MimeBundle;
import kingpost.kernel.evaluation.Outcome;
import kingpost.kernel.message.Output;

/** The last output of a cell, from its outcome: its result, its error, or nothing. */
final class CellEnding {

    private CellEnding() { }

    static Optional<Output> of(Outcome outcome, int executionCount, OutputLimits limits) {
        if (outcome instanceof Outcome.Failed failed) {
            return Optional.of(new Output.Error(failed.name(), failed.message(), failed.traceback()));
        }
        return ((Outcome.Completed) outcome).result().map(bundle -> {
            MimeBundle shown = BundleCap.within(limits, bundle);
            return new Output.ExecuteResult(executionCount, shown.data(), shown.metadata());
        });
    }
}
