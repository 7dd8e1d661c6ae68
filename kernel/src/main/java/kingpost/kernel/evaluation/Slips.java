package kingpost.kernel.evaluation;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.lang.model.SourceVersion;

/**
 * Slips of the pen that the compiler stumbles over without naming them: a decimal comma, typographic quotes, a word of
 * the language as a name, a name that begins with a digit, a bracket too many.
 */
final class Slips {

    private static final Pattern ILLEGAL = Pattern.compile("illegal character: '(?:\\\\u([0-9a-fA-F]{4})(?:\\\\u[0-9a-fA-F]{4})?|(.))'");
    private static final Map<Character, String> MEANT = Map.ofEntries(Map.entry('\u201c', "\""), Map.entry('\u201d', "\""),
            Map.entry('\u201e', "\""), Map.entry('\u00ab', "\""), Map.entry('\u00bb', "\""), Map.entry('\u2018', "'"),
            Map.entry('\u2019', "'"), Map.entry('\u2013', "-"), Map.entry('\u2014', "-"), Map.entry('\u2212', "-"),
            Map.entry('\u00d7', "*"), Map.entry('\u00b7', "*"), Map.entry('\u00f7', "/"), Map.entry('\u2264', "<="),
            Map.entry('\u2265', ">="), Map.entry('\u2260', "!="), Map.entry('\u2026', "..."));
    private static final Pattern DECIMAL_COMMA = Pattern.compile("(\\d+),(\\d+)");

    private static final Pattern QUANTITY = Pattern.compile(
            "(\\d+(?:\\.\\d+)?) *(mm|cm|m|km|N|kN|MN|Pa|kPa|MPa|GPa|ft|in|lbf|kip|psi|ksi)\\b");

    /** What is wrong, and where in the cell. */
    record Slip(int offset, String sentence) { }

    private final String cell;

    Slips(String cell) {
        this.cell = cell;
    }

    /** The slip behind an error of syntax at this offset, if it is one of these. */
    Optional<Slip> at(int offset, String said) {
        Matcher illegal = ILLEGAL.matcher(said);
        if (illegal.matches()) {
            return Optional.of(new Slip(offset, illegal(illegal)));
        }
        return decimalComma(offset).or(() -> unitBehind(offset)).or(() -> strayBracket(offset)).or(() -> wordAsName(offset)).or(() -> digitFirst(offset));
    }

    private static String illegal(Matcher said) {
        char written = said.group(1) == null ? said.group(2).charAt(0) : (char) Integer.parseInt(said.group(1), 16);
        if (written == '\u00a0') {
            return "this blank is not an ordinary one, as text copied from a page has; type it again";
        }
        if (Character.isISOControl(written) || Character.getType(written) == Character.FORMAT) {
            return "a character that cannot be seen stands here (U+%04X); delete it".formatted((int) written);
        }
        if (written == '#') {
            return "a comment begins with //";
        }
        if (Character.isHighSurrogate(written)) {
            return "names are made of letters, digits and _; pictures stand in text only";
        }
        String meant = MEANT.get(written);
        return meant == null ? "illegal character " + written : "Java does not know the character %s; write %s".formatted(
                written, meant);
    }

    private Optional<Slip> decimalComma(int offset) {
        Matcher number = DECIMAL_COMMA.matcher(cell);
        while (number.find()) {
            if (number.start() <= offset && offset <= number.end()) {
                return Optional.of(new Slip(number.start(), "decimals stand after a point; write %s.%s".formatted(
                        number.group(1), number.group(2))));
            }
        }
        return Optional.empty();
    }

    private Optional<Slip> unitBehind(int offset) {
        Matcher quantity = QUANTITY.matcher(cell);
        while (quantity.find()) {
            if (quantity.start() <= offset && offset <= quantity.end()) {
                return Optional.of(new Slip(quantity.start(), "a quantity is written with its unit in front; write %s(%s)"
                        .formatted(quantity.group(2), quantity.group(1))));
            }
        }
        return Optional.empty();
    }

    private Optional<Slip> strayBracket(int offset) {
        int depth = 0;
        for (Tokens.Token token : Tokens.withoutComments(cell)) {
            boolean opens = token.is('{') || token.is('(') || token.is('[');
            boolean closes = token.is('}') || token.is(')') || token.is(']');
            depth += opens ? 1 : closes ? -1 : 0;
            if (depth < 0) {
                return token.start() == offset ? Optional.of(new Slip(offset, "this " + token.text()
                        + " closes nothing that is open")) : Optional.empty();
            }
        }
        return Optional.empty();
    }

    /** A type, and where its name should stand a word of the language, as in {@code String class = "x"}. */
    private Optional<Slip> wordAsName(int offset) {
        List<Tokens.Token> tokens = Tokens.withoutComments(cell);
        for (int i = 1; i < tokens.size(); i++) {
            Tokens.Token name = tokens.get(i);
            String type = tokens.get(i - 1).text();
            boolean near = tokens.get(i - 1).start() <= offset && offset <= name.end();
            boolean declares = i + 1 < tokens.size() && (tokens.get(i + 1).is('=') || tokens.get(i + 1).is(';'));
            if (near && declares && SourceVersion.isKeyword(name.text()) && Character.isLetter(name.text().charAt(0))
                    && tokens.get(i - 1).isWord() && (!SourceVersion.isKeyword(type) || isPrimitive(type))) {
                return Optional.of(new Slip(name.start(), name.text() + " is a word of the language; give another name"));
            }
        }
        return Optional.empty();
    }

    private static boolean isPrimitive(String word) {
        return List.of("int", "long", "short", "byte", "double", "float", "boolean", "char").contains(word);
    }

    private Optional<Slip> digitFirst(int offset) {
        Matcher name = Pattern.compile("(?<![\\w.])\\d+[A-Za-z_]\\w*").matcher(cell);
        while (name.find()) {
            boolean number = name.group().matches("(?:0[xXbB][0-9a-fA-F_]+[lL]?|[\\d_]+(?:[lLfFdD]|[eE]\\d+))");
            if (!number && name.start() <= offset && offset <= name.end()) {
                return Optional.of(new Slip(name.start(), "a name cannot begin with a digit"));
            }
        }
        return Optional.empty();
    }
}
