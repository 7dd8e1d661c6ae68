package kingpost.kernel.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Function;
import kingpost.kernel.document.Edition;
import kingpost.kernel.document.Notebook;
import kingpost.kernel.document.NotebookProblem;
import kingpost.kernel.document.NotebookReader;
import kingpost.kernel.document.ParameterCells;
import kingpost.kernel.evaluation.Evaluator;
import kingpost.kernel.print.Paper;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Runs a notebook without a front end, and makes documents of it. */
@Command(name = "run", header = "Runs a notebook without a front end, and makes documents of it.",
        mixinStandardHelpOptions = true, versionProvider = Version.class, sortOptions = false,
        description = {"Runs a notebook from top to bottom and writes what came of it:",
            "  NAME-executed.ipynb   the notebook with its outputs",
            "  NAME.html             one page that stands alone: no script, nothing fetched",
            "and, where asked for, NAME.pdf and NAME.md. A handout is called NAME-handout, a key NAME-key.",
            "A cell's error stops the run; what ran before it is written all the same."},
        exitCodeListHeading = "%nExit status:%n",
        exitCodeList = {"0:every cell ran", "1:a cell failed, or a row", "2:the command line or a file is not usable"})
final class RunCommand implements Callable<Integer> {

    private final Function<Edition, ? extends Evaluator> evaluator;

    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "NOTEBOOK", description = "The notebook (.ipynb).")
    private Path file;

    @Option(names = "--to", paramLabel = "FORM", split = ",", defaultValue = "html,ipynb",
            description = "Forms to write, with commas between them: html, pdf, md, ipynb (default: ${DEFAULT-VALUE}).")
    private List<Form> forms;

    @Option(names = "--paper", paramLabel = "SIZE", defaultValue = "A4",
            description = "Paper of the PDF: A4 or Letter (default: ${DEFAULT-VALUE}).")
    private Paper paper;

    @Option(names = "--as", paramLabel = "EDITION", split = ",", defaultValue = "solution",
            description = "For whom: solution, handout (no answers), key (answers only); several with commas between them "
                + "(default: ${DEFAULT-VALUE}).")
    private List<Edition> editions;

    @Option(names = "--set", paramLabel = "NAME=VALUE",
            description = "Gives a parameter another value for this run, such as P=12kN; repeat for more. The cell that "
                + "declares it is tagged \"parameters\".")
    private Map<String, String> settings = new LinkedHashMap<>();

    @Option(names = "--rows", paramLabel = "CSV",
            description = "Makes the documents once for each row of a table whose columns are parameters; a column \"name\" "
                + "names the documents. Writes NAME-rows.csv with what came of each.")
    private Path rows;

    @Option(names = "--in-place", description = "Write the outputs into NOTEBOOK itself, the page beside it.")
    private boolean inPlace;

    @Option(names = "--keep-going", description = "Go on after a cell that fails.")
    private boolean keepGoing;

    @Option(names = {"-o", "--out"}, paramLabel = "DIR",
            description = "Folder for the results; made if need be. Without it: \"out\" in the current folder.")
    private Path out;

    RunCommand(Function<Edition, ? extends Evaluator> evaluator) {
        this.evaluator = evaluator;
    }

    @Override
    public Integer call() {
        Notebook notebook = NotebookReader.read(file);
        refuseOtherLanguages(notebook);
        new ParameterCells(file.toString(), notebook).require(settings.keySet());
        ResultFiles results = ResultFiles.of(file, inPlace, Optional.ofNullable(out));
        DocumentRun run = new DocumentRun(file, notebook, evaluator, forms.stream().distinct().toList(), paper, keepGoing);
        return rows == null ? once(run, results) : eachRow(run, results);
    }

    private int once(DocumentRun run, ResultFiles results) {
        PrintWriter console = spec.commandLine().getOut();
        results.prepare();
        boolean succeeded = true;
        for (Edition edition : editions.stream().distinct().toList()) {
            console.println("Running " + file + (edition == Edition.SOLUTION ? "" : " as " + edition.word()) + " on Java "
                    + Runtime.version().feature());
            console.flush();
            DocumentRun.Made made = run.make(edition, settings, results, new RunProgress(console));
            new RunSummary(spec.commandLine().getErr()).print(made.report());
            made.files().forEach((form, path) -> console.println(String.format("%-10s", form.word()) + path));
            console.flush();
            succeeded &= made.report().succeeded();
        }
        return succeeded ? 0 : 1;
    }

    private int eachRow(DocumentRun run, ResultFiles results) {
        if (inPlace) {
            throw new CommandProblem("Option --in-place: many rows cannot be written into one notebook; leave it out.");
        }
        ParameterTable table = ParameterTable.read(rows);
        new ParameterCells(file.toString(), run.source()).require(table.parameters());
        results.prepare();
        return new RowsRun(run, table, settings, editions.stream().distinct().toList(), results,
                spec.commandLine().getOut()).call();
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
