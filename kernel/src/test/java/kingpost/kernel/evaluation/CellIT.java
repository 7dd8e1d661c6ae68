package kingpost.kernel.evaluation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import java.util.function.BooleanSupplier;
import kingpost.kernel.display.MimeBundle;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Cells that end well or by their own fault, in a real calc VM. */
class CellIT {

    private static JShellEvaluator evaluator;

    @BeforeAll
    static void start() {
        evaluator = JShellEvaluator.start();
    }

    @AfterAll
    static void stop() {
        evaluator.close();
    }

    private final RecordedOutput output = new RecordedOutput();

    private Outcome run(String code) {
        return evaluator.run(CellRequest.of(code), output);
    }

    private String resultOf(String code) {
        var done = assertInstanceOf(Outcome.Completed.class, run(code));
        return done.result().map(b -> (String) b.data().get(MimeBundle.PLAIN)).orElse("(none)");
    }

    private Outcome.Failed failureOf(String code) {
        return assertInstanceOf(Outcome.Failed.class, run(code));
    }

    @Test
    void givesTheLastExpressionOnly() {
        assertEquals("3", resultOf("1 + 1; int three = 3; three"));
        assertEquals("(none)", resultOf("int x = 3;"));
        assertEquals("(none)", resultOf("var y = 3"));
        assertEquals("(none)", resultOf("1 + 1;"));
        assertEquals("(none)", resultOf("1 + 1; // hidden"));
        assertEquals("2", resultOf("1 + 1 // not hidden;"));
        assertEquals("(none)", resultOf("(Object) null"));
        assertEquals("(none)", resultOf("System.out.println(5)"));
        assertEquals("[1, 2]", resultOf("new int[] {1, 2}"));
        assertEquals("7", resultOf("three = 7"));
        assertEquals("7", resultOf("int f() { return three; }\n\nf()\n"));
        assertEquals("(none)", resultOf(""));
        assertEquals("(none)", resultOf("// nothing"));
    }

    @Test
    void keepsStreamsInOrder() {
        run("System.out.print(\"a\"); System.err.print(\"b\"); System.out.println(\"c\");");
        assertEquals("[stdout a, stderr b, stdout c\n]", output.events.toString());
    }

    private String tracebackOf(String code) {
        return String.join("\n", failureOf(code).traceback());
    }

    @Test
    void tellsInOneLineOfAThreadThatIsLost() {
        run("class Odd extends Error { Odd() { super(\"of its own\"); } }\n"
                + "var lost = new Thread(() -> { throw new Odd(); }, \"mine\"); lost.start(); lost.join();");
        assertEquals("Thread mine, started by a cell, ended by Odd: of its own\n", output.stderr.toString());
    }

    @Test
    void stopsAtTheFirstError() {
        var failed = failureOf("System.out.println(\"first\");\nint q = 1 / 0;\nSystem.out.println(\"never\");");
        assertEquals("first\n", output.stdout.toString());
        assertEquals(2, failed.line());
        assertEquals("ArithmeticException", failed.name());
        assertEquals("/ by zero", failed.message());
        assertEquals("ArithmeticException: / by zero\n  at cell line 2: int q = 1 / 0;",
                String.join("\n", failed.traceback()));
        assertTrue(tracebackOf("q").contains("cannot find variable q: the statement that declares it failed"));
    }

    @Test
    void showsCompileErrorsUnderTheCellsOwnLine() {
        assertEquals("Cell line 4: cannot find variable lenght; did you mean length?\n  int b = 2 + lenght;\n              ^",
                tracebackOf("int length = 1;\n\n// so\nint b = 2 + lenght;"));
        assertEquals("""
                Cell line 3: text is no int; write the number without quotes, or Integer.parseInt(...) around text that holds one
                     int s = "x";
                             ^
                Cell line 4: int is no text; write String.valueOf(...) around it
                  \tString t = 5;
                  \t           ^""", tracebackOf("int a = 1;\nvoid g() {\n   int s = \"x\";\n\tString t = 5;\n}"));
        assertEquals("Cell line 2: the cell ends before this { is closed\n  void g() {\n           ^",
                tracebackOf("int a = 1;\nvoid g() {\n   int s = 1;"));
        assertEquals("Cell line 2: illegal start of expression\n  int b = = 3;\n          ^",
                tracebackOf("int a = 1;\nint b = = 3;"));
    }

    @Test
    void putsTheCaretRightAfterWideCharacters() {
        assertEquals("Cell line 1: cannot find variable nix\n  /* \uD835\uDF0E */ int b = nix;\n                  ^",
                tracebackOf("/* \uD835\uDF0E */ int b = nix;"));
    }

    @Test
    void saysWhatCouldHaveBeenMeant() {
        run("int twice(int n) { return 2 * n; } String text = \"abc\"; record Beam(int span) { }");
        assertTrue(tracebackOf("twce(3)").startsWith("Cell line 1: cannot find method twce(int); did you mean twice(...)?"),
                tracebackOf("twce(3)"));
        assertTrue(tracebackOf("text.lenght()").contains("in text, which is a String; did you mean length()?"),
                tracebackOf("text.lenght()"));
        assertTrue(tracebackOf("text.length").contains("did you mean length()?"));
        assertTrue(tracebackOf("new Baem(3)").contains("did you mean Beam"), tracebackOf("new Baem(3)"));
        assertTrue(tracebackOf("kNN(3)").contains("did you mean kN"), tracebackOf("kNN(3)"));
        assertTrue(tracebackOf("var f = new DecimalFormat(\"0\");").contains("import java.text.DecimalFormat"),
                tracebackOf("var f = new DecimalFormat(\"0\");"));
        assertTrue(tracebackOf("twice()").contains("twice takes (int), not no arguments"), tracebackOf("twice()"));
        assertTrue(tracebackOf("text.indexOf()").contains("indexOf cannot take no arguments; it takes (int) or (int, int)"),
                tracebackOf("text.indexOf()"));
    }

    @Test
    void showsTheCellsFramesFirst() {
        run("int inner(int x) {\n    return 10 / x;\n}");
        assertEquals("""
                ArithmeticException: / by zero
                  at line 2 of an earlier cell, in inner: return 10 / x;
                  at cell line 3, in a lambda: return List.of(1).stream().map(x -> inner(0)).findFirst().get();
                  at cell line 3, in go: return List.of(1).stream().map(x -> inner(0)).findFirst().get();
                  at cell line 6: new K().go();
                  (9 frames of the JDK and libraries folded)""", tracebackOf("""
                class K {
                    int go() {
                        return List.of(1).stream().map(x -> inner(0)).findFirst().get();
                    }
                }
                new K().go();
                """));
    }

    @Test
    void showsCauses() {
        assertEquals("""
                IllegalStateException: outer
                  at cell line 1: throw new IllegalStateException("outer", new RuntimeException("inner"));
                Caused by RuntimeException: inner
                  at cell line 1: throw new IllegalStateException("outer", new RuntimeException("inner"));""",
                tracebackOf("throw new IllegalStateException(\"outer\", new RuntimeException(\"inner\"));"));
    }

    @Test
    void showsTheLibrarysOwnErrorsAsOneSentence() {
        assertEquals("Member AB: no.\n  at cell line 2: throw new kingpost.units.CalculationException(\"Member AB: no.\");",
                tracebackOf("\nthrow new kingpost.units.CalculationException(\"Member AB: no.\");"));
    }

    @Test
    void notesWhatADeclarationStillLacks() {
        assertEquals("(none)", resultOf("int later(int x) { return evenLater(x) + 1; }"));
        assertEquals("Note: later uses method evenLater(int), not defined so far; define it before later is used.\n",
                output.stderr.toString());
        var failed = failureOf("int a = 0;\nlater(3)");
        assertEquals("later uses method evenLater(int), which is not defined; define it first.", failed.message());
        assertEquals(2, failed.line());
        assertEquals("7", resultOf("int evenLater(int x) { return 2 * x; } later(3)"));
        assertTrue(tracebackOf("Nope n = null;").contains("cannot find type Nope"));
        assertTrue(tracebackOf("Nope n;").contains("cannot find type Nope"));
    }

    @Test
    void asksTheUser() {
        output.answers.add("Ada");
        var done = assertInstanceOf(Outcome.Completed.class, evaluator.run(new CellRequest(
                "System.out.print(\"Name? \"); new Scanner(System.in).nextLine()", false, true, Map.of()), output));
        assertEquals("Ada", done.result().orElseThrow().data().get(MimeBundle.PLAIN));
        assertEquals("[stdout Name? , input  false]", output.events.toString());
        assertTrue(failureOf("System.in.read()").message().contains("nobody can be asked"));
    }

    private static void waitFor(BooleanSupplier condition) throws InterruptedException {
        for (int look = 0; look < 600 && !condition.getAsBoolean(); look++) {
            Thread.sleep(50);
        }
    }

    @Test
    void sendsLateOutputToTheCellThatStartedIt() throws Exception {
        run("new Thread(() -> { for (int i = 0; i < 3; i++) { System.out.println(\"late\" + i); "
                + "try { Thread.sleep(300); } catch (InterruptedException e) { } } }).start();");
        var other = new RecordedOutput();
        evaluator.run(CellRequest.of("System.out.println(\"other\")"), other);
        waitFor(() -> output.stdout.toString().endsWith("late2\n"));
        assertEquals("late0\nlate1\nlate2\n", output.stdout.toString());
        assertEquals("other\n", other.stdout.toString());
    }

    @Test
    void givesTheRunningCellWhatChildProcessesPrint() throws Exception {
        run("new ProcessBuilder(\"echo\", \"from a child\").inheritIO().start().waitFor(); Thread.sleep(300);");
        waitFor(() -> output.stdout.toString().endsWith("\n"));
        assertEquals("from a child\n", output.stdout.toString());
    }

    @Test
    void keepsHugeValuesShort() {
        String huge = resultOf("\"x\".repeat(100_000_000)");
        assertTrue(huge.length() < 200_000, () -> "" + huge.length());
        assertTrue(huge.endsWith("(100,000,000 characters in all; print the part you need)"));
        assertTrue(resultOf("IntStream.range(0, 1_000_000).boxed().toList()").endsWith("198, 199, ... 999,800 more]"));
        assertEquals("[[1, 2], [x=null], \"s\"]".replace("[x=null]", "{\"x\"=3.5}"),
                resultOf("List.of(List.of(1, 2), Map.of(\"x\", 3.5), \"s\")"));
    }

    @Test
    void printsAMillionLines() {
        run("for (int i = 0; i < 1_000_000; i++) System.out.println(i);");
        assertEquals(6_888_890, output.stdout.length());
        assertTrue(output.stdout.toString().endsWith("999998\n999999\n"));
        System.out.println("a million lines came in " + output.events.size() + " pieces");
    }

    @Test
    void survivesAFigureThatCannotBeSent() {
        run("""
                Map<String, Object> nested(int depth) { return depth == 0 ? Map.of() : Map.of("d", nested(depth - 1)); }
                record Deep() implements kingpost.render.Showable {
                    public Map<String, Object> show() { return Map.of("application/json", nested(200)); }
                    public Optional<Map<String, Object>> show(kingpost.render.Edition edition) { return Optional.empty(); }
                }""");
        assertTrue(failureOf("new Deep()").message().contains("nested more than"));
        assertEquals("2", resultOf("1 + 1"));
    }

    @Test
    void survivesAValueThatCannotBeShown() {
        var failed = failureOf("new Object() { public String toString() { throw new IllegalStateException(\"no\"); } }");
        assertEquals("The value cannot be shown: IllegalStateException: no", failed.message());
    }

    @Test
    void evaluatesUserExpressions() {
        var done = assertInstanceOf(Outcome.Completed.class,
                evaluator.run(new CellRequest("int u = 4;", true, false, Map.of("a", "u * 2", "b", "nope")), output));
        assertEquals("8", ((Outcome.ExpressionValue.Shown) done.expressions().get("a")).bundle().data().get("text/plain"));
        assertTrue(done.expressions().get("b") instanceof Outcome.ExpressionValue.Failed);
    }
}
