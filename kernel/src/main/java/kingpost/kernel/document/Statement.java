package kingpost.kernel.document;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The statements of a cell, as far as parameters need them told apart.
 *
 * @param text what is written, from its first sign
 * @param bare the same with blanks for what stands in comments and between quotation marks
 */
record Statement(String text, String bare) {

    private static final Pattern HIDDEN = Pattern.compile("//[^\\n]*|/\\*[\\s\\S]*?\\*/|\"(?:\\\\.|[^\"\\\\\\n])*\"");
    private static final Pattern VARIABLE = Pattern.compile(
            "\\s*(?:final\\s+)?(?:var|Quantity|double|int|boolean|String)\\s+([A-Za-z_$][\\w$]*)\\s*=(?!=)([\\s\\S]*)");

    /** A variable that a statement declares, and what it is made of. */
    record Declared(String name, String value, String bareValue) { }

    /** The statements of {@code code}, in order. */
    static List<Statement> of(String code) {
        StringBuilder bare = new StringBuilder(code);
        Matcher hidden = HIDDEN.matcher(code);
        while (hidden.find()) {
            for (int i = hidden.start(); i < hidden.end(); i++) {
                bare.setCharAt(i, code.charAt(i) == '\n' ? '\n' : ' ');
            }
        }
        List<Statement> all = new ArrayList<>();
        int depth = 0;
        int from = 0;
        for (int i = 0; i <= code.length(); i++) {
            char c = i < code.length() ? bare.charAt(i) : ';';
            depth += "({[".indexOf(c) >= 0 ? 1 : ")}]".indexOf(c) >= 0 ? -1 : 0;
            if (i == code.length() || c == ';' && depth <= 0) {
                add(all, code.substring(from, i), bare.substring(from, i));
                from = i + 1;
            }
        }
        return all;
    }

    private static void add(List<Statement> all, String text, String bare) {
        if (!bare.isBlank()) {
            int start = bare.length() - bare.stripLeading().length();
            all.add(new Statement(text.substring(start).strip(), bare.substring(start).stripTrailing()));
        }
    }

    /** The variable that it declares, if it declares one. */
    Optional<Declared> declared() {
        Matcher variable = VARIABLE.matcher(bare);
        if (!variable.matches()) {
            return Optional.empty();
        }
        String value = text.substring(variable.start(2), Math.min(text.length(), variable.end(2))).strip();
        return Optional.of(new Declared(variable.group(1), value, variable.group(2)));
    }

    /** What it works out, without comments and texts: of a declaration what stands after the equals sign. */
    String bareValue() {
        return declared().map(Declared::bareValue).orElse(bare);
    }

    /** Whether a comma parts it, outside all parentheses. */
    boolean declaresSeveral() {
        int depth = 0;
        for (char c : bareValue().toCharArray()) {
            depth += "({[".indexOf(c) >= 0 ? 1 : ")}]".indexOf(c) >= 0 ? -1 : 0;
            if (c == ',' && depth == 0) {
                return true;
            }
        }
        return false;
    }

    /** Its first line, for messages. */
    String shortened() {
        String line = text.lines().findFirst().orElse("").strip();
        return line.length() <= 60 ? line : line.substring(0, 57) + "...";
    }

    /** The first of these names that code uses. */
    static Optional<String> used(String bare, Iterable<String> names) {
        for (String name : names) {
            if (Pattern.compile("(?<![\\w$.])" + Pattern.quote(name) + "(?![\\w$])").matcher(bare).find()) {
                return Optional.of(name);
            }
        }
        return Optional.empty();
    }
}
