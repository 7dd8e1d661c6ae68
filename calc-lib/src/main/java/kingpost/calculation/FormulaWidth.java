package kingpost.calculation;

import java.util.Map;
import java.util.function.ToIntFunction;
import kingpost.units.UnitLabel;

/**
 * About how many characters wide a formula is on the page, where a fraction is as wide as its wider part.
 *
 * @param operands  the values of the names
 * @param lettering how values are written
 */
record FormulaWidth(Map<String, Operand> operands, Lettering lettering) {

    int ofSymbols(Formula formula) {
        return width(formula, part -> part instanceof Formula.Symbol symbol ? symbol.name().length() : leaf(part));
    }

    int ofNumbers(Formula formula) {
        return width(formula, this::leaf);
    }

    private static int width(Formula formula, ToIntFunction<Formula> leaves) {
        if (formula.parts().isEmpty()) {
            return leaves.applyAsInt(formula);
        }
        if (formula instanceof Formula.Quotient quotient) {
            return Math.max(width(quotient.above(), leaves), width(quotient.below(), leaves));
        }
        int signs = formula instanceof Formula.Call ? 5 : 3 * (formula.parts().size() - 1);
        return signs + formula.parts().stream().mapToInt(part -> width(part, leaves)).sum();
    }

    private int leaf(Formula part) {
        if (part instanceof Formula.Symbol symbol && operands.containsKey(symbol.name())) {
            Operand operand = operands.get(symbol.name());
            String digits = operand.given() ? lettering.givenNumber(operand.value()) : lettering.number(operand.value());
            return digits.length() + 1 + UnitLabel.of(operand.value().getUnit()).length();
        }
        return part instanceof Formula.Amount amount ? lettering.givenWords(amount.value()).length() : 1;
    }
}
