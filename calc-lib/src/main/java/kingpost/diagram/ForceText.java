package kingpost.diagram;

import javax.measure.Unit;
import kingpost.truss.TrussModel;
import kingpost.units.EngineeringFormat;
import kingpost.units.Quantity;
import kingpost.units.StructuralUnits;
import kingpost.units.UnitLabel;

/** Forces and lengths as figures write them: three significant figures in the truss's units. */
final class ForceText {

    private static final int LONGEST_GIVEN = 7;

    private final Unit<?> force;
    private final Unit<?> length;

    ForceText(TrussModel truss) {
        force = truss.forceUnit();
        length = truss.lengthUnit();
    }

    /** Size of a force given in N, with its unit. */
    String ofNewtons(double newtons) {
        return of(Quantity.of(newtons, StructuralUnits.N));
    }

    private String of(Quantity value) {
        return EngineeringFormat.standard().format(value.to(force).abs());
    }

    /** Size of a force that someone gave: all their figures, unless so many that it came from a calculation. */
    String given(Quantity value) {
        String given = EngineeringFormat.given().format(value.abs());
        return EngineeringFormat.given().number(value.getValue()).length() > LONGEST_GIVEN ? of(value) : given;
    }

    /** The same without the unit, where it is the truss's own. */
    String bare(String text) {
        String unit = " " + UnitLabel.of(force);
        return text.endsWith(unit) ? text.substring(0, text.length() - unit.length()) : text;
    }

    String unit() {
        return UnitLabel.of(force);
    }

    /** A length given in the numbers of the truss's length unit: as given, unless it came from a calculation. */
    String length(double number) {
        Quantity quantity = Quantity.of(number, length);
        EngineeringFormat given = EngineeringFormat.given();
        return given.number(number).length() > LONGEST_GIVEN
                ? EngineeringFormat.standard().keepingUnits().format(quantity) : given.format(quantity);
    }
}
