package kingpost.calculation;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import kingpost.units.CalculationException;

/** The text of a formula cut into numbers, names and signs, read one after another. */
final class Tokens {

    private static final int LONGEST = 2000;
    private static final Pattern TOKEN = Pattern.compile("\\s*(?:"
            + "(?<number>(?:\\d+(?:\\.\\d*)?|\\.\\d+)(?:[eE][+-]?\\d+)?)"
            + "|(?<name>\\p{L}[\\p{L}\\p{Nd}_]*)"
            + "|\\[(?<unit>[^\\]]*)\\]"
            + "|(?<sign><=|>=|[-+*/^(),<>=%\u00b0]))\\s*");
    private static final String RAISED = "\u2070\u00b9\u00b2\u00b3\u2074\u2075\u2076\u2077\u2078\u2079";

    private final String original;
    private final String text;
    private final Matcher matcher;
    private int at;
    private boolean found;

    Tokens(String original) {
        this.original = original == null ? "" : original;
        this.text = ordinary(this.original).strip();
        if (text.isEmpty()) {
            throw new CalculationException("Formula: it is empty; write one such as \"N / A\".");
        }
        if (text.length() > LONGEST) {
            throw new CalculationException("Formula \"" + text.substring(0, 40) + "...\": it has " + text.length()
                    + " characters; keep it under " + LONGEST + ", in several lines.");
        }
        this.matcher = TOKEN.matcher(text);
        advance();
    }

    /** Typographic signs as the ones of the grammar. */
    private static String ordinary(String typed) {
        String plain = typed.replace('\u2212', '-').replace('\u00b7', '*').replace('\u00d7', '*')
                .replace("\u2264", "<=").replace("\u2265", ">=");
        Matcher raised = Pattern.compile("(\u207b?)([" + RAISED + "]+)").matcher(plain);
        return raised.replaceAll(power -> "^" + (power.group(1).isEmpty() ? "" : "-")
                + power.group(2).chars().map(c -> '0' + RAISED.indexOf(c))
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append));
    }

    boolean atEnd() {
        return at >= text.length();
    }

    /** The number here, or null. */
    String number() {
        return found ? matcher.group("number") : null;
    }

    /** The name here, or null. */
    String name() {
        return found ? matcher.group("name") : null;
    }

    /** What stands in the brackets here, or null. */
    String bracketedUnit() {
        return found ? matcher.group("unit") : null;
    }

    boolean isSign(String sign) {
        return found && sign.equals(matcher.group("sign"));
    }

    /** True, and one further, when {@code sign} stands here. */
    boolean accept(String sign) {
        if (!isSign(sign)) {
            return false;
        }
        next();
        return true;
    }

    void next() {
        at = matcher.end();
        advance();
    }

    /** A power written as digits right behind {@code ^}, taken; or the empty text when none stands here. */
    String power() {
        Matcher power = Pattern.compile("\\G\\^(-?\\d{1,2})(?![\\d.])\\s*").matcher(text);
        if (!power.find(at)) {
            return "";
        }
        at = power.end();
        advance();
        return power.group(1);
    }

    private void advance() {
        found = at < text.length() && matcher.find(at) && matcher.start() == at;
    }

    /** An error at the place reached. */
    CalculationException error(String wrong, String advice) {
        String rest = text.substring(Math.min(at, text.length()));
        String place = rest.isEmpty() ? "at its end" : "at \"" + rest + "\"";
        return new CalculationException("Formula \"" + original.strip() + "\": " + place + " " + wrong + "; " + advice
                + ".");
    }
}
