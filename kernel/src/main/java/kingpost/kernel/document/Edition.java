package kingpost.kernel.document;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalLong;
import java.util.Set;

/**
 * For whom a document is made of a notebook.
 *
 * <p>The calculation is told the edition before it runs, and marks what it shows for it. A handout and a key take only
 * what is so marked, and cells whose tags name them; anything else is left out, whatever it says, so that an answer
 * cannot stay behind in a form that nobody looks at. In words:
 *
 * <ul>
 * <li>A cell tagged {@code solution}, {@code handout} or {@code key} is in the editions that its tags name and in no
 * other, with its code and all that it printed.</li>
 * <li>Of an untagged code cell, a handout and a key show neither code nor printed text.</li>
 * <li>Untagged text before the first code cell states the problem and is in the handout; later text is not.</li>
 * </ul>
 */
public enum Edition {
    /** The whole notebook. */
    SOLUTION,
    /** The problem with room to work in. */
    HANDOUT,
    /** The answers alone. */
    KEY;

    /** The system property by which the calculation is told. */
    public static final String PROPERTY = "kingpost.edition";

    private static final String RESULT = "application/vnd.kingpost.result+json";
    private static final Set<String> KEPT_METADATA = Set.of("kernelspec", "language_info", "kingpost");

    /** Its name in small letters, which is also its tag. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** What of a notebook that ran for this edition belongs into its documents. */
    public Notebook of(Notebook executed) {
        if (this == SOLUTION) {
            return executed.withCells(executed.cells().stream().filter(cell -> isNamed(cell) || !isTagged(cell)).toList());
        }
        Map<String, Object> metadata = new HashMap<>();
        executed.metadata().forEach((key, value) -> {
            if (KEPT_METADATA.contains(key)) {
                metadata.put(key, value);
            }
        });
        String title = executed.title().map(name -> name + ": " + word()).orElse(word());
        metadata.put("title", title);
        return new Notebook(executed.minor(), metadata, headed(title, new Cut(executed).cells()), Map.of());
    }

    /** With the title above it, where what was kept does not begin with a heading. */
    private static List<Cell> headed(String title, List<Cell> kept) {
        if (!kept.isEmpty() && kept.get(0) instanceof Cell.Markdown && kept.get(0).source().stripLeading().startsWith("#")) {
            return kept;
        }
        List<Cell> cells = new ArrayList<>(kept);
        cells.add(0, new Cell.Markdown("title", Map.of(), "# " + title.replaceAll("([\\\\`*_\\[\\]<>$])", "\\\\$1"), Map.of()));
        return cells;
    }

    private boolean isNamed(Cell cell) {
        return cell.isTagged(word());
    }

    private static boolean isTagged(Cell cell) {
        return List.of(values()).stream().anyMatch(edition -> cell.isTagged(edition.word()));
    }

    /** The cells of one notebook that are kept, each with what is kept of it. */
    private final class Cut {

        private final Notebook notebook;
        private final Set<String> fullyShown = new HashSet<>();
        private final Set<String> begun = new HashSet<>();
        private boolean computed;

        Cut(Notebook notebook) {
            this.notebook = notebook;
            notebook.cells().stream().filter(Cell.Code.class::isInstance).map(Cell.Code.class::cast)
                    .flatMap(cell -> cell.outputs().stream()).map(Edition::result)
                    .filter(result -> Trees.flag(result, "whole")).forEach(result -> fullyShown.add(about(result)));
        }

        List<Cell> cells() {
            List<Cell> kept = new ArrayList<>();
            for (Cell cell : notebook.cells()) {
                if (cell instanceof Cell.Code code) {
                    Cell.Code cut = cut(code);
                    if (!cut.outputs().isEmpty() || !cut.source().isEmpty()) {
                        kept.add(cut);
                    }
                    computed = computed || !code.source().isBlank();
                } else if (isNamed(cell) || Edition.this == HANDOUT && !computed && !isTagged(cell)
                        && cell instanceof Cell.Markdown) {
                    kept.add(new Cell.Markdown(cell.id(), tags(cell), cell.source(), cell.extra()));
                }
            }
            return kept;
        }

        private Cell.Code cut(Cell.Code cell) {
            boolean named = isNamed(cell);
            boolean elsewhere = !named && isTagged(cell);
            List<Map<String, Object>> outputs = cell.outputs().stream()
                    .filter(output -> !elsewhere && (named && !isMadeForAnother(output) || isMadeForThis(output)))
                    .filter(this::isFirst).toList();
            return new Cell.Code(cell.id(), tags(cell), named ? cell.source() : "", OptionalLong.empty(),
                    outputs.stream().map(Edition::withoutCount).toList(), Map.of());
        }

        private boolean isMadeForThis(Map<String, Object> output) {
            return Trees.text(result(output), "edition").filter(word()::equals).isPresent();
        }

        private boolean isMadeForAnother(Map<String, Object> output) {
            return Trees.text(result(output), "edition").filter(edition -> !edition.equals(word())).isPresent();
        }

        /** Of several outputs about the same, the first that holds the whole is shown. */
        private boolean isFirst(Map<String, Object> output) {
            Map<String, Object> result = result(output);
            String about = about(result);
            if (about.isEmpty()) {
                return true;
            }
            boolean partOfAnother = !Trees.flag(result, "whole") && fullyShown.contains(about);
            return !partOfAnother && begun.add(about);
        }
    }

    /** Of a cell's metadata its tags alone: a tool may have put anything there. */
    private static Map<String, Object> tags(Cell cell) {
        return cell.tags().isEmpty() ? Map.of() : Map.of("tags", cell.tags());
    }

    private static Map<String, Object> result(Map<String, Object> output) {
        return Trees.map(Trees.map(output, "data"), RESULT);
    }

    private static String about(Map<String, Object> result) {
        return Trees.text(result, "about").orElse("");
    }

    /** Shown without the code that it came from, an output has no number. */
    private static Map<String, Object> withoutCount(Map<String, Object> output) {
        if (!"execute_result".equals(output.get("output_type"))) {
            return output;
        }
        Map<String, Object> shown = Trees.without(output, "execution_count");
        shown.put("output_type", "display_data");
        return shown;
    }
}
