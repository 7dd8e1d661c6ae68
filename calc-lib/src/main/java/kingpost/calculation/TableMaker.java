package kingpost.calculation;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.IntStream;
import javax.measure.Unit;
import kingpost.calculation.Line.Column;
import kingpost.calculation.Line.Tabulated;
import kingpost.units.CalculationException;
import kingpost.units.Quantity;

/**
 * Works out the rows of a table.
 *
 * @param operands  the values of names in the sheet
 * @param symbols   the names in the sheet
 * @param lettering how values are written
 */
record TableMaker(Function<Set<String>, Map<String, Operand>> operands, Set<String> symbols, Lettering lettering) {

    Tabulated make(int number, Range range, List<Column> columns, String description, String reference) {
        if (columns.isEmpty()) {
            throw new CalculationException("Table over " + range.name() + ": it has no column; give at least one.");
        }
        List<Formula> formulas = columns.stream()
                .map(column -> CalculationSheet.at(column.name(), () -> Formula.parse(column.text()))).toList();
        Map<String, Operand> outside = CalculationSheet.at("Table over " + range.name(),
                () -> operands.apply(outside(range, columns, formulas)));
        List<List<Quantity>> rows = range.values().stream()
                .map(value -> row(range, value, columns, formulas, outside)).toList();
        return new Tabulated(number, range, columns, outside, inUnits(columns, rows), description, reference);
    }

    /** The names in the formulas that the table itself does not give. */
    private static Set<String> outside(Range range, List<Column> columns, List<Formula> formulas) {
        Set<String> names = new LinkedHashSet<>();
        Set<String> inside = new HashSet<>(Set.of(range.name()));
        for (int i = 0; i < columns.size(); i++) {
            formulas.get(i).names().stream().filter(name -> !inside.contains(name)).forEach(names::add);
            inside.add(columns.get(i).name());
        }
        return names;
    }

    private List<Quantity> row(Range range, Quantity value, List<Column> columns, List<Formula> formulas,
                               Map<String, Operand> outside) {
        Map<String, Operand> known = new LinkedHashMap<>(outside);
        known.put(range.name(), new Operand(value, true, 0));
        List<Quantity> answers = new ArrayList<>();
        for (int i = 0; i < columns.size(); i++) {
            Column column = columns.get(i);
            Formula formula = formulas.get(i);
            String place = column.name() + " = " + column.text().strip() + ", where " + range.name() + " = " + value;
            UnknownNames.refuseAmbiguous(formula, symbols);
            UnknownNames.refuseAmbiguous(formula, known.keySet());
            Quantity answer = CalculationSheet.at(place, () -> {
                Quantity raw = Evaluation.of(formula, known);
                return column.unit().isPresent() ? raw.to(column.unit().get()) : raw;
            });
            answers.add(answer);
            known.put(column.name(), new Operand(answer, false, 0));
        }
        return answers;
    }

    /** A column whose unit nobody chose gets the one that suits its largest value. */
    private List<List<Quantity>> inUnits(List<Column> columns, List<List<Quantity>> rows) {
        List<Unit<?>> units = new ArrayList<>();
        for (int i = 0; i < columns.size(); i++) {
            int column = i;
            units.add(columns.get(i).unit().isPresent() ? columns.get(i).unit().get()
                    : lettering.unitFor(rows.stream().map(row -> row.get(column)).toList()));
        }
        return rows.stream().map(row -> IntStream.range(0, row.size())
                .mapToObj(i -> row.get(i).to(units.get(i))).toList()).toList();
    }
}
