package kingpost.calculation;

import java.util.List;
import javax.measure.Unit;
import kingpost.derivation.Expression;
import kingpost.derivation.Expressions;
import kingpost.units.EngineeringFormat;
import kingpost.units.Quantity;
import kingpost.units.UnitLabel;

/**
 * How values are written in a sheet.
 *
 * @param figures significant figures of calculated values; given ones keep theirs
 */
record Lettering(int figures) {

    /** A value that someone gave. */
    Expression given(Quantity value) {
        return written(EngineeringFormat.given(), value);
    }

    /** A calculated value, in its own unit. */
    Expression answer(Quantity value) {
        return written(format().keepingUnits(), value);
    }

    Expression operand(Operand operand) {
        return operand.given() ? given(operand.value()) : answer(operand.value());
    }

    /** A given value's number alone, in its own unit. */
    String givenNumber(Quantity value) {
        return EngineeringFormat.given().number(value.getValue());
    }

    String givenWords(Quantity value) {
        return EngineeringFormat.given().format(value);
    }

    /** A calculated value's number alone, in its own unit. */
    String number(Quantity value) {
        return format().number(value.getValue());
    }

    String words(Quantity value) {
        return format().keepingUnits().format(value);
    }

    /** The unit that an engineer would choose for a value whose unit nobody asked for. */
    Quantity chosen(Quantity value) {
        return format().choose(value);
    }

    Unit<?> unitFor(List<Quantity> values) {
        return format().unitFor(values);
    }

    private EngineeringFormat format() {
        return EngineeringFormat.standard().withFigures(figures);
    }

    private static Expression written(EngineeringFormat format, Quantity value) {
        String digits = format.digits(value.getValue());
        String label = UnitLabel.of(value.getUnit());
        return label.isEmpty() ? Expressions.number(digits) : Expressions.amount(digits, label);
    }
}
