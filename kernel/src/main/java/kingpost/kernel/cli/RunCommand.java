package kingpost.kernel.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import kingpost.kernel.document.Notebook;
import kingpost.kernel.document.NotebookProblem;
import kingpost.kernel.document.NotebookReader;
import kingpost.kernel.document.NotebookRun;
import kingpost.kernel.document.NotebookWriter;
import kingpost.kernel.evaluation.Evaluator;
import kingpost.kernel.page.NotebookPage;
import kingpost.kernel.session.DirectSession;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Runs a notebook without a front end. */
@Command(name = "run", header = "Runs a notebook without a front end.",
        mixinStandardHelpOptions = true, versionProvider = Version.class,
        description = {"Runs a notebook from top to bottom and writes what came of it:",
            "  NAME-executed.ipynb   the notebook with its outputs",
            "  NAME.html             one page that stands alone: no script, nothing fetched",
            "A cell's error stops the run; what ran before it is written all the same."},
        exitCodeListHeading = "%nExit status:%n",
        exitCodeList = {"0:every cell ran", "1:a cell failed", "2:the command line or a file is not usable"})
final class RunCommand implements Callable<Integer> {

    private final Supplier<? extends Evaluator> evaluator;

    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "NOTEBOOK", description = "The notebook (.ipynb).")
    private Path file;

    @Option(names = "--in-place", description = "Write the outputs into NOTEBOOK itself, the page beside it.")
    private boolean inPlace;

    @Option(names = "--keep-going", description = "Go on after a cell that fails.")
    private boolean keepGoing;

    @Option(names = {"-o", "--out"}, paramLabel = "DIR",
            description = "Folder for the results; made if need be. Without it: \"out\" in the current folder.")
    private Path out;

    RunCommand(Supplier<? extends Evaluator> evaluator) {
        this.evaluator = evaluator;
    }

    @Override
    public Integer call() {
        PrintWriter console = spec.commandLine().getOut();
        Notebook notebook = NotebookReader.read(file);
        refuseOtherLanguages(notebook);
        ResultFiles results = ResultFiles.of(file, inPlace, Optional.ofNullable(out));
        results.prepare();
        console.println("Running " + file + " on Java " + Runtime.version().feature());
        console.flush();
        NotebookRun.Report report = run(notebook, console);
        results.writeNotebook(NotebookWriter.write(report.notebook()));
        results.writePage(page(report.notebook()));
        new RunSummary(spec.commandLine().getErr()).print(report);
        console.println("Notebook  " + results.notebook());
        console.println("Page      " + results.page());
        console.flush();
        return report.succeeded() ? 0 : 1;
    }

    private NotebookRun.Report run(Notebook notebook, PrintWriter console) {
        try (Evaluator cells = evaluator.get()) {
            NotebookRun.Report report = new NotebookRun(new DirectSession(cells), keepGoing, new RunProgress(console))
                    .run(notebook);
            return new NotebookRun.Report(KernelMetadata.on(report.notebook()), report.failures());
        }
    }

    private String page(Notebook executed) {
        String name = file.getFileName().toString();
        Optional<Path> folder = Optional.ofNullable(file.toAbsolutePath().getParent());
        return new NotebookPage(executed, name, folder)
                .withFooter(name + ", run by Kingpost " + Version.number()).html();
    }

    private void refuseOtherLanguages(Notebook notebook) {
        String kernel = notebook.kernel().orElse(Notebook.KERNEL);
        String language = notebook.language().orElse("java");
        if (!language.equals("java") && !kernel.equals(Notebook.KERNEL)) {
            throw new NotebookProblem("Notebook " + file + ": is written for the kernel \"" + kernel + "\" in the language "
                    + language + ", and Kingpost runs Java; run it with that kernel, or choose Kingpost for it in a "
                    + "front end.");
        }
    }
}
