package kingpost.kernel.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import kingpost.kernel.document.Cell;
import kingpost.kernel.document.Edition;
import kingpost.kernel.document.Inputs;
import kingpost.kernel.document.Notebook;
import kingpost.kernel.document.Trees;
import kingpost.kernel.print.PrintedPage;

/**
 * What a document says of the run that it comes from: tools, inputs, parameters, rounding.
 *
 * @param file     the notebook's name
 * @param inputs   the mark of what went in
 * @param settings the values set for the run, name to text
 * @param edition  for whom the document is
 */
record RunFacts(String file, String inputs, Map<String, String> settings, Edition edition) {

    private static final String RESULT = "application/vnd.kingpost.result+json";

    RunFacts {
        settings = Map.copyOf(new LinkedHashMap<>(settings));
    }

    /** The notebook with the facts in its metadata; the tools' versions are not among them: any will do to run it. */
    Notebook on(Notebook executed) {
        Map<String, Object> facts = new LinkedHashMap<>();
        facts.put("edition", edition.word());
        facts.put("inputs", "sha256:" + inputs);
        if (!settings.isEmpty()) {
            facts.put("parameters", new java.util.TreeMap<>(settings));
        }
        return executed.withMetadata("kingpost", facts);
    }

    /** What stands below a document. */
    String foot(Notebook executed) {
        List<String> parts = new ArrayList<>();
        parts.add(file + ", run by " + tools() + ". Inputs: SHA-256 " + inputs + ".");
        if (!settings.isEmpty()) {
            parts.add("Set for this run: " + set() + ".");
        }
        results(executed).map(result -> Trees.text(result, "policy")).flatMap(Optional::stream).distinct()
                .forEach(parts::add);
        return String.join(" ", parts);
    }

    /** What stands at the edge of each printed page. */
    PrintedPage.Edges edges(Notebook executed) {
        Map<String, Object> block = results(executed).map(result -> Trees.map(result, "title-block"))
                .filter(entries -> !entries.isEmpty()).findFirst().orElse(Map.of());
        String title = executed.title().orElse(file);
        String head = Stream.concat(Trees.text(block, "Project").stream(), Stream.of(title)).distinct()
                .collect(Collectors.joining(": "));
        String side = Stream.of("Sheet", "Revision").flatMap(name -> Trees.text(block, name)
                .map(text -> name.equals("Sheet") ? "Sheet " + text : "revision " + text).stream())
                .collect(Collectors.joining(", "));
        String foot = tools() + "; inputs " + Inputs.shortened(inputs) + (settings.isEmpty() ? "" : "; " + set());
        return new PrintedPage.Edges(head, side, foot);
    }

    /** The values that were set, in one line. */
    String set() {
        return new java.util.TreeMap<>(settings).entrySet().stream().map(each -> each.getKey() + " = " + each.getValue())
                .collect(Collectors.joining(", "));
    }

    private static String tools() {
        return "Kingpost " + Version.number() + " on Java " + Runtime.version().feature();
    }

    private static Stream<Map<String, Object>> results(Notebook executed) {
        return executed.cells().stream().filter(Cell.Code.class::isInstance).map(Cell.Code.class::cast)
                .flatMap(cell -> cell.outputs().stream()).map(output -> Trees.map(Trees.map(output, "data"), RESULT));
    }
}
