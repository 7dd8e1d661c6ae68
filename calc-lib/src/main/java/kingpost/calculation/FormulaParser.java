package kingpost.calculation;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import javax.measure.Unit;
import kingpost.calculation.Formula.Amount;
import kingpost.calculation.Formula.Call;
import kingpost.calculation.Formula.Negative;
import kingpost.calculation.Formula.Power;
import kingpost.calculation.Formula.Product;
import kingpost.calculation.Formula.Quotient;
import kingpost.calculation.Formula.Sum;
import kingpost.calculation.Formula.Symbol;
import kingpost.units.CalculationException;
import kingpost.units.Quantity;
import kingpost.units.UnitLabel;

/** Reads formulas and checks: one method for each rule of the package's grammar. */
final class FormulaParser {

    private static final int DEEPEST = 100;

    private final Tokens tokens;
    private int depth;

    private FormulaParser(String text) {
        tokens = new Tokens(text);
    }

    static Formula formula(String text) {
        FormulaParser parser = new FormulaParser(text);
        Formula formula = parser.sum();
        if (parser.comparison() != null) {
            throw parser.tokens.error("there is a comparison", "a comparison goes into check(...), not a formula");
        }
        parser.requireEnd();
        return formula;
    }

    static Comparison check(String text) {
        FormulaParser parser = new FormulaParser(text);
        Formula left = parser.sum();
        Comparison.Sign sign = parser.comparison();
        if (sign == null) {
            throw parser.tokens.error("a comparison is missing", "write one such as \"N <= N_Rd\"");
        }
        parser.tokens.next();
        Formula right = parser.sum();
        if (parser.comparison() != null) {
            throw parser.tokens.error("there is a second comparison", "write one check for each");
        }
        parser.requireEnd();
        return new Comparison(left, sign, right);
    }

    private Comparison.Sign comparison() {
        return Arrays.stream(Comparison.Sign.values())
                .filter(sign -> tokens.isSign(sign.typed()))
                .findFirst().orElse(null);
    }

    private void requireEnd() {
        if (!tokens.atEnd()) {
            throw unexpected();
        }
    }

    private Formula sum() {
        if (++depth > DEEPEST) {
            throw tokens.error("it is nested more than " + DEEPEST + " deep", "write it in several lines");
        }
        Formula sum = term();
        while (tokens.isSign("+") || tokens.isSign("-")) {
            boolean minus = tokens.isSign("-");
            tokens.next();
            sum = new Sum(sum, term(), minus);
        }
        depth--;
        return sum;
    }

    private Formula term() {
        Formula term = signed();
        while (tokens.isSign("*") || tokens.isSign("/")) {
            boolean over = tokens.isSign("/");
            tokens.next();
            term = over ? new Quotient(term, signed()) : new Product(term, signed());
        }
        return term;
    }

    private Formula signed() {
        boolean minus = false;
        while (tokens.isSign("-") || tokens.isSign("+")) {
            if (minus) {
                throw tokens.error("there are two signs", "put what follows the first in parentheses");
            }
            minus = tokens.isSign("-");
            tokens.next();
        }
        Formula power = power();
        return minus ? new Negative(power) : power;
    }

    private Formula power() {
        Formula base = value();
        if (!tokens.accept("^")) {
            return base;
        }
        if (++depth > DEEPEST) {
            throw tokens.error("it is nested more than " + DEEPEST + " deep", "write it in several lines");
        }
        Power power = new Power(base, signed());
        depth--;
        return power;
    }

    private Formula value() {
        if (tokens.number() != null) {
            return amount();
        }
        if (tokens.name() != null) {
            return named();
        }
        if (tokens.accept("(")) {
            Formula inner = sum();
            if (!tokens.accept(")")) {
                throw tokens.error("a closing parenthesis is missing", "close what is open");
            }
            return inner;
        }
        throw tokens.atEnd() ? tokens.error("a value is missing", "complete it") : unexpected();
    }

    private Formula amount() {
        double number = Double.parseDouble(tokens.number());
        tokens.next();
        if (tokens.bracketedUnit() != null) {
            Unit<?> unit = UnitLabel.parse(tokens.bracketedUnit());
            tokens.next();
            return new Amount(Quantity.of(number, unit), "");
        }
        for (String sign : List.of("%", "\u00b0")) {
            if (tokens.accept(sign)) {
                return new Amount(Quantity.of(number, UnitLabel.parse(sign)), "");
            }
        }
        return tokens.name() == null ? new Amount(Quantity.of(number), "") : withUnit(number, tokens.name());
    }

    private Formula withUnit(double number, String name) {
        Unit<?> unit;
        try {
            unit = UnitLabel.parse(name);
        } catch (CalculationException e) {
            throw tokens.error("a number and " + name + ", which is no unit, stand side by side",
                    "write * between them");
        }
        tokens.next();
        String power = tokens.power();
        return new Amount(Quantity.of(number, power.isEmpty() ? unit : unit.pow(Integer.parseInt(power))), name);
    }

    private Formula named() {
        String name = tokens.name();
        tokens.next();
        if (!tokens.isSign("(")) {
            return new Symbol(name);
        }
        MathFunction function = MathFunction.named(name).orElseThrow(() -> tokens.error(
                "a function called " + name + " is not known", "known are " + known() + "; for a product write *"));
        tokens.next();
        List<Formula> arguments = arguments();
        if (!function.takes(arguments.size())) {
            throw tokens.error("the function " + name + " has " + arguments.size() + " values before it",
                    "give it " + function.arity());
        }
        return new Call(function, arguments);
    }

    private List<Formula> arguments() {
        List<Formula> arguments = new ArrayList<>();
        do {
            arguments.add(sum());
        } while (tokens.accept(","));
        if (!tokens.accept(")")) {
            throw tokens.error("a closing parenthesis is missing", "close what is open");
        }
        return arguments;
    }

    private CalculationException unexpected() {
        return tokens.error("something stands where it cannot be read",
                "write values joined by + - * / ^, with parentheses, and a point for decimals");
    }

    private static String known() {
        return Arrays.stream(MathFunction.values()).map(MathFunction::word).collect(Collectors.joining(", "));
    }
}
