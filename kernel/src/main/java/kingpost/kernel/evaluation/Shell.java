package kingpost.kernel.evaluation;

import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.locks.ReentrantLock;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import jdk.jshell.Diag;
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
    private static final String FAILED = "the statement that declares it failed; correct and run it again";

    private final ReentrantLock turn = new ReentrantLock();
    private final ReentrantLock lock = new ReentrantLock();
    private final CellOutputs outputs = new CellOutputs();
    private final PipeExecutionControl control;
    private final JShell jshell;
    private final CalcOptions options;
    /** Names of variables that were taken away, with the reason; until they are declared again. */
    private final Map<String, String> absent = new ConcurrentHashMap<>();
    private final Origins origins = new Origins();
    private final SnippetMemory memory;
    private final CodeQuestions questions = new CodeQuestions(this);

    Shell(CalcOptions options) {
        this.options = options;
        control = new PipeExecutionControl(lock, options, outputs);
        jshell = JShell.builder().executionEngine(new Provider(control), Map.of())
                .compilerOptions("-proc:none", "-Xlint:none", "-g")
                .tempVariableNameGenerator(new Temporaries())
                .idGenerator(this::identify)
                .in(InputStream.nullInputStream())
                .out(new PrintStream(OutputStream.nullOutputStream()))
                .err(new PrintStream(OutputStream.nullOutputStream())).build();
        memory = new SnippetMemory(jshell);
    }

    /** JShell's own numbers; it asks for one when it has made a snippet. */
    private String identify(Snippet snippet, int number) {
        control.compiling(snippet);
        return String.valueOf(number);
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

    CalcOptions options() {
        return options;
    }

    /** Why a variable that was there is there no more. */
    Optional<String> whyAbsent(String name) {
        return Optional.ofNullable(absent.get(name));
    }

    /** Takes variables away; a cell that uses one is told why. */
    void forget(List<VarSnippet> variables, String reason) {
        for (VarSnippet variable : variables) {
            jshell.drop(variable);
            origins.forget(variable.id());
            absent.put(variable.name(), reason);
        }
        memory.declarationLost();
        control.classes().keepRecent();
    }

    SnippetMemory memory() {
        return memory;
    }

    Origins origins() {
        return origins;
    }

    /** After a statement that failed to declare this: what was declared before it is in force again. */
    void takeBack(StandingDeclarations before, SnippetEvent event, Optional<Origins.Origin> earlier) {
        boolean halfMade = isHalfMade(event);
        takeBack(before);
        if (halfMade) {
            memory.renewCompiler();
        }
        Snippet failed = event.snippet();
        earlier.ifPresentOrElse(origin -> origins.put(failed.id(), origin), () -> origins.forget(failed.id()));
        if (failed instanceof VarSnippet variable && variableNamed(variable.name()).isEmpty()) {
            absent.put(variable.name(), FAILED);
        }
    }

    /** After a statement on which JShell broke. */
    void takeBack(StandingDeclarations before) {
        before.restore();
        control.classes().dropRecent();
        memory.declarationLost();
    }

    /** After a statement: keeps what is declared, drops what nobody can refer to. */
    void settle(List<SnippetEvent> events) {
        List<SnippetEvent> halfMade = events.stream().filter(this::isHalfMade).toList();
        boolean declares = events.stream().anyMatch(e -> Snippets.isDeclaration(e.snippet()) && e.status().isActive());
        if (declares) {
            control.classes().keepRecent();
        } else {
            control.classes().dropRecent();
        }
        for (SnippetEvent event : events) {
            settle(event.snippet(), event.exception() != null);
        }
        if (!halfMade.isEmpty()) {
            halfMade.stream().map(SnippetEvent::snippet).filter(s -> jshell.status(s).isActive()).forEach(jshell::drop);
            memory.declarationLost();
            memory.renewCompiler();
        }
    }

    /**
     * The compiler's check passed, and then it could not write the class, as with a text or a method too long for one,
     * or with a nesting so deep that it runs out of stack.
     * JShell would try again with every later cell, and go on with a compiler that holds half a class.
     */
    boolean isHalfMade(SnippetEvent event) {
        if (Snippets.takesNameOfEveryCell(event.snippet())) {
            return true;
        }
        return event.status() == Snippet.Status.RECOVERABLE_NOT_DEFINED
                ? jshell.diagnostics(event.snippet()).anyMatch(Diag::isError)
                : event.status().isDefined() && !control.isCompiled(event.snippet());
    }

    private void settle(Snippet snippet, boolean failed) {
        if (Snippets.isTemporary(snippet)) {
            jshell.drop(snippet);
        } else if (snippet instanceof VarSnippet variable) {
            absent.remove(variable.name());
            if (failed && jshell.status(variable).isActive()) {
                forget(List.of(variable), FAILED);
            }
        }
        if (!Snippets.isDeclaration(snippet)) {
            origins.forget(snippet.id());
        }
        memory.statementEnded();
    }

    /** Adds jars and folders for the statements that follow; a call may be running, while which JShell rests. */
    void addToClassPath(List<String> paths) {
        lock.lock();
        try {
            paths.forEach(jshell::addToClasspath);
        } finally {
            lock.unlock();
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
        forget(variables, "it was lost when the calculation process ended; run its cell again");
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
