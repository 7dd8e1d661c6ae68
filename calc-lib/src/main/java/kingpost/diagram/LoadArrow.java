package kingpost.diagram;

import java.util.ArrayList;
import java.util.List;
import kingpost.statics.Vector;
import kingpost.truss.Load;
import kingpost.units.Quantity;

/**
 * An arrow of a load as it was given: a load by components has one for each component in the plane.
 *
 * @param size never negative
 * @param way  on the sheet, length 1
 */
record LoadArrow(Quantity size, Place way) {

    /** As a view shows it: what points at the reader is left out. */
    static List<LoadArrow> of(Load load, View view) {
        if (view == View.FLAT) {
            return of(load);
        }
        List<LoadArrow> arrows = new ArrayList<>();
        if (load instanceof Load.Components) {
            List<Quantity> parts = List.of(load.fx(), load.fy(), load.fz());
            List<Vector> axes = List.of(Vector.X, Vector.Y, Vector.Z);
            for (int i = 0; i < 3; i++) {
                add(parts.get(i), view.way(axes.get(i)), arrows);
            }
        } else {
            add(load.magnitude(), view.way(TrussLayout.vector(load.direction())), arrows);
        }
        return arrows.stream().filter(arrow -> arrow.way().norm() > 0).toList();
    }

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
