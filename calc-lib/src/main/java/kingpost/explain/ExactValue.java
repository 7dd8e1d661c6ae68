package kingpost.explain;

import java.math.BigInteger;
import java.util.Optional;

import kingpost.derivation.Expression;
import kingpost.derivation.Expressions;
import kingpost.exact.Surd;

/** Exact answers as they are written: a fraction, a root, or both. */
final class ExactValue {

    private ExactValue() {
    }

    /** The value, if it is short enough to tell a reader more than its decimals. */
    static Optional<Expression> of(Optional<Surd> value) {
        return value.filter(Surd::isReadable).map(ExactValue::of);
    }

    static Expression of(Surd value) {
        BigInteger above = value.coefficient().numerator().abs();
        BigInteger below = value.coefficient().denominator();
        Expression number = Expressions.number(above.toString());
        Expression root = Expressions.root(Expressions.number(value.radicand().toString()));
        Expression top = value.isRational() ? number
                : above.equals(BigInteger.ONE) ? root : Expressions.product(number, root);
        Expression size = below.equals(BigInteger.ONE) ? top
                : Expressions.fraction(top, Expressions.number(below.toString()));
        return value.signum() < 0 ? Expressions.negative(size) : size;
    }

    /** Whether three significant figures do not already say it all. */
    static boolean saysMore(Optional<Surd> value) {
        return value.filter(Surd::isReadable).filter(surd -> !surd.isRational()
                || Math.abs(Double.parseDouble(Notation.three(surd.doubleValue()).digits()) - surd.doubleValue())
                > 1e-12 * Math.abs(surd.doubleValue())).isPresent();
    }
}
