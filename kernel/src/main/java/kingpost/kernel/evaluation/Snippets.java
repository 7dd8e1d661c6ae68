package kingpost.kernel.evaluation;

import jdk.jshell.Snippet;

/** What kind of thing a snippet is, for a cell. */
final class Snippets {

    private Snippets() {
    }

    /** An expression, whose value can be a cell's result. */
    static boolean isExpression(Snippet snippet) {
        return isTemporary(snippet) || snippet.kind() == Snippet.Kind.EXPRESSION;
    }

    /** An expression for which JShell made up a variable that nobody can know of. */
    static boolean isTemporary(Snippet snippet) {
        return snippet.subKind() == Snippet.SubKind.TEMP_VAR_EXPRESSION_SUBKIND;
    }

    /** Something that later cells can use. */
    static boolean isDeclaration(Snippet snippet) {
        return snippet.kind().isPersistent() && !isTemporary(snippet);
    }
}
