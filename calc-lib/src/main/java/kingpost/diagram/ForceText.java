package kingpost.diagram;

import java.util.List;
import javax.measure.Unit;
import kingpost.truss.TrussModel;
import kingpost.units.EngineeringFormat;
import kingpost.units.Quantity;
import kingpost.units.StructuralUnits;
import kingpost.units.UnitLabel;

/** Forces and lengths as figures write them: three significant figures in the truss's units. */
final class ForceText {

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

    /** Size of a force, with its unit. */
    String of(Quantity value) {
        return EngineeringFormat.standard().format(value.to(force).abs());
    }

    /** The same without the unit, where it is the truss's own. */
    String bare(String text) {
        String unit = " " + UnitLabel.of(force);
        return text.endsWith(unit) ? text.substring(0, text.length() - unit.length()) : text;
    }

    String unit() {
        return UnitLabel.of(force);
    }

    /** A length given in the numbers of the truss's length unit. */
    String length(double number) {
        return EngineeringFormat.standard().format(Quantity.of(number, length));
    }

    /** Whether forces within {@code texts} all end in the truss's unit, so that it can be said once. */
    boolean isCommonUnit(List<String> texts) {
        return texts.stream().allMatch(t -> t.endsWith(" " + unit()));
    }
}
