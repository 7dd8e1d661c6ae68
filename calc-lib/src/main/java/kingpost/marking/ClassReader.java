package kingpost.marking;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import kingpost.csv.CsvTable;
import kingpost.units.CalculationException;

/**
 * Reads the answers of a class from a table: one row for each student with a column for each force, or one row for
 * each answer with columns student, member and answer.
 *
 * <p>A wide table's column may state its unit, as "AB (kN)"; a column "AB sense" beside it may hold the T or C. A
 * column "signs" may declare "compression positive"; a column "working" may hold equations, as on a sheet.
 */
final class ClassReader {

    private static final String[] STUDENT = {"student", "name", "student name", "student id", "id", "candidate"};
    private static final String[] SUBJECT = {"member", "force in", "subject", "of"};
    private static final String[] ANSWER = {"answer", "force", "value", "stated"};
    private static final String[] SIGNS = {"signs", "sign convention", "convention"};
    private static final String[] WORKING = {"working", "equations", "steps"};
    private static final Pattern HEAD =
            Pattern.compile("(?<subject>.*?)\\s*(?:[(\\[](?<unit>[^)\\]]*)[)\\]])?(?<sense>\\s+(?:sense|T/C|t or c))?");

    private static final Pattern HAS_UNIT =
            Pattern.compile("(?i).*(?<![a-z])([km]?n|lbf?|lbs|kips?|k|newtons?|pounds)(?![a-z]).*");

    private final Unknowns unknowns;
    private final List<String> problems = new ArrayList<>();

    ClassReader(Unknowns unknowns) {
        this.unknowns = unknowns;
    }

    /**
     * @param sheets   in the table's order
     * @param problems what in the table could not be used, each with its line or column
     */
    record ClassAnswers(List<AnswerSheet> sheets, List<String> problems) {
    }

    /** @throws CalculationException when no column is a force of the truss */
    ClassAnswers read(String text) {
        return read(CsvTable.read("Answers", text));
    }

    /** @throws CalculationException when no column is a force of the truss */
    ClassAnswers read(CsvTable table) {
        OptionalInt subject = table.column(SUBJECT);
        OptionalInt answer = table.column(ANSWER);
        List<AnswerSheet> sheets = subject.isPresent() && answer.isPresent()
                ? tall(table, subject.getAsInt(), answer.getAsInt()) : wide(table);
        return new ClassAnswers(sheets, List.copyOf(problems));
    }

    private List<AnswerSheet> tall(CsvTable table, int subject, int answer) {
        int student = table.column(STUDENT).orElse(-1);
        OptionalInt sense = table.column("sense");
        OptionalInt unit = table.column("unit");
        Map<String, SheetReader> readers = new LinkedHashMap<>();
        for (CsvTable.Row row : table.rows()) {
            String name = student < 0 ? "" : row.cell(student);
            if (student >= 0 && name.isEmpty()) {
                problems.add("Line " + row.line() + ": it names no student; add the name.");
                continue;
            }
            String text = row.cell(answer) + column(row, unit) + column(row, sense);
            readers.computeIfAbsent(name, n -> new SheetReader(unknowns, convention(table, row)))
                    .answer(row.cell(subject), text);
        }
        return readers.entrySet().stream().map(each -> each.getValue().sheet(each.getKey())).toList();
    }

    private static String column(CsvTable.Row row, OptionalInt column) {
        return column.isPresent() ? " " + row.cell(column.getAsInt()) : "";
    }

    private List<AnswerSheet> wide(CsvTable table) {
        int student = table.column(STUDENT).orElse(0);
        Map<Integer, Matcher> columns = forces(table, student);
        List<AnswerSheet> sheets = new ArrayList<>();
        Map<String, Long> met = new LinkedHashMap<>();
        for (CsvTable.Row row : table.rows()) {
            String name = row.cell(student);
            Long before = met.put(name, row.line());
            if (before != null) {
                problems.add("Line " + row.line() + ": \"" + name + "\" was on line " + before
                        + " already; both rows are marked.");
            }
            if (row.cells().size() > table.header().size()) {
                String reason = "Line " + row.line() + ": it has " + row.cells().size() + " cells under "
                        + table.header().size() + " columns; look for a decimal comma or a missing quotation mark.";
                problems.add(reason);
                sheets.add(notRead(row, columns, name, reason));
            } else {
                sheets.add(sheet(table, row, columns, name));
            }
        }
        return sheets;
    }

    private Map<Integer, Matcher> forces(CsvTable table, int student) {
        Map<Integer, Matcher> columns = new TreeMap<>();
        Set<Integer> others = new HashSet<>(Arrays.asList(student, table.column(SIGNS).orElse(-1),
                table.column(WORKING).orElse(-1)));
        for (int i = 0; i < table.header().size(); i++) {
            Matcher head = HEAD.matcher(table.header().get(i));
            if (!others.contains(i) && head.matches() && unknowns.find(head.group("subject")).isPresent()) {
                columns.put(i, head);
            } else if (!others.contains(i)) {
                problems.add("Column \"" + table.header().get(i)
                        + "\": no member and no reaction of this truss has this name; it is left out.");
            }
        }
        if (columns.isEmpty()) {
            throw new CalculationException("Answers: no column is named after a member of "
                    + unknowns.truss().name() + "; give a first line such as student,"
                    + unknowns.name(0) + ",... or student,member,answer.");
        }
        return columns;
    }

    private static AnswerSheet notRead(CsvTable.Row row, Map<Integer, Matcher> columns, String name, String reason) {
        return new AnswerSheet(name, columns.entrySet().stream().map(column -> new AnswerSheet.Stated(
                column.getValue().group("subject"), row.cell(column.getKey()), new Reading.Unread(reason))).toList(),
                List.of(), List.of());
    }

    private AnswerSheet sheet(CsvTable table, CsvTable.Row row, Map<Integer, Matcher> columns, String name) {
        Map<String, String> texts = new LinkedHashMap<>();
        columns.forEach((column, head) -> {
            String unit = head.group("unit") == null ? "" : head.group("unit");
            String cell = row.cell(column);
            boolean number = cell.matches(".*\\d.*") && !HAS_UNIT.matcher(cell).matches();
            texts.merge(head.group("subject"), number ? cell + " " + unit : cell, (a, b) -> a + " " + b);
        });
        SheetReader reader = new SheetReader(unknowns, convention(table, row));
        texts.forEach(reader::answer);
        table.column(WORKING).ifPresent(working -> reader.lines(row.cell(working)));
        return reader.sheet(name);
    }

    private static Convention convention(CsvTable table, CsvTable.Row row) {
        OptionalInt signs = table.column(SIGNS);
        return signs.isEmpty() ? Convention.TENSION_POSITIVE
                : Convention.declaredBy(row.cell(signs.getAsInt())).orElse(Convention.TENSION_POSITIVE);
    }
}
