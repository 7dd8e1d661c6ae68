package kingpost.diagram;

import java.util.ArrayList;
import java.util.List;
import kingpost.truss.Load;
import kingpost.units.Quantity;

/**
 * An arrow of a load as it was given: a load by components has one for each component in the plane.
 *
 * @param size never negative
 * @param way  on the sheet, length 1
 */
record LoadArrow(Quantity size, Place way) {

    static List<LoadArrow> of(Load load) {
        List<LoadArrow> arrows = new ArrayList<>();
        if (load instanceof Load.Components) {
            add(load.fx(), Place.towards(0), arrows);
            add(load.fy(), new Place(0, -1), arrows);
        } else if (load.magnitude().getValue() != 0) {
            arrows.add(new LoadArrow(load.magnitude(), TrussLayout.way(load.direction())));
        }
        return arrows;
    }

    private static void add(Quantity part, Place positive, List<LoadArrow> arrows) {
        if (part.getValue() != 0) {
            arrows.add(new LoadArrow(part.abs(), positive.times(Math.signum(part.getValue()))));
        }
    }
}
