package kingpost.statics;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import kingpost.statics.AxisEquation.Axis;
import kingpost.statics.AxisEquation.Role;
import kingpost.statics.BodyEquation.Kind;
import kingpost.statics.BodyEquation.Part;
import kingpost.statics.BodyEquation.Term;
import kingpost.units.Quantity;
import kingpost.units.StructuralUnits;

/**
 * The truss, or a part of it, as one body: every force that acts on it from outside. On a part these are also the
 * members cut, each pulling at its joint of the part.
 */
final class Body {

    private static final double NO_PART = 1e-12;

    private final List<Force> forces = new ArrayList<>();
    private final double lengthFactor;
    private final double extent;
    private final boolean space;

    /**
     * An outside force.
     *
     * @param source  where it comes from
     * @param unknown its number among the unknowns, or -1 for a load
     * @param joint   the joint at which it acts
     * @param name    that joint's name
     * @param at      that joint's place, in the truss's length unit
     * @param unit    direction of length 1
     * @param load    N along the direction, for a load
     */
    record Force(Source source, int unknown, int joint, String name, Vector at, Vector unit, double load) {
    }

    private Body(Network network) {
        lengthFactor = Quantity.of(1, network.model().lengthUnit()).in(StructuralUnits.m);
        extent = network.extent();
        space = network.dimension() == 3;
    }

    /** The whole truss. */
    static Body whole(Network network) {
        BitSet all = new BitSet();
        all.set(0, network.joints());
        return part(network, all);
    }

    /** The part of the truss that some of its joints make. */
    static Body part(Network network, BitSet joints) {
        Body body = new Body(network);
        for (int j = joints.nextSetBit(0); j >= 0; j = joints.nextSetBit(j + 1)) {
            for (int u : network.unknownsAt(j)) {
                if (!network.isMember(u) || !joints.get(network.otherEnd(u, j))) {
                    body.forces.add(new Force(network.source(u), u, j, network.name(j), network.place(j),
                            network.unit(u, j), 0));
                }
            }
        }
        for (int j = joints.nextSetBit(0); j >= 0; j = joints.nextSetBit(j + 1)) {
            for (int i = 0; i < network.loadsAt(j).size(); i++) {
                Vector force = network.forcesAt(j).get(i);
                body.forces.add(new Force(network.loadsAt(j).get(i), -1, j, network.name(j), network.place(j),
                        force.unit(), force.norm()));
            }
        }
        return body;
    }

    /** Members cut and reactions first, then loads. */
    List<Force> forces() {
        return forces;
    }

    /** The forces whose values are not loads. */
    List<Force> unknowns() {
        return forces.stream().filter(f -> f.unknown() >= 0).toList();
    }

    boolean isInSpace() {
        return space;
    }

    double extentInMetres() {
        return extent * lengthFactor;
    }

    /** Moment per newton about a point, in the truss's length unit; exactly zero where the force passes the point. */
    double arm(Force force, Vector point) {
        Vector reach = force.at.minus(point);
        double arm = reach.cross(force.unit).z();
        return Math.abs(arm) <= Network.IN_LINE * Math.max(extent, reach.norm()) ? 0 : arm;
    }

    /** Moment per newton about a line, in the truss's length unit; exactly zero where the force meets it. */
    double arm(Force force, Vector point, Vector direction) {
        Vector reach = force.at.minus(point);
        double arm = reach.cross(force.unit).dot(direction);
        return Math.abs(arm) <= Network.IN_LINE * Math.max(extent, reach.norm()) ? 0 : arm;
    }

    /** Cosine of a force with an axis; exactly zero across it. */
    static double cosine(Force force, Axis axis) {
        double cosine = force.unit.dot(axis.direction());
        return Math.abs(cosine) <= Network.IN_LINE ? 0 : cosine;
    }

    double factor(Force force, Kind kind) {
        if (kind instanceof Kind.MomentAbout about) {
            return arm(force, about.point(), about.axis().direction());
        }
        return kind instanceof Kind.Moment moment ? arm(force, moment.point())
                : cosine(force, ((Kind.Along) kind).axis());
    }

    /**
     * The equation with every value put in; residual in N, or N·m for a moment.
     *
     * @param open numbers of the unknowns that were unknown before it
     */
    BodyEquation equation(Kind kind, Role role, Values values, List<Integer> open) {
        List<Term> unknown = new ArrayList<>();
        List<Term> known = new ArrayList<>();
        double residual = 0;
        for (Force force : forces) {
            double factor = factor(force, kind);
            if (factor != 0) {
                boolean isOpen = open.contains(force.unknown);
                double value = value(force, values);
                (isOpen ? unknown : known).add(new Term(force.source, force.name, value, !isOpen, factor,
                        parts(force, kind)));
                residual += value * factor;
            }
        }
        unknown.addAll(known);
        return new BodyEquation(kind, unknown, role, kind instanceof Kind.Along ? residual : residual * lengthFactor);
    }

    static double value(Force force, Values values) {
        return force.unknown < 0 ? force.load : values.get(force.unknown);
    }

    private static List<Part> parts(Force force, Kind kind) {
        boolean inclined = Math.abs(force.unit.x()) > NO_PART && Math.abs(force.unit.y()) > NO_PART;
        if (!inclined || !(kind instanceof Kind.Moment moment)) {
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
