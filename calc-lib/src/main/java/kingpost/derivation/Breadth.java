package kingpost.derivation;

import java.util.List;

import kingpost.derivation.Expression.Amount;
import kingpost.derivation.Expression.Call;
import kingpost.derivation.Expression.Fraction;
import kingpost.derivation.Expression.Function;
import kingpost.derivation.Expression.Numeral;
import kingpost.derivation.Expression.Parenthesised;
import kingpost.derivation.Expression.Power;
import kingpost.derivation.Expression.Product;
import kingpost.derivation.Expression.Relation;
import kingpost.derivation.Expression.Root;
import kingpost.derivation.Expression.Sense;
import kingpost.derivation.Expression.Sigma;
import kingpost.derivation.Expression.Sum;
import kingpost.derivation.Expression.Symbol;
import kingpost.derivation.Expression.Words;

/** About how many characters wide an expression is when it is set in two dimensions: good enough to break lines by. */
public final class Breadth implements Expression.Visitor<Integer> {

    private static final int SIGN = 3;

    private Breadth() {
    }

    public static int of(Expression expression) {
        return expression.accept(new Breadth());
    }

    private static int all(List<? extends Expression> parts) {
        return parts.stream().mapToInt(Breadth::of).sum();
    }

    @Override
    public Integer symbol(Symbol symbol) {
        return symbol.name().length() + symbol.primes() + (symbol.subscript().length() * 2 + 2) / 3;
    }

    @Override
    public Integer numeral(Numeral numeral) {
        return numeral.digits().length();
    }

    @Override
    public Integer amount(Amount amount) {
        return of(amount.number()) + 1 + amount.unit().length();
    }

    @Override
    public Integer sum(Sum sum) {
        return sum.terms().stream().mapToInt(term -> SIGN + of(term.value())).sum();
    }

    @Override
    public Integer product(Product product) {
        return all(product.factors()) + product.factors().size() - 1;
    }

    @Override
    public Integer fraction(Fraction fraction) {
        return Math.max(of(fraction.numerator()), of(fraction.denominator())) + 1;
    }

    @Override
    public Integer root(Root root) {
        return 2 + of(root.radicand());
    }

    @Override
    public Integer power(Power power) {
        return of(power.base()) + of(power.exponent());
    }

    @Override
    public Integer function(Function function) {
        return SIGN + 1 + of(function.argument());
    }

    @Override
    public Integer call(Call call) {
        return call.name().length() + 2 * call.arguments().size() + all(call.arguments());
    }

    @Override
    public Integer relation(Relation relation) {
        return all(relation.sides()) + SIGN * relation.relators().size();
    }

    @Override
    public Integer sigma(Sigma sigma) {
        return 1 + of(sigma.summand());
    }

    @Override
    public Integer parenthesised(Parenthesised parenthesised) {
        return 2 + of(parenthesised.inner());
    }

    @Override
    public Integer sense(Sense sense) {
        return 2;
    }

    @Override
    public Integer words(Words words) {
        return words.text().length();
    }
}
