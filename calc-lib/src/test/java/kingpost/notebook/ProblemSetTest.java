package kingpost.notebook;

import static kingpost.notebook.Notebook.DOWN;
import static kingpost.notebook.Notebook.RIGHT;
import static kingpost.units.StructuralUnits.N;
import static kingpost.units.StructuralUnits.kN;
import static kingpost.units.StructuralUnits.m;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import kingpost.units.CalculationException;
import kingpost.units.Quantity;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a teacher says in cells: variants, marking, a second look, and the files they write. */
class ProblemSetTest {

    /** By hand: D is 124/12 kN, AE is 5/3 of 9.667 kN, and so on from joint A. */
    private static final String RIGHT_ANSWERS = "AB 16.9, BC 16.9, CD 13.8, AE 16.1 C, EF 13.8 C, FD 17.2 C, BE 12, CE 3.89 C,"
            + " CF 2.33";

    private static Truss gantry() {
        return Truss.named("Gantry").units(m, kN)
                .joint("A", 0, 0).joint("B", 4, 0).joint("C", 8, 0).joint("D", 12, 0).joint("E", 4, 3).joint("F", 8, 3)
                .members("AB BC CD AE EF FD BE CE CF").pin("A").roller("D")
                .load("B", 12, DOWN).load("F", 8, DOWN).load("E", 4, RIGHT).build();
    }

    @Test
    void givesVariantsByTheirNumber() {
        TrussVariants variants = gantry().variants(4, 9);
        assertEquals(4, variants.size());
        assertEquals(3, variants.get(3).number());
        assertTrue(variants.get(3).handout().toString().contains("Gantry, variant 3: problem"));
        assertTrue(variants.get(3).show().containsKey("image/svg+xml"));
        assertEquals(variants.get(2).truss().solve().toString(), variants.get(2).solution().toString());
        assertEquals("Variant 5: there is none of that number; they are numbered from 1 to 4.",
                assertThrows(CalculationException.class, () -> variants.get(5)).getMessage());
    }

    @Test
    void writesHandoutsKeysAndATableOfKeys(@TempDir Path folder) throws IOException {
        TrussVariants variants = gantry().variants(2, 9);
        SavedFiles saved = variants.save(folder.resolve("set"));
        assertEquals(List.of("keys.csv", "variant-1-handout.html", "variant-1-key.html", "variant-2-handout.html",
                "variant-2-key.html"), saved.names());
        String handout = Files.readString(saved.folder().resolve("variant-2-handout.html"));
        String key = Files.readString(saved.folder().resolve("variant-2-key.html"));
        assertTrue(handout.startsWith("<!DOCTYPE html>"));
        for (String page : List.of(handout, key)) {
            assertFalse(page.matches("(?s).*(<script|src=\"http|href=\"http|url\\().*"));
        }
        assertTrue(key.contains("tension") && key.contains("compression"));
        assertFalse(handout.contains("by inspection"));
        List<String> rows = Files.readAllLines(saved.folder().resolve("keys.csv"));
        assertEquals("variant,AB (kN),BC (kN),CD (kN),AE (kN),EF (kN),FD (kN),BE (kN),CE (kN),CF (kN),A_x (kN),A_y (kN),"
                + "D_y (kN)", rows.get(0));
        assertEquals(3, rows.size());
    }

    @Test
    void itsOwnKeysAreMarkedRight() {
        TrussVariants variants = gantry().variants(5, 9);
        String keys = variants.keys();
        StringBuilder table = new StringBuilder();
        keys.lines().forEach(line -> table.append(table.isEmpty() ? "student," : "Nr. " + line.split(",")[0] + ",")
                .append(line).append('\n'));
        ClassMarks own = variants.markClass(table.toString());
        assertEquals(5, own.size());
        own.facts().sheets().forEach(sheet -> assertEquals(12, sheet.right(), sheet::toString));
    }

    @Test
    void leavesLinesWithoutAVariantUnmarkedAndSaysSo() {
        ClassMarks marks = gantry().variants(2, 9).markClass("student,variant,AB\nIvo,1,5\nMara,7,5\nOle,,5\n");
        assertEquals(1, marks.size());
        assertEquals(2, marks.facts().problems().size());
        assertTrue(marks.toString().contains("Line 3: \"7\" is no variant"), marks::toString);
    }

    @Test
    void marksAnswersWithPointsAndTheLikeliestSlip() {
        MarkedAnswers right = gantry().mark(RIGHT_ANSWERS);
        assertEquals("18 of 18", right.score().toString());
        MarkedAnswers slipped = gantry().mark(RIGHT_ANSWERS.replace("CE 3.89 C", "CE 3.89 T"));
        assertEquals("17 of 18", slipped.score().toString());
        assertTrue(slipped.toString().contains("CE has the right size, but is called by the wrong sense."), slipped::toString);
        assertEquals("26 of 27", slipped.points(3, 3, 2).score().toString());
        assertEquals("0 of 2", gantry().mark("AB 17,333").asked("AB").points(2, 2, 1).score().toString().replace(" (2 open)", ""));
    }

    @Test
    void takesAMapOfAnyKindOfAnswer() {
        Map<String, Object> answers = new LinkedHashMap<>();
        answers.put("AB", 16.9);
        answers.put("EA", Quantity.of(-16111, N));
        answers.put("CE", "35/9 kN C");
        assertEquals("6 of 18", gantry().mark(answers).score().toString());
        assertEquals("6 of 6", gantry().mark(answers).asked("AB AE CE").score().toString());
    }

    @Test
    void keepsOpenWhatAPersonMustRead() {
        MarkedAnswers marked = gantry().mark("AB = 16,700 N\nBC = 16.9\nXY = 3");
        assertEquals("2 of 18 (2 open)", marked.score().toString());
        assertTrue(marked.toString().contains("For a person to read"), marked::toString);
        assertTrue(marked.toString().contains("\"XY\": no member and no reaction of this truss has this name"));
    }

    @Test
    void marksAClassFromAFileAndWritesItsPages(@TempDir Path folder) throws IOException {
        Path file = Files.writeString(folder.resolve("class.csv"), "student,AB,BC,CE\nIvo,16.9,16.9,3.89 C\n"
                + "\"<b>Mara</b>\",16.9,16.9,3.89\n=1+1,61.9,,3.89 C\nIvo,1,,\n");
        ClassMarks marks = gantry().markClass(file);
        assertEquals(marks.toString(), gantry().markClass(file.toString()).toString());
        SavedFiles saved = marks.save(folder.resolve("out").toString());
        assertEquals(List.of("results.csv", "feedback-Ivo.html", "feedback-b-Mara-b.html", "feedback-1-1.html",
                "feedback-Ivo-2.html"), saved.names());
        String results = Files.readString(saved.folder().resolve("results.csv"));
        assertTrue(results.contains("\n'=1+1,"), results);
        assertTrue(results.startsWith("student,points,out of,open,right,follows,slip,wrong,not answered,not read,"), results);
        String page = Files.readString(saved.folder().resolve("feedback-b-Mara-b.html"));
        assertTrue(page.contains("&lt;b&gt;Mara&lt;/b&gt;") && !page.contains("<b>Mara"), page);
        assertTrue(marks.feedback("Ivo").toString().contains("6 of 6 points"), marks.feedback("Ivo")::toString);
        assertTrue(assertThrows(CalculationException.class, () -> marks.feedback("Per")).getMessage()
                .startsWith("Student Per: no sheet has this name"));
    }

    @Test
    void saysWhichFileItCannotRead() {
        assertTrue(assertThrows(CalculationException.class, () -> gantry().markClass("nowhere.csv")).getMessage()
                .startsWith("Answers in nowhere.csv: the file cannot be read"));
    }

    @Test
    void takesASecondLookAndWritesItsPage(@TempDir Path folder) throws IOException {
        TrussSolution s = gantry().solve();
        assertTrue(s.secondLook().facts().agrees());
        assertTrue(s.secondLook().toString().contains("The answers hold."), s.secondLook()::toString);
        Notebook.saveAsPage(s.secondLook(), folder.resolve("check.html").toString());
        assertTrue(Files.readString(folder.resolve("check.html")).contains("<strong>The answers hold.</strong>"));
    }
}
