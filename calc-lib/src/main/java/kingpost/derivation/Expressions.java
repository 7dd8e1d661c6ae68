package kingpost.derivation;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

import kingpost.derivation.Expression.Amount;
import kingpost.derivation.Expression.Call;
import kingpost.derivation.Expression.Fraction;
import kingpost.derivation.Expression.Function;
import kingpost.derivation.Expression.Numeral;
import kingpost.derivation.Expression.Parenthesised;
import kingpost.derivation.Expression.Power;
import kingpost.derivation.Expression.Product;
import kingpost.derivation.Expression.Relation;
import kingpost.derivation.Expression.Relator;
import kingpost.derivation.Expression.Root;
import kingpost.derivation.Expression.Sigma;
import kingpost.derivation.Expression.Sum;
import kingpost.derivation.Expression.Symbol;
import kingpost.derivation.Expression.Term;
import kingpost.derivation.Expression.Times;
import kingpost.derivation.Expression.Words;

/** Writes expressions as one says them, with parentheses where the reader needs them. */
public final class Expressions {

    private static final Map<String, String> GREEK = Map.ofEntries(
            Map.entry("alpha", "α"), Map.entry("beta", "β"), Map.entry("gamma", "γ"), Map.entry("delta", "δ"),
            Map.entry("epsilon", "ε"), Map.entry("eta", "η"), Map.entry("theta", "θ"), Map.entry("kappa", "κ"),
            Map.entry("lambda", "λ"), Map.entry("mu", "μ"), Map.entry("nu", "ν"), Map.entry("pi", "π"),
            Map.entry("rho", "ρ"), Map.entry("sigma", "σ"), Map.entry("tau", "τ"), Map.entry("phi", "φ"),
            Map.entry("psi", "ψ"), Map.entry("omega", "ω"), Map.entry("Delta", "Δ"), Map.entry("Sigma", "Σ"),
            Map.entry("zeta", "ζ"), Map.entry("xi", "ξ"), Map.entry("chi", "χ"), Map.entry("Gamma", "Γ"),
            Map.entry("Theta", "Θ"), Map.entry("Lambda", "Λ"), Map.entry("Xi", "Ξ"), Map.entry("Pi", "Π"),
            Map.entry("Phi", "Φ"), Map.entry("Psi", "Ψ"), Map.entry("Omega", "Ω"));

    private Expressions() {
    }

    public static Symbol symbol(String name) {
        return new Symbol(name, "", 0);
    }

    public static Symbol symbol(String name, String subscript) {
        return new Symbol(name, subscript, 0);
    }

    /** @throws IllegalArgumentException if the letter is not one of those known by name */
    public static Symbol greek(String letter) {
        if (!isGreek(letter)) {
            throw new IllegalArgumentException("Greek letter \"" + letter + "\": not known; use one of "
                    + GREEK.keySet().stream().sorted().toList());
        }
        return symbol(GREEK.get(letter));
    }

    /** Whether the letter is one of those known by name. */
    public static boolean isGreek(String letter) {
        return GREEK.containsKey(letter);
    }

    public static Numeral number(long value) {
        return new Numeral(Long.toString(value));
    }

    /** @see Numeral */
    public static Numeral number(String digits) {
        return new Numeral(digits);
    }

    public static Amount amount(String digits, String unit) {
        return new Amount(new Numeral(digits), unit);
    }

    public static Words words(String text) {
        return new Words(text);
    }

    public static Sum negative(Expression value) {
        return new Sum(List.of(new Term(true, inSum(value, true))));
    }

    /** The terms added up; with no terms, nothing is left: 0. */
    public static Expression sum(List<Term> terms) {
        return sum(terms, false);
    }

    /** The same; with {@code signFirst} it goes on from a line above and begins with a sign. */
    static Expression sum(List<Term> terms, boolean signFirst) {
        if (terms.isEmpty()) {
            return number(0);
        }
        List<Term> written = new ArrayList<>();
        for (Term term : terms) {
            boolean signBefore = signFirst || term.minus() || !written.isEmpty();
            written.add(new Term(term.minus(), inSum(term.value(), signBefore)));
        }
        boolean single = !signFirst && written.size() == 1 && !written.get(0).minus();
        return single ? written.get(0).value() : new Sum(written, signFirst);
    }

    public static Term plus(Expression value) {
        return new Term(false, value);
    }

    public static Term minus(Expression value) {
        return new Term(true, value);
    }

    /** The factors side by side. */
    public static Expression product(Expression... factors) {
        return product(Times.NOTHING, factors);
    }

    /** The factors with the sign between them; one factor alone stays as it is. */
    public static Expression product(Times times, Expression... factors) {
        if (factors.length == 1) {
            return factors[0];
        }
        List<Expression> written = new ArrayList<>();
        for (Expression factor : factors) {
            written.add(inProduct(factor, times, written.isEmpty()));
        }
        return new Product(written, times);
    }

    public static Fraction fraction(Expression numerator, Expression denominator) {
        return new Fraction(numerator, denominator);
    }

    public static Fraction fraction(long numerator, long denominator) {
        return new Fraction(number(numerator), number(denominator));
    }

    public static Root root(Expression radicand) {
        return new Root(radicand);
    }

    public static Power power(Expression base, Expression exponent) {
        return new Power(Binding.of(base) == Binding.ATOM ? base : parenthesised(base), exponent);
    }

    public static Function cos(Expression angle) {
        return new Function(Function.Name.COS, angle);
    }

    public static Function sin(Expression angle) {
        return new Function(Function.Name.SIN, angle);
    }

    public static Function tan(Expression angle) {
        return new Function(Function.Name.TAN, angle);
    }

    public static Function atan(Expression slope) {
        return new Function(Function.Name.ATAN, slope);
    }

    /** The function by its own name, as in min(a, b). */
    public static Call call(String name, Expression... arguments) {
        return new Call(name, List.of(arguments));
    }

    public static Relation relation(Expression left, Relator relator, Expression right) {
        return new Relation(List.of(left, right), List.of(relator));
    }

    public static Relation equal(Expression... sides) {
        List<Relator> relators = new ArrayList<>();
        for (int i = 1; i < sides.length; i++) {
            relators.add(Relator.EQUAL);
        }
        return new Relation(List.of(sides), relators);
    }

    /** The relation with one more side. */
    public static Relation then(Relation relation, Relator relator, Expression side) {
        List<Expression> sides = new ArrayList<>(relation.sides());
        List<Relator> relators = new ArrayList<>(relation.relators());
        sides.add(side);
        relators.add(relator);
        return new Relation(sides, relators);
    }

    public static Sigma sigma(Expression summand) {
        return new Sigma(summand);
    }

    public static Parenthesised parenthesised(Expression inner) {
        return inner instanceof Parenthesised already ? already : new Parenthesised(inner);
    }

    private static Expression inSum(Expression value, boolean signBefore) {
        Binding binding = Binding.of(value);
        boolean clash = signBefore && (binding == Binding.SIGNED || binding == Binding.SUM);
        return clash || binding == Binding.RELATION ? parenthesised(value) : value;
    }

    private static Expression inProduct(Expression factor, Times times, boolean first) {
        Binding binding = Binding.of(factor);
        boolean loose = binding == Binding.SUM || binding == Binding.RELATION
                || binding == Binding.SIGNED && !first;
        boolean runsTogether = times == Times.NOTHING && !first && binding == Binding.NUMBER;
        return loose || runsTogether ? parenthesised(factor) : factor;
    }
}
