package kingpost.variant;

import java.util.ArrayList;
import java.util.List;
import javax.measure.Unit;
import kingpost.truss.Direction;
import kingpost.truss.Load;
import kingpost.truss.TrussModel;
import kingpost.units.Quantity;

/**
 * The loads of a truss as forces along one direction each, in groups of the same size: what was equal stays equal.
 *
 * @param parts  in the truss's order; a load given by components is two parts
 * @param sizes  of each group, in the truss's force unit
 */
record LoadPlan(List<Part> parts, List<Double> sizes) {

    private static final double SAME = 1e-9;

    LoadPlan {
        parts = List.copyOf(parts);
        sizes = List.copyOf(sizes);
    }

    /**
     * @param load      number of the load in the truss's list
     * @param joint     where it acts
     * @param direction where it points
     * @param unit      in which its size is given
     * @param group     number of its group
     */
    record Part(int load, String joint, Direction direction, Unit<?> unit, int group) {
    }

    static LoadPlan of(TrussModel truss) {
        List<Part> parts = new ArrayList<>();
        List<Double> sizes = new ArrayList<>();
        for (int i = 0; i < truss.loads().size(); i++) {
            Load load = truss.loads().get(i);
            if (load instanceof Load.Components components) {
                add(truss, parts, sizes, i, load.joint(), components.fx(), Direction.RIGHT);
                add(truss, parts, sizes, i, load.joint(), components.fy(), Direction.UP);
            } else {
                add(truss, parts, sizes, i, load.joint(), load.magnitude(), load.direction());
            }
        }
        return new LoadPlan(parts, sizes);
    }

    private static void add(TrussModel truss, List<Part> parts, List<Double> sizes, int load, String joint,
                            Quantity size, Direction direction) {
        double value = size.in(truss.forceUnit());
        if (value != 0) {
            Direction way = value > 0 ? direction : new Direction(-direction.x(), -direction.y(), 0, "", true);
            parts.add(new Part(load, joint, way, size.getUnit(), group(sizes, Math.abs(value))));
        }
    }

    private static int group(List<Double> sizes, double size) {
        for (int i = 0; i < sizes.size(); i++) {
            if (Math.abs(sizes.get(i) - size) <= SAME * size) {
                return i;
            }
        }
        sizes.add(size);
        return sizes.size() - 1;
    }
}
