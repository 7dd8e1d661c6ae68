package kingpost.moving;

import java.util.ArrayList;
import java.util.List;
import kingpost.truss.TrussModel;
import kingpost.units.CalculationException;
import kingpost.units.Quantity;
import kingpost.units.UnitLabel;

/** Wheels that keep their distances, the leading one first. */
public record WheelTrain(List<Wheel> wheels) {

    public WheelTrain {
        wheels = List.copyOf(wheels);
    }

    /**
     * @param load   straight down, in the unit given
     * @param behind how far behind the leading wheel, in the truss's length unit
     */
    public record Wheel(Quantity load, double behind) {
    }

    /**
     * The train written as it is drawn: load, distance, load, distance, load.
     *
     * @throws CalculationException for anything else
     */
    public static WheelTrain of(TrussModel truss, List<Quantity> written) {
        if (written.size() % 2 == 0) {
            throw new CalculationException("Wheel train: " + written.size() + " numbers are given; write it as load,"
                    + " distance, load ... load, which is an odd number, as in train(35, 4.3, 145).");
        }
        List<Wheel> wheels = new ArrayList<>();
        double behind = 0;
        for (int i = 0; i < written.size(); i++) {
            Quantity quantity = written.get(i);
            boolean isLoad = i % 2 == 0;
            String what = isLoad ? "load " + (i / 2 + 1) : "distance " + (i / 2 + 1);
            check(truss, quantity, isLoad, what);
            if (isLoad) {
                wheels.add(new Wheel(quantity, behind));
            } else {
                behind += quantity.in(truss.lengthUnit());
            }
        }
        return new WheelTrain(wheels);
    }

    private static void check(TrussModel truss, Quantity quantity, boolean isLoad, String what) {
        if (quantity == null || !quantity.isCompatible(isLoad ? truss.forceUnit() : truss.lengthUnit())) {
            throw new CalculationException("Wheel train: " + what + " is " + (quantity == null ? "missing" : quantity)
                    + "; give a " + (isLoad ? "force, in " + UnitLabel.of(truss.forceUnit())
                    : "length, in " + UnitLabel.of(truss.lengthUnit())) + " for instance.");
        }
        if (!(quantity.getValue() > 0) || Double.isInfinite(quantity.getValue())) {
            throw new CalculationException("Wheel train: " + what + " is " + quantity
                    + "; give a finite number above zero.");
        }
    }

    /** From the first wheel to the last, in the truss's length unit. */
    public double length() {
        return wheels.get(wheels.size() - 1).behind();
    }
}
