package kingpost.kernel.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import kingpost.kernel.document.Notebook;
import kingpost.kernel.document.NotebookReader;
import kingpost.kernel.document.NotebookRun;
import kingpost.kernel.evaluation.Evaluator;
import kingpost.kernel.recheck.Drift;
import kingpost.kernel.recheck.Recheck;
import kingpost.kernel.recheck.Tolerance;
import kingpost.kernel.session.DirectSession;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Runs a notebook again and compares with what was saved. */
@Command(name = "recheck", header = "Compares a notebook's saved outputs with a fresh run.",
        mixinStandardHelpOptions = true, versionProvider = Version.class,
        description = {"Runs a notebook again from clean and tells, cell by cell, what is not as it was saved: numbers to a "
            + "tolerance, text, tables and figures by what a reader sees. A cell that was run out of order, or that needs "
            + "something made further down, is named. Outputs of cells tagged \"varies\" are not compared. "
            + "Nothing is written."},
        exitCodeListHeading = "%nExit status:%n",
        exitCodeList = {"0:all is as saved", "1:something differs", "2:the command line or the file is not usable"})
final class RecheckCommand implements Callable<Integer> {

    private final Supplier<? extends Evaluator> evaluator;

    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "NOTEBOOK", description = "The notebook (.ipynb), with its outputs saved.")
    private Path file;

    @Option(names = "--tolerance", paramLabel = "SHARE", defaultValue = "1e-6",
            description = "How far numbers may differ, as a share of their size (default: ${DEFAULT-VALUE}).")
    private double tolerance;

    RecheckCommand(Supplier<? extends Evaluator> evaluator) {
        this.evaluator = evaluator;
    }

    @Override
    public Integer call() {
        PrintWriter console = spec.commandLine().getOut();
        Recheck recheck;
        Notebook saved = NotebookReader.read(file);
        try {
            recheck = new Recheck(saved, Tolerance.of(tolerance));
        } catch (IllegalArgumentException e) {
            throw new CommandProblem(e.getMessage(), e);
        }
        console.println("Rechecking " + file + " on Java " + Runtime.version().feature());
        List<Drift> drifts = recheck.compare(run(saved, console));
        drifts.forEach(console::println);
        console.println(drifts.isEmpty() ? "All is as saved." : drifts.size() == 1 ? "1 difference."
                : drifts.size() + " differences.");
        console.flush();
        return drifts.isEmpty() ? 0 : 1;
    }

    private NotebookRun.Report run(Notebook saved, PrintWriter console) {
        try (Evaluator cells = evaluator.get()) {
            return new NotebookRun(new DirectSession(cells), true, new RunProgress(console)).run(saved);
        }
    }
}
