package kingpost.units;

import java.util.List;
import java.util.function.BiPredicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import javax.measure.Unit;

/**
 * Reads a unit: names joined by {@code *}, {@code ·}, a hyphen or a space, what follows {@code /} below the line, a
 * power as {@code 2}, {@code ^2} or {@code ²}. Parentheses go round what is below the line: kN/(m·s).
 */
final class UnitParser {

    private static final Pattern TOKEN = Pattern.compile(
            "\\s*(?:(?<name>\\p{L}+|\u00b0|%|1(?=\\s*/))(?:\\^?(?<power>-?\\d{1,2}))?|(?<mark>[*\u00b7/()-]))\\s*");

    private final String text;
    private final Matcher tokens;
    private int at;

    private UnitParser(String text) {
        this.text = text;
        this.tokens = TOKEN.matcher(UnitLabel.lowered(text));
    }

    static Unit<?> parse(String text) {
        if (text.isBlank()) {
            return StructuralUnits.one;
        }
        UnitParser parser = new UnitParser(text);
        Unit<?> unit = parser.terms();
        if (parser.at < text.length()) {
            throw parser.unreadable();
        }
        return unit;
    }

    private Unit<?> terms() {
        Unit<?> unit = factor();
        boolean below = false;
        while (at < text.length() && text.charAt(at) != ')') {
            below |= mark().equals("/");
            Unit<?> next = factor();
            unit = below ? unit.divide(next) : unit.multiply(next);
        }
        return unit;
    }

    private Unit<?> factor() {
        if (!next()) {
            throw unreadable();
        }
        if ("(".equals(tokens.group("mark"))) {
            at = tokens.end();
            Unit<?> inner = terms();
            if (!next() || !")".equals(tokens.group("mark"))) {
                throw unreadable();
            }
            at = tokens.end();
            return inner;
        }
        String name = tokens.group("name");
        if (name == null) {
            throw unreadable();
        }
        at = tokens.end();
        Unit<?> unit = name.equals("1") ? StructuralUnits.one : UnitNames.unit(name);
        if (unit == null) {
            throw unknown(name);
        }
        String power = tokens.group("power");
        return power == null ? unit : unit.pow(Integer.parseInt(power));
    }

    private String mark() {
        if (next() && tokens.group("mark") != null) {
            String mark = tokens.group("mark");
            if (!mark.equals("(")) {
                at = tokens.end();
            }
            return mark;
        }
        return "";
    }

    private boolean next() {
        return tokens.find(at) && tokens.start() == at;
    }

    private CalculationException unreadable() {
        return new CalculationException("Unit \"" + text + "\": cannot be read at \"" + text.substring(at)
                + "\"; write units as kN, kN/m^2, mm^4 or kip*ft.");
    }

    private CalculationException unknown(String name) {
        List<String> near = like(String::equalsIgnoreCase, name);
        if (near.isEmpty() && name.length() > 2) {
            near = like(UnitParser::distanceIsOne, name);
        }
        String advice = near.isEmpty() ? "known are " + String.join(", ", UnitNames.all())
                : "did you mean " + near.stream().collect(Collectors.joining(" or ")) + "?";
        return new CalculationException("Unit \"" + text + "\": there is no unit called " + name + "; " + advice
                + (near.isEmpty() ? "." : ""));
    }

    private static List<String> like(BiPredicate<String, String> test, String name) {
        return UnitNames.all().stream().filter(known -> test.test(known, name)).toList();
    }

    /** One letter more, less or different. */
    private static boolean distanceIsOne(String a, String b) {
        int start = 0;
        while (start < Math.min(a.length(), b.length()) && a.charAt(start) == b.charAt(start)) {
            start++;
        }
        return a.length() == b.length() ? a.substring(start + 1).equals(b.substring(start + 1))
                : a.length() + 1 == b.length() ? a.substring(start).equals(b.substring(start + 1))
                : a.length() == b.length() + 1 && a.substring(start + 1).equals(b.substring(start));
    }
}
