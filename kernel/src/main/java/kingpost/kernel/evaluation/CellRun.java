package kingpost.kernel.evaluation;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import jdk.jshell.SnippetEvent;
import jdk.jshell.SourceCodeAnalysis.Completeness;
import jdk.jshell.SourceCodeAnalysis.CompletionInfo;
import kingpost.kernel.display.MimeBundle;
import kingpost.kernel.evaluation.Outcome.ExpressionValue;
import kingpost.kernel.evaluation.Outcome.Failed;

/** One run of one cell: statement by statement, up to the first that fails. */
final class CellRun {

    private final Shell shell;
    private final CellRequest request;
    private final CellOutput output;
    private final CellText text;
    private final Interrupter interrupter;
    private final int number;
    private final Failures failures;
    private Optional<MimeBundle> result = Optional.empty();

    CellRun(Shell shell, CellRequest request, CellOutput output) {
        this(shell, request, output, shell.outputs().open(output), new Interrupter(shell.control(),
                shell.options().stopLimit()));
    }

    private CellRun(Shell shell, CellRequest request, CellOutput output, int number, Interrupter interrupter) {
        this.shell = shell;
        this.request = request;
        this.output = output;
        this.number = number;
        this.interrupter = interrupter;
        text = new CellText(request.code());
        failures = new Failures(shell, text, number, interrupter);
    }

    Interrupter interrupter() {
        return interrupter;
    }

    /** Runs the cell; the shell's lock is held, and given back while the calc VM works. */
    Outcome run() {
        shell.control().enter(number, new Questions(shell, output, interrupter, request.allowInput())::answer,
                interrupter::isAsked);
        try {
            shell.recoverFromIdleLoss().ifPresent(notice -> output.stream("stderr", notice + "\n"));
            Optional<Failed> failure = statements();
            failures.notesOnDeclarations().forEach(note -> output.stream("stderr", note + "\n"));
            return failure.isPresent() ? failure.get() : completed();
        } catch (RuntimeException | Error broken) {
            shell.memory().renewCompiler(); // it may hold half of what it made
            if (isOutOfRoom(broken)) {
                return Failures.tooDeep();
            }
            throw broken;
        } finally {
            interrupter.over();
        }
    }

    /** The compiler has run out of stack or memory, as itself or JShell tells. */
    private static boolean isOutOfRoom(Throwable broken) {
        return broken instanceof StackOverflowError || broken instanceof OutOfMemoryError
                || String.valueOf(broken.getMessage()).contains("StackOverflowError");
    }

    private Outcome completed() {
        var expressions = new LinkedHashMap<String, ExpressionValue>();
        request.userExpressions().forEach((name, code) -> expressions.put(name, expression(code)));
        return new Outcome.Completed(result, expressions, shell.outputs().takePayloads(number));
    }

    private Optional<Failed> statements() {
        String remaining = text.text();
        while (true) {
            CompletionInfo info = shell.analysis().analyzeCompletion(remaining);
            if (info.completeness() == Completeness.EMPTY) {
                return openComment(remaining);
            }
            boolean whole = info.source() == null;
            String source = whole ? remaining : info.source();
            String rest = whole ? "" : info.remaining();
            int skipped = Tokens.firstCode(source);
            if (whole && skipped == source.length()) {
                return openComment(source);
            }
            int offset = text.text().length() - remaining.length() + skipped;
            var statement = new Statement(source.substring(skipped), offset, isShown(rest));
            Optional<Failed> failure = run(statement);
            if (failure.isPresent()) {
                return failure;
            }
            remaining = rest;
        }
    }

    /** What is left is no code; it may be a comment that hides code by mistake. */
    private Optional<Failed> openComment(String remaining) {
        return Tokens.of(remaining).stream().filter(token -> token.open() && token.text().startsWith("/*")).findFirst()
                .map(token -> new CompileErrors(text, 0, new NearMiss(shell)).failed(
                        text.text().length() - remaining.length() + token.start(), "this comment is never closed; write */ where it ends"));
    }

    /** A statement, where it begins in the cell, and whether its value is the cell's result. */
    private record Statement(String source, int offset, boolean shown) { }

    private boolean isShown(String rest) {
        return !request.silent() && shell.analysis().analyzeCompletion(rest).completeness() == Completeness.EMPTY
                && !Tokens.endsWithSemicolon(text.text());
    }

    private Optional<Failed> run(Statement statement) {
        if (interrupter.isAsked()) {
            return Optional.of(Failures.interrupted());
        }
        Optional<StandingDeclarations> before = Snippets.mayDeclare(statement.source())
                ? StandingDeclarations.of(shell.jshell()) : Optional.empty();
        shell.control().statement(statement.shown(), before);
        List<SnippetEvent> all = evaluate(statement.source(), before);
        List<SnippetEvent> events = all.stream().filter(event -> event.causeSnippet() == null).toList();
        Map<String, Origins.Origin> earlier = shell.origins().put(events, new Origins.Origin(number, text, statement.offset()));
        Optional<Failed> failure = Optional.empty();
        try {
            failure = events.stream().map(event -> failures.of(event, statement.offset())).flatMap(Optional::stream).findFirst();
            return failure.isEmpty() && statement.shown() && !events.isEmpty()
                    && Snippets.isExpression(events.get(0).snippet()) ? shell.control().lastCall().flatMap(this::show) : failure;
        } finally {
            if (before.isPresent() && failure.filter(CellRun::leavesOthersAlone).isPresent()
                    && events.size() == 1 && Snippets.isDeclaration(events.get(0).snippet())) {
                shell.takeBack(before.get(), events.get(0), Optional.ofNullable(earlier.get(events.get(0).snippet().id())));
            } else {
                if (all.stream().anyMatch(Snippets::isLost)) {
                    shell.memory().declarationLost();
                }
                shell.settle(events);
            }
        }
    }

    /** Not so when the calc VM, or variables for the sake of memory, went with it. */
    private static boolean leavesOthersAlone(Failed failure) {
        return failure.kind() != Outcome.Kind.CALC_PROCESS_LOST && !failure.name().equals("OutOfMemoryError");
    }

    /** Hands a statement to JShell; when that breaks on it, what was declared before is in force again. */
    private List<SnippetEvent> evaluate(String source, Optional<StandingDeclarations> before) {
        try {
            return shell.jshell().eval(source);
        } catch (RuntimeException | Error broken) {
            before.ifPresent(shell::takeBack);
            throw broken;
        }
    }

    private Optional<Failed> show(Ending ending) {
        if (ending instanceof Ending.Returned returned) {
            result = returned.forms().map(MimeBundle::of);
            return Optional.empty();
        }
        return Optional.of(failures.ofShowing(ending));
    }

    private ExpressionValue expression(String code) {
        CompletionInfo info = shell.analysis().analyzeCompletion(code);
        if (info.source() == null || !info.remaining().isBlank()) {
            return new ExpressionValue.Failed("CompilationError", code + ": is not one expression", List.of());
        }
        var run = new CellRun(shell, CellRequest.of(code), output, number, interrupter);
        Optional<Failed> failure = run.statements();
        return failure.<ExpressionValue>map(f -> new ExpressionValue.Failed(f.name(), f.message(), f.traceback()))
                .orElseGet(() -> new ExpressionValue.Shown(run.result.orElse(MimeBundle.plain("null"))));
    }
}
