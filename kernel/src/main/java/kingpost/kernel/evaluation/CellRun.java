package kingpost.kernel.evaluation;

import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import jdk.jshell.Diag;
import jdk.jshell.EvalException;
import jdk.jshell.Snippet;
import jdk.jshell.SnippetEvent;
import jdk.jshell.SourceCodeAnalysis.Completeness;
import jdk.jshell.SourceCodeAnalysis.CompletionInfo;
import jdk.jshell.UnresolvedReferenceException;
import kingpost.kernel.display.MimeBundle;
import kingpost.kernel.evaluation.Outcome.ExpressionValue;
import kingpost.kernel.evaluation.Outcome.Failed;
import kingpost.kernel.evaluation.Outcome.Kind;
import kingpost.kernel.pipe.Frame;

/** One run of one cell: statement by statement, up to the first that fails. */
final class CellRun {

    private final Shell shell;
    private final CellRequest request;
    private final CellOutput output;
    private final CellText text;
    private final Interrupter interrupter;
    private int number;
    private Optional<MimeBundle> result = Optional.empty();

    CellRun(Shell shell, CellRequest request, CellOutput output, Duration stopLimit) {
        this.shell = shell;
        this.request = request;
        this.output = output;
        text = new CellText(request.code());
        interrupter = new Interrupter(shell.control(), stopLimit);
    }

    void interrupt() {
        interrupter.stop();
    }

    /** Runs the cell; the shell's lock is held, and given back while the calc VM works. */
    Outcome run() {
        number = shell.outputs().open(output);
        shell.control().enter(number, new Questions(shell, output, interrupter, request.allowInput())::answer);
        try {
            shell.recoverFromIdleLoss().ifPresent(notice -> output.stream("stderr", notice + "\n"));
            Optional<Failed> failure = statements();
            return failure.isPresent() ? failure.get() : completed();
        } finally {
            interrupter.over();
        }
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
                return Optional.empty();
            }
            boolean whole = info.source() == null;
            String source = whole ? remaining : info.source();
            String rest = whole ? "" : info.remaining();
            int skipped = Tokens.firstCode(source);
            int offset = text.text().length() - remaining.length() + skipped;
            var statement = new Statement(source.substring(skipped), offset, isShown(rest));
            Optional<Failed> failure = run(statement);
            if (failure.isPresent()) {
                return failure;
            }
            remaining = rest;
        }
    }

    /** A statement, where it begins in the cell, and whether its value is the cell's result. */
    private record Statement(String source, int offset, boolean shown) { }

    private boolean isShown(String rest) {
        return !request.silent() && shell.analysis().analyzeCompletion(rest).completeness() == Completeness.EMPTY
                && !Tokens.endsWithSemicolon(text.text());
    }

    private Optional<Failed> run(Statement statement) {
        if (interrupter.isAsked()) {
            return Optional.of(interrupted());
        }
        List<SnippetEvent> events = shell.jshell().eval(statement.source()).stream()
                .filter(event -> event.causeSnippet() == null).toList();
        for (SnippetEvent event : events) {
            shell.origins().put(event.snippet().id(), new Origins.Origin(number, text, statement.offset()));
        }
        try {
            for (SnippetEvent event : events) {
                Optional<Failed> failure = failureOf(event, statement);
                if (failure.isPresent()) {
                    return failure;
                }
            }
            if (statement.shown() && !events.isEmpty() && Snippets.isExpression(events.get(0).snippet())) {
                return show();
            }
            return Optional.empty();
        } finally {
            shell.settle(events);
        }
    }

    private Optional<Failed> show() {
        Ending ending = shell.control().show();
        if (ending instanceof Ending.Returned returned) {
            result = returned.forms().map(MimeBundle::of);
            return Optional.empty();
        }
        return Optional.of(failureOf(ending));
    }

    /** A value's own {@code toString} or {@code show} failed. */
    private Failed failureOf(Ending ending) {
        if (shell.control().loss().isPresent()) {
            return lost();
        }
        if (ending instanceof Ending.Threw threw && !interrupter.isAsked()) {
            Ending.Thrown first = threw.chain().get(0);
            String message = "The value cannot be shown: " + first.message().orElse(first.type());
            return new Failed(Kind.EXCEPTION, RuntimeErrors.simple(first.type()), message, List.of(message), 0);
        }
        return interrupted();
    }

    private Optional<Failed> failureOf(SnippetEvent event, Statement statement) {
        if (shell.control().loss().isPresent()) {
            return Optional.of(lost());
        }
        Optional<Ending> ending = shell.control().takeEnding();
        if (ending.isPresent() && (ending.get() instanceof Ending.Stopped
                || interrupter.isAsked() && !(ending.get() instanceof Ending.Returned))) {
            return Optional.of(interrupted());
        }
        if (event.status() == Snippet.Status.REJECTED || isUnusableVariable(event)) {
            List<Diag> diagnostics = shell.jshell().diagnostics(event.snippet()).toList();
            return Optional.of(new CompileErrors(text, statement.offset(), (c, o, m) -> "").failed(diagnostics));
        }
        if (event.exception() instanceof EvalException thrown && ending.isPresent()
                && ending.get() instanceof Ending.Threw threw) {
            return Optional.of(new RuntimeErrors(shell.origins(), number).failed(thrown, threw.chain()));
        }
        if (event.exception() instanceof UnresolvedReferenceException unresolved) {
            return Optional.of(unresolved(unresolved));
        }
        return Optional.empty();
    }

    private static boolean isUnusableVariable(SnippetEvent event) {
        return event.snippet().kind() == Snippet.Kind.VAR && event.status() == Snippet.Status.RECOVERABLE_NOT_DEFINED;
    }

    private Failed unresolved(UnresolvedReferenceException unresolved) {
        String missing = String.join(", ", shell.jshell().unresolvedDependencies(unresolved.getSnippet()).toList());
        String message = unresolved.getSnippet().name() + ": uses " + missing
                + ", which is not defined; define it first.";
        return new Failed(Kind.EXCEPTION, "NotDefined", message, List.of(message), 0);
    }

    private static Failed interrupted() {
        String message = "The cell was interrupted; variables keep the values they had.";
        return new Failed(Kind.INTERRUPTED, "Interrupted", message, List.of("Interrupted: " + message), 0);
    }

    private Failed lost() {
        String message = shell.recover();
        return new Failed(Kind.CALC_PROCESS_LOST, "CalcProcessLost", message, List.of(message), 0);
    }

    private ExpressionValue expression(String code) {
        CompletionInfo info = shell.analysis().analyzeCompletion(code);
        if (info.source() == null || !info.remaining().isBlank()) {
            return new ExpressionValue.Failed("CompilationError", code + ": is not one expression", List.of());
        }
        result = Optional.empty();
        var run = new CellRun(shell, new CellRequest(code, false, false, Map.of()), output, Duration.ofSeconds(2));
        run.number = number;
        Optional<Failed> failure = run.statements();
        return failure.<ExpressionValue>map(f -> new ExpressionValue.Failed(f.name(), f.message(), f.traceback()))
                .orElseGet(() -> new ExpressionValue.Shown(run.result.orElse(MimeBundle.plain("null"))));
    }
}
