package kingpost.kernel.cli;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import kingpost.kernel.document.Edition;
import kingpost.kernel.document.Inputs;
import kingpost.kernel.document.MarkdownFile;
import kingpost.kernel.document.Notebook;
import kingpost.kernel.document.NotebookProblem;
import kingpost.kernel.document.NotebookRun;
import kingpost.kernel.document.NotebookWriter;
import kingpost.kernel.document.ParameterCells;
import kingpost.kernel.document.RunEvent;
import kingpost.kernel.evaluation.Evaluator;
import kingpost.kernel.page.NotebookPage;
import kingpost.kernel.print.Paper;
import kingpost.kernel.print.PrintedPage;
import kingpost.kernel.session.DirectSession;

/**
 * Runs a notebook for one edition and writes its documents.
 *
 * @param file      the notebook's path
 * @param source    the notebook
 * @param evaluator starts what runs the cells
 * @param forms     the forms to write
 * @param paper     for the printed form
 * @param keepGoing whether a failing cell leaves the others to run
 */
record DocumentRun(Path file, Notebook source, Function<Edition, ? extends Evaluator> evaluator, List<Form> forms,
                   Paper paper, boolean keepGoing) {

    /** The exception that a parameter's value raises when it cannot take the place of the notebook's. */
    private static final String SETTING_PROBLEM = "SettingProblem";

    /** What came of a run: the report, and the files that were written. */
    record Made(NotebookRun.Report report, Map<Form, Path> files) { }

    /**
     * Runs and writes.
     *
     * @throws NotebookProblem a value that was set cannot take the place of the notebook's; nothing is written
     */
    Made make(Edition edition, Map<String, String> settings, ResultFiles results, RunEvent.Listener listener) {
        Notebook ready = new ParameterCells(name(), source).with(settings);
        NotebookRun.Report report = run(ready, edition, listener);
        refuseSettings(report);
        RunFacts facts = new RunFacts(name(), Inputs.hash(ready), settings, edition);
        Notebook executed = facts.on(KernelMetadata.on(report.notebook()));
        Map<Form, Path> files = new LinkedHashMap<>();
        for (Form form : forms) {
            Path written = results.file(form, edition);
            ResultFiles.write(written, content(form, executed, facts));
            files.put(form, written);
        }
        return new Made(report, files);
    }

    private NotebookRun.Report run(Notebook ready, Edition edition, RunEvent.Listener listener) {
        try (Evaluator cells = evaluator.apply(edition)) {
            return new NotebookRun(new DirectSession(cells), keepGoing, listener).run(ready);
        }
    }

    private static void refuseSettings(NotebookRun.Report report) {
        report.failures().stream().map(RunEvent.Failed::failure)
                .filter(failure -> failure.name().endsWith(SETTING_PROBLEM)).findFirst().ifPresent(failure -> {
                    throw new NotebookProblem(failure.message());
                });
    }

    /** The executed notebook keeps every cell in the solution; all else is cut to the edition. */
    private byte[] content(Form form, Notebook executed, RunFacts facts) {
        Notebook shown = facts.edition().of(executed);
        String foot = facts.foot(shown);
        return switch (form) {
            case IPYNB -> bytes(NotebookWriter.write(facts.edition() == Edition.SOLUTION ? executed : shown));
            case MD -> bytes(MarkdownFile.of(shown, foot));
            case HTML -> bytes(page(shown, foot).html());
            case PDF -> PrintedPage.of(page(shown, foot).tree(), paper, facts.edges(shown));
        };
    }

    private NotebookPage page(Notebook shown, String foot) {
        return new NotebookPage(shown, name(), Optional.ofNullable(file.toAbsolutePath().getParent())).withFooter(foot);
    }

    private String name() {
        return file.getFileName().toString();
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
