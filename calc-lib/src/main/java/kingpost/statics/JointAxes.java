package kingpost.statics;

import java.util.ArrayList;
import java.util.List;
import kingpost.statics.AxisEquation.Axis;
import kingpost.statics.Step.Axes;

/**
 * How the axes of a joint lie: x right and y up, or in the plane turned along an unknown when neither x nor y would
 * have an equation with one unknown.
 *
 * @param axes why
 * @param list the axes, two or three
 */
record JointAxes(Axes axes, List<Axis> list) {

    private static final List<Axis> PLANE = List.of(new Axis("x", Vector.X), new Axis("y", Vector.Y));
    private static final List<Axis> SPACE = List.of(PLANE.get(0), PLANE.get(1), new Axis("z", Vector.Z));

    /**
     * For a joint in the plane with one or two unknowns, or in space with up to three.
     *
     * @param unknowns to be found
     * @param others   unknowns that stay unknown, all in one line, or in space in one plane
     */
    static JointAxes of(Network network, int joint, List<Integer> unknowns, List<Integer> others) {
        if (network.dimension() == 3) {
            return inSpace(network, joint, unknowns, others);
        }
        if (!others.isEmpty()) {
            return isUpright(network.unit(others.get(0), joint)) ? new JointAxes(new Axes.Conventional(), PLANE)
                    : turned(network, joint, others.get(0), Axes.Reason.FREES_ONE);
        }
        if (unknowns.size() < 2 || unknowns.stream().anyMatch(u -> isUpright(network.unit(u, joint)))) {
            return new JointAxes(new Axes.Conventional(), PLANE);
        }
        return turned(network, joint, unknowns);
    }

    private static JointAxes turned(Network network, int joint, List<Integer> unknowns) {
        Vector first = network.unit(unknowns.get(0), joint);
        Vector second = network.unit(unknowns.get(1), joint);
        boolean perpendicular = Math.abs(first.dot(second)) <= Network.IN_LINE;
        int along = inLine(network, joint, second) > inLine(network, joint, first) ? unknowns.get(1)
                : unknowns.get(0);
        return turned(network, joint, along,
                perpendicular ? Axes.Reason.UNKNOWNS_PERPENDICULAR : Axes.Reason.FREES_ONE);
    }

    private static JointAxes turned(Network network, int joint, int along, Axes.Reason reason) {
        Vector x = network.unit(along, joint);
        if (x.x() < 0) {
            x = x.times(-1);
        }
        double degrees = Math.toDegrees(Math.atan2(x.y(), x.x()));
        return new JointAxes(new Axes.Turned(network.source(along), degrees, reason),
                List.of(new Axis("x\u2032", x), new Axis("y\u2032", new Vector(-x.y(), x.x(), 0))));
    }

    /**
     * x, y and z where one of them holds a single unknown, or where there are two unknowns only; else first an axis
     * across two of the unknowns, and of x, y and z the two that part these best.
     */
    private static JointAxes inSpace(Network network, int joint, List<Integer> unknowns, List<Integer> others) {
        if (!others.isEmpty()) {
            Spanned rest = Spanned.by(others.stream().map(u -> network.unit(u, joint)).toList());
            Vector one = network.unit(unknowns.get(0), joint);
            Vector offLine = one.minus(rest.line().times(one.dot(rest.line())));
            return across(network, others, upwards(rest.rank() == 2 ? rest.normal() : offLine.unit()), List.of());
        }
        List<Vector> units = unknowns.stream().map(u -> network.unit(u, joint)).toList();
        if (units.size() < 3 || SPACE.stream().anyMatch(axis -> holds(axis, units) == 1)) {
            return new JointAxes(new Axes.Conventional(), SPACE);
        }
        int alone = 0;
        double largest = 0;
        for (int k = 0; k < 3; k++) {
            double part = Math.abs(normal(units, k).dot(units.get(k)));
            alone = part > largest * (1 + 1e-9) ? k : alone;
            largest = Math.max(largest, part);
        }
        List<Integer> plane = new ArrayList<>(unknowns);
        plane.remove(alone);
        Vector normal = upwards(normal(units, alone));
        return across(network, plane, normal, SPACE.stream().filter(axis -> axis != dropped(normal)).toList());
    }

    private static JointAxes across(Network network, List<Integer> plane, Vector normal, List<Axis> rest) {
        List<Axis> axes = new ArrayList<>(List.of(new Axis("n", normal)));
        axes.addAll(rest);
        return new JointAxes(new Axes.Across(plane.stream().map(network::source).toList(), normal), axes);
    }

    private static Vector normal(List<Vector> units, int without) {
        return units.get((without + 1) % 3).cross(units.get((without + 2) % 3)).unit();
    }

    private static Vector upwards(Vector normal) {
        boolean down = normal.y() < 0 || normal.y() == 0 && (normal.x() < 0 || normal.x() == 0 && normal.z() < 0);
        return down ? normal.times(-1) : normal;
    }

    /** Of x, y and z the one nearest to a direction: the other two part best what lies across it. */
    private static Axis dropped(Vector direction) {
        Axis nearest = SPACE.get(0);
        for (Axis axis : SPACE) {
            boolean nearer = Math.abs(axis.direction().dot(direction)) > Math.abs(nearest.direction().dot(direction));
            nearest = nearer ? axis : nearest;
        }
        return nearest;
    }

    private static long holds(Axis axis, List<Vector> units) {
        return units.stream().filter(u -> Math.abs(u.dot(axis.direction())) > Network.IN_LINE).count();
    }

    /** x, y and in space z. */
    static List<Axis> conventional(Network network) {
        return network.dimension() == 3 ? SPACE : PLANE;
    }

    private static long inLine(Network network, int joint, Vector direction) {
        long count = network.forcesAt(joint).stream().filter(f -> Network.inLine(f.unit(), direction)).count();
        for (int u : network.unknownsAt(joint)) {
            count += Network.inLine(network.unit(u, joint), direction) ? 1 : 0;
        }
        return count;
    }

    private static boolean isUpright(Vector unit) {
        return Math.abs(unit.x()) <= Network.IN_LINE || Math.abs(unit.y()) <= Network.IN_LINE;
    }
}
