package kingpost.calculation;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import kingpost.calculation.Formula.Amount;
import kingpost.calculation.Formula.Call;
import kingpost.calculation.Formula.Negative;
import kingpost.calculation.Formula.Power;
import kingpost.calculation.Formula.Product;
import kingpost.calculation.Formula.Quotient;
import kingpost.calculation.Formula.Sum;
import kingpost.calculation.Formula.Symbol;
import kingpost.derivation.Expression;
import kingpost.derivation.Expression.Term;
import kingpost.derivation.Expression.Times;
import kingpost.derivation.Expressions;

/** Writes a formula as mathematics: with its symbols, or with numbers and units in their places. */
final class FormulaWriter implements Formula.Visitor<Expression> {

    private final Map<String, Operand> numbers;
    private final boolean withNumbers;
    private final Lettering lettering;

    private FormulaWriter(Map<String, Operand> numbers, boolean withNumbers, Lettering lettering) {
        this.numbers = numbers;
        this.withNumbers = withNumbers;
        this.lettering = lettering;
    }

    static Expression symbols(Formula formula, Lettering lettering) {
        return formula.accept(new FormulaWriter(Map.of(), false, lettering));
    }

    /** Names without a number here stay names: the variable of a table. */
    static Expression numbers(Formula formula, Map<String, Operand> numbers, Lettering lettering) {
        return formula.accept(new FormulaWriter(numbers, true, lettering));
    }

    @Override
    public Expression amount(Amount amount) {
        return lettering.given(amount.value());
    }

    @Override
    public Expression symbol(Symbol symbol) {
        Operand number = numbers.get(symbol.name());
        if (withNumbers && number != null) {
            return lettering.operand(number);
        }
        return SymbolName.symbol(symbol.name());
    }

    @Override
    public Expression negative(Negative negative) {
        return Expressions.negative(negative.value().accept(this));
    }

    @Override
    public Expression sum(Sum sum) {
        List<Term> terms = new ArrayList<>();
        collectTerms(sum, terms);
        return Expressions.sum(terms);
    }

    /** The terms of a chain of sums, which leans to the left. */
    private void collectTerms(Formula formula, List<Term> terms) {
        if (formula instanceof Sum sum) {
            collectTerms(sum.left(), terms);
            Expression right = sum.right().accept(this);
            terms.add(sum.minus() ? Expressions.minus(right) : Expressions.plus(right));
        } else if (formula instanceof Negative negative) {
            terms.add(Expressions.minus(negative.value().accept(this)));
        } else {
            terms.add(Expressions.plus(formula.accept(this)));
        }
    }

    @Override
    public Expression product(Product product) {
        List<Formula> factors = new ArrayList<>();
        collectFactors(product, factors);
        Times times = !withNumbers && readsTogether(factors) ? Times.NOTHING : Times.DOT;
        return Expressions.product(times, factors.stream().map(f -> f.accept(this)).toArray(Expression[]::new));
    }

    private static void collectFactors(Formula formula, List<Formula> factors) {
        if (formula instanceof Product product) {
            collectFactors(product.left(), factors);
            factors.add(product.right());
        } else {
            factors.add(formula);
        }
    }

    /** Side by side without a sign: a number at most in front, then symbols of one letter, powers and functions. */
    private static boolean readsTogether(List<Formula> factors) {
        for (int i = 0; i < factors.size(); i++) {
            Formula factor = factors.get(i) instanceof Power power ? power.base() : factors.get(i);
            boolean number = factor instanceof Amount amount && i == 0 && amount.value().kind().equals("plain number");
            boolean letter = factor instanceof Symbol symbol
                    && SymbolName.symbol(symbol.name()).name().codePoints().count() == 1;
            boolean closed = factor instanceof Call || factor instanceof Sum || factor instanceof Quotient;
            if (!number && !letter && !closed) {
                return false;
            }
        }
        return true;
    }

    @Override
    public Expression quotient(Quotient quotient) {
        return Expressions.fraction(quotient.above().accept(this), quotient.below().accept(this));
    }

    @Override
    public Expression power(Power power) {
        return Expressions.power(power.base().accept(this), power.exponent().accept(this));
    }

    @Override
    public Expression call(Call call) {
        Expression[] arguments = call.arguments().stream().map(a -> a.accept(this)).toArray(Expression[]::new);
        return switch (call.function()) {
            case SQRT -> Expressions.root(arguments[0]);
            case SIN -> Expressions.sin(arguments[0]);
            case COS -> Expressions.cos(arguments[0]);
            case TAN -> Expressions.tan(arguments[0]);
            case ATAN -> Expressions.atan(arguments[0]);
            case ASIN -> Expressions.call("arcsin", arguments);
            case ACOS -> Expressions.call("arccos", arguments);
            default -> Expressions.call(call.function().word(), arguments);
        };
    }
}
