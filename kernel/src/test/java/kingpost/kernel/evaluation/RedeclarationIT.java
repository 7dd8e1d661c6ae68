package kingpost.kernel.evaluation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import java.util.concurrent.CompletableFuture;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** Names that are declared again after they were lost, late in a long session. */
@Timeout(180)
class RedeclarationIT {

    private JShellEvaluator evaluator;

    @BeforeEach
    void start() {
        evaluator = JShellEvaluator.start();
    }

    @AfterEach
    void stop() {
        evaluator.close();
    }

    private Outcome run(String code) {
        return evaluator.run(CellRequest.of(code), NoOutput.INSTANCE);
    }

    private String value(String code) {
        return assertInstanceOf(Outcome.Completed.class, run(code)).result().orElseThrow().data().get("text/plain").toString();
    }

    private void fails(String code) {
        assertInstanceOf(Outcome.Failed.class, run(code));
    }

    /** Long enough that JShell has forgotten all that is not in force. */
    private void manyStatements() {
        run("k();".repeat(110));
    }

    @Test
    void aVariableWhoseDeclarationFailed() {
        run("void k() { } int x = 1;");
        run("String x = \"one\";");
        fails("int x = 1 / 0;");
        manyStatements();
        run("long x = 7;");
        assertEquals("8", value("x + 1"));
    }

    @Test
    void aVariableThatTheCompilerRefused() {
        run("void k() { } int x = 1;");
        run("double x = 2;");
        manyStatements();
        fails("int x = \"a\";");
        run("String x = \"b\";");
        assertEquals("b!", value("x + \"!\""));
        manyStatements();
        assertEquals("b", value("x"));
    }

    @Test
    void aTypeThatTheCompilerRefused() {
        run("void k() { } record P(int a) { }");
        run("record P(int a, int b) { }");
        manyStatements();
        fails("record P(int a) { int c; }");
        run("record P(String s) { }");
        assertEquals("s", value("new P(\"s\").s()"));
    }

    @Test
    void aMethodThatAnotherTook() {
        run("void k() { } class A { } int f(A a) { return 1; }");
        run("int f(A a) { return 2; }");
        manyStatements();
        run("class B extends A { } int f(REPL.A a) { return 3; }");
        run("int f(A a) { return 4; } ");
        assertEquals("4", value("f(new A())"));
    }

    @Test
    void whatWasThereIsKeptWhenTheNewOneIsRefused() {
        run("int x = 41; int f() { return x; } record P(int a) { } P p = new P(3); int g(P q) { return q.a(); }");
        fails("int x = \"a\";");
        fails("var x = y + 1;");
        fails("String x = null; x.length();"); // this one is declared and then fails
        fails("record P(int a) { int c; }");
        fails("int f() { return \"x\"; }");
        fails("Missing x = null;");
        assertEquals("3", value("g(p)"));
        run("int x = 41;");
        assertEquals("42", value("f() + 1"));
        run("P p = new P(4); record P(int a, int b) { }");
        assertEquals("5", value("new P(5, 6).a()"));
    }

    @Test
    void whatWasThereIsKeptWhenTheNewOneThrows() {
        run("void k() { } int x = 41; int f() { return x; }");
        for (int i = 0; i < 2; i++) {
            fails("int x = 1 / 0;");
            fails("String x = List.of(\"\").get(1);");
            assertEquals("42", value("f() + 1"));
            assertEquals("41", value("x"));
            manyStatements();
        }
        run("String x = \"new\";");
        assertEquals("new!", value("x + \"!\""));
    }

    @Test
    void aNewNameWhoseDeclarationFailsIsNotThere() {
        fails("int y = 1 / 0;");
        var failed = assertInstanceOf(Outcome.Failed.class, run("y"));
        assertEquals("cannot find variable y: the statement that declares it failed; correct and run it again", failed.message());
    }

    @Test
    void aDeclarationThatIsInterruptedLeavesTheOldOne() throws InterruptedException {
        run("int x = 41;");
        var output = new RecordedOutput();
        var later = CompletableFuture.runAsync(() -> {
            while (output.stdout.isEmpty()) {
                Thread.onSpinWait();
            }
            evaluator.interrupt();
        });
        assertInstanceOf(Outcome.Failed.class, evaluator.run(CellRequest.of("int x = new Object() { int forever() {"
                + " System.out.println(\"runs\"); while (true) { } } }.forever();"), output));
        later.join();
        assertEquals("41", value("x"));
    }

    @Test
    void anOverloadThatIsRefused() {
        run("int r(int a) { return a; } int r(String s) { return s.length(); }");
        fails("int r(String s) { return s; }");
        assertEquals("15", value("r(12) + r(\"abc\")"));
    }

    @Test
    void theSameAgainIsNoFailure() {
        for (int i = 0; i < 2; i++) {
            assertInstanceOf(Outcome.Completed.class, run("int a = 1; void g() { } record P(int a) { }"));
            assertInstanceOf(Outcome.Completed.class, run("int a = 1; // the same"));
        }
    }

    @Test
    void aMethodThatNoLongerFitsSaysSo() {
        run("int x = 41; int f() { return x; }");
        run("String x = \"\";");
        var failed = assertInstanceOf(Outcome.Failed.class, run("f()"));
        assertEquals("f does not fit what it uses, which was declared anew; declare f anew as well.", failed.message());
    }
}
