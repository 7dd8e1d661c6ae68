package kingpost.statics;

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
     * For a joint in the plane with one or two unknowns; in space the axes are x, y and z.
     *
     * @param unknowns to be found
     * @param others   unknowns that stay unknown, all in one line
     */
    static JointAxes of(Network network, int joint, List<Integer> unknowns, List<Integer> others) {
        if (network.dimension() == 3) {
            return new JointAxes(new Axes.Conventional(), SPACE);
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
