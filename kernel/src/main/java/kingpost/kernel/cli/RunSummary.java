package kingpost.kernel.cli;

import java.io.PrintWriter;
import kingpost.kernel.document.NotebookRun;
import kingpost.kernel.document.RunEvent;
import kingpost.kernel.evaluation.Outcome;

/** Tells, after a run, which cells failed and where in them. */
final class RunSummary {

    private final PrintWriter console;

    RunSummary(PrintWriter console) {
        this.console = console;
    }

    void print(NotebookRun.Report report) {
        report.failures().forEach(this::print);
        console.flush();
    }

    private void print(RunEvent.Failed failed) {
        Outcome.Failed failure = failed.failure();
        String line = failure.line() > 0 ? ", line " + failure.line() : "";
        String message = plain(failure.message());
        console.println();
        console.println("Cell " + failed.place().number() + line + ": " + failure.name() + ": " + message);
        failure.traceback().stream().flatMap(part -> plain(part).lines())
                .filter(part -> !part.isBlank() && !part.endsWith(message)).forEach(part -> console.println("    " + part));
        console.println();
    }

    private static String plain(String text) {
        return text.replaceAll("\u001b\\[[0-9;?]*[A-Za-z]", "");
    }
}
