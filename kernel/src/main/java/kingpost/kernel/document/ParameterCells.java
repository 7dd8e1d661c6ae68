package kingpost.kernel.document;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * The cells of a notebook that are tagged {@link #TAG}: what they declare, and how other values take its place. A value
 * that is set becomes a cell of its own beside them, tagged {@link #SET}, so that the executed notebook says with which
 * values it ran, and runs with them again.
 */
public final class ParameterCells {

    /** The tag of a cell that declares parameters. */
    public static final String TAG = "parameters";

    /** The tag of a cell that sets them for a run. */
    public static final String SET = "parameters-set";

    private static final Pattern NOT_CODE = Pattern.compile("//[^\\n]*|/\\*[\\s\\S]*?\\*/");
    private static final Pattern TEXT = Pattern.compile("\"(?:\\\\.|[^\"\\\\\\n])*\"");
    private static final Pattern VARIABLE = Pattern.compile(
            "(?:^|[;{}\\s])(?:var|Quantity|double|int|boolean|String)\\s+([A-Za-z_$][\\w$]*)\\s*=(?!=)");
    private static final Pattern LINE = Pattern.compile("\\bgiven\\s*\\(\\s*\"([^\"]+)\"");

    private final String file;
    private final Notebook notebook;
    private final Set<String> variables = new LinkedHashSet<>();
    private final Set<String> lines = new LinkedHashSet<>();

    /** @param file what to call the notebook in messages */
    public ParameterCells(String file, Notebook notebook) {
        this.file = file;
        this.notebook = notebook.withCells(notebook.cells().stream().filter(cell -> !cell.isTagged(SET)).toList());
        tagged().forEach(cell -> {
            String code = NOT_CODE.matcher(cell.source()).replaceAll("");
            find(LINE, code, lines);
            find(VARIABLE, TEXT.matcher(code).replaceAll("\"\""), variables);
        });
    }

    private static void find(Pattern pattern, String code, Set<String> names) {
        Matcher found = pattern.matcher(code);
        while (found.find()) {
            names.add(found.group(1));
        }
    }

    private List<Cell> tagged() {
        return notebook.cells().stream().filter(cell -> cell instanceof Cell.Code && cell.isTagged(TAG)).toList();
    }

    /**
     * Sees that each name is declared.
     *
     * @throws NotebookProblem one is not, or no cell is tagged
     */
    public void require(Set<String> names) {
        if (names.isEmpty()) {
            return;
        }
        if (tagged().isEmpty()) {
            throw new NotebookProblem("Notebook " + file + ": no cell is tagged \"" + TAG + "\", so that nothing can be "
                    + "set; give that tag to the cell that declares " + String.join(", ", names) + ".");
        }
        Set<String> known = new TreeSet<>(variables);
        known.addAll(lines);
        List<String> unknown = names.stream().filter(name -> !known.contains(name)).toList();
        if (!unknown.isEmpty()) {
            throw new NotebookProblem("Parameter " + String.join(", ", unknown) + ": the cell tagged \"" + TAG + "\" in "
                    + file + " declares " + (known.isEmpty() ? "none" : String.join(", ", known))
                    + "; set one of those, or declare it there.");
        }
    }

    /**
     * The notebook as it runs with these values, name to text; without any, as it is.
     *
     * @throws NotebookProblem a name is not declared
     */
    public Notebook with(Map<String, String> settings) {
        if (settings.isEmpty()) {
            return notebook;
        }
        require(settings.keySet());
        String before = settings.entrySet().stream().filter(each -> lines.contains(each.getKey()))
                .map(each -> "setForThisRun(" + literal(each.getKey()) + ", " + literal(each.getValue()) + ");")
                .collect(Collectors.joining("\n"));
        List<Cell> cells = new ArrayList<>();
        List<Cell> tagged = tagged();
        Set<String> changed = new LinkedHashSet<>();
        for (Cell cell : notebook.cells()) {
            if (cell == tagged.get(0) && !before.isEmpty()) {
                cells.add(set("lines", before));
            }
            cells.add(cell);
            String after = tagged.contains(cell) ? after(cell, settings, changed) : "";
            if (!after.isEmpty()) {
                cells.add(set("variables" + (cell == tagged.get(0) ? "" : "-" + cells.size()), after));
            }
        }
        return notebook.withCells(cells);
    }

    /**
     * What follows a tagged cell: the variables of it that are set, and those that it works out from them, once more.
     *
     * @param changed names that have another value than the notebook's so far; grows
     */
    private String after(Cell cell, Map<String, String> settings, Set<String> changed) {
        List<String> assignments = new ArrayList<>();
        for (Statement statement : Statement.of(cell.source())) {
            String name = statement.declared().map(Statement.Declared::name).orElse("");
            boolean isSet = settings.containsKey(name) && !lines.contains(name);
            if (isSet) {
                changed.add(name);
            }
            Optional<String> used = Statement.used(statement.bareValue(), changed);
            if (used.isPresent() && (name.isEmpty() || statement.declaresSeveral())) {
                throw new NotebookProblem("Parameter " + used.get() + ": the cell tagged \"" + TAG + "\" in " + file
                        + " already works with it in \"" + statement.shortened() + "\", before it can be set; move that to a "
                        + "later cell" + (name.isEmpty() ? "." : ", or declare each variable in a statement of its own."));
            }
            if (isSet) {
                assignments.add(name + " = setForThisRun(" + literal(name) + ", " + name + ", " + literal(settings.get(name))
                        + ");");
            } else if (used.isPresent()) {
                changed.add(name);
                assignments.add(name + " = " + statement.declared().orElseThrow().value() + ";");
            }
        }
        return String.join("\n", assignments);
    }

    private static Cell set(String what, String source) {
        return new Cell.Code(SET + "-" + what, Map.of("tags", List.of(SET)), source, OptionalLong.empty(), List.of(),
                Map.of());
    }

    private static String literal(String text) {
        StringBuilder out = new StringBuilder("\"");
        for (char c : text.toCharArray()) {
            if (c == '"' || c == '\\') {
                out.append('\\').append(c);
            } else if (c < ' ') {
                out.append(String.format("\\%03o", (int) c));
            } else if (c > '~') {
                out.append(String.format("\\u%04x", (int) c));
            } else {
                out.append(c);
            }
        }
        return out.append('"').toString();
    }
}
