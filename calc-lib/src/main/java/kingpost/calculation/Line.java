package kingpost.calculation;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.measure.Unit;
import kingpost.units.Quantity;

/** A line of a calculation sheet, with the values as they were when it was written. */
public sealed interface Line {

    /** Its place in the sheet, from 1. */
    int number();

    /** What it is about, in words; may be empty. */
    String description();

    /** Where it comes from: a clause, a drawing; may be empty. */
    String reference();

    <R> R accept(Visitor<R> visitor);

    /** One method for each kind of line. */
    interface Visitor<R> {
        R given(Given given);

        R computed(Computed computed);

        R checked(Checked checked);

        R tabulated(Tabulated tabulated);
    }

    /**
     * A value that someone gave.
     *
     * @param value    the value that counts
     * @param inSource what the notebook says, when a value set for this run took its place
     */
    record Given(int number, String name, Quantity value, Optional<Quantity> inSource, String description,
                 String reference) implements Line {
        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.given(this);
        }
    }

    /**
     * A value worked out by a formula.
     *
     * @param operands the values of the names in the formula
     * @param value    the answer, not rounded, in the unit asked for or one that suits
     */
    record Computed(int number, String name, String text, Formula formula, Map<String, Operand> operands,
                    Quantity value, String description, String reference) implements Line {
        public Computed {
            operands = Map.copyOf(operands);
        }

        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.computed(this);
        }
    }

    /** A comparison with its verdict. */
    record Checked(int number, String text, Formula left, Formula right, Map<String, Operand> operands,
                   Verdict verdict, String description, String reference) implements Line {
        public Checked {
            operands = Map.copyOf(operands);
        }

        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.checked(this);
        }
    }

    /**
     * Formulas worked out over a range of values of one symbol.
     *
     * @param columns  what is worked out
     * @param operands the values of the other names in the formulas
     * @param rows     for each value of the range the answers, not rounded, in the order of the columns
     */
    record Tabulated(int number, Range range, List<Column> columns, Map<String, Operand> operands,
                     List<List<Quantity>> rows, String description, String reference) implements Line {
        public Tabulated {
            columns = List.copyOf(columns);
            operands = Map.copyOf(operands);
            rows = rows.stream().map(List::copyOf).toList();
        }

        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.tabulated(this);
        }
    }

    /**
     * What one column of a table works out.
     *
     * @param name the answer's name; columns to the right may use it
     * @param unit the unit of the column, or empty for one that suits its largest value
     */
    record Column(String name, String text, Optional<Unit<?>> unit) {
        public Column {
            SymbolName.checked(name);
        }

        public static Column of(String name, String text, Unit<?> unit) {
            return new Column(name, text, Optional.of(unit));
        }

        public static Column of(String name, String text) {
            return new Column(name, text, Optional.empty());
        }
    }
}
