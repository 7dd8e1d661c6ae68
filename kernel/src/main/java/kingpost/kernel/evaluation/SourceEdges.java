package kingpost.kernel.evaluation;

/** Where code begins and ends, blanks and comments aside. */
final class SourceEdges {

    private SourceEdges() {
    }

    /** Number of characters before the first that is neither blank nor part of a comment. */
    static int beforeCode(String code) {
        int at = 0;
        while (at < code.length()) {
            int next = afterComment(code, at);
            if (next == at && !Character.isWhitespace(code.charAt(at))) {
                return at;
            }
            at = Math.max(next, at + (next == at ? 1 : 0));
        }
        return at;
    }

    /** Whether the code ends with a semicolon, which hides a cell's result; comments after it do not count. */
    static boolean endsWithSemicolon(String code) {
        return lastCodeCharacter(code) == ';';
    }

    /** The last character that is neither blank nor part of a comment; 0 when there is none. */
    private static char lastCodeCharacter(String code) {
        char last = 0;
        for (int i = 0; i < code.length(); ) {
            int next = afterComment(code, i);
            if (next > i) {
                i = next;
                continue;
            }
            next = afterLiteral(code, i);
            char c = code.charAt(next - 1);
            if (!Character.isWhitespace(c)) {
                last = c;
            }
            i = next;
        }
        return last;
    }

    private static int afterComment(String code, int at) {
        if (code.startsWith("//", at)) {
            int end = code.indexOf('\n', at);
            return end < 0 ? code.length() : end;
        }
        if (code.startsWith("/*", at)) {
            int end = code.indexOf("*/", at + 2);
            return end < 0 ? code.length() : end + 2;
        }
        return at;
    }

    private static int afterLiteral(String code, int at) {
        if (code.startsWith("\"\"\"", at)) {
            return closing(code, at + 3, "\"\"\"");
        }
        char c = code.charAt(at);
        return c == '"' || c == '\'' ? closing(code, at + 1, String.valueOf(c)) : at + 1;
    }

    private static int closing(String code, int from, String quote) {
        for (int i = from; i < code.length(); i++) {
            if (code.charAt(i) == '\\') {
                i++;
            } else if (code.startsWith(quote, i)) {
                return i + quote.length();
            }
        }
        return code.length();
    }
}
