package kingpost.kernel.evaluation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import kingpost.kernel.display.MimeBundle;
import kingpost.kernel.evaluation.Evaluator.Completeness;
import kingpost.kernel.evaluation.Evaluator.Completeness.Status;
import kingpost.kernel.evaluation.Evaluator.Completion;
import kingpost.kernel.evaluation.Evaluator.Proposal;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

@Timeout(60)
class CodeQuestionsIT {

    private static JShellEvaluator evaluator;

    @BeforeAll
    static void start() {
        evaluator = JShellEvaluator.start();
        evaluator.run(CellRequest.of("""
                String text = "abc";
                /** Twice a number.
                 * @param n the number */
                int twice(int n) { return 2 * n; }
                record Bridge(List<String> spans) implements kingpost.notebook.NamesInQuotes {
                    public List<String> names(String method) { return method.equals("span") ? spans : List.of(); }
                    String span(String name) { return name; }
                    Bridge half() { return this; }
                }
                var bridge = new Bridge(List.of("north", "south", "nave"));
                """), NoOutput.INSTANCE);
    }

    @AfterAll
    static void stop() {
        evaluator.close();
    }

    private static Completion complete(String code) {
        return evaluator.complete(code, code.length());
    }

    private static List<String> texts(String code) {
        return complete(code).proposals().stream().map(Proposal::text).toList();
    }

    @Test
    void completesMembersTypesVariablesAndKeywords() throws InterruptedException {
        assertTrue(texts("text.len").contains("length()"), texts("text.len").toString());
        assertEquals(5, complete("text.len").start());
        assertTrue(texts("twi").contains("twice("));
        assertTrue(texts("Strin").contains("String"));
        assertTrue(offersPackagesSoon(), texts("import java.ut").toString());
        assertTrue(texts("int a = 3;\nint b = te").contains("text"));
        assertTrue(texts("kN").contains("kN("), texts("kN").toString());
    }

    /** JShell lists the packages of the class path in the background; nobody waits for that list. */
    private static boolean offersPackagesSoon() throws InterruptedException {
        for (int look = 0; look < 50; look++) {
            if (texts("import java.ut").stream().anyMatch(t -> t.startsWith("util"))) {
                return true;
            }
            Thread.sleep(200);
        }
        return false;
    }

    @Test
    void completesWhatTheCellItselfDeclares() {
        assertTrue(texts("int lengthOfSpan = 3;\nlengthOf").contains("lengthOfSpan"));
        assertTrue(texts("var other = text;\nother.len").contains("length()"));
        assertEquals("var other = text;\nother.".length(), complete("var other = text;\nother.len").start());
    }

    /** The calc VM is given a quarter of a second for names; a busy machine may need a second look. */
    private static List<String> namesSoon(String code) {
        List<String> names = texts(code);
        for (int look = 0; look < 50 && names.isEmpty(); look++) {
            names = texts(code);
        }
        return names;
    }

    @Test
    void completesNamesInQuotes() {
        assertEquals(List.of("north", "nave"), namesSoon("bridge.span(\"n"));
        assertEquals(List.of("north", "south", "nave"), namesSoon("bridge.half().span(\""));
        assertEquals(List.of("south"), namesSoon("bridge.span(\"north s"));
        assertEquals("bridge.span(\"north ".length(), complete("bridge.span(\"north s").start());
        assertEquals(List.of(), texts("bridge.other(\"n"));
        assertEquals(List.of("L0", "L1"), texts("Truss.named(\"x\").joint(\"L0\", 0, 0).joint(\"L1\", 1, 0).pin(\"L"));
    }

    @Test
    void answersWhileACellRuns() throws Exception {
        var run = new Thread(() -> evaluator.run(CellRequest.of("Thread.sleep(20_000)"), NoOutput.INSTANCE));
        run.start();
        Thread.sleep(500);
        texts("text.le");
        long start = System.nanoTime();
        assertTrue(texts("text.le").contains("length()"));
        System.out.println("completion while running: " + (System.nanoTime() - start) / 1_000_000 + " ms");
        assertEquals(List.of("north", "nave"), namesSoon("bridge.span(\"n"));
        assertFalse(evaluator.inspect("twice", 5, 0).isEmpty());
        evaluator.interrupt();
        run.join();
    }

    private static String inspect(String code) {
        return evaluator.inspect(code, code.length(), 1).map(b -> (String) b.data().get(MimeBundle.PLAIN)).orElse("");
    }

    @Test
    void inspectsSignatureAndDocumentation() {
        assertTrue(inspect("Math.max").contains("int Math.max(int a, int b)"), inspect("Math.max"));
        assertTrue(inspect("Math.max(").contains("double Math.max(double a, double b)"));
        assertTrue(inspect("twice").contains("int twice(int n)"), inspect("twice"));
        assertTrue(inspect("twice").contains("Twice a number."), inspect("twice"));
        assertEquals("text: String", inspect("text"));
        assertTrue(inspect("slope").contains("A direction by its slope"), inspect("slope"));
        assertEquals("", inspect("nothingOfTheSort"));
        for (String each : List.of("Quantity", "kN(", "Comm.open(", "Comm", "text.length", "NamesInQuotes", "UnitWords.m")) {
            System.out.println("---- " + each + "\n" + inspect(each));
        }
    }

    @Test
    void knowsWhetherAConsoleShouldWait() {
        assertEquals(new Completeness(Status.COMPLETE, ""), evaluator.completeness("int x = 1"));
        assertEquals(new Completeness(Status.COMPLETE, ""), evaluator.completeness("int x = 1; x"));
        assertEquals(new Completeness(Status.COMPLETE, ""), evaluator.completeness("// nothing"));
        assertEquals(new Completeness(Status.INCOMPLETE, "    "), evaluator.completeness("int y = 2;\nfor (;;) {"));
        assertEquals(new Completeness(Status.INCOMPLETE, ""), evaluator.completeness("1 +"));
        assertEquals(Status.INVALID, evaluator.completeness("}").status());
    }
}
