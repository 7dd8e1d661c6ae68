package kingpost.marking;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads an equation that is linear in forces, as people write it: {@code 0.6 AF + 3/5 FC - 12 = 0},
 * {@code AB + AF cos 53.1° = 6 kN}. Angles are in degrees.
 *
 * <p>Grammar: sum = sum; a sum is terms joined by + and -; a term is numbers, roots, sines, cosines and at most one
 * force, multiplied or divided, with brackets round one number or fraction at most. Anything else is not read.
 */
final class EquationReader {

    private static final Pattern TOKEN = Pattern.compile("\\s*(?:(?<number>(?:\\d+(?:\\.\\d*)?|\\.\\d+))|(?<trig>sin|cos)"
            + "|(?<root>\u221a|sqrt)|(?<sign>[-+])|(?<mark>[=/()*\u00b7\u00d7\u00b0])|(?<name>[\\p{L}][\\p{L}\\p{N}_{}-]*))\\s*");

    private final Unknowns unknowns;
    private final List<String> tokens = new ArrayList<>();
    private int next;

    private EquationReader(Unknowns unknowns) {
        this.unknowns = unknowns;
    }

    /**
     * What an equation says, all on its left side.
     *
     * @param factors  by unknown
     * @param constant in the truss's force unit
     */
    record Linear(Map<Integer, Double> factors, double constant) {
    }

    static Linear read(Unknowns unknowns, String text) throws AnswerReader.NotRead {
        EquationReader reader = new EquationReader(unknowns);
        reader.split(AnswerReader.withPoints(AnswerReader.plain(text)));
        Map<Integer, Double> factors = new TreeMap<>();
        double left = reader.sum(factors, 1);
        reader.take("=");
        double right = reader.sum(factors, -1);
        if (reader.next < reader.tokens.size()) {
            throw new AnswerReader.NotRead("\"" + reader.tokens.get(reader.next) + "\" is not expected there");
        }
        return new Linear(factors, left + right);
    }

    private void split(String text) throws AnswerReader.NotRead {
        Matcher token = TOKEN.matcher(text);
        int at = 0;
        while (at < text.length() && token.find(at) && token.start() == at) {
            String word = token.group().strip();
            if (token.group("name") == null) {
                tokens.add(word);
            } else if (!word.equals(AnswerWords.label(unknowns.truss().forceUnit()))
                    && !word.equals(AnswerWords.label(unknowns.truss().lengthUnit()))) {
                names(word);
            }
            at = token.end();
        }
        if (at < text.length()) {
            throw new AnswerReader.NotRead("\"" + text.substring(at) + "\" is not understood");
        }
    }

    /** "L0-U1" is one name; "AB-AF" are two with a minus between. */
    private void names(String word) throws AnswerReader.NotRead {
        if (unknowns.find(word).isPresent()) {
            tokens.add(word);
            return;
        }
        int cut = word.indexOf('-');
        if (cut <= 0) {
            throw new AnswerReader.NotRead("\"" + word + "\" is no force of this truss");
        }
        names(word.substring(0, cut));
        split(word.substring(cut));
    }

    private double sum(Map<Integer, Double> factors, int side) throws AnswerReader.NotRead {
        double constant = 0;
        do {
            int sign = 1;
            while (at("+") || at("-")) {
                sign = at("-") ? -sign : sign;
                next++;
            }
            constant += term(factors, side * sign);
        } while (at("+") || at("-"));
        return constant;
    }

    private double term(Map<Integer, Double> factors, int sign) throws AnswerReader.NotRead {
        double factor = sign;
        OptionalInt unknown = OptionalInt.empty();
        int first = next;
        while (next < tokens.size() && !at("+") && !at("-") && !at("=") && !at(")")) {
            OptionalInt force = unknowns.find(tokens.get(next));
            if (force.isPresent() && unknown.isPresent()) {
                throw new AnswerReader.NotRead("two forces are multiplied");
            } else if (force.isPresent()) {
                unknown = force;
                next++;
            } else if (at("/")) {
                next++;
                factor /= number();
            } else if (next > first && (at("*") || at("\u00b7") || at("\u00d7"))) {
                next++;
            } else {
                factor *= number();
            }
        }
        if (next == first) {
            throw new AnswerReader.NotRead("a term is missing");
        }
        if (unknown.isPresent()) {
            factors.merge(unknown.getAsInt(), factor, Double::sum);
            return 0;
        }
        return factor;
    }

    private double number() throws AnswerReader.NotRead {
        if (next >= tokens.size()) {
            throw new AnswerReader.NotRead("it ends too soon");
        }
        String token = tokens.get(next++);
        if (token.equals("(")) {
            int sign = at("-") ? -1 : 1;
            next += at("-") || at("+") ? 1 : 0;
            double value = sign * number();
            if (at("/")) {
                next++;
                value /= number();
            }
            take(")");
            return value;
        }
        if (token.equals("sin") || token.equals("cos")) {
            double radians = Math.toRadians(number());
            next += at("\u00b0") ? 1 : 0;
            return token.equals("sin") ? Math.sin(radians) : Math.cos(radians);
        }
        if (token.equals("\u221a") || token.equals("sqrt")) {
            return Math.sqrt(number());
        }
        if (!token.matches("[\\d.]+")) {
            throw new AnswerReader.NotRead("\"" + token + "\" is not expected there");
        }
        double value = Double.parseDouble(token);
        next += at("\u00b0") ? 1 : 0;
        return value;
    }

    private boolean at(String token) {
        return next < tokens.size() && tokens.get(next).equals(token);
    }

    private void take(String token) throws AnswerReader.NotRead {
        if (!at(token)) {
            throw new AnswerReader.NotRead("\"" + token + "\" is missing");
        }
        next++;
    }
}
