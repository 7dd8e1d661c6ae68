package kingpost.kernel.evaluation;

import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.locks.ReentrantLock;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import jdk.jshell.JShell;
import jdk.jshell.Snippet;
import jdk.jshell.SnippetEvent;
import jdk.jshell.SourceCodeAnalysis;
import jdk.jshell.VarSnippet;
import jdk.jshell.spi.ExecutionControl;
import jdk.jshell.spi.ExecutionControlProvider;
import jdk.jshell.spi.ExecutionEnv;

/** JShell, its hands in the calc VM, and the lock under which both are used. */
final class Shell {

    private static final int MOST_NAMES = 20;

    private final ReentrantLock turn = new ReentrantLock();
    private final ReentrantLock lock = new ReentrantLock();
    private final CellOutputs outputs = new CellOutputs();
    private final PipeExecutionControl control;
    private final JShell jshell;
    private final Origins origins = new Origins();
    private final CodeQuestions questions = new CodeQuestions(this);

    Shell(CalcOptions options) {
        control = new PipeExecutionControl(lock, options, outputs);
        jshell = JShell.builder().executionEngine(new Provider(control), Map.of())
                .compilerOptions("-proc:none", "-Xlint:none")
                .in(InputStream.nullInputStream())
                .out(new PrintStream(OutputStream.nullOutputStream()))
                .err(new PrintStream(OutputStream.nullOutputStream())).build();
    }

    /** Runs a piece of work that uses the cell thread; one at a time, and with the lock on JShell. */
    <T> T inTurn(Supplier<T> work) {
        turn.lock();
        lock.lock();
        try {
            return work.get();
        } finally {
            lock.unlock();
            turn.unlock();
        }
    }

    /** The lock on JShell itself; given back while the calc VM works. */
    ReentrantLock lock() {
        return lock;
    }

    CellOutputs outputs() {
        return outputs;
    }

    PipeExecutionControl control() {
        return control;
    }

    JShell jshell() {
        return jshell;
    }

    SourceCodeAnalysis analysis() {
        return jshell.sourceCodeAnalysis();
    }

    /** The variable in force with this name. */
    Optional<VarSnippet> variableNamed(String name) {
        return jshell.variables().filter(v -> v.name().equals(name) && jshell.status(v) == Snippet.Status.VALID).findFirst();
    }

    CodeQuestions questions() {
        return questions;
    }

    Origins origins() {
        return origins;
    }

    /** After a statement: keeps what is declared, drops what nobody can refer to. */
    void settle(List<SnippetEvent> events) {
        boolean declares = events.stream().anyMatch(e -> Snippets.isDeclaration(e.snippet()) && e.status().isActive());
        if (declares) {
            control.classes().keepRecent();
        } else {
            control.classes().dropRecent();
        }
        for (SnippetEvent event : events) {
            Snippet snippet = event.snippet();
            if (event.exception() != null && snippet.kind() == Snippet.Kind.VAR || Snippets.isTemporary(snippet)) {
                jshell.drop(snippet);
            }
            if (!Snippets.isDeclaration(snippet)) {
                origins.forget(snippet.id());
            }
        }
    }

    /** If the calc VM ended between cells: starts another, and says so. */
    Optional<String> recoverFromIdleLoss() {
        return control.lostWhileIdle() ? Optional.of(recover()) : Optional.empty();
    }

    /** Starts another calc VM, puts declarations back, and says what was lost. */
    String recover() {
        String how = control.howItWasLost();
        List<VarSnippet> variables = jshell.variables()
                .filter(v -> !Snippets.isTemporary(v) && jshell.status(v).isActive()).toList();
        String problem = "";
        try {
            control.replace();
        } catch (CalcLost again) {
            problem = " No new one could be started: " + again.getMessage() + ".";
        }
        variables.forEach(jshell::drop);
        control.classes().keepRecent();
        return "The calculation process ended: " + how + "." + (problem.isEmpty() ? whatIsBack(variables) : problem);
    }

    private static String whatIsBack(List<VarSnippet> variables) {
        String back = " A new one is ready; imports, types and methods are back.";
        if (variables.isEmpty()) {
            return back;
        }
        String names = variables.stream().map(VarSnippet::name).limit(MOST_NAMES).collect(Collectors.joining(", "));
        String more = variables.size() > MOST_NAMES ? " and " + (variables.size() - MOST_NAMES) + " more" : "";
        return back + " Lost: " + names + more + "; run the cells again that set them.";
    }

    private record Provider(ExecutionControl control) implements ExecutionControlProvider {
        @Override
        public String name() {
            return "pipe";
        }

        @Override
        public ExecutionControl generate(ExecutionEnv env, Map<String, String> parameters) {
            return control;
        }
    }
}
