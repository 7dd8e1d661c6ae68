package kingpost.kernel.evaluation;

import java.util.List;
import java.util.stream.IntStream;
import jdk.jshell.DeclarationSnippet;
import jdk.jshell.Snippet;
import jdk.jshell.Snippet.Status;
import jdk.jshell.SnippetEvent;

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

    /** A declaration that went out of force without another of its name and kind in its place. */
    static boolean isLost(SnippetEvent event) {
        return isDeclaration(event.snippet()) && (event.status() == Status.REJECTED
                || event.status() == Status.OVERWRITTEN && event.snippet().kind() == Snippet.Kind.METHOD);
    }

    /** Whether the statement may be a declaration: two words stand side by side in it, as type and name do. */
    static boolean mayDeclare(String statement) {
        List<Tokens.Token> tokens = Tokens.withoutComments(statement);
        return IntStream.range(1, tokens.size()).anyMatch(i -> tokens.get(i).isWord()
                && (tokens.get(i - 1).isWord() || tokens.get(i - 1).is('>') || tokens.get(i - 1).is(']')));
    }
}
