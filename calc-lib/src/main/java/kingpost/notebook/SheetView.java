package kingpost.notebook;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kingpost.calculation.Assumption;
import kingpost.calculation.CalculationSheet;
import kingpost.calculation.Line;
import kingpost.derivation.Block;
import kingpost.derivation.Phrase;
import kingpost.render.Edition;
import kingpost.render.Exhibit;
import kingpost.render.Showable;
import kingpost.units.Quantity;
import kingpost.units.UnitLabel;

/**
 * A calculation sheet, or one line of it, as a notebook shows it.
 *
 * @param sheet   the sheet, for Java code
 * @param exhibit how it is shown
 * @param answers what of it belongs in a key; none for the whole sheet, whose lines are shown one by one already
 */
public record SheetView(CalculationSheet sheet, Exhibit exhibit, List<Block> answers) implements Showable {

    public SheetView {
        answers = List.copyOf(answers);
    }

    static SheetView of(CalculationSheet sheet) {
        return new SheetView(sheet, Exhibit.of(sheet.derivation(), "calculation",
                Map.of("lines", sheet.lines().stream().map(SheetView::numbers).toList(), "policy", sheet.policy())),
                List.of());
    }

    static SheetView line(CalculationSheet sheet, Line line) {
        Map<String, Object> numbers = numbers(line);
        numbers.put("policy", sheet.policy());
        return new SheetView(sheet, Exhibit.of(sheet.blocks(line), "calculation-line", numbers), sheet.answers(line));
    }

    /** A handout leaves calculations out: even a given value may be an answer of what stands above it. */
    @Override
    public Optional<Map<String, Object>> show(Edition edition) {
        return switch (edition) {
            case SOLUTION -> Optional.of(show());
            case HANDOUT -> Optional.empty();
            case KEY -> answers.isEmpty() ? Optional.empty() : Optional.of(Exhibit.of(answers, "key", Map.of())
                    .madeFor(edition, exhibit.toString(), true).show());
        };
    }

    static SheetView assumption(CalculationSheet sheet, Assumption made) {
        Block.Prose prose = new Block.Prose(Phrase.EMPTY.strong("Assumption " + made.number() + ".")
                .text(" " + made.sentence()));
        return new SheetView(sheet, Exhibit.of(List.of(prose), "assumption",
                Map.of("number", made.number(), "text", made.text(), "reference", made.reference())), List.of());
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
