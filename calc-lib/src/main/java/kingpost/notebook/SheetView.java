package kingpost.notebook;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import kingpost.calculation.CalculationSheet;
import kingpost.calculation.Line;
import kingpost.render.Exhibit;
import kingpost.render.Showable;
import kingpost.units.Quantity;
import kingpost.units.UnitLabel;

/**
 * A calculation sheet, or one line of it, as a notebook shows it.
 *
 * @param sheet   the sheet, for Java code
 * @param exhibit how it is shown
 */
public record SheetView(CalculationSheet sheet, Exhibit exhibit) implements Showable {

    static SheetView of(CalculationSheet sheet) {
        return new SheetView(sheet, Exhibit.of(sheet.derivation(), "calculation",
                Map.of("lines", sheet.lines().stream().map(SheetView::numbers).toList())));
    }

    static SheetView line(CalculationSheet sheet, Line line) {
        return new SheetView(sheet, Exhibit.of(sheet.blocks(line), "calculation-line", numbers(line)));
    }

    @Override
    public Map<String, Object> show() {
        return exhibit.show();
    }

    /** The plain text. */
    @Override
    public String toString() {
        return exhibit.toString();
    }

    /** The line for machines: values not rounded, each with its unit. */
    private static Map<String, Object> numbers(Line line) {
        Map<String, Object> numbers = new LinkedHashMap<>();
        numbers.put("line", line.number());
        numbers.putAll(line.accept(new Numbers()));
        return numbers;
    }

    private record Numbers() implements Line.Visitor<Map<String, Object>> {
        @Override
        public Map<String, Object> given(Line.Given given) {
            return Map.of("name", given.name(), "given", quantity(given.value()));
        }

        @Override
        public Map<String, Object> computed(Line.Computed computed) {
            return Map.of("name", computed.name(), "formula", computed.text(), "answer", quantity(computed.value()));
        }

        @Override
        public Map<String, Object> checked(Line.Checked checked) {
            Map<String, Object> numbers = new LinkedHashMap<>();
            numbers.put("check", checked.text());
            numbers.put("left", quantity(checked.verdict().left()));
            numbers.put("right", quantity(checked.verdict().right()));
            numbers.put("satisfied", checked.verdict().satisfied());
            checked.verdict().usage().ifPresent(usage -> numbers.put("usage", usage));
            return numbers;
        }

        @Override
        public Map<String, Object> tabulated(Line.Tabulated tabulated) {
            return Map.of("over", tabulated.range().name(),
                    "values", tabulated.range().values().stream().map(Numbers::quantity).toList(),
                    "columns", tabulated.columns().stream().map(Line.Column::name).toList(),
                    "rows", tabulated.rows().stream().map(row -> row.stream().map(Numbers::quantity).toList()).toList());
        }

        private static List<Object> quantity(Quantity quantity) {
            return List.of(quantity.getValue(), UnitLabel.of(quantity.getUnit()));
        }
    }
}
