package kingpost.kernel.cli;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Parameters in rows: each row makes one document.
 *
 * @param parameters the columns that are parameters
 * @param rows       in order
 */
record ParameterTable(Set<String> parameters, List<Row> rows) {

    private static final String NAME = "name";

    ParameterTable {
        parameters = java.util.Collections.unmodifiableSet(new LinkedHashSet<>(parameters));
        rows = List.copyOf(rows);
    }

    /**
     * One row.
     *
     * @param number   from 1
     * @param document how its document is told from the others
     * @param settings parameter to text; a blank cell leaves the notebook's value
     * @param problem  what is wrong with the row itself, if anything
     */
    record Row(int number, String document, Map<String, String> settings, Optional<String> problem) { }

    /**
     * Reads a table: commas between cells, names in the first row.
     *
     * @throws CommandProblem it cannot be read, or has no row, or names a column twice
     */
    static ParameterTable read(Path file) {
        List<List<String>> lines = new ArrayList<>();
        List<String> last = new ArrayList<>();
        String text = text(file);
        try (CsvReader<CsvRecord> reader = CsvReader.builder().allowMissingFields(true).allowExtraFields(true)
                .skipEmptyLines(true).ofCsvRecord(text)) {
            reader.forEach(line -> {
                last.clear();
                last.addAll(line.getFields());
                lines.add(line.getFields().stream().map(String::strip).toList());
            });
        } catch (IOException e) {
            throw new CommandProblem("Rows " + file + ": cannot be read; check the path, and that it is UTF-8 text.", e);
        } catch (CsvParseException e) {
            throw new CommandProblem("Rows " + file + ": is no table with commas (" + e.getMessage() + "); repair it.", e);
        }
        boolean odd = text.chars().filter(c -> c == '"').count() % 2 == 1;
        if (odd && last.stream().anyMatch(cell -> cell.matches("(?s).*[,\n].*"))) {
            throw new CommandProblem("Rows " + file + ": a quotation mark is not closed, in row " + (lines.size() - 1)
                    + " or above it; close it, or leave it out.");
        }
        if (!lines.isEmpty() && lines.get(0).size() == 1 && lines.get(0).get(0).contains(";")) {
            throw new CommandProblem("Rows " + file + ": semicolons part its columns; save it with commas.");
        }
        if (lines.size() < 2) {
            throw new CommandProblem("Rows " + file + ": has no row below its names; give the parameters' names in the first "
                    + "row and values below.");
        }
        List<String> header = lines.get(0);
        if (new HashSet<>(header).size() < header.size() || header.contains("")) {
            throw new CommandProblem("Rows " + file + ": a column has no name, or the name of another; name each once.");
        }
        Set<String> used = new HashSet<>();
        List<Row> rows = new ArrayList<>();
        int digits = String.valueOf(lines.size() - 1).length();
        for (int i = 1; i < lines.size(); i++) {
            rows.add(row(i, header, lines.get(i), String.format("%0" + Math.max(2, digits) + "d", i), used));
        }
        Set<String> parameters = new LinkedHashSet<>(header);
        parameters.remove(NAME);
        return new ParameterTable(parameters, rows);
    }

    private static String text(Path file) {
        try {
            return Files.readString(file).replaceFirst("^\uFEFF", "");
        } catch (IOException e) {
            throw new CommandProblem("Rows " + file + ": cannot be read; check the path, and that it is UTF-8 text.", e);
        }
    }

    private static Row row(int number, List<String> header, List<String> cells, String otherwise, Set<String> used) {
        Map<String, String> settings = new LinkedHashMap<>();
        String document = otherwise;
        for (int i = 0; i < Math.min(header.size(), cells.size()); i++) {
            if (header.get(i).equals(NAME)) {
                document = cells.get(i).isEmpty() ? otherwise : cells.get(i).replaceAll("[^\\p{L}\\p{Nd}._-]+", "-");
            } else if (!cells.get(i).isEmpty()) {
                settings.put(header.get(i), cells.get(i));
            }
        }
        Optional<String> problem = cells.size() > header.size()
                ? Optional.of("Row " + number + ": it has " + cells.size() + " cells under " + header.size()
                        + " names; put text with a comma in quotation marks.")
                : used.add(document.toLowerCase(java.util.Locale.ROOT)) ? Optional.empty()
                        : Optional.of("Row " + number + ": another row is named " + document + " too; name each once.");
        return new Row(number, document, settings, problem);
    }

    /** A table as text with commas; a cell that a spreadsheet would take for a formula is kept from being one. */
    static String written(List<List<String>> lines) {
        StringWriter text = new StringWriter();
        try (CsvWriter writer = CsvWriter.builder().lineDelimiter(LineDelimiter.LF).build(text)) {
            lines.forEach(line -> writer.writeRecord(line.stream()
                    .map(cell -> cell.matches("(?s)[=+@\t\r].*") ? "'" + cell : cell).toList()));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.toString();
    }
}
