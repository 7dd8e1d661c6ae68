package kingpost.calculation;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import kingpost.derivation.Expression;
import kingpost.derivation.Expressions;
import kingpost.units.CalculationException;

/** The name of a line's value: as it is typed, and as mathematics shows it. */
final class SymbolName {

    static final String PI = "pi";

    private static final Pattern NAME = Pattern.compile("\\p{L}[\\p{L}\\p{Nd}_]*");
    private static final Pattern INDEXED = Pattern.compile("(\\p{L}+?)(?:_+(.*)|(\\p{Nd}.*))?");

    private SymbolName() {
    }

    /**
     * {@code name} itself, when a line may have it.
     *
     * @throws CalculationException when it is not a name, or means something already
     */
    static String checked(String name) {
        if (name == null || name.isBlank()) {
            throw new CalculationException("Name: it is missing; write a letter followed by letters, digits and "
                    + "underscores, as in A_req or sigma_1.");
        }
        if (!NAME.matcher(name).matches()) {
            throw new CalculationException("Name \"" + name + "\": a name is a letter followed by letters, digits and "
                    + "underscores; write it as in A_req or sigma_1.");
        }
        if (name.equals(PI) || MathFunction.named(name).isPresent()) {
            throw new CalculationException("Name \"" + name + "\": it means something in every formula already; choose "
                    + "another, such as " + name + "_1.");
        }
        return name;
    }

    /** {@code sigma_max} as \u03c3 with subscript max; {@code f_c_d} with subscript c,d; {@code L1} with subscript 1. */
    static Expression.Symbol symbol(String name) {
        Matcher matcher = INDEXED.matcher(name);
        if (!matcher.matches()) {
            return Expressions.symbol(name);
        }
        String index = matcher.group(2) != null ? matcher.group(2) : matcher.group(3);
        String base = matcher.group(1);
        String letter = Expressions.isGreek(base) ? Expressions.greek(base).name() : base;
        return Expressions.symbol(letter, index == null ? "" : index.replaceAll("_+$", "").replaceAll("_+", ","));
    }
}
