package kingpost.kernel.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ParameterTableTest {

    @TempDir
    private Path folder;

    private ParameterTable read(String text) throws IOException {
        return ParameterTable.read(Files.writeString(folder.resolve("rows.csv"), text));
    }

    /** Source: RFC 4180, for quotation marks, line ends and commas in cells. */
    @Test
    void readsWhatSpreadsheetsWrite() throws IOException {
        ParameterTable table = read("\ufeffname,P,who\r\n\"one, two\",6 kN,\"Ida, the \"\"first\"\"\nof two\"\r\n\r\nthree,,\r\nfour\r\n");
        assertEquals(List.of("one-two", "three", "four"), table.rows().stream().map(ParameterTable.Row::document).toList());
        assertEquals(Map.of("P", "6 kN", "who", "Ida, the \"first\"\nof two"), table.rows().get(0).settings());
        assertTrue(table.rows().stream().allMatch(row -> row.problem().isEmpty() && row.document().length() > 3));
        assertEquals(Map.of(), table.rows().get(1).settings(), "an empty cell leaves the notebook's value");
    }

    @Test
    void tellsABadRowWithoutGivingUpTheOthers() throws IOException {
        ParameterTable table = read("name,P\na,1kN\na,2kN\nb,3kN,4kN\n../../c,5kN\n");
        assertEquals(List.of(false, true, true, false), table.rows().stream().map(row -> row.problem().isPresent()).toList());
        assertEquals("..-..-c", table.rows().get(3).document());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '~', value = {
        "name,P\\n\"a,1kN\\n | a quotation mark is not closed, in row 1 or above it;",
        "name;P\\na;1kN\\n | semicolons part its columns;",
        "name,P\\n | has no row below its names;",
        "P,P\\n1kN,2kN\\n | a column has no name, or the name of another;",
    })
    void refusesWhatIsNoTable(String text, String message) {
        CommandProblem problem = assertThrows(CommandProblem.class, () -> read(text.replace("\\n", "\n")));
        assertTrue(problem.getMessage().contains("rows.csv: " + message), problem.getMessage());
    }

    /** A mark of inches is no opened quotation. */
    @Test
    void aQuotationMarkWithinAWordIsALetter() throws IOException {
        assertEquals(Map.of("who", "the 5\" bar"), read("name,who\na,the 5\" bar\n").rows().get(0).settings());
    }
}
