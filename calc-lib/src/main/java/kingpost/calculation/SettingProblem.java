package kingpost.calculation;

import kingpost.units.CalculationException;
import kingpost.units.Quantity;
import kingpost.units.UnitLabel;

/** A value set for this run that cannot take the place of what the notebook gives. */
public final class SettingProblem extends CalculationException {

    private static final long serialVersionUID = 1L;

    public SettingProblem(String message) {
        super(message);
    }

    public SettingProblem(String message, Throwable cause) {
        super(message, cause);
    }

    /**
     * Refuses a value of another kind than the notebook's.
     *
     * @throws SettingProblem they measure different things
     */
    public static void require(String name, Quantity inNotebook, Quantity set) {
        if (!inNotebook.isCompatible(set.getUnit())) {
            String label = UnitLabel.of(inNotebook.getUnit());
            throw new SettingProblem("Parameter " + name + ": it is set to " + set + ", " + MathFunction.kind(set)
                    + ", and the notebook gives " + inNotebook + ", " + MathFunction.kind(inNotebook) + "; set "
                    + (label.isEmpty() ? "a number without a unit." : "a value in " + label + " or a unit of its kind."));
        }
    }
}
