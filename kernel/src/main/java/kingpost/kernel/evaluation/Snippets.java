package kingpost.kernel.evaluation;

import java.util.List;
import jdk.jshell.DeclarationSnippet;
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

    /** A declaration of a name on which the frame around every cell relies: no cell would compile any more. */
    static boolean takesNameOfEveryCell(Snippet snippet) {
        return snippet instanceof DeclarationSnippet named && (snippet.kind() == Snippet.Kind.VAR
                && List.of("java", "REPL").contains(named.name()) || snippet.kind() == Snippet.Kind.TYPE_DECL
                && List.of("Object", "String", "Throwable", "java", "REPL").contains(named.name()));
    }

    /** Something that later cells can use. */
    static boolean isDeclaration(Snippet snippet) {
        return snippet.kind().isPersistent() && !isTemporary(snippet);
    }
}
