package kingpost.notebook;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import kingpost.csv.CsvTable;
import kingpost.units.CalculationException;

/** Tables of answers, from a text or from a file. */
final class AnswerTables {

    private AnswerTables() {
    }

    /** One line that ends as a table's file does names a file; anything else is the table itself. */
    static CsvTable read(String text) {
        if (text == null) {
            throw new CalculationException("Answers: there are none; give the text of a table, or the name of its file.");
        }
        boolean file = text.strip().lines().count() == 1 && text.strip().matches("(?i).*\\.(csv|tsv|txt)");
        return file ? read(Path.of(text.strip())) : CsvTable.read("Answers", text);
    }

    static CsvTable read(Path file) {
        try {
            return CsvTable.read("Answers in " + file.getFileName(), Files.readString(file));
        } catch (IOException e) {
            throw new CalculationException("Answers in " + file + ": the file cannot be read ("
                    + e.getClass().getSimpleName() + "); give a file of comma-separated text in UTF-8.", e);
        }
    }
}
