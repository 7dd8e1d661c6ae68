package kingpost.kernel.evaluation;

import java.util.ArrayList;
import java.util.List;
import jdk.jshell.Snippet;
import jdk.jshell.SourceCodeAnalysis;
import jdk.jshell.SourceCodeAnalysis.Completeness;
import jdk.jshell.SourceCodeAnalysis.CompletionInfo;

/** The statement around a cursor, with what stands before it in the same cell. */
final class Statements {

    /**
     * The statement that a text ends in.
     *
     * @param start        where it begins in the text
     * @param code         its source
     * @param declarations the variables declared before it in the same text
     */
    record Current(int start, String code, String declarations) { }

    private Statements() {
    }

    /** Looks for the last statement of a text that ends at the cursor. */
    static Current last(SourceCodeAnalysis analysis, String beforeCursor) {
        String rest = beforeCursor;
        List<String> declarations = new ArrayList<>();
        while (true) {
            CompletionInfo info = analysis.analyzeCompletion(rest);
            boolean more = info.source() != null && info.completeness() == Completeness.COMPLETE
                    && info.remaining() != null && !info.remaining().isBlank();
            if (!more) {
                int skipped = Tokens.firstCode(rest);
                int start = beforeCursor.length() - rest.length() + skipped;
                return new Current(start, rest.substring(skipped), String.join("\n", declarations));
            }
            if (isVariable(analysis, info.source())) {
                declarations.add(info.source().strip());
            }
            rest = info.remaining();
        }
    }

    private static boolean isVariable(SourceCodeAnalysis analysis, String source) {
        return analysis.sourceToSnippets(source).stream().anyMatch(s -> s.kind() == Snippet.Kind.VAR
                && s.subKind() != Snippet.SubKind.TEMP_VAR_EXPRESSION_SUBKIND);
    }
}
