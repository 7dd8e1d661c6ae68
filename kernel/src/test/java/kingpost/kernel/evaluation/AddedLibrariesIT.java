package kingpost.kernel.evaluation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import javax.tools.ToolProvider;
import kingpost.kernel.display.MimeBundle;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Cells that add classes from elsewhere. */
class AddedLibrariesIT {

    @TempDir
    Path folder;

    private JShellEvaluator evaluator;
    private final RecordedOutput output = new RecordedOutput();

    @BeforeEach
    void compileAClass() throws Exception {
        Path source = folder.resolve("Rope.java");
        Files.writeString(source, "package yard; public class Rope { public static int strands() { return 7; } }");
        assertEquals(0, ToolProvider.getSystemJavaCompiler().run(null, null, null, "--release", "17", "-d",
                folder.resolve("classes").toString(), source.toString()));
        evaluator = JShellEvaluator.start(CalcOptions.standard().plusFlag("-Duser.home=" + folder));
    }

    @AfterEach
    void stop() {
        evaluator.close();
    }

    private String resultOf(String code) {
        var outcome = evaluator.run(CellRequest.of(code), output);
        var done = assertInstanceOf(Outcome.Completed.class, outcome, String.valueOf(outcome));
        return done.result().map(b -> (String) b.data().get(MimeBundle.PLAIN)).orElse("(none)");
    }

    private String problemOf(String code) {
        return assertInstanceOf(Outcome.Failed.class, evaluator.run(CellRequest.of(code), output)).message();
    }

    @Test
    void usesAFolderOfClassesInTheNextStatementAndAfterALostVm() {
        String add = "addClassPath(\"" + folder.resolve("classes") + "\");\nimport yard.Rope;\nRope.strands()";
        assertEquals("7", resultOf(add));
        assertTrue(problemOf("System.exit(1)").contains("exit code 1"));
        assertEquals("14", resultOf("2 * Rope.strands()"));
    }

    @Test
    void saysWhatCannotBeAdded() {
        assertTrue(problemOf("addClassPath(\"no/such.jar\")").startsWith("Class path \"no/such.jar\": there is no such jar"));
        assertEquals("Library shapes: only the cell's own thread can add it, while the cell runs; add it in a statement "
                + "of its own.", resultOf("""
                String told = "";
                var other = new Thread(() -> { try { addLibrary("shapes"); } catch (RuntimeException e) { told = e.getMessage(); } });
                other.start(); other.join();
                told"""));
        assertTrue(problemOf("addLibrary(\"shapes\")").contains("write group:artifact:version"));
    }
}
