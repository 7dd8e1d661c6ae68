package kingpost.calculation;

import static kingpost.units.StructuralUnits.deg;
import static kingpost.units.StructuralUnits.one;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import kingpost.units.CalculationException;
import kingpost.units.Quantity;

/** The functions that a formula may call. */
public enum MathFunction {
    SQRT, ABS, MIN, MAX, SIN, COS, TAN, ASIN, ACOS, ATAN, LN, LOG10, EXP, FLOOR, CEIL;

    /** The function that formulas call {@code word}, if there is one. */
    static Optional<MathFunction> named(String word) {
        return Arrays.stream(values()).filter(function -> function.word().equals(word)).findFirst();
    }

    /** How formulas call it. */
    String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** True when {@code count} arguments are right. */
    boolean takes(int count) {
        return this == MIN || this == MAX ? count >= 2 : count == 1;
    }

    /** How many arguments it takes, in words. */
    String arity() {
        return this == MIN || this == MAX ? "two or more values" : "one value";
    }

    /**
     * The function's value.
     *
     * @throws CalculationException when an argument is of the wrong kind, or outside what the function is defined for
     */
    Quantity apply(List<Quantity> arguments) {
        Quantity x = arguments.get(0);
        return switch (this) {
            case SQRT -> x.sqrt();
            case ABS -> x.abs();
            case MIN -> arguments.stream().reduce((a, b) -> b.compareTo(a) < 0 ? b : a).orElse(x);
            case MAX -> arguments.stream().reduce((a, b) -> b.compareTo(a) > 0 ? b : a).orElse(x);
            case SIN, COS, TAN -> ofAngle(x);
            case ASIN -> angle(x, Math::asin);
            case ACOS -> angle(x, Math::acos);
            case ATAN -> angle(x, Math::atan);
            case LN -> plain(x, Math::log);
            case LOG10 -> plain(x, Math::log10);
            case EXP -> plain(x, Math::exp);
            case FLOOR -> plain(x, Math::floor);
            case CEIL -> plain(x, Math::ceil);
        };
    }

    /** Exact at whole quarter turns, where a circle function of a rounded pi is not. */
    private Quantity ofAngle(Quantity x) {
        if (!x.isCompatible(deg)) {
            String advice = x.isCompatible(one) ? "write " + x + " deg or " + x + " rad" : "an angle is needed";
            throw new CalculationException("Cannot take the " + longWord() + " of " + x + ": it is "
                    + kind(x) + ", not an angle; " + advice + ".");
        }
        double degrees = x.in(deg);
        double turns = degrees / 90;
        if (turns == Math.rint(turns)) {
            return atQuarterTurn(x, (int) (((long) turns % 4 + 4) % 4));
        }
        double radians = Math.toRadians(degrees);
        return Quantity.of(this == SIN ? Math.sin(radians) : this == COS ? Math.cos(radians) : Math.tan(radians));
    }

    private Quantity atQuarterTurn(Quantity x, int quarter) {
        int sine = quarter == 1 ? 1 : quarter == 3 ? -1 : 0;
        int cosine = quarter == 0 ? 1 : quarter == 2 ? -1 : 0;
        if (this == TAN && cosine == 0) {
            throw new CalculationException("Cannot take the tangent of " + x + ": it is infinite; check the angle.");
        }
        return Quantity.of(this == SIN ? sine : this == COS ? cosine : 0);
    }

    private Quantity angle(Quantity x, DoubleUnaryOperator inverse) {
        requirePlain(x);
        double ratio = x.in(one);
        if (this != ATAN && Math.abs(ratio) > 1) {
            throw new CalculationException("Cannot take the " + longWord() + " of " + x
                    + ": it is not from \u22121 to 1; check the ratio.");
        }
        return Quantity.of(Math.toDegrees(inverse.applyAsDouble(ratio)), deg);
    }

    private Quantity plain(Quantity x, DoubleUnaryOperator operator) {
        requirePlain(x);
        double number = x.in(one);
        if ((this == LN || this == LOG10) && number <= 0) {
            throw new CalculationException("Cannot take the " + longWord() + " of " + x
                    + ": it is not above zero; check the value.");
        }
        return Quantity.of(operator.applyAsDouble(number));
    }

    private void requirePlain(Quantity x) {
        if (!x.isCompatible(one)) {
            throw new CalculationException("Cannot take the " + longWord() + " of " + x + ": it is " + kind(x)
                    + ", not a plain number; divide it by a quantity of its kind first.");
        }
    }

    /** "a force", "an angle". */
    static String kind(Quantity x) {
        return ("aeiou".indexOf(x.kind().charAt(0)) >= 0 ? "an " : "a ") + x.kind();
    }

    private String longWord() {
        return switch (this) {
            case SQRT -> "square root";
            case ABS -> "size";
            case MIN -> "smallest";
            case MAX -> "largest";
            case SIN -> "sine";
            case COS -> "cosine";
            case TAN -> "tangent";
            case ASIN -> "arcsine";
            case ACOS -> "arccosine";
            case ATAN -> "arctangent";
            case LN, LOG10 -> "logarithm";
            case EXP -> "exponential";
            case FLOOR, CEIL -> "whole number";
        };
    }
}
