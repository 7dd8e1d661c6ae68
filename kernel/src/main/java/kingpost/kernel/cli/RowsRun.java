package kingpost.kernel.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import kingpost.kernel.document.Edition;
import kingpost.kernel.document.RunEvent;

/**
 * Makes the documents of each row, as many rows at once as there are processors, each in a calculation process of its
 * own. A row that cannot be made is told of and does not stop the others.
 */
final class RowsRun {

    private final DocumentRun run;
    private final ParameterTable table;
    private final Map<String, String> settings;
    private final List<Edition> editions;
    private final ResultFiles results;
    private final PrintWriter console;
    private int done;

    RowsRun(DocumentRun run, ParameterTable table, Map<String, String> settings, List<Edition> editions,
            ResultFiles results, PrintWriter console) {
        this.run = run;
        this.table = table;
        this.settings = settings;
        this.editions = editions;
        this.results = results;
        this.console = console;
    }

    /** What came of a row; {@code problem} is empty when all went well. */
    private record Outcome(ParameterTable.Row row, List<Path> files, Duration took, Optional<String> problem) { }

    /** Makes all documents and the summary; 0 when every row went well, else 1. */
    int call() {
        int atOnce = Math.max(1, Math.min(table.rows().size(), Runtime.getRuntime().availableProcessors()));
        console.println("Running " + run.file() + " for " + table.rows().size()
                + (table.rows().size() == 1 ? " row, " : " rows, ") + atOnce + " at a time, on Java "
                + Runtime.version().feature());
        console.flush();
        ExecutorService workers = Executors.newFixedThreadPool(atOnce);
        try {
            List<Future<Outcome>> running = table.rows().stream().map(row -> workers.submit(() -> told(make(row)))).toList();
            List<Outcome> outcomes = new ArrayList<>();
            for (Future<Outcome> each : running) {
                outcomes.add(each.get());
            }
            return summary(outcomes);
        } catch (ExecutionException e) {
            throw new IllegalStateException(e.getCause());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new CommandProblem("The run was interrupted; run it again.", e);
        } finally {
            workers.shutdownNow();
        }
    }

    private Outcome make(ParameterTable.Row row) {
        long start = System.nanoTime();
        List<Path> files = new ArrayList<>();
        Optional<String> problem = row.problem();
        Map<String, String> all = new LinkedHashMap<>(settings);
        all.putAll(row.settings());
        try {
            for (Edition edition : problem.isPresent() ? List.<Edition>of() : editions) {
                DocumentRun.Made made = run.make(edition, all, results.named(row.document()), event -> { });
                files.addAll(made.files().values());
                problem = problem.or(() -> made.report().failures().stream().findFirst().map(RowsRun::said));
            }
        } catch (RuntimeException e) {
            problem = Optional.of(String.valueOf(e.getMessage()));
        }
        return new Outcome(row, files, Duration.ofNanos(System.nanoTime() - start), problem);
    }

    private static String said(RunEvent.Failed failed) {
        return "Cell " + failed.place().number() + ": " + failed.failure().message().lines().findFirst().orElse("");
    }

    private synchronized Outcome told(Outcome outcome) {
        done++;
        int digits = String.valueOf(table.rows().size()).length();
        console.println(String.format(Locale.ROOT, "  [%" + digits + "d/%d] %-16s %-34s %6.2f s  %s", done,
                table.rows().size(), outcome.row().document(), shown(outcome.row()), outcome.took().toMillis() / 1000.0,
                outcome.problem().orElse("made")));
        console.flush();
        return outcome;
    }

    private static String shown(ParameterTable.Row row) {
        return row.settings().entrySet().stream().map(each -> each.getKey() + " = " + inOneLine(each.getValue()))
                .collect(Collectors.joining(", "));
    }

    private static String inOneLine(String text) {
        return text.replaceAll("\\s+", " ");
    }

    private int summary(List<Outcome> outcomes) {
        List<List<String>> lines = new ArrayList<>();
        lines.add(Stream.of(Stream.of("row", "name"), table.parameters().stream(), Stream.of("outcome", "seconds", "files",
                "problem")).flatMap(part -> part).toList());
        for (Outcome outcome : outcomes) {
            List<String> line = new ArrayList<>(List.of(String.valueOf(outcome.row().number()), outcome.row().document()));
            table.parameters().forEach(name -> line.add(outcome.row().settings().getOrDefault(name, "")));
            line.add(outcome.problem().isEmpty() ? "made" : "failed");
            line.add(String.format(Locale.ROOT, "%.2f", outcome.took().toMillis() / 1000.0));
            line.add(outcome.files().stream().map(file -> file.getFileName().toString()).collect(Collectors.joining(" ")));
            line.add(outcome.problem().orElse(""));
            lines.add(line);
        }
        Path file = results.beside("-rows.csv");
        ResultFiles.write(file, ParameterTable.written(lines));
        long failed = outcomes.stream().filter(outcome -> outcome.problem().isPresent()).count();
        console.println();
        print(lines);
        console.println();
        console.println(outcomes.size() - failed + " of " + outcomes.size() + " rows made" + (failed == 0 ? "." : "; "
                + failed + " failed."));
        console.println("Summary   " + file);
        console.flush();
        return failed == 0 ? 0 : 1;
    }

    /** The table but for its files, in columns as wide as they need be. */
    private void print(List<List<String>> lines) {
        int files = lines.get(0).indexOf("files");
        List<List<String>> shown = lines.stream().map(line -> {
            List<String> cells = new ArrayList<>(line);
            cells.remove(files);
            cells.replaceAll(RowsRun::inOneLine);
            return cells;
        }).toList();
        int[] widths = new int[shown.get(0).size()];
        shown.forEach(line -> {
            for (int i = 0; i < line.size(); i++) {
                widths[i] = Math.max(widths[i], line.get(i).length());
            }
        });
        for (List<String> line : shown) {
            StringBuilder row = new StringBuilder("  ");
            for (int i = 0; i < line.size(); i++) {
                row.append(String.format("%-" + (widths[i] + 2) + "s", line.get(i)));
            }
            console.println(row.toString().stripTrailing());
        }
    }
}
