package kingpost.kernel.evaluation;

import java.util.ArrayList;
import java.util.List;

/** Java source cut into words, literals, comments and single marks; enough to look around in a cell, not a parser. */
final class Tokens {

    /** The sorts of token. */
    enum Sort { WORD, LITERAL, COMMENT, MARK }

    /**
     * A piece of source; blanks between tokens are left out.
     *
     * @param open true for a literal or comment that the source ends in the middle of
     */
    record Token(Sort sort, int start, int end, String text, boolean open) {

        boolean is(char mark) {
            return sort == Sort.MARK && text.charAt(0) == mark;
        }

        boolean isWord() {
            return sort == Sort.WORD && Character.isJavaIdentifierStart(text.codePointAt(0));
        }
    }

    private final String code;
    private final List<Token> tokens = new ArrayList<>();

    private Tokens(String code) {
        this.code = code;
        for (int at = 0; at < code.length(); ) {
            at = Character.isWhitespace(code.charAt(at)) ? at + 1 : next(at);
        }
    }

    static List<Token> of(String code) {
        return List.copyOf(new Tokens(code).tokens);
    }

    /** The same without comments. */
    static List<Token> withoutComments(String code) {
        return of(code).stream().filter(token -> token.sort != Sort.COMMENT).toList();
    }

    /** Where the first token that is not a comment begins; the length when there is none. */
    static int firstCode(String code) {
        return withoutComments(code).stream().mapToInt(Token::start).findFirst().orElse(code.length());
    }

    /** Whether the code ends with a semicolon, comments aside. */
    static boolean endsWithSemicolon(String code) {
        List<Token> tokens = withoutComments(code);
        return !tokens.isEmpty() && tokens.get(tokens.size() - 1).is(';');
    }

    private int next(int at) {
        if (code.startsWith("//", at)) {
            int end = code.indexOf('\n', at);
            return add(Sort.COMMENT, at, end < 0 ? code.length() : end, end < 0);
        }
        if (code.startsWith("/*", at)) {
            int end = code.indexOf("*/", at + 2);
            return add(Sort.COMMENT, at, end < 0 ? code.length() : end + 2, end < 0);
        }
        char c = code.charAt(at);
        if (c == '"' || c == '\'') {
            return literal(at, code.startsWith("\"\"\"", at) ? "\"\"\"" : String.valueOf(c));
        }
        return Character.isJavaIdentifierPart(code.codePointAt(at)) ? word(at)
                : add(Sort.MARK, at, at + Character.charCount(code.codePointAt(at)), false);
    }

    private int literal(int at, String quote) {
        for (int i = at + quote.length(); i < code.length(); i++) {
            if (code.charAt(i) == '\\') {
                i++;
            } else if (code.startsWith(quote, i)) {
                return add(Sort.LITERAL, at, i + quote.length(), false);
            } else if (code.charAt(i) == '\n' && quote.length() == 1) {
                return add(Sort.LITERAL, at, i, true);
            }
        }
        return add(Sort.LITERAL, at, code.length(), true);
    }

    private int word(int at) {
        int end = at;
        while (end < code.length() && Character.isJavaIdentifierPart(code.codePointAt(end))) {
            end += Character.charCount(code.codePointAt(end));
        }
        return add(Sort.WORD, at, end, false);
    }

    private int add(Sort sort, int start, int end, boolean open) {
        tokens.add(new Token(sort, start, end, code.substring(start, end), open));
        return end;
    }
}
