package kingpost.kernel.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import org.junit.jupiter.api.Test;

class EditionTest {

    private static final String RESULT = "application/vnd.kingpost.result+json";

    private final List<Cell> cells = new ArrayList<>();

    private Cell.Markdown text(String source, String... tags) {
        Cell.Markdown cell = new Cell.Markdown("t" + cells.size(), metadata(tags), source, Map.of());
        cells.add(cell);
        return cell;
    }

    @SafeVarargs
    private Cell.Code code(String source, List<String> tags, Map<String, Object>... outputs) {
        Cell.Code cell = new Cell.Code("c" + cells.size(), metadata(tags.toArray(String[]::new)), source, OptionalLong.of(1),
                List.of(outputs), Map.of());
        cells.add(cell);
        return cell;
    }

    private static Map<String, Object> metadata(String... tags) {
        return tags.length == 0 ? Map.of("secret", "30 kN") : Map.of("tags", List.of(tags), "secret", "30 kN");
    }

    private static Map<String, Object> stream(String text) {
        return Map.of("output_type", "stream", "name", "stdout", "text", text);
    }

    private static Map<String, Object> value(String plain) {
        return Map.of("output_type", "execute_result", "execution_count", 1L, "data", Map.of("text/plain", plain),
                "metadata", Map.of());
    }

    private static Map<String, Object> made(String edition, String about, boolean whole, String plain) {
        return Map.of("output_type", "display_data", "metadata", Map.of(), "data", Map.of("text/plain", plain, RESULT,
                Map.of("edition", edition, "about", about, "whole", whole)));
    }

    private String written(Edition edition) {
        Notebook notebook = new Notebook(5, Map.of("title", "Shed", "widgets", "30 kN"), cells, Map.of("extra", "30 kN"));
        return NotebookWriter.write(edition.of(notebook));
    }

    @Test
    void handoutTakesOnlyWhatIsMadeForIt() {
        text("The problem.");
        code("var answer = kN(30);", List.of(), stream("printed 30 kN"), value("30 kN"), made("key", "a", true, "key 30 kN"),
                made("handout", "a", true, "free bodies"));
        text("So AD carries 30 kN.");
        String handout = written(Edition.HANDOUT);
        assertFalse(handout.contains("30"), handout);
        assertTrue(handout.contains("The problem.") && handout.contains("free bodies"), handout);
    }

    @Test
    void aTaggedCellIsInTheEditionsThatItNamesAndInNoOther() {
        text("Before anything.", "solution");
        code("int a = 1;", List.of());
        text("Your name", "handout");
        text("For markers", "key", "solution");
        code("System.out.println(2);", List.of("handout"), stream("2"));
        assertTrue(written(Edition.HANDOUT).contains("Your name") && written(Edition.HANDOUT).contains("println(2)"));
        assertFalse(written(Edition.HANDOUT).contains("Before anything.") || written(Edition.HANDOUT).contains("For markers"));
        assertTrue(written(Edition.KEY).contains("For markers"));
        assertFalse(written(Edition.KEY).contains("Your name") || written(Edition.KEY).contains("Before anything."));
        assertTrue(written(Edition.SOLUTION).contains("Before anything.") && written(Edition.SOLUTION).contains("For markers"));
        assertFalse(written(Edition.SOLUTION).contains("Your name") || written(Edition.SOLUTION).contains("println(2)"));
    }

    @Test
    void aTaggedCellOfTheHandoutShowsNoKey() {
        code("s", List.of("handout"), made("key", "a", true, "30 kN"));
        assertFalse(written(Edition.HANDOUT).contains("\"30 kN\""));
    }

    @Test
    void theSameIsShownOnceAndAsAWhole() {
        code("shed", List.of(), made("handout", "a", false, "problem"));
        code("s", List.of(), made("handout", "a", true, "all of it"));
        code("s", List.of(), made("handout", "a", true, "all of it"));
        code("other", List.of(), made("handout", "b", false, "another problem"));
        Notebook handout = Edition.HANDOUT.of(new Notebook(5, Map.of(), cells, Map.of()));
        assertEquals(List.of("all of it", "another problem"), handout.cells().stream()
                .filter(Cell.Code.class::isInstance).flatMap(cell -> ((Cell.Code) cell).outputs().stream())
                .map(output -> Trees.joined(Trees.map(output, "data"), "text/plain")).toList());
    }

    /** A key has none of the notebook's text, and still says what it is the key of. */
    @Test
    void beginsWithItsTitle() {
        text("# Shed\n\nThe problem.");
        code("s", List.of(), made("key", "a", true, "30 kN"), made("handout", "a", true, "free bodies"));
        Notebook notebook = new Notebook(5, Map.of("title", "Shed, 3 * 4"), cells, Map.of());
        assertEquals("# Shed, 3 \\* 4: key", Edition.KEY.of(notebook).cells().get(0).source());
        assertEquals("# Shed\n\nThe problem.", Edition.HANDOUT.of(notebook).cells().get(0).source());
    }
}
