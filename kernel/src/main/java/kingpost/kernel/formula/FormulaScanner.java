package kingpost.kernel.formula;

/**
 * Steps through the characters of a formula: commands, groups and comments, without their meaning.
 */
final class FormulaScanner {

    private final String text;
    private int at;

    FormulaScanner(String text) {
        this.text = text;
    }

    boolean atEnd() {
        return at >= text.length();
    }

    /** The next character without taking it; a NUL at the end. */
    char peek() {
        return atEnd() ? '\0' : text.charAt(at);
    }

    /** The next code point without taking it; 0 at the end. */
    int peekCodePoint() {
        return atEnd() ? 0 : text.codePointAt(at);
    }

    boolean startsWith(String prefix) {
        return text.startsWith(prefix, at);
    }

    /** Takes the next code point. */
    String take() {
        int end = text.offsetByCodePoints(at, 1);
        String taken = text.substring(at, end);
        at = end;
        return taken;
    }

    /** Takes {@code prefix} if it comes next. */
    boolean take(String prefix) {
        boolean found = startsWith(prefix);
        if (found) {
            at += prefix.length();
        }
        return found;
    }

    void skipSpace() {
        while (!atEnd() && Character.isWhitespace(peek())) {
            at++;
        }
    }

    /** The name of the command that comes next, without taking it: letters and a star, or one other character. */
    String peekCommand() {
        if (peek() != '\\') {
            return "";
        }
        int end = at + 1;
        while (end < text.length() && isLetter(text.charAt(end))) {
            end++;
        }
        if (end == at + 1) {
            end = end < text.length() ? text.offsetByCodePoints(end, 1) : end;
        } else if (end < text.length() && text.charAt(end) == '*') {
            end++;
        }
        return text.substring(at + 1, end);
    }

    /** Takes the command that comes next and gives its name; letters swallow the space after them. */
    String takeCommand() {
        String name = peekCommand();
        at = Math.min(at + 1 + name.length(), text.length());
        if (!name.isEmpty() && isLetter(name.charAt(0))) {
            skipSpace();
        }
        return name;
    }

    /** Takes a group's characters as they stand, the braces left out; a single character if there is no brace. */
    String takeRaw() {
        return takeRaw('{', '}');
    }

    /** Takes {@code [...]} if it comes next; empty if not. */
    String takeOption() {
        skipSpace();
        return peek() == '[' ? takeRaw('[', ']') : "";
    }

    private String takeRaw(char open, char close) {
        skipSpace();
        if (atEnd()) {
            return "";
        }
        if (peek() != open) {
            return take();
        }
        int start = ++at;
        int depth = 1;
        while (!atEnd()) {
            char c = peek();
            if (c == '\\' && at + 1 < text.length()) {
                at += 2;
                continue;
            }
            depth += c == open ? 1 : c == close ? -1 : 0;
            at++;
            if (depth == 0) {
                return text.substring(start, at - 1);
            }
        }
        return text.substring(start);
    }

    /** Takes digits with one decimal point, and groups of digits after <code>{,}</code>. */
    String takeNumber() {
        StringBuilder number = new StringBuilder();
        while (!atEnd()) {
            char c = peek();
            boolean point = c == '.' && at + 1 < text.length() && Character.isDigit(text.charAt(at + 1));
            if (Character.isDigit(c) || point) {
                number.append(take());
            } else if (startsWith("{,}") && at + 3 < text.length() && Character.isDigit(text.charAt(at + 3))) {
                at += 3;
                number.append(',');
            } else {
                break;
            }
        }
        return number.toString();
    }

    private static boolean isLetter(char c) {
        return c >= 'a' && c <= 'z' || c >= 'A' && c <= 'Z';
    }
}
