package kingpost.derivation;

import java.util.List;
import java.util.Objects;

/**
 * Rows under headed columns. The first cell of a row is that row's head when {@code rowHeads} is set.
 *
 * @param caption  may be empty
 * @param columns  at least one
 * @param rows     each with one cell for each column
 * @param rowHeads whether the first column names what its row is about
 */
public record Table(Phrase caption, List<Column> columns, List<List<Phrase>> rows, boolean rowHeads)
        implements Block {

    public Table {
        Objects.requireNonNull(caption, "caption");
        columns = List.copyOf(columns);
        rows = rows.stream().map(List::copyOf).toList();
        for (List<Phrase> row : rows) {
            if (row.size() != columns.size()) {
                throw new IllegalArgumentException("Table: a row has " + row.size() + " cells under "
                        + columns.size() + " columns; give one cell for each column");
            }
        }
    }

    /** A column's head, and where its cells stand. */
    public record Column(Phrase head, Align align) {
        public Column {
            Objects.requireNonNull(head, "head");
            Objects.requireNonNull(align, "align");
        }

        public static Column left(String head) {
            return new Column(Phrase.of(head), Align.LEFT);
        }

        public static Column right(String head) {
            return new Column(Phrase.of(head), Align.RIGHT);
        }
    }

    /** Where a column's cells stand; numbers stand to the right. */
    public enum Align { LEFT, CENTRE, RIGHT }

    @Override
    public <R> R accept(Visitor<R> visitor) {
        return visitor.table(this);
    }
}
