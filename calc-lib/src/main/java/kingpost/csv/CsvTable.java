package kingpost.csv;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import kingpost.units.CalculationException;

/**
 * Rows under a header.
 *
 * @param header the cells of the first line, without blanks around them
 * @param rows   the other lines that hold anything
 */
public record CsvTable(List<String> header, List<Row> rows) {

    public CsvTable {
        header = List.copyOf(header);
        rows = List.copyOf(rows);
    }

    /**
     * One line.
     *
     * @param line  number of the line in the text, from 1
     * @param cells as many as the line has, without blanks around them
     */
    public record Row(long line, List<String> cells) {
        public Row {
            cells = List.copyOf(cells);
        }

        /** The cell in column {@code column}, from 0; empty text where the line is too short. */
        public String cell(int column) {
            return column < cells.size() ? cells.get(column) : "";
        }
    }

    /**
     * Reads {@code text}; the cells are separated by whichever of comma, semicolon and tab the first line has most of.
     *
     * @param what what the table is, for an error: "Answers"
     * @throws CalculationException when there is no header, or a quoted cell is not closed
     */
    public static CsvTable read(String what, String text) {
        try (CsvReader<CsvRecord> reader = CsvReader.builder().fieldSeparator(separatorOf(text))
                .allowMissingFields(true).allowExtraFields(true).allowUnclosedQuote(false).skipEmptyLines(true)
                .ofCsvRecord(text.startsWith("\uFEFF") ? text.substring(1) : text)) {
            return read(what, reader);
        } catch (CsvParseException e) {
            throw new CalculationException(what + ": the table cannot be read (" + e.getMessage()
                    + "); look for a quotation mark that is not closed.", e);
        } catch (java.io.IOException e) {
            throw new CalculationException(what + ": the table cannot be read; " + e.getMessage(), e);
        }
    }

    private static CsvTable read(String what, CsvReader<CsvRecord> reader) {
        List<String> header = null;
        List<Row> rows = new ArrayList<>();
        for (CsvRecord each : reader) {
            List<String> cells = each.getFields().stream().map(String::strip).toList();
            if (cells.stream().allMatch(String::isEmpty)) {
                continue;
            }
            if (header == null) {
                header = cells;
            } else {
                rows.add(new Row(each.getStartingLineNumber(), cells));
            }
        }
        if (header == null) {
            throw new CalculationException(what + ": the table is empty; give a line of column names first.");
        }
        return new CsvTable(header, rows);
    }

    /** The number of the first column with one of these names, letters large or small. */
    public OptionalInt column(String... names) {
        for (int i = 0; i < header.size(); i++) {
            String here = header.get(i).toLowerCase(Locale.ROOT);
            if (List.of(names).contains(here)) {
                return OptionalInt.of(i);
            }
        }
        return OptionalInt.empty();
    }

    /** The table without a column, numbered from 0; its lines keep their numbers. */
    public CsvTable without(int column) {
        return new CsvTable(without(header, column),
                rows.stream().map(row -> new Row(row.line(), without(row.cells(), column))).toList());
    }

    private static List<String> without(List<String> cells, int column) {
        List<String> left = new ArrayList<>(cells);
        if (column < left.size()) {
            left.remove(column);
        }
        return left;
    }

    /** The table as text with commas and line feeds, safe to open in a spreadsheet. */
    public String write() {
        StringWriter text = new StringWriter();
        try (CsvWriter writer = CsvWriter.builder().lineDelimiter(LineDelimiter.LF).build(text)) {
            writer.writeRecord(header.stream().map(CsvTable::harmless).toList());
            rows.forEach(row -> writer.writeRecord(row.cells().stream().map(CsvTable::harmless).toList()));
        } catch (java.io.IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
        return text.toString();
    }

    /** A spreadsheet runs a cell that begins like a formula; an apostrophe before it keeps it text. */
    private static String harmless(String cell) {
        boolean formula = cell.matches("(?s)[=+@\t\r].*") || cell.matches("(?s)-\\D.*");
        return formula && !cell.matches("\\+[\\d.]+") ? "'" + cell : cell;
    }

    private static char separatorOf(String text) {
        String first = text.lines().filter(line -> !line.isBlank()).findFirst().orElse("");
        char best = ',';
        for (char candidate : new char[] {',', ';', '\t'}) {
            best = count(first, candidate) > count(first, best) ? candidate : best;
        }
        return best;
    }

    private static long count(String line, char wanted) {
        return line.chars().filter(c -> c == wanted).count();
    }
}
