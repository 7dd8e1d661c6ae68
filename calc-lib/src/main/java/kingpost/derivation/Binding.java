package kingpost.derivation;

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

/** How strongly an expression holds together, from loose to tight; decides on parentheses. */
public enum Binding {

    /** Has a relation in it. */
    RELATION,
    /** Terms added or subtracted. */
    SUM,
    /** A number, amount or product that begins with a minus sign. */
    SIGNED,
    /** Factors. */
    PRODUCT,
    /** A number without sign, or an amount: two of them side by side would read as one. */
    NUMBER,
    /** Stands on its own anywhere. */
    ATOM;

    public static Binding of(Expression expression) {
        return expression.accept(new Finder());
    }

    private static final class Finder implements Expression.Visitor<Binding> {
        @Override
        public Binding symbol(Symbol symbol) {
            return ATOM;
        }

        @Override
        public Binding numeral(Numeral numeral) {
            return numeral.isNegative() ? SIGNED : NUMBER;
        }

        @Override
        public Binding amount(Amount amount) {
            return amount.number().isNegative() ? SIGNED : NUMBER;
        }

        @Override
        public Binding sum(Sum sum) {
            return sum.terms().size() == 1 ? SIGNED : SUM;
        }

        @Override
        public Binding product(Product product) {
            Binding first = of(product.factors().get(0));
            return first == SIGNED ? SIGNED : PRODUCT;
        }

        @Override
        public Binding fraction(Fraction fraction) {
            return ATOM;
        }

        @Override
        public Binding root(Root root) {
            return ATOM;
        }

        @Override
        public Binding power(Power power) {
            return PRODUCT;
        }

        @Override
        public Binding function(Function function) {
            return PRODUCT;
        }

        @Override
        public Binding call(Call call) {
            return ATOM;
        }

        @Override
        public Binding relation(Relation relation) {
            return RELATION;
        }

        @Override
        public Binding sigma(Sigma sigma) {
            return PRODUCT;
        }

        @Override
        public Binding parenthesised(Parenthesised parenthesised) {
            return ATOM;
        }

        @Override
        public Binding sense(Sense sense) {
            return ATOM;
        }

        @Override
        public Binding words(Words words) {
            return ATOM;
        }
    }
}
