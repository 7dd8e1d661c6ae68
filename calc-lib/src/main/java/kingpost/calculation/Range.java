package kingpost.calculation;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import kingpost.units.CalculationException;
import kingpost.units.Quantity;

/**
 * The values that one symbol takes in a table.
 *
 * @param name   the symbol
 * @param values in order, at least one, all of one kind
 */
public record Range(String name, List<Quantity> values) {

    private static final int MOST = 1000;
    private static final double SLACK = 1e-9;

    /**
     * Checks the name and the values.
     *
     * @throws CalculationException when there is no value, too many, or they are not of one kind
     */
    public Range {
        SymbolName.checked(name);
        values = List.copyOf(values);
        if (values.isEmpty() || values.size() > MOST) {
            throw new CalculationException("Range of " + name + ": it has " + values.size()
                    + " values; give from 1 to " + MOST + ".");
        }
        Quantity first = values.get(0);
        for (Quantity value : values) {
            CalculationSheet.at("Range of " + name, () -> value.compareTo(first));
        }
    }

    public static Range of(String name, Quantity... values) {
        if (Arrays.stream(values).anyMatch(Objects::isNull)) {
            throw new CalculationException("Range of " + name + ": a value is missing; give a quantity for each.");
        }
        return new Range(name, List.of(values));
    }

    /**
     * From {@code first} by {@code step} as far as {@code last}, in the unit of {@code first}.
     *
     * @throws CalculationException when the steps do not lead to {@code last}, or are more than a thousand
     */
    public static Range of(String name, Quantity first, Quantity last, Quantity step) {
        if (first == null || last == null || step == null) {
            throw new CalculationException("Range of " + name
                    + ": a value is missing; give the first, the last and the step.");
        }
        double way = CalculationSheet.at("Range of " + name, () -> last.subtract(first)).in(first.getUnit());
        double by = CalculationSheet.at("Range of " + name, () -> step.in(first.getUnit()));
        double steps = way == 0 ? 0 : way / by;
        if (!Double.isFinite(steps) || steps < 0 || steps >= MOST) {
            throw new CalculationException("Range of " + name + ": steps of " + step + " from " + first + " to " + last
                    + " are " + (steps >= MOST && by != 0 ? "too many" : "going nowhere") + "; give fewer than " + MOST
                    + " that lead there.");
        }
        List<Quantity> values = new ArrayList<>();
        for (int i = 0; i <= Math.floor(steps + SLACK); i++) {
            values.add(first.add(step.multiply(i)));
        }
        return new Range(name, values);
    }
}
