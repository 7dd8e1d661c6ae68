package kingpost.kernel.evaluation;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.TimeoutException;
import java.util.concurrent.locks.ReentrantLock;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import jdk.jshell.JShell;
import jdk.jshell.Snippet;
import jdk.jshell.VarSnippet;
import jdk.jshell.spi.ExecutionControl;
import kingpost.kernel.pipe.Frame;
import kingpost.kernel.pipe.Kind;

/**
 * JShell's hands: loads and calls in the calc VM, and outlives it. While a call runs, JShell rests, so the lock on
 * it is given back and questions about code are answered meanwhile.
 */
final class PipeExecutionControl implements ExecutionControl {

    private static final long NAMES_MILLIS = 250;
    private static final long REQUEST_MILLIS = 20_000;

    private final ReentrantLock shellLock;
    private final CalcOptions options;
    private final CellOutputs outputs;
    private final LoadedClasses classes = new LoadedClasses();
    private final List<String> paths = new ArrayList<>();
    private volatile CompletableFuture<CalcLink> link;
    private volatile boolean closed;
    private String askedClass = "";
    private int cell;
    private Consumer<Frame> events = frame -> { };
    private BooleanSupplier stopAsked = () -> false;
    private boolean show;
    private Optional<StandingDeclarations> before = Optional.empty();
    private Snippet compiling;
    private Optional<Ending> lastEnding = Optional.empty();
    private Optional<Ending> lastCall = Optional.empty();
    private Optional<String> loss = Optional.empty();

    PipeExecutionControl(ReentrantLock shellLock, CalcOptions options, CellOutputs outputs) {
        this.shellLock = shellLock;
        this.options = options;
        this.outputs = outputs;
        link = startInBackground();
    }

    private CompletableFuture<CalcLink> startInBackground() {
        return CompletableFuture.supplyAsync(() -> {
            try {
                return CalcLink.start(options, outputs);
            } catch (IOException failed) {
                throw new CompletionException(failed);
            }
        }, work -> daemon(work).start());
    }

    private static Thread daemon(Runnable work) {
        var thread = new Thread(work, "calc start");
        thread.setDaemon(true);
        return thread;
    }

    /** The calc VM in use; waits for its start. */
    CalcLink link() throws CalcLost {
        try {
            return link.join();
        } catch (CompletionException failed) {
            throw new CalcLost(failed.getCause().getMessage());
        }
    }

    /** What follows belongs to this cell. */
    void enter(int cellNumber, Consumer<Frame> questions, BooleanSupplier isStopAsked) {
        cell = cellNumber;
        events = questions;
        stopAsked = isStopAsked;
    }

    /** A statement follows; whether its value, if it has one, is wanted in its forms, and what is declared before it. */
    void statement(boolean shown, Optional<StandingDeclarations> declared) {
        show = shown;
        before = declared;
        classes.dropRecent(); // a statement on which JShell broke may have left some
        lastCall = Optional.empty();
    }

    /** JShell has made a snippet, and may call it next. */
    void compiling(Snippet snippet) {
        compiling = snippet;
    }

    LoadedClasses classes() {
        return classes;
    }

    /** How the last call ended; asked once. */
    Optional<Ending> takeEnding() {
        Optional<Ending> taken = lastEnding;
        lastEnding = Optional.empty();
        return taken;
    }

    /** How the last call of this statement ended. */
    Optional<Ending> lastCall() {
        return lastCall;
    }

    /** How the calc VM ended, if it did. */
    Optional<String> loss() {
        return loss;
    }

    /** Whether the calc VM ended between cells. */
    boolean lostWhileIdle() {
        return link.isDone() && (link.isCompletedExceptionally() || link.join().isLost());
    }

    /** How the calc VM ended, in the reader's words. */
    String howItWasLost() {
        if (loss.isPresent()) {
            return loss.get();
        }
        try {
            return link().lossReason();
        } catch (CalcLost failed) {
            return failed.getMessage();
        }
    }

    /** Starts another calc VM and gives it the libraries and declarations. */
    void replace() throws CalcLost {
        outputs.calcVmLost();
        link = startInBackground();
        loss = Optional.empty();
        CalcLink fresh = link();
        try {
            fresh.request(Kind.ADD_PATH, REQUEST_MILLIS, paths);
            Map<String, byte[]> all = classes.all();
            fresh.request(Kind.LOAD, REQUEST_MILLIS, List.copyOf(all.keySet()), List.copyOf(all.values()));
        } catch (TimeoutException hanging) {
            throw new CalcLost("the new calculation process does not answer");
        }
    }

    @Override
    public void load(ClassBytecodes[] loaded) throws ClassInstallException {
        try {
            link().send(Frame.of(Kind.LOAD, 0, Arrays.stream(loaded).map(ClassBytecodes::name).toList(),
                    Arrays.stream(loaded).map(ClassBytecodes::bytecodes).toList()));
        } catch (CalcLost gone) {
            loss = Optional.of(gone.getMessage());
        }
        classes.loaded(loaded);
    }

    @Override
    public void redefine(ClassBytecodes[] redefined) throws NotImplementedException {
        throw new NotImplementedException("Classes are replaced under new names.");
    }

    @Override
    public String invoke(String className, String methodName) throws RunException, InternalException {
        boolean classMissing = isCurrent(className) && !isCompiled(compiling);
        if (loss.isPresent() || classMissing) {
            throw new StoppedException();
        }
        Ending ending = stopAsked.getAsBoolean() ? new Ending.Stopped() : invokeInCalcVm(className, methodName);
        lastEnding = Optional.of(ending);
        lastCall = lastEnding;
        if (ending instanceof Ending.Threw threw) {
            throw userException(threw.chain());
        } else if (ending instanceof Ending.Unresolved unresolved) {
            throw new ResolutionException(unresolved.id(), unresolved.frames());
        } else if (ending instanceof Ending.Stopped) {
            throw new StoppedException();
        }
        return "";
    }

    /** Whether the compiler made a class of this snippet, which JShell does not see when the compiler runs out of stack. */
    boolean isCompiled(Snippet snippet) {
        return snippet.kind() == Snippet.Kind.IMPORT || snippet.kind() == Snippet.Kind.ERRONEOUS
                || classes.justLoaded(snippet.id())
                || Snippets.isDeclaration(snippet) && before.map(standing -> standing.isCompiledSince(snippet)).orElse(true);
    }

    private boolean isCurrent(String className) {
        return compiling != null && LoadedClasses.isOf(className, compiling.id());
    }

    private Ending invokeInCalcVm(String className, String methodName) {
        boolean current = isCurrent(className);
        boolean expression = current && Snippets.isExpression(compiling);
        boolean once = expression || current && compiling.kind() == Snippet.Kind.STATEMENT;
        return call(Kind.INVOKE, className, methodName, show && expression, once);
    }

    /** Calls the cell thread with JShell's lock given back; a lost calc VM counts as stopped. */
    private Ending call(Kind kind, Object... fields) {
        var all = new Object[fields.length + 1];
        all[0] = cell;
        System.arraycopy(fields, 0, all, 1, fields.length);
        shellLock.unlock();
        try {
            return link().call(kind, events, all);
        } catch (CalcLost gone) {
            loss = Optional.of(gone.getMessage());
            return new Ending.Stopped();
        } finally {
            shellLock.lock();
        }
    }

    /** Hands a comm message to whoever takes it in the calc VM. */
    Ending comm(String type, Map<String, Object> content, Map<String, Object> metadata, List<byte[]> buffers) {
        return call(Kind.COMM_IN, type, content, metadata, buffers);
    }

    private static UserException userException(List<Ending.Thrown> chain) {
        UserException outer = null;
        for (int i = chain.size() - 1; i >= 0; i--) {
            Ending.Thrown each = chain.get(i);
            var exception = new UserException(each.message().orElse(null), each.type(), each.frames());
            if (outer != null) {
                exception.initCause(outer);
            }
            outer = exception;
        }
        return outer;
    }

    /** JShell alone knows in which class a variable lives, and tells it only here. */
    @Override
    public String varValue(String className, String varName) {
        askedClass = className;
        return "";
    }

    private String classOf(JShell jshell, VarSnippet variable) {
        jshell.varValue(variable);
        return askedClass;
    }

    /** Sets variables to null; the share of the heap that is free then, in per cent, or 0 if nobody answers. */
    int release(JShell jshell, List<VarSnippet> variables) {
        try {
            return (Integer) link().request(Kind.RELEASE, REQUEST_MILLIS,
                    variables.stream().map(v -> classOf(jshell, v)).toList(),
                    variables.stream().map(VarSnippet::name).toList());
        } catch (CalcLost | TimeoutException gone) {
            return 0;
        }
    }

    /** Ends the calc VM for this reason. */
    void end(String reason) {
        loss = Optional.of(reason);
        link.thenAccept(each -> each.destroy(reason));
    }

    /** The names that a variable's value offers inside quotes for a method; none when it does not answer quickly. */
    @SuppressWarnings("unchecked")
    List<String> names(JShell jshell, VarSnippet variable, String method) {
        try {
            return (List<String>) link().request(Kind.NAMES, NAMES_MILLIS, classOf(jshell, variable),
                    variable.name(), method);
        } catch (CalcLost | TimeoutException none) {
            return List.of();
        }
    }

    @Override
    public void addToClasspath(String path) throws EngineTerminationException, InternalException {
        paths.add(path);
        try {
            link().request(Kind.ADD_PATH, REQUEST_MILLIS, List.of(path));
        } catch (CalcLost | TimeoutException gone) {
            loss = Optional.of(gone.getMessage());
        }
    }

    @Override
    public void stop() {
        // interrupts go through the evaluator
    }

    @Override
    public Object extensionCommand(String command, Object arg) throws NotImplementedException {
        throw new NotImplementedException(command);
    }

    /** JShell closes its hands when it fails; only {@link #shutDown} ends the calc VM. */
    @Override
    public void close() {
    }

    void shutDown() {
        closed = true;
        link.thenAccept(each -> each.destroy("the kernel closed it"));
    }

    boolean isClosed() {
        return closed;
    }
}
