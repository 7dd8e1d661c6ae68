package kingpost.notebook;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;
import kingpost.csv.CsvTable;
import kingpost.marking.MarkedClass;
import kingpost.marking.MarkedSheet;
import kingpost.marking.Marker;
import kingpost.render.Edition;
import kingpost.render.Exhibit;
import kingpost.render.HtmlPage;
import kingpost.render.Showable;
import kingpost.units.CalculationException;
import kingpost.variant.Variant;
import kingpost.variant.VariantSet;

/** Variants of a truss in a notebook: shown as a table and their figures. */
public final class TrussVariants implements Showable, Iterable<TrussVariant> {

    private final VariantSet set;

    TrussVariants(VariantSet set) {
        this.set = set;
    }

    /** How many there are. */
    public int size() {
        return set.variants().size();
    }

    /**
     * A variant by its number, from 1.
     *
     * @throws CalculationException when there is none of that number
     */
    public TrussVariant get(int number) {
        return new TrussVariant(variant(number));
    }

    private Variant variant(int number) {
        if (number < 1 || number > size()) {
            throw new CalculationException("Variant " + number + ": there is none of that number; they are numbered from 1 to "
                    + size() + ".");
        }
        return set.variants().get(number - 1);
    }

    @Override
    public Iterator<TrussVariant> iterator() {
        return set.variants().stream().map(TrussVariant::new).iterator();
    }

    /** The keys of all as comma-separated text: a row for each variant, a column for each force, tension positive. */
    public String keys() {
        return set.keys().write();
    }

    /** Writes a handout and a key for each variant, and the keys of all in one table, to a folder. */
    public SavedFiles save(String folder) {
        return save(SavedFiles.folder(folder));
    }

    /** Writes a handout and a key for each variant, and the keys of all in one table, to a folder. */
    public SavedFiles save(Path folder) {
        int digits = Integer.toString(size()).length();
        Map<String, String> files = new LinkedHashMap<>();
        files.put("keys.csv", keys());
        for (Variant variant : set.variants()) {
            String name = "variant-" + "0".repeat(digits - Integer.toString(variant.number()).length()) + variant.number();
            files.put(name + "-handout.html", HtmlPage.of(variant.handout()));
            files.put(name + "-key.html", HtmlPage.of(variant.key()));
        }
        return SavedFiles.into(folder, files);
    }

    /** Marks a class in which each has a variant of their own: the table's column "variant" tells which. */
    public ClassMarks markClass(String csv) {
        return markClass(AnswerTables.read(csv));
    }

    /** Marks a class in which each has a variant of their own: the table's column "variant" tells which. */
    public ClassMarks markClass(Path file) {
        return markClass(AnswerTables.read(file));
    }

    private ClassMarks markClass(CsvTable table) {
        OptionalInt column = table.column("variant");
        if (column.isEmpty()) {
            throw new CalculationException("Answers: the table has no column \"variant\"; add it, or mark with one truss.");
        }
        Map<Integer, List<CsvTable.Row>> rows = new TreeMap<>();
        List<String> problems = new ArrayList<>();
        for (CsvTable.Row row : table.rows()) {
            String number = row.cell(column.getAsInt());
            if (number.matches("\\d{1,6}") && Integer.parseInt(number) >= 1 && Integer.parseInt(number) <= size()) {
                rows.computeIfAbsent(Integer.parseInt(number), n -> new ArrayList<>()).add(row);
            } else {
                problems.add("Line " + row.line() + ": \"" + number + "\" is no variant; they are numbered from 1 to " + size()
                        + "; the line is not marked.");
            }
        }
        List<MarkedSheet> sheets = new ArrayList<>();
        rows.forEach((number, each) -> {
            MarkedClass marked = Marker.of(variant(number).solution())
                    .markClass(new CsvTable(table.header(), each).without(column.getAsInt()));
            sheets.addAll(marked.sheets());
            marked.problems().stream().filter(problem -> !problems.contains(problem)).forEach(problems::add);
        });
        return new ClassMarks(new MarkedClass(set.truss(), sheets, problems));
    }

    private Exhibit exhibit() {
        List<Map<String, Object>> keys = set.variants().stream().map(each -> ResultNumbers.of(each.solution())).toList();
        return Exhibit.of(set.overview(), "variants", Map.of("seed", set.seed(), "variants", keys));
    }

    @Override
    public Map<String, Object> show() {
        return exhibit().show();
    }

    /** The set tells answers, so a handout leaves it out; each variant has a handout of its own. */
    @Override
    public Optional<Map<String, Object>> show(Edition edition) {
        return switch (edition) {
            case SOLUTION -> Optional.of(show());
            case HANDOUT -> Optional.empty();
            case KEY -> Optional.of(exhibit().madeFor(edition, exhibit().toString(), true).show());
        };
    }

    @Override
    public String toString() {
        return exhibit().toString();
    }
}
