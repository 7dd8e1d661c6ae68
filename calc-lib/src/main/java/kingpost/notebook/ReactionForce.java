package kingpost.notebook;

import java.util.List;
import kingpost.units.CalculationException;
import kingpost.units.Quantity;
import kingpost.units.StructuralUnits;

/**
 * What a support does to the truss: its reaction, by components.
 *
 * @param joint      the supported joint
 * @param x          component to the right
 * @param y          component upwards
 * @param z          component towards the reader; zero for a planar truss
 * @param components each reaction the support gives, along its own direction
 */
public record ReactionForce(String joint, Quantity x, Quantity y, Quantity z, List<Component> components) {

    public ReactionForce {
        components = List.copyOf(components);
    }

    /**
     * @param symbol as in the derivation: "A_x"; "R_C" for an inclined roller
     * @param value  along its direction, acting on the truss
     */
    public record Component(String symbol, String direction, Quantity value) {
    }

    /** Size of the reaction. */
    public Quantity magnitude() {
        return Quantity.of(Math.hypot(Math.hypot(x.getValue(), y.in(x.getUnit())), z.in(x.getUnit())), x.getUnit());
    }

    /**
     * Direction in which it acts on the truss, degrees counter-clockwise from the right; 0 for no reaction.
     *
     * @throws CalculationException when it has a part towards the reader, so that no angle in the plane tells it
     */
    public Quantity direction() {
        if (z.getValue() != 0) {
            throw new CalculationException("Reaction at " + joint + ": it has a part along z of " + z
                    + ", so one angle does not tell its direction; use x(), y() and z().");
        }
        return Quantity.of(Math.toDegrees(Math.atan2(y.in(x.getUnit()), x.getValue())),
                StructuralUnits.deg);
    }

    @Override
    public String toString() {
        StringBuilder text = new StringBuilder("Reaction at " + joint + ": ");
        for (int i = 0; i < components.size(); i++) {
            Component c = components.get(i);
            text.append(i == 0 ? "" : ", ").append(c.symbol()).append(" = ").append(c.value())
                    .append(" (positive ").append(c.direction()).append(')');
        }
        return text.toString();
    }
}
