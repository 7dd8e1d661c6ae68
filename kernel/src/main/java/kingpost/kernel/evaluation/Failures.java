package kingpost.kernel.evaluation;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

import jdk.jshell.DeclarationSnippet;
import jdk.jshell.Diag;
import jdk.jshell.EvalException;
import jdk.jshell.Snippet;
import jdk.jshell.Snippet.Status;
import jdk.jshell.SnippetEvent;
import jdk.jshell.UnresolvedReferenceException;
import jdk.jshell.VarSnippet;
import kingpost.kernel.evaluation.CompileMessage.Missing;
import kingpost.kernel.evaluation.Outcome.Failed;
import kingpost.kernel.evaluation.Outcome.Kind;

/** Whether a statement of a cell failed, and what to tell about it. */
final class Failures {

    private static final int LEAST_FREE_PERCENT = 10;

    private final Shell shell;
    private final CellText text;
    private final int cell;
    private final Interrupter interrupter;
    private final Map<String, Snippet> declared = new LinkedHashMap<>();

    Failures(Shell shell, CellText text, int cell, Interrupter interrupter) {
        this.shell = shell;
        this.text = text;
        this.cell = cell;
        this.interrupter = interrupter;
    }

    /** The failure that this event of a statement tells of. */
    Optional<Failed> of(SnippetEvent event, int offset) {
        if (Snippets.isDeclaration(event.snippet()) && event.snippet() instanceof DeclarationSnippet named) {
            declared.put(named.name(), named);
        }
        if (shell.control().loss().isPresent()) {
            return Optional.of(lost());
        }
        if (event.status().isDefined() && !shell.control().isCompiled(event.snippet())) {
            shell.control().takeEnding();
            return Optional.of(tooDeep());
        }
        Optional<Ending> ending = shell.control().takeEnding();
        if (ending.isPresent() && isInterrupted(ending.get())) {
            return Optional.of(interrupted());
        }
        if (Snippets.takesNameOfEveryCell(event.snippet()) && event.status().isActive()) {
            return Optional.of(new CompileErrors(text, offset, new NearMiss(shell)).failed(offset,
                    "the name %s is used by every cell; give another".formatted(((DeclarationSnippet) event.snippet()).name())));
        }
        if (event.status() == Status.REJECTED || isUnusableVariable(event) || shell.isHalfMade(event)) {
            return Optional.of(rejected(event, offset));
        }
        if (event.exception() instanceof EvalException thrown && ending.isPresent()
                && ending.get() instanceof Ending.Threw threw) {
            if (isOutOfClassMemory(threw)) {
                shell.control().end("its memory for classes was full");
                return Optional.of(lost());
            }
            return Optional.of(isOutOfMemory(threw) ? outOfMemory(thrown) : new RuntimeErrors(shell.origins(), cell)
                    .failed(thrown, threw.chain()));
        }
        return event.exception() instanceof UnresolvedReferenceException unresolved
                ? Optional.of(unresolved(unresolved)) : Optional.empty();
    }

    /** The failure of showing a value. */
    Failed ofShowing(Ending ending) {
        if (shell.control().loss().isPresent()) {
            return lost();
        }
        if (isInterrupted(ending) || !(ending instanceof Ending.Unshown unshown)) {
            return interrupted();
        }
        Ending.Thrown first = unshown.chain().get(0);
        String name = RuntimeErrors.simple(first.type());
        String reason = first.message().filter(m -> first.ours()).orElseGet(() -> RuntimeErrors.headline(name,
                first.message().orElse("")));
        String message = "The value cannot be shown: " + reason;
        return new Failed(Kind.EXCEPTION, name, message, List.of(message), 0);
    }

    private boolean isInterrupted(Ending ending) {
        return ending instanceof Ending.Stopped || interrupter.isAsked() && !(ending instanceof Ending.Returned);
    }

    private Failed rejected(SnippetEvent event, int offset) {
        var errors = new CompileErrors(text, offset, new NearMiss(shell));
        List<Diag> diagnostics = shell.jshell().diagnostics(event.snippet()).toList();
        if (diagnostics.isEmpty() && event.snippet() instanceof DeclarationSnippet declaration) {
            return errors.failed(shell.jshell().unresolvedDependencies(declaration).map(Missing::of).toList(), offset);
        }
        return errors.failed(diagnostics);
    }

    private static boolean isUnusableVariable(SnippetEvent event) {
        return event.snippet().kind() == Snippet.Kind.VAR && event.status() == Status.RECOVERABLE_NOT_DEFINED;
    }

    /** What the cell's declarations still lack, a line for each; later cells may supply it. */
    List<String> notesOnDeclarations() {
        var notes = new ArrayList<String>();
        for (Snippet each : declared.values()) {
            Status status = shell.jshell().status(each);
            if (status == Status.RECOVERABLE_DEFINED || status == Status.RECOVERABLE_NOT_DEFINED) {
                var declaration = (DeclarationSnippet) each;
                notes.add("Note: %s uses %s, not defined so far; define it before %s is used.".formatted(
                        declaration.name(), missing(declaration), declaration.name()));
            }
        }
        return notes;
    }

    private String missing(DeclarationSnippet declaration) {
        return shell.jshell().unresolvedDependencies(declaration).map(dependency -> dependency + hint(dependency))
                .collect(Collectors.joining(" and "));
    }

    private String hint(String dependency) {
        String hint = new NearMiss(shell).hint(Missing.of(dependency), "");
        return hint.isEmpty() ? "" : " (" + hint.replaceFirst("^[;:] ", "") + ")";
    }

    private Failed unresolved(UnresolvedReferenceException unresolved) {
        DeclarationSnippet declaration = unresolved.getSnippet();
        String missing = missing(declaration);
        String message = (missing.isEmpty() ? "%s does not fit what it uses, which was declared anew; declare %1$s anew as well."
                : "%s uses %s, which is not defined; define it first.").formatted(declaration.name(), missing);
        var traceback = new ArrayList<>(List.of(message));
        var errors = new RuntimeErrors(shell.origins(), cell);
        traceback.addAll(errors.frames(unresolved.getStackTrace()));
        return new Failed(Kind.EXCEPTION, "NotDefined", message, traceback, errors.firstCellLine(unresolved.getStackTrace()));
    }

    /** The compiler itself has run out of stack. */
    static Failed tooDeep() {
        String message = "this cell is nested too deep, or one statement of it is too long, to be compiled;"
                + " split it into several statements";
        return new Failed(Kind.COMPILATION, CompileErrors.NAME, message, List.of(message), 0);
    }

    static Failed interrupted() {
        String message = "The cell was interrupted; variables keep the values they had.";
        return new Failed(Kind.INTERRUPTED, "Interrupted", message, List.of("Interrupted: " + message), 0);
    }

    private Failed lost() {
        String message = shell.recover();
        return new Failed(Kind.CALC_PROCESS_LOST, "CalcProcessLost", message, List.of(message), 0);
    }

    private static boolean isOutOfMemory(Ending.Threw threw) {
        Ending.Thrown first = threw.chain().get(0);
        return first.type().equals("java.lang.OutOfMemoryError") && !first.message().orElse("").contains("thread");
    }

    /** Classes stay as long as the loader that the cells share: only a new calc VM helps. */
    private static boolean isOutOfClassMemory(Ending.Threw threw) {
        return isOutOfMemory(threw) && threw.chain().get(0).message().filter(message -> message.equals("Metaspace")
                || message.equals("Compressed class space")).isPresent();
    }

    /** Lets go of what the cell made; when that is not enough, only a new calc VM helps. */
    private Failed outOfMemory(EvalException thrown) {
        List<VarSnippet> variables = declared.values().stream().filter(VarSnippet.class::isInstance)
                .map(VarSnippet.class::cast).filter(v -> shell.jshell().status(v) == Status.VALID).toList();
        int free = shell.control().release(shell.jshell(), variables);
        shell.forget(variables, "it was dropped when the memory was full; run its cell again");
        if (free < LEAST_FREE_PERCENT) {
            shell.control().end("its memory%s was full".formatted(shell.options().heapLimit().map(h -> " of " + h).orElse("")));
            return lost();
        }
        var errors = new RuntimeErrors(shell.origins(), cell);
        String message = "Out of memory%s; use less data, or set a larger -Xmx in %s.%s".formatted(
                shell.options().heapLimit().map(h -> ": the calculation process may use " + h).orElse(""),
                CalcOptions.FLAGS_VARIABLE, variables.isEmpty() ? "" : " Dropped: " + variables.stream()
                        .map(VarSnippet::name).collect(Collectors.joining(", ")) + ".");
        var traceback = new ArrayList<>(List.of(message));
        traceback.addAll(errors.frames(thrown.getStackTrace()));
        return new Failed(Kind.EXCEPTION, "OutOfMemoryError", message, traceback,
                errors.firstCellLine(thrown.getStackTrace()));
    }
}
