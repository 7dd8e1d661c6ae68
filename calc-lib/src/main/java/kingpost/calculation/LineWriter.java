package kingpost.calculation;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import kingpost.calculation.Line.Checked;
import kingpost.calculation.Line.Computed;
import kingpost.calculation.Line.Given;
import kingpost.calculation.Line.Tabulated;
import kingpost.derivation.EquationLine;
import kingpost.derivation.Expression;
import kingpost.derivation.Expression.Relation;
import kingpost.derivation.Expression.Relator;
import kingpost.derivation.Expressions;
import kingpost.units.Quantity;

/**
 * Writes a line that is not a table as mathematics: symbol = formula = numbers with units = answer, in one row, or in
 * rows under each other when it is long.
 *
 * @param lettering how values are written
 */
record LineWriter(Lettering lettering) implements Line.Visitor<List<EquationLine>> {

    private static final int WIDEST_ROW = 48;

    /** The rows of {@code line}; none for a table. */
    List<EquationLine> rows(Line line) {
        return line.accept(this);
    }

    @Override
    public List<EquationLine> given(Given given) {
        return List.of(EquationLine.of(SymbolName.symbol(given.name()), Relator.EQUAL,
                lettering.given(given.value())));
    }

    @Override
    public List<EquationLine> computed(Computed computed) {
        Formula formula = computed.formula();
        List<Expression> steps = new ArrayList<>(List.of(FormulaWriter.symbols(formula, lettering)));
        if (!computed.operands().isEmpty()) {
            steps.add(FormulaWriter.numbers(formula, computed.operands(), lettering));
        }
        Expression answer = lettering.answer(computed.value());
        if (!answer.equals(steps.get(steps.size() - 1))) {
            steps.add(answer);
        }
        Expression symbol = SymbolName.symbol(computed.name());
        FormulaWidth width = new FormulaWidth(computed.operands(), lettering);
        return width.ofSymbols(formula) + width.ofNumbers(formula) > WIDEST_ROW
                ? stacked(symbol, steps) : List.of(EquationLine.of(symbol, Relator.EQUAL, chain(steps)));
    }

    private static Expression chain(List<Expression> steps) {
        return steps.size() == 1 ? steps.get(0) : Expressions.equal(steps.toArray(Expression[]::new));
    }

    private static List<EquationLine> stacked(Expression symbol, List<Expression> steps) {
        List<EquationLine> rows = new ArrayList<>();
        for (Expression step : steps) {
            rows.add(EquationLine.of(rows.isEmpty() ? symbol : Expressions.words(""), Relator.EQUAL, step));
        }
        return rows;
    }

    /** Symbols = value, then what is true of the two values, then value = symbols. */
    @Override
    public List<EquationLine> checked(Checked checked) {
        Verdict verdict = checked.verdict();
        Lettering sharp = new Lettering(verdict.figures(lettering.figures()));
        List<Expression> left = side(checked.left(), checked.operands(), verdict.left(), sharp);
        List<Expression> right = new ArrayList<>(side(checked.right(), checked.operands(), verdict.right(), sharp));
        Collections.reverse(right);
        List<Expression> sides = new ArrayList<>(left);
        sides.addAll(right);
        List<Relator> relators = new ArrayList<>(Collections.nCopies(sides.size() - 1, Relator.EQUAL));
        relators.set(left.size() - 1, verdict.sign().relator(verdict.satisfied()));
        Expression rest = sides.size() == 2 ? sides.get(1)
                : new Relation(sides.subList(1, sides.size()), relators.subList(1, relators.size()));
        return List.of(EquationLine.of(sides.get(0), relators.get(0), rest));
    }

    /** One side of a check, symbols first; a value that was written out stands alone. */
    private List<Expression> side(Formula formula, Map<String, Operand> operands, Quantity value, Lettering sharp) {
        Expression symbols = FormulaWriter.symbols(formula, lettering);
        if (formula instanceof Formula.Amount) {
            return List.of(symbols);
        }
        boolean given = formula instanceof Formula.Symbol symbol && operands.containsKey(symbol.name())
                && operands.get(symbol.name()).given();
        return List.of(symbols, given ? lettering.given(value) : sharp.answer(value));
    }

    @Override
    public List<EquationLine> tabulated(Tabulated tabulated) {
        return List.of();
    }
}
