package kingpost.statics;

import java.util.ArrayList;
import java.util.List;
import javax.measure.Unit;
import kingpost.statics.AxisEquation.Axis;
import kingpost.statics.AxisEquation.Role;
import kingpost.statics.BodyEquation.Part;
import kingpost.statics.BodyEquation.Term;

/** Every outside force on the truss as one body, and the sums and moments of them. */
final class WholeBody {

    private static final double NO_PART = 1e-12;

    private final List<Force> forces = new ArrayList<>();
    private final double lengthFactor;
    private final double extent;

    /**
     * An outside force.
     *
     * @param source  where it comes from
     * @param unknown its number among the unknowns, or -1 for a load
     * @param joint   name of the joint at which it acts
     * @param at      that joint's place, in the truss's length unit
     * @param unit    direction of length 1
     * @param load    N along the direction, for a load
     */
    record Force(Source source, int unknown, String joint, Vector at, Vector unit, double load) {
    }

    WholeBody(Network network) {
        for (int u = network.members(); u < network.unknowns(); u++) {
            int joint = network.firstJoint(u);
            forces.add(new Force(network.source(u), u, network.name(joint), network.place(joint),
                    network.unit(u, joint), 0));
        }
        for (int j = 0; j < network.joints(); j++) {
            for (int i = 0; i < network.loadsAt(j).size(); i++) {
                Vector force = network.forcesAt(j).get(i);
                forces.add(new Force(network.loadsAt(j).get(i), -1, network.name(j), network.place(j), force.unit(),
                        force.norm()));
            }
        }
        lengthFactor = metres(network.model().lengthUnit());
        extent = network.extent();
    }

    private static double metres(Unit<?> length) {
        return kingpost.units.Quantity.of(1, length).in(kingpost.units.StructuralUnits.m);
    }

    /** Whether the reactions hold the truss as one body: three in the plane whose lines neither meet nor are parallel. */
    static boolean isHeld(Network network) {
        int size = 3 * (network.dimension() - 1);
        if (network.reactions() != size) {
            return false;
        }
        double[][] matrix = new double[size][size];
        for (int k = 0; k < size; k++) {
            int unknown = network.members() + k;
            int joint = network.firstJoint(unknown);
            Vector unit = network.unit(unknown, joint);
            Vector moment = network.place(joint).minus(network.place(0)).times(1 / network.extent()).cross(unit);
            double[] parts = size == 3 ? new double[] {unit.x(), unit.y(), moment.z()}
                    : new double[] {unit.x(), unit.y(), unit.z(), moment.x(), moment.y(), moment.z()};
            for (int row = 0; row < size; row++) {
                matrix[row][k] = parts[row];
            }
        }
        return Math.abs(SmallSystem.determinant(matrix)) > Network.IN_LINE;
    }

    double extentInMetres() {
        return extent * lengthFactor;
    }

    List<Force> forces() {
        return forces;
    }

    /** Moment per newton about a point, in the truss's length unit; exactly zero where the force passes the point. */
    double arm(Force force, Vector point) {
        double arm = force.at.minus(point).cross(force.unit).z();
        return Math.abs(arm) <= Network.IN_LINE * extent ? 0 : arm;
    }

    /** Cosine of a force with an axis; exactly zero across it. */
    static double cosine(Force force, Axis axis) {
        double cosine = force.unit.dot(axis.direction());
        return Math.abs(cosine) <= NO_PART ? 0 : cosine;
    }

    double factor(Force force, BodyEquation.Kind kind) {
        return kind instanceof BodyEquation.Kind.Moment moment ? arm(force, moment.point())
                : cosine(force, ((BodyEquation.Kind.Along) kind).axis());
    }

    /**
     * The equation with every value put in; residual in N, or N·m for a moment.
     *
     * @param open which unknowns were unknown before it
     */
    BodyEquation equation(BodyEquation.Kind kind, Role role, Values values, List<Integer> open) {
        List<Term> unknown = new ArrayList<>();
        List<Term> known = new ArrayList<>();
        double residual = 0;
        for (Force force : forces) {
            double factor = factor(force, kind);
            if (factor != 0) {
                boolean isOpen = open.contains(force.unknown);
                double value = force.unknown < 0 ? force.load : values.get(force.unknown);
                (isOpen ? unknown : known).add(new Term(force.source, force.joint, value, !isOpen, factor,
                        parts(force, kind)));
                residual += value * factor;
            }
        }
        unknown.addAll(known);
        boolean moment = kind instanceof BodyEquation.Kind.Moment;
        return new BodyEquation(kind, unknown, role, moment ? residual * lengthFactor : residual);
    }

    private static List<Part> parts(Force force, BodyEquation.Kind kind) {
        boolean inclined = Math.abs(force.unit.x()) > NO_PART && Math.abs(force.unit.y()) > NO_PART;
        if (!inclined || !(kind instanceof BodyEquation.Kind.Moment moment)) {
            return List.of();
        }
        Vector arm = force.at.minus(moment.point());
        List<Part> parts = new ArrayList<>();
        if (arm.y() != 0) {
            parts.add(new Part("x", force.unit.x(), -arm.y()));
        }
        if (arm.x() != 0) {
            parts.add(new Part("y", force.unit.y(), arm.x()));
        }
        return parts;
    }
}
