package kingpost.kernel.evaluation;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.function.Function;
import java.util.function.Supplier;
import jdk.jshell.SourceCodeAnalysis.CompletionInfo;
import kingpost.kernel.display.MimeBundle;
import kingpost.kernel.evaluation.Evaluator.Completeness;
import kingpost.kernel.evaluation.Evaluator.Completeness.Status;
import kingpost.kernel.evaluation.Evaluator.Completion;

/**
 * Answers about code, also while a cell runs: JShell is free whenever the calc VM works. When it is not free soon,
 * there is no answer rather than a late one.
 */
final class CodeQuestions {

    private static final long PATIENCE_MILLIS = 2_000;
    private static final int INDENT = 4;

    private final Shell shell;
    private final SourceComments comments = new SourceComments();
    private final Examples examples = Examples.ofTheNotebookLanguage();

    CodeQuestions(Shell shell) {
        this.shell = shell;
    }

    Completion complete(String code, int cursor) {
        var none = new Completion(List.of(), cursor, cursor);
        return ask(() -> new Completions(shell).at(code, cursor)).orElse(none);
    }

    Optional<MimeBundle> inspect(String code, int cursor, int detail) {
        return ask(() -> new Inspection(shell, comments, examples).at(code, cursor, detail)).flatMap(Function.identity());
    }

    Completeness completeness(String code) {
        return ask(() -> completenessOf(code)).orElse(new Completeness(Status.UNKNOWN, ""));
    }

    private <T> Optional<T> ask(Supplier<T> question) {
        try {
            if (!shell.lock().tryLock(PATIENCE_MILLIS, TimeUnit.MILLISECONDS)) {
                return Optional.empty();
            }
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
            return Optional.empty();
        }
        try {
            return Optional.of(question.get());
        } catch (RuntimeException | AssertionError confused) {
            // the compiler may stumble over half-written code; then there is no answer
            return Optional.empty();
        } finally {
            shell.lock().unlock();
        }
    }

    private Completeness completenessOf(String code) {
        String rest = code;
        while (true) {
            CompletionInfo info = shell.analysis().analyzeCompletion(rest);
            switch (info.completeness()) {
                case DEFINITELY_INCOMPLETE, CONSIDERED_INCOMPLETE -> {
                    return new Completeness(Status.INCOMPLETE, indent(code));
                }
                case UNKNOWN -> {
                    return new Completeness(Status.INVALID, "");
                }
                case COMPLETE, COMPLETE_WITH_SEMI -> rest = info.remaining();
                default -> {
                    return new Completeness(Status.COMPLETE, "");
                }
            }
        }
    }

    /** Blanks for the next line: as deep as brackets are open. */
    private static String indent(String code) {
        int depth = 0;
        for (Tokens.Token token : Tokens.withoutComments(code)) {
            depth += token.is('{') || token.is('(') || token.is('[') ? 1 : 0;
            depth -= token.is('}') || token.is(')') || token.is(']') ? 1 : 0;
        }
        return " ".repeat(Math.max(0, depth) * INDENT);
    }
}
