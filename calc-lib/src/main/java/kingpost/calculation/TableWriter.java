package kingpost.calculation;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import javax.measure.Unit;
import kingpost.calculation.Line.Column;
import kingpost.calculation.Line.Tabulated;
import kingpost.derivation.Expressions;
import kingpost.derivation.Phrase;
import kingpost.derivation.Table;
import kingpost.units.Quantity;
import kingpost.units.UnitLabel;

/**
 * Writes a table of formulas: units in the heads, and in the caption the formulas and the values that are the same in
 * every row.
 *
 * @param lettering how values are written
 */
record TableWriter(Lettering lettering) {

    Table table(Tabulated tabulated, String lead) {
        Unit<?> unit = tabulated.range().values().get(0).getUnit();
        List<Table.Column> heads = new ArrayList<>(List.of(head(tabulated.range().name(), unit)));
        for (int i = 0; i < tabulated.columns().size(); i++) {
            heads.add(head(tabulated.columns().get(i).name(), tabulated.rows().get(0).get(i).getUnit()));
        }
        List<List<Phrase>> rows = new ArrayList<>();
        for (int i = 0; i < tabulated.rows().size(); i++) {
            Quantity value = tabulated.range().values().get(i).to(unit);
            rows.add(Stream.concat(Stream.of(lettering.givenNumber(value)),
                    tabulated.rows().get(i).stream().map(lettering::number)).map(Phrase::of).toList());
        }
        return new Table(caption(tabulated, lead), heads, rows, true);
    }

    private static Table.Column head(String name, Unit<?> unit) {
        String label = UnitLabel.of(unit);
        Phrase head = Phrase.of(SymbolName.symbol(name));
        return new Table.Column(label.isEmpty() ? head : head.text(", " + label), Table.Align.RIGHT);
    }

    private Phrase caption(Tabulated tabulated, String lead) {
        String about = lead + tabulated.description();
        Phrase caption = Phrase.of(about.isEmpty() ? "" : about + ": ");
        String before = "";
        for (Column column : tabulated.columns()) {
            caption = caption.text(before).math(Expressions.equal(SymbolName.symbol(column.name()),
                    FormulaWriter.symbols(Formula.parse(column.text()), lettering)));
            before = ", ";
        }
        before = ", with ";
        for (Map.Entry<String, Operand> operand : new TreeMap<>(tabulated.operands()).entrySet()) {
            caption = caption.text(before).math(Expressions.equal(SymbolName.symbol(operand.getKey()),
                    lettering.operand(operand.getValue())));
            before = " and ";
        }
        return caption;
    }
}
