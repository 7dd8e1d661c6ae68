package kingpost.marking;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import kingpost.marking.AnswerSheet.Stated;
import kingpost.marking.Reading.Force;
import kingpost.marking.Reading.Unread;
import kingpost.statics.Solution;
import kingpost.units.CalculationException;
import kingpost.units.Quantity;
import kingpost.units.StructuralUnits;
import org.junit.jupiter.api.Test;

class SheetReaderTest {

    private final Solution footbridge = SampleTrusses.footbridge();
    private final Unknowns unknowns = Unknowns.of(footbridge.truss(),
            footbridge.reactions().stream().map(Solution.ReactionResult::reaction).toList());

    private AnswerSheet sheet(String text) {
        return new SheetReader(unknowns, Convention.TENSION_POSITIVE).read("", text);
    }

    private static Map<String, Double> forces(AnswerSheet sheet) {
        return sheet.answers().stream().filter(a -> a.reading() instanceof Force).collect(
                Collectors.toMap(Stated::subject, a -> ((Force) a.reading()).value(), (a, b) -> a, LinkedHashMap::new));
    }

    @Test
    void takesAnswersInAnyPunctuation() {
        AnswerSheet sheet = sheet("AB = 12.5 kN C, BC: -3; CD 0\nF_AE = 2 T,FE=1.5, DF 4");
        assertEquals(Map.of("AB", -12.5, "BC", -3.0, "CD", 0.0, "AE", 2.0, "EF", 1.5, "FD", 4.0), forces(sheet));
    }

    @Test
    void takesASenseBehindAComma() {
        assertEquals(Map.of("AB", -12.5, "BC", 3.0, "CD", 4.0),
                forces(sheet("AB = 12.5 kN, compression, BC = 3, kN, T\nCD 4 kN, (T)")));
    }

    @Test
    void takesNamesInSmallLetters() {
        assertEquals(Map.of("AB", 12.5, "EF", -3.0, "AE", 2.0, "Ax", -4.0, "Dy", 11.0),
                forces(sheet("ab = 12.5 t, fe 3 c, f_ae = 2; ax = 4 left, d = 11 up")));
    }

    @Test
    void givesOneAnswerToMembersWrittenAsEqual() {
        assertEquals(Map.of("AB", 17.3, "BC", 17.3, "CE", -3.3), forces(sheet("AB = BC = 17.3 T, CE = 3.3 C")));
    }

    @Test
    void keepsACommaWithinANumberTogether() {
        for (String text : List.of("AB = 12,500", "AB = 12, 5 kN, BC = 3", "AB 1,250 N; BC = 3")) {
            AnswerSheet sheet = sheet(text);
            assertInstanceOf(Unread.class, sheet.answers().get(0).reading(), text);
            assertEquals("AB", sheet.answers().get(0).subject());
        }
    }

    @Test
    void takesDecimalCommas() {
        assertEquals(Map.of("AB", 12.5, "BC", -0.125, "CD", 3.0), forces(sheet("AB = 12,5 kN T, BC = -0,125; CD 3,0")));
    }

    @Test
    void findsReactions() {
        assertEquals(Map.of("Ax", -4.0, "Ay", 10.0, "Dy", 11.0), forces(sheet("Ax = 4 left, R_Ay = 10 kN up, D = 11")));
    }

    @Test
    void refusesAnswersForForcesThatAreNotThere() {
        Stated stated = sheet("AC = 5").answers().get(0);
        assertEquals("\"AC\": no member and no reaction of this truss has this name; correct it.",
                ((Unread) stated.reading()).reason());
    }

    @Test
    void refusesTwoAnswersForOneForce() {
        assertInstanceOf(Unread.class, sheet("AB = 5 T\nBA = 6 T").answers().get(0).reading());
        assertEquals(Map.of("AB", 5.0), forces(sheet("AB = 5 T\nBA = 5.0")));
    }

    @Test
    void readsTheOrderOfWorking() {
        AnswerSheet sheet = sheet("reactions: Ay = 10, D = 11\njoint D: FD = 18.3 C, CD = 14.7 T\nat joint F: EF = 14.7 C");
        assertEquals(List.of("D", "F"), sheet.order());
        assertEquals(5, sheet.answers().size());
    }

    @Test
    void readsADeclaredConvention() {
        assertEquals(Map.of("AB", -5.0, "BC", 3.0), forces(sheet("compression positive\nAB = 5\nBC = 3 T")));
        assertEquals(Map.of("AB", 5.0), forces(sheet("AB = 5\nT +ve")));
    }

    @Test
    void readsNumbersAndQuantities() {
        Map<String, Object> answers = new LinkedHashMap<>();
        answers.put("AB", -12.5);
        answers.put("BC", Quantity.of(3000, StructuralUnits.N));
        answers.put("CD", "4 C");
        AnswerSheet sheet = new SheetReader(unknowns, Convention.TENSION_POSITIVE).read("", answers);
        assertEquals(Map.of("AB", -12.5, "BC", 3.0, "CD", -4.0), forces(sheet));
    }

    @Test
    void readsAWideTable() {
        ClassReader.ClassAnswers read = new ClassReader(unknowns).read("Student,AB (N),BC,CD,remark\n"
                + "Ivo,17300,17.3 T,\"14,700\",x\n\nMara,\u221217300 ,,0,\nOrla,1,2,3,4,5\nIvo,1,2,3,\n");
        assertEquals(List.of("Ivo", "Mara", "Orla", "Ivo"), read.sheets().stream().map(AnswerSheet::student).toList());
        assertEquals(Map.of("AB", 17.3, "BC", 17.3), forces(read.sheets().get(0)));
        assertEquals(Map.of("AB", -17.3, "CD", 0.0), forces(read.sheets().get(1)));
        assertTrue(read.sheets().get(2).answers().stream().allMatch(a -> a.reading() instanceof Unread));
        assertEquals(3, read.problems().size(), read.problems()::toString);
        assertTrue(read.problems().get(0).startsWith("Column \"remark\""), read.problems()::toString);
    }

    @Test
    void readsAColumnOfWorking() {
        ClassReader.ClassAnswers read = new ClassReader(unknowns).read("student,AE,working\n"
                + "Ivo,16.7 C,\"joint A: \u03a3Fy: 10 + 0.6 AE = 0\njoint B: \u03a3Fy: BE = 12\"\nMara,16.7 C,\n");
        assertEquals(List.of(), read.problems());
        assertEquals(List.of(2, 0), read.sheets().stream().map(sheet -> sheet.steps().size()).toList());
    }

    @Test
    void readsATallTable() {
        ClassReader.ClassAnswers read = new ClassReader(unknowns).read("\uFEFFstudent;member;answer;sense\n"
                + "Ivo;AB;17.3;T\nMara;AB;17.3;C\nIvo;CE;3.33 kN;C\n;AB;1;T\n");
        assertEquals(Map.of("AB", 17.3, "CE", -3.33), forces(read.sheets().get(0)));
        assertEquals(Map.of("AB", -17.3), forces(read.sheets().get(1)));
        assertEquals(List.of("Line 5: it names no student; add the name."), read.problems());
    }

    @Test
    void refusesATableWithoutMembers() {
        CalculationException e = assertThrows(CalculationException.class,
                () -> new ClassReader(unknowns).read("student,XY\nIvo,3\n"));
        assertTrue(e.getMessage().startsWith("Answers: no column is named after a member of Footbridge"));
        assertThrows(CalculationException.class, () -> new ClassReader(unknowns).read(""));
        assertThrows(CalculationException.class, () -> new ClassReader(unknowns).read("student,AB\nIvo,\"3\n"));
    }
}
