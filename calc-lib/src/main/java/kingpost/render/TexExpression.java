package kingpost.render;

import java.util.ArrayList;
import java.util.List;

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
import kingpost.derivation.EquationLine;

/** Writes mathematics in the part of LaTeX that LaTeX itself (with amsmath and amssymb), KaTeX and MathJax share. */
final class TexExpression implements Expression.Visitor<String> {

    private static final TexExpression WRITER = new TexExpression();

    private TexExpression() {
    }

    static String of(Expression expression) {
        return expression.accept(WRITER);
    }

    /** Lines lined up at their relation, as an {@code aligned} environment to stand in display mathematics. */
    static String aligned(List<EquationLine> lines) {
        boolean led = lines.stream().anyMatch(line -> line.lead().isPresent());
        List<String> rows = new ArrayList<>();
        for (EquationLine line : lines) {
            String lead = line.lead().map(which -> of(which) + "\\colon").orElse("");
            String remark = line.remark().isEmpty() ? "" : " &&" + TexText.inMath(line.remark());
            rows.add((led ? lead + " &\\quad& " : "") + of(line.left()) + " &" + relator(line.relator()) + " "
                    + of(line.right()) + remark);
        }
        return "\\begin{aligned}\n" + String.join(" \\\\\n", rows) + "\n\\end{aligned}";
    }

    static String relator(Relator relator) {
        return switch (relator) {
            case EQUAL -> "=";
            case ABOUT -> "\\approx";
            case LESS -> "<";
            case GREATER -> ">";
            case AT_MOST -> "\\le";
            case AT_LEAST -> "\\ge";
            case NOT_EQUAL -> "\\ne";
            case GOES_ON -> "";
        };
    }

    @Override
    public String symbol(Symbol symbol) {
        String subscript = symbol.subscript().isEmpty() ? "" : "_{" + subscript(symbol.subscript()) + "}";
        return name(symbol.name()) + "'".repeat(symbol.primes()) + subscript;
    }

    private static String name(String name) {
        if (name.matches("[A-Za-z]")) {
            return name;
        }
        String greek = TexText.greek(name);
        return greek.isEmpty() ? "{" + TexText.inMath(name) + "}" : greek;
    }

    /** An axis, with its primes, is slanted as a variable is; any other subscript is a label and stands upright. */
    private static String subscript(String subscript) {
        return AxisLabel.matches(subscript) ? subscript.replace("′", "'") : TexText.inMath(subscript);
    }

    @Override
    public String numeral(Numeral numeral) {
        String digits = (numeral.isNegative() ? "-" : "") + numeral.mantissa();
        return digits + numeral.exponent().map(e -> " \\times 10^{" + e + "}").orElse("");
    }

    @Override
    public String amount(Amount amount) {
        String unit = amount.unit();
        if (unit.isEmpty()) {
            return numeral(amount.number());
        }
        String space = UnitSymbol.standsClose(unit) ? "" : "\\,";
        return numeral(amount.number()) + space + unit(unit);
    }

    private static String unit(String label) {
        if (label.equals("°")) {
            return "^{\\circ}";
        }
        StringBuilder out = new StringBuilder();
        for (UnitSymbol part : UnitSymbol.parts(label)) {
            out.append(TexText.inMath(part.base()));
            out.append(part.power().isEmpty() ? "" : "^{" + part.power() + "}");
        }
        return out.toString();
    }

    @Override
    public String sum(Sum sum) {
        StringBuilder out = new StringBuilder();
        for (Term term : sum.terms()) {
            String sign = term.minus() ? "-" : out.isEmpty() && !sum.signFirst() ? "" : "+";
            String leading = sum.signFirst() ? "{}" + sign + " " : sign;
            out.append(out.isEmpty() ? leading : " " + sign + " ").append(of(term.value()));
        }
        return out.toString();
    }

    @Override
    public String product(Product product) {
        String sign = switch (product.times()) {
            case NOTHING -> " ";
            case DOT -> " \\cdot ";
            case CROSS -> " \\times ";
        };
        return String.join(sign, product.factors().stream().map(TexExpression::of).toList());
    }

    @Override
    public String fraction(Fraction fraction) {
        return "\\frac{" + of(fraction.numerator()) + "}{" + of(fraction.denominator()) + "}";
    }

    @Override
    public String root(Root root) {
        return "\\sqrt{" + of(root.radicand()) + "}";
    }

    @Override
    public String power(Power power) {
        return "{" + of(power.base()) + "}^{" + of(power.exponent()) + "}";
    }

    @Override
    public String function(Function function) {
        String name = switch (function.name()) {
            case SIN -> "\\sin";
            case COS -> "\\cos";
            case TAN -> "\\tan";
            case ATAN -> "\\arctan";
        };
        return name + (LinearExpression.standsAlone(function.argument())
                ? " " + of(function.argument())
                : fenced(of(function.argument())));
    }

    @Override
    public String call(Call call) {
        String arguments = String.join(", ", call.arguments().stream().map(TexExpression::of).toList());
        return TexText.inMath(call.name()) + "\\left(" + arguments + "\\right)";
    }

    @Override
    public String relation(Relation relation) {
        StringBuilder out = new StringBuilder(of(relation.sides().get(0)));
        for (int i = 0; i < relation.relators().size(); i++) {
            out.append(' ').append(relator(relation.relators().get(i)));
            out.append(' ').append(of(relation.sides().get(i + 1)));
        }
        return out.toString();
    }

    @Override
    public String sigma(Sigma sigma) {
        return "\\Sigma " + of(sigma.summand());
    }

    @Override
    public String parenthesised(Parenthesised parenthesised) {
        return fenced(of(parenthesised.inner()));
    }

    /** Parentheses grow only around what is taller than a line. */
    private static String fenced(String inner) {
        boolean tall = inner.contains("\\frac") || inner.contains("\\sqrt");
        return tall ? "\\left(" + inner + "\\right)" : "(" + inner + ")";
    }

    @Override
    public String sense(Sense sense) {
        return switch (sense) {
            case RIGHT -> "\\overset{+}{\\rightarrow}";
            case LEFT -> "\\overset{+}{\\leftarrow}";
            case UP -> "{+}{\\uparrow}";
            case DOWN -> "{+}{\\downarrow}";
            case COUNTERCLOCKWISE -> "{\\circlearrowleft}{+}";
            case UP_RIGHT -> "{+}{\\nearrow}";
            case UP_LEFT -> "{\\nwarrow}{+}";
            case DOWN_RIGHT -> "{\\searrow}{+}";
            case DOWN_LEFT -> "{+}{\\swarrow}";
        } + "\\;";
    }

    @Override
    public String words(Words words) {
        return TexText.inMath(words.text());
    }
}
