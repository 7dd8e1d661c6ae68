package kingpost.kernel.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.Set;
import org.junit.jupiter.api.Test;

class ParameterCellsTest {

    private static Cell.Code code(String id, String source, String... tags) {
        return new Cell.Code(id, Map.of("tags", List.of(tags)), source, OptionalLong.empty(), List.of(), Map.of());
    }

    private static Notebook notebook(Cell... cells) {
        return new Notebook(5, Map.of(), List.of(cells), Map.of());
    }

    private static final Cell.Code DECLARED = code("p", """
            // var hidden = 1;
            var P = kN(12);   /* double alsoHidden = 2; */
            Quantity span = m(9); int panels=4;
            String title = "double x = 3;";
            given("f_d", MPa(165), "allowable stress");
            """, "parameters");

    private static List<String> sources(Notebook notebook) {
        return notebook.cells().stream().map(Cell::source).toList();
    }

    @Test
    void setsVariablesAfterTheirCellAndLinesBeforeIt() {
        Map<String, String> settings = new LinkedHashMap<>();
        settings.put("P", "15 kN");
        settings.put("title", "a \"b\" \u03b1");
        settings.put("f_d", "200MPa");
        Notebook ready = new ParameterCells("x.ipynb", notebook(code("a", "1"), DECLARED, code("b", "2"))).with(settings);
        assertEquals(List.of("1", "setForThisRun(\"f_d\", \"200MPa\");", DECLARED.source(),
                "P = setForThisRun(\"P\", P, \"15 kN\");\ntitle = setForThisRun(\"title\", title, \"a \\\"b\\\" \\u03b1\");",
                "2"), sources(ready));
        assertTrue(ready.cells().get(1).isTagged(ParameterCells.SET));
    }

    @Test
    void anEarlierRunsSettingsAreReplaced() {
        ParameterCells cells = new ParameterCells("x.ipynb", notebook(DECLARED));
        Notebook once = cells.with(Map.of("P", "15kN"));
        Notebook again = new ParameterCells("x.ipynb", once).with(Map.of("span", "6m"));
        assertEquals(List.of(DECLARED.source(), "span = setForThisRun(\"span\", span, \"6m\");"), sources(again));
    }

    @Test
    void theMarkOfTheInputsTellsRunsApartAndIsTheSameForTheSame() {
        ParameterCells cells = new ParameterCells("x.ipynb", notebook(DECLARED));
        String mark = Inputs.hash(cells.with(Map.of("P", "15kN")));
        assertEquals(mark, Inputs.hash(cells.with(Map.of("P", "15kN"))));
        assertNotEquals(mark, Inputs.hash(cells.with(Map.of("P", "16kN"))));
        assertNotEquals(mark, Inputs.hash(cells.with(Map.of())));
    }

    /** Source: FIPS 180-4, SHA-256; the mark of "code 1\n1" as Python's hashlib works it out. */
    @Test
    void theMarkIsSha256OfKindLengthAndText() {
        assertEquals("8dd4578e6c19885a914734ff6c2c504266c04eeb3bc4d72e01d00c0d275eda48", Inputs.hash(notebook(code("a", "1"))));
    }

    @Test
    void refusesNamesThatAreNotDeclared() {
        ParameterCells cells = new ParameterCells("x.ipynb", notebook(DECLARED));
        for (String name : List.of("Q", "hidden", "alsoHidden", "x")) {
            NotebookProblem problem = assertThrows(NotebookProblem.class, () -> cells.require(Set.of(name)));
            assertEquals("Parameter " + name + ": the cell tagged \"parameters\" in x.ipynb declares P, f_d, panels, span, "
                    + "title; set one of those, or declare it there.", problem.getMessage());
        }
        assertThrows(NotebookProblem.class, () -> new ParameterCells("x.ipynb", notebook(code("a", "var P = 1;")))
                .require(Set.of("P")));
    }

    private static String afterSetting(String source, Map<String, String> settings) {
        List<String> sources = sources(new ParameterCells("x.ipynb", notebook(code("p", source, "parameters"))).with(settings));
        return sources.get(sources.size() - 1);
    }

    @Test
    void worksOutAgainWhatTheCellMakesOfIt() {
        String cell = "double span = 12; // span of all\ndouble panel = span / 6;\nvar rise = m(panel / 2); String n = \"span\";\n"
                + "double other = 3";
        assertEquals("span = setForThisRun(\"span\", span, \"9\");\npanel = span / 6;\nrise = m(panel / 2);",
                afterSetting(cell, Map.of("span", "9")));
        assertEquals("panel = setForThisRun(\"panel\", panel, \"2\");\nrise = m(panel / 2);",
                afterSetting(cell, Map.of("panel", "2")));
        assertEquals("other = setForThisRun(\"other\", other, \"2\");", afterSetting(cell, Map.of("other", "2")));
        assertEquals("span = setForThisRun(\"span\", span, \"9\");\npanel = setForThisRun(\"panel\", panel, \"2\");\n"
                + "rise = m(panel / 2);", afterSetting(cell, Map.of("panel", "2", "span", "9")));
    }

    @Test
    void refusesToSetWhatTheCellHasUsedUp() {
        for (String rest : List.of("given(\"L\", m(span), \"span\");", "double a = 1, b = span;", "double[] all = {span};")) {
            NotebookProblem problem = assertThrows(NotebookProblem.class,
                    () -> afterSetting("double span = 12;\n" + rest, Map.of("span", "9")));
            assertTrue(problem.getMessage().startsWith("Parameter span: the cell tagged \"parameters\" in x.ipynb already works"
                    + " with it in \"" + rest.replace(";", "") + "\", before it can be set; move that"), problem.getMessage());
        }
    }

    /** An escape by its number in Unicode would end the line before the compiler reads the text. */
    @Test
    void aLineBreakInAValueStaysInTheText() {
        assertEquals("who = setForThisRun(\"who\", who, \"a\\012b\\011c\");",
                afterSetting("String who = \"x\";", Map.of("who", "a\nb\tc")));
    }
}
