package kingpost.render;

import java.util.List;

import kingpost.derivation.EquationLine;
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
 * Writes mathematics in MathML Core. Source: W3C, MathML Core: only its elements and attributes are used, so that a
 * browser needs no script; columns are placed by style attributes, because Core has no {@code columnalign}. A cell's
 * content is a block, which one family of browsers moves only by its own value of {@code text-align}.
 */
final class MathMlExpression implements Expression.Visitor<String> {

    private static final MathMlExpression WRITER = new MathMlExpression();
    private static final String CELL = 
            "<mtd style=\"text-align:%1$s;text-align:-webkit-%1$s;padding:0.2em %2$s\">%3$s</mtd>";

    private static final String THIN = "<mspace width=\"0.17em\"></mspace>";

    private MathMlExpression() {
    }

    static String inline(Expression expression) {
        return "<math>" + of(expression) + "</math>";
    }

    static String display(Expression expression, String remark) {
        String words = remark.isEmpty() ? "" : "<mspace width=\"2em\"></mspace>" + text(remark);
        return "<math display=\"block\">" + row(of(expression) + words) + "</math>";
    }

    /** Lines lined up at their relation, as a table within mathematics. */
    static String aligned(List<EquationLine> lines) {
        StringBuilder out = new StringBuilder("<math display=\"block\"><mtable displaystyle=\"true\">");
        for (EquationLine line : lines) {
            String lead = line.lead().map(which -> row(of(which) + operator(":"))).orElse("");
            String right = line.relator() == Relator.GOES_ON ? ""
                    : row(operator(relator(line.relator())) + of(line.right()));
            out.append("\n<mtr>")
                    .append(cell("left", "1.5em 0.2em 0", lead))
                    .append(cell("right", "0", of(line.left())))
                    .append(cell("left", "0", right))
                    .append(cell("left", "0 0.2em 1.5em", line.remark().isEmpty() ? "" : text(line.remark())))
                    .append("</mtr>");
        }
        return out.append("\n</mtable></math>").toString();
    }

    static String relator(Relator relator) {
        return switch (relator) {
            case EQUAL -> "=";
            case ABOUT -> "≈";
            case LESS -> "&lt;";
            case GREATER -> "&gt;";
            case AT_MOST -> "≤";
            case AT_LEAST -> "≥";
            case NOT_EQUAL -> "≠";
            case GOES_ON -> "";
        };
    }

    private static String of(Expression expression) {
        return expression.accept(WRITER);
    }

    private static String cell(String align, String padding, String content) {
        return CELL.formatted(align, padding, content);
    }

    private static String row(String content) {
        return "<mrow>" + content + "</mrow>";
    }

    private static String operator(String sign) {
        return "<mo>" + sign + "</mo>";
    }

    private static String text(String words) {
        return "<mtext>" + HtmlText.of(words) + "</mtext>";
    }

    @Override
    public String symbol(Symbol symbol) {
        String name = "<mi>" + HtmlText.of(symbol.name()) + "</mi>";
        String primes = symbol.primes() == 0 ? "" : operator("′".repeat(symbol.primes()));
        if (symbol.subscript().isEmpty()) {
            return primes.isEmpty() ? name : "<msup>" + name + primes + "</msup>";
        }
        String subscript = subscript(symbol.subscript());
        return primes.isEmpty() ? "<msub>" + name + subscript + "</msub>"
                : "<msubsup>" + name + subscript + primes + "</msubsup>";
    }

    private static String subscript(String subscript) {
        if (!AxisLabel.matches(subscript)) {
            return text(subscript);
        }
        String axis = "<mi>" + subscript.charAt(0) + "</mi>";
        String primes = subscript.substring(1);
        return primes.isEmpty() ? axis : "<msup>" + axis + operator(primes) + "</msup>";
    }

    @Override
    public String numeral(Numeral numeral) {
        String digits = "<mn>" + numeral.mantissa() + "</mn>";
        String power = numeral.exponent().map(e -> operator("×") + "<msup><mn>10</mn>" + signed(e) + "</msup>")
                .orElse("");
        String sign = numeral.isNegative() ? "<mo form=\"prefix\">−</mo>" : "";
        return sign.isEmpty() && power.isEmpty() ? digits : row(sign + digits + power);
    }

    private static String signed(String exponent) {
        return exponent.startsWith("-") ? row(operator("−") + "<mn>" + exponent.substring(1) + "</mn>")
                : "<mn>" + exponent + "</mn>";
    }

    @Override
    public String amount(Amount amount) {
        String unit = amount.unit();
        String space = UnitSymbol.standsClose(unit) ? "" : "<mspace width=\"0.2em\"></mspace>";
        return row(numeral(amount.number()) + space + unit(unit));
    }

    private static String unit(String label) {
        StringBuilder out = new StringBuilder();
        for (UnitSymbol part : UnitSymbol.parts(label)) {
            String base = text(part.base());
            out.append(part.power().isEmpty() ? part.base().isEmpty() ? "" : base
                    : "<msup>" + base + "<mn>" + part.power() + "</mn></msup>");
        }
        return out.toString();
    }

    @Override
    public String sum(Sum sum) {
        StringBuilder out = new StringBuilder();
        for (Term term : sum.terms()) {
            boolean leads = out.isEmpty() && !sum.signFirst();
            String form = leads ? "<mo form=\"prefix\">" : "<mo form=\"infix\">";
            String sign = term.minus() ? "−" : leads ? "" : "+";
            out.append(sign.isEmpty() ? "" : form + sign + "</mo>").append(of(term.value()));
        }
        return row(out.toString());
    }

    @Override
    public String product(Product product) {
        String sign = switch (product.times()) {
            case NOTHING -> operator("&#x2062;");
            case DOT -> operator("·");
            case CROSS -> operator("×");
        };
        return row(String.join(sign, product.factors().stream().map(MathMlExpression::of).toList()));
    }

    @Override
    public String fraction(Fraction fraction) {
        return "<mfrac>" + row(of(fraction.numerator())) + row(of(fraction.denominator())) + "</mfrac>";
    }

    @Override
    public String root(Root root) {
        return "<msqrt>" + of(root.radicand()) + "</msqrt>";
    }

    @Override
    public String power(Power power) {
        return "<msup>" + row(of(power.base())) + row(of(power.exponent())) + "</msup>";
    }

    @Override
    public String function(Function function) {
        String name = switch (function.name()) {
            case SIN -> "sin";
            case COS -> "cos";
            case TAN -> "tan";
            case ATAN -> "arctan";
        };
        boolean alone = LinearExpression.standsAlone(function.argument());
        String argument = alone ? THIN + of(function.argument()) : fenced(of(function.argument()));
        return row(THIN + "<mi>" + name + "</mi>" + operator("&#x2061;") + argument);
    }

    @Override
    public String call(Call call) {
        String arguments = String.join(operator(","), call.arguments().stream().map(MathMlExpression::of).toList());
        return row("<mi mathvariant=\"normal\">" + HtmlText.of(call.name()) + "</mi>" + operator("&#x2061;")
                + fenced(arguments));
    }

    @Override
    public String relation(Relation relation) {
        StringBuilder out = new StringBuilder(of(relation.sides().get(0)));
        for (int i = 0; i < relation.relators().size(); i++) {
            out.append(operator(relator(relation.relators().get(i))));
            out.append(of(relation.sides().get(i + 1)));
        }
        return row(out.toString());
    }

    @Override
    public String sigma(Sigma sigma) {
        return row("<mi mathvariant=\"normal\">Σ</mi>" + of(sigma.summand()));
    }

    @Override
    public String parenthesised(Parenthesised parenthesised) {
        return fenced(of(parenthesised.inner()));
    }

    private static String fenced(String content) {
        boolean tall = content.contains("<mfrac>") || content.contains("<msqrt>");
        String stretch = tall ? "<mo>" : "<mo stretchy=\"false\">";
        return row(stretch + "(</mo>" + content + stretch + ")</mo>");
    }

    @Override
    public String sense(Sense sense) {
        return "<mtext>" + LinearExpression.arrow(sense) + "</mtext><mspace width=\"0.3em\"></mspace>";
    }

    @Override
    public String words(Words words) {
        return text(words.text());
    }
}
