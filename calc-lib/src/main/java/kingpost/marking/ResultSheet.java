package kingpost.marking;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import kingpost.csv.CsvTable;
import kingpost.derivation.Block;
import kingpost.derivation.Block.Listing;
import kingpost.derivation.Block.Prose;
import kingpost.derivation.Block.Section;
import kingpost.derivation.Derivation;
import kingpost.derivation.Phrase;
import kingpost.derivation.Table;
import kingpost.derivation.Table.Column;
import kingpost.marking.Slip.Kind;

/** What a class earned: a table to look at, and one for a spreadsheet. */
public final class ResultSheet {

    private static final List<String> COUNTS = List.of("points", "out of", "open", "right", "follows", "slip", "wrong",
            "not answered", "not read");

    private final MarkedClass marked;
    private final Points points;

    private ResultSheet(MarkedClass marked, Points points) {
        this.marked = marked;
        this.points = points;
    }

    /** A row for each sheet: student, points, counts, slips, and the verdict on each force. */
    public static CsvTable csv(MarkedClass marked, Points points) {
        return new ResultSheet(marked, points).csv();
    }

    /** A row for each sheet, which slips the class made, and what in the table could not be used. */
    public static Derivation summary(MarkedClass marked, Points points) {
        return new ResultSheet(marked, points).summary();
    }

    private CsvTable csv() {
        Set<String> subjects = new LinkedHashSet<>();
        marked.sheets().forEach(sheet -> sheet.answers().forEach(answer -> subjects.add(answer.subject())));
        List<String> header = new ArrayList<>(List.of("student"));
        header.addAll(COUNTS);
        header.add("likeliest slips");
        header.addAll(subjects);
        List<CsvTable.Row> rows = new ArrayList<>();
        for (MarkedSheet sheet : marked.sheets()) {
            List<String> cells = new ArrayList<>(List.of(sheet.student()));
            counts(sheet).forEach(count -> cells.add(Integer.toString(count)));
            cells.add(slips(sheet));
            subjects.forEach(subject -> cells.add(sheet.answer(subject)
                    .map(answer -> answer.verdict().accept(new VerdictWords())).orElse("")));
            rows.add(new CsvTable.Row(rows.size() + 2L, cells));
        }
        return new CsvTable(header, rows);
    }

    private List<Integer> counts(MarkedSheet sheet) {
        Points.Score score = points.of(sheet);
        return List.of(score.points(), score.outOf(), score.open(), sheet.right(), sheet.followThrough(), sheet.slipped(),
                sheet.unexplained(), sheet.notAnswered(), sheet.notRead());
    }

    private static String slips(MarkedSheet sheet) {
        return sheet.slips().stream().map(SlipWords::of).collect(Collectors.joining(" "));
    }

    private Derivation summary() {
        List<Block> blocks = new ArrayList<>();
        blocks.add(Prose.of("A right answer is worth " + points.right() + ", one that follows correctly from an earlier"
                + " slip " + points.follows() + ", a slip that can be named " + points.slip() + "."));
        blocks.add(sheets());
        Map<Kind, List<String>> byKind = byKind();
        if (!byKind.isEmpty()) {
            blocks.add(Section.of("Slips in the class", List.of(kinds(byKind))));
        }
        if (!marked.problems().isEmpty()) {
            blocks.add(Section.of("What could not be used",
                    List.of(new Listing(false, marked.problems().stream().map(Phrase::of).toList()))));
        }
        return new Derivation(marked.truss().name() + ": results", blocks);
    }

    private Table sheets() {
        List<List<Phrase>> rows = new ArrayList<>();
        for (MarkedSheet sheet : marked.sheets()) {
            List<Phrase> row = new ArrayList<>(List.of(Phrase.of(sheet.student()),
                    Phrase.of(points.of(sheet).toString().replace(' ', '\u00a0'))));
            for (int count : counts(sheet).subList(3, COUNTS.size())) {
                row.add(Phrase.of(count == 0 ? "\u2013" : Integer.toString(count)));
            }
            rows.add(row);
        }
        return new Table(Phrase.EMPTY, List.of(Column.left("Student"), Column.right("Points"), Column.right("Right"),
                Column.right("Follows"), Column.right("Slip"), Column.right("Wrong"), Column.right("Blank"),
                Column.right("Unread")), rows, true);
    }

    private Map<Kind, List<String>> byKind() {
        Map<Kind, List<String>> students = new EnumMap<>(Kind.class);
        for (MarkedSheet sheet : marked.sheets()) {
            sheet.slips().stream().map(Slip::kind).distinct().forEach(kind ->
                    students.computeIfAbsent(kind, k -> new ArrayList<>()).add(sheet.student() + subjects(sheet, kind)));
        }
        return students;
    }

    /** " (AB, the 12 kN load at D)", or nothing where the slip is of the sheet as a whole. */
    private static String subjects(MarkedSheet sheet, Kind kind) {
        String subjects = sheet.slips().stream().filter(slip -> slip.kind() == kind && !slip.subject().isEmpty())
                .map(slip -> kind == Kind.WRONG_PANELS ? slip.other() + " for " + slip.subject() : slip.subject()).distinct()
                .collect(Collectors.joining(", "));
        return subjects.isEmpty() ? "" : " (" + subjects + ")";
    }

    private static Table kinds(Map<Kind, List<String>> byKind) {
        List<List<Phrase>> rows = new ArrayList<>();
        byKind.entrySet().stream().sorted((a, b) -> b.getValue().size() - a.getValue().size()).forEach(each ->
                rows.add(List.of(Phrase.of(each.getKey().words()), Phrase.of(Integer.toString(each.getValue().size())),
                        Phrase.of(String.join("; ", each.getValue())))));
        return new Table(Phrase.EMPTY, List.of(Column.left("Slip"), Column.right("Sheets"), Column.left("Who")), rows, true);
    }
}
