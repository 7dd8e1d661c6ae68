package kingpost.statics;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import kingpost.exact.ExactSystem;
import kingpost.exact.Fraction;
import kingpost.exact.Surd;
import kingpost.truss.Direction;
import kingpost.truss.Joint;
import kingpost.truss.Load;

/**
 * Solves the joint equations in fractions. With q, the force over the length of the member, the equations of a truss
 * with rational coordinates and loads have rational coefficients; the force is then q times the root of the squared
 * length. A reaction is treated alike, with the length of its direction in the numbers given.
 *
 * <p><b>Units</b>: coordinates in the truss's length unit, forces in its force unit. Loads whose components share one
 * root, such as several at 45 degrees, are taken out in front.
 */
final class ExactRoute {

    /** Beyond this many unknowns fractions grow long and nobody reads them. */
    private static final int LARGEST = 400;
    /** Radicands longer than this are not put in lowest terms, and the force is left without its surd. */
    private static final int RADICAND_BITS = 62;

    private final Network network;
    private final List<Fraction[]> places = new ArrayList<>();
    private final List<Fraction[]> reactions = new ArrayList<>();
    private final Fraction[][] loads;
    private BigInteger root = BigInteger.ONE;
    private boolean rational = true;

    private ExactRoute(Network network) {
        this.network = network;
        this.loads = new Fraction[network.joints()][];
    }

    /** Forces over lengths, exact, or empty where something is not rational. */
    static Optional<ExactForces> of(Network network, SolutionOrder order) {
        if (network.unknowns() > LARGEST) {
            return Optional.empty();
        }
        ExactRoute route = new ExactRoute(network);
        return route.readPlaces() && route.readLoads()
                ? route.solve(order, 1, (joint, axis) -> List.of(route.loads[joint][axis].negate())).map(all -> route.forces(order, all.get(0)))
                : Optional.empty();
    }

    /**
     * Forces for a load of 1 straight down on each of some joints in turn, in place of the truss's own loads: a list for
     * each joint with an entry for each unknown that is wanted.
     */
    static Optional<List<List<Optional<Surd>>>> ofUnitLoads(Network network, SolutionOrder order, List<Integer> joints,
                                                            List<Integer> wanted) {
        if (network.unknowns() > LARGEST) {
            return Optional.empty();
        }
        ExactRoute route = new ExactRoute(network);
        if (!route.readPlaces()) {
            return Optional.empty();
        }
        return route.solve(order, joints.size(), (joint, axis) -> joints.stream()
                        .map(j -> j == joint && axis == 1 ? Fraction.ONE : Fraction.ZERO).toList())
                .map(all -> all.stream().map(unique -> wanted.stream()
                        .map(u -> route.force(u, unique.values().get(order.column(u)))).toList()).toList());
    }

    private boolean readPlaces() {
        for (Joint joint : network.model().joints()) {
            places.add(fractions(joint.x().getValue(), joint.y().getValue(), joint.z().getValue()));
        }
        for (int u = network.members(); u < network.unknowns(); u++) {
            Direction d = network.reaction(u).direction();
            rational &= d.exact();
            reactions.add(fractions(d.x(), d.y(), d.z()));
        }
        return rational;
    }

    private boolean readLoads() {
        boolean first = true;
        for (int j = 0; j < network.joints() && rational; j++) {
            loads[j] = new Fraction[] {Fraction.ZERO, Fraction.ZERO, Fraction.ZERO};
            for (Source.OfLoad load : network.loadsAt(j)) {
                add(j, load.load(), first);
                first = false;
            }
        }
        return rational;
    }

    private Fraction[] fractions(double... numbers) {
        Fraction[] fractions = new Fraction[numbers.length];
        for (int i = 0; i < numbers.length; i++) {
            Optional<Fraction> fraction = Rational.of(numbers[i]);
            rational &= fraction.isPresent();
            fractions[i] = fraction.orElse(Fraction.ZERO);
        }
        return fractions;
    }

    private void add(int joint, Load load, boolean first) {
        Surd factor = Surd.of(Fraction.ONE);
        Fraction[] parts;
        if (load instanceof Load.Directed directed) {
            Direction d = directed.direction();
            parts = fractions(d.x(), d.y(), d.z());
            Fraction size = fractions(directed.magnitude().in(network.model().forceUnit()))[0];
            Fraction squared = squared(parts);
            rational &= d.exact() && squared.numerator().multiply(squared.denominator()).bitLength() <= RADICAND_BITS;
            if (!rational) {
                return;
            }
            factor = Surd.of(size).over(Surd.squareRoot(squared));
        } else {
            parts = fractions(load.fx().in(network.model().forceUnit()), load.fy().in(network.model().forceUnit()),
                    load.fz().in(network.model().forceUnit()));
        }
        root = first ? factor.radicand() : root;
        rational &= root.equals(factor.radicand());
        for (int i = 0; i < 3; i++) {
            loads[joint][i] = loads[joint][i].plus(parts[i].times(factor.coefficient()));
        }
    }

    private static Fraction squared(Fraction[] parts) {
        return parts[0].squared().plus(parts[1].squared()).plus(parts[2].squared());
    }

    private interface RightSides {
        /** One for each case, of the sum along that axis of that joint. */
        List<Fraction> of(int joint, int axis);
    }

    private Optional<List<ExactSystem.Solution.Unique>> solve(SolutionOrder order, int cases, RightSides right) {
        ExactSystem system = ExactSystem.of(network.unknowns(), cases);
        for (int place = 0; place < network.joints(); place++) {
            int joint = order.joint(place);
            for (int axis = 0; axis < network.dimension(); axis++) {
                Map<Integer, Fraction> row = new TreeMap<>();
                for (int u : network.unknownsAt(joint)) {
                    row.put(order.column(u), along(u, joint)[axis]);
                }
                system.add(row, right.of(joint, axis));
            }
        }
        List<ExactSystem.Solution.Unique> all = new ArrayList<>();
        for (int number = 0; number < cases; number++) {
            if (!(system.solve(number) instanceof ExactSystem.Solution.Unique unique)) {
                return Optional.empty();
            }
            all.add(unique);
        }
        return Optional.of(all);
    }

    private ExactForces forces(SolutionOrder order, ExactSystem.Solution.Unique unique) {
        List<Fraction> densities = new ArrayList<>();
        List<Optional<Surd>> forces = new ArrayList<>();
        for (int u = 0; u < network.unknowns(); u++) {
            Fraction density = unique.values().get(order.column(u));
            densities.add(density);
            forces.add(force(u, density));
        }
        return new ExactForces(densities, forces);
    }

    private Fraction[] along(int unknown, int joint) {
        if (!network.isMember(unknown)) {
            return reactions.get(unknown - network.members());
        }
        Fraction[] here = places.get(joint);
        Fraction[] there = places.get(network.otherEnd(unknown, joint));
        return new Fraction[] {there[0].minus(here[0]), there[1].minus(here[1]), there[2].minus(here[2])};
    }

    /** Density times length times the root taken out of the loads. */
    private Optional<Surd> force(int unknown, Fraction density) {
        if (density.isZero()) {
            return Optional.of(Surd.ZERO);
        }
        Fraction[] along = along(unknown, network.firstJoint(unknown));
        BigInteger below = along[0].denominator().multiply(along[1].denominator()).multiply(along[2].denominator());
        BigInteger squared = BigInteger.ZERO;
        for (Fraction part : along) {
            squared = squared.add(part.times(Fraction.of(below)).numerator().pow(2));
        }
        if (squared.multiply(root).bitLength() > RADICAND_BITS) {
            return Optional.empty();
        }
        return Optional.of(new Surd(density.over(Fraction.of(below)), squared).times(new Surd(Fraction.ONE, root)));
    }

    /**
     * Exact answers by number of unknown.
     *
     * @param densities force over length; for a reaction over the length of its direction
     * @param forces    in the truss's force unit; empty where the surd would be too long to be of use
     */
    record ExactForces(List<Fraction> densities, List<Optional<Surd>> forces) {
    }
}
