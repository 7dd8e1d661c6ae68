package kingpost.render;

import java.util.List;

import kingpost.derivation.Binding;
import kingpost.derivation.Expression;
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
import kingpost.derivation.Expression.Sense;
import kingpost.derivation.Expression.Sigma;
import kingpost.derivation.Expression.Sum;
import kingpost.derivation.Expression.Symbol;
import kingpost.derivation.Expression.Term;
import kingpost.derivation.Expression.Words;

/**
 * Writes mathematics on one line of plain text: {@code (3/5) F_AB − 12.5 kN = 0}. Minus is U+2212; fractions and roots
 * get the parentheses that the line needs.
 */
final class LinearExpression implements Expression.Visitor<String> {

    private static final LinearExpression WRITER = new LinearExpression();
    private static final String RAISED = "⁰¹²³⁴⁵⁶⁷⁸⁹";

    private LinearExpression() {
    }

    static String of(Expression expression) {
        return expression.accept(WRITER);
    }

    static String relator(Relator relator) {
        return switch (relator) {
            case EQUAL -> "=";
            case ABOUT -> "≈";
            case LESS -> "<";
            case GREATER -> ">";
            case AT_MOST -> "≤";
            case AT_LEAST -> "≥";
            case NOT_EQUAL -> "≠";
            case GOES_ON -> "";
        };
    }

    static String arrow(Sense sense) {
        return switch (sense) {
            case RIGHT -> "→+";
            case LEFT -> "←+";
            case UP -> "↑+";
            case DOWN -> "↓+";
            case COUNTERCLOCKWISE -> "↺+";
            case UP_RIGHT -> "↗+";
            case UP_LEFT -> "↖+";
            case DOWN_RIGHT -> "↘+";
            case DOWN_LEFT -> "↙+";
        };
    }

    /** Whether a function's argument is clear without parentheses. */
    static boolean standsAlone(Expression argument) {
        Binding binding = Binding.of(argument);
        return binding == Binding.ATOM || binding == Binding.NUMBER;
    }

    @Override
    public String symbol(Symbol symbol) {
        String subscript = symbol.subscript().isEmpty() ? "" : "_" + symbol.subscript();
        return symbol.name() + "′".repeat(symbol.primes()) + subscript;
    }

    @Override
    public String numeral(Numeral numeral) {
        String digits = (numeral.isNegative() ? "−" : "") + numeral.mantissa();
        return digits + numeral.exponent().map(e -> "×10" + raised(e)).orElse("");
    }

    private static String raised(String exponent) {
        StringBuilder out = new StringBuilder();
        for (char c : exponent.toCharArray()) {
            out.append(c == '-' ? '⁻' : RAISED.charAt(c - '0'));
        }
        return out.toString();
    }

    @Override
    public String amount(Amount amount) {
        String space = UnitSymbol.standsClose(amount.unit()) ? "" : " ";
        return numeral(amount.number()) + space + amount.unit();
    }

    @Override
    public String sum(Sum sum) {
        StringBuilder out = new StringBuilder();
        for (Term term : sum.terms()) {
            String sign = term.minus() ? "−" : out.isEmpty() && !sum.signFirst() ? "" : "+";
            out.append(out.isEmpty() ? sum.signFirst() ? sign + " " : sign : " " + sign + " ").append(of(term.value()));
        }
        return out.toString();
    }

    @Override
    public String product(Product product) {
        String sign = switch (product.times()) {
            case NOTHING -> " ";
            case DOT -> " · ";
            case CROSS -> " × ";
        };
        return String.join(sign, product.factors().stream().map(LinearExpression::factor).toList());
    }

    private static String factor(Expression factor) {
        return factor instanceof Fraction ? "(" + of(factor) + ")" : of(factor);
    }

    @Override
    public String fraction(Fraction fraction) {
        return part(fraction.numerator(), Binding.PRODUCT) + "/" + part(fraction.denominator(), Binding.NUMBER);
    }

    private static String part(Expression part, Binding loosest) {
        boolean clear = Binding.of(part).compareTo(loosest) >= 0 && !(part instanceof Fraction);
        return clear ? of(part) : "(" + of(part) + ")";
    }

    @Override
    public String root(Root root) {
        boolean plain = root.radicand() instanceof Numeral number && !number.isNegative()
                || root.radicand() instanceof Symbol;
        return "√" + (plain ? of(root.radicand()) : "(" + of(root.radicand()) + ")");
    }

    @Override
    public String power(Power power) {
        boolean digits = power.exponent() instanceof Numeral n && n.digits().matches("-?\\d+");
        String exponent = of(power.exponent());
        return of(power.base()) + (digits ? raised(((Numeral) power.exponent()).digits()) : "^(" + exponent + ")");
    }

    @Override
    public String function(Function function) {
        String name = switch (function.name()) {
            case SIN -> "sin";
            case COS -> "cos";
            case TAN -> "tan";
            case ATAN -> "arctan";
        };
        boolean clear = standsAlone(function.argument()) && !(function.argument() instanceof Fraction);
        return name + (clear ? " " + of(function.argument()) : "(" + of(function.argument()) + ")");
    }

    @Override
    public String call(Call call) {
        return call.name() + "(" + String.join(", ", call.arguments().stream().map(LinearExpression::of).toList())
                + ")";
    }

    @Override
    public String relation(Relation relation) {
        StringBuilder out = new StringBuilder(of(relation.sides().get(0)));
        List<Relator> relators = relation.relators();
        for (int i = 0; i < relators.size(); i++) {
            out.append(' ').append(relator(relators.get(i))).append(' ').append(of(relation.sides().get(i + 1)));
        }
        return out.toString();
    }

    @Override
    public String sigma(Sigma sigma) {
        return "Σ" + of(sigma.summand());
    }

    @Override
    public String parenthesised(Parenthesised parenthesised) {
        return "(" + of(parenthesised.inner()) + ")";
    }

    @Override
    public String sense(Sense sense) {
        return arrow(sense) + " ";
    }

    @Override
    public String words(Words words) {
        return words.text();
    }
}
