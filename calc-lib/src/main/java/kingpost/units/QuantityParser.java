package kingpost.units;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads a number with its unit, as people type it and as {@link EngineeringFormat} writes it. */
final class QuantityParser {

    private static final String DIGITS = "\\d{1,3}(?:[\u202f\u2009]\\d{3})+|\\d+";
    private static final Pattern QUANTITY = Pattern.compile("\\s*(?<sign>[+-]?)(?<number>(?:" + DIGITS
            + ")(?:\\.\\d*)?|\\.\\d+)(?:[eE](?<exponent>[+-]?\\d{1,3})|\\s*[\u00d7*]\\s*10\\^?(?<power>-?\\d{1,3}))?"
            + "\\s*(?<unit>.*)");

    private QuantityParser() {
    }

    static Quantity parse(String text) {
        if (text == null) {
            throw new CalculationException(
                    "Quantity: there is nothing to read; write it as 12 kN, 3.5 kip/ft or -0.75 m.");
        }
        Matcher matcher = QUANTITY.matcher(normal(text));
        if (!matcher.matches() || matcher.group("unit").matches("[.,\\d].*")) {
            throw new CalculationException("Quantity \"" + text + "\": there is no number that can be read; write it "
                    + "as 12 kN, 3.5 kip/ft or -0.75 m, with a point for decimals and no commas.");
        }
        String number = matcher.group("sign") + matcher.group("number").replaceAll("[\u202f\u2009]", "");
        String exponent = matcher.group("exponent") != null ? matcher.group("exponent") : matcher.group("power");
        double value = Double.parseDouble(exponent == null ? number : number + "e" + exponent);
        return Quantity.of(value, UnitParser.parse(matcher.group("unit").strip()));
    }

    /** Raised digits after a ten are a power of ten; elsewhere they belong to the unit. */
    private static String normal(String text) {
        Matcher power = Pattern.compile("(\u00d7\\s*10)([\u2070\u00b9\u00b2\u00b3\u2074-\u2079\u207b]+)")
                .matcher(text.replace(EngineeringFormat.MINUS, '-'));
        return power.replaceFirst(found -> found.group(1) + "^" + UnitLabel.lowered(found.group(2)));
    }
}
