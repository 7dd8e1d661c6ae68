package kingpost.variant;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kingpost.exact.ExactSystem;
import kingpost.exact.Fraction;
import kingpost.truss.Direction;
import kingpost.truss.Joint;
import kingpost.truss.Member;
import kingpost.truss.Support;
import kingpost.truss.TrussModel;
import kingpost.variant.Shape.Way;

/**
 * Forces of a truss in one shape for a load of one unit in each group, in fractions.
 *
 * <p>All joint equations are solved at once for force per length, which is a fraction whatever the lengths are; a
 * member whose length is a fraction has a force that is one too. Source of the idea: the joint equations are linear in
 * force over length with the differences of coordinates as coefficients.
 *
 * @param clean for each member of fractional length and each reaction, its force by group
 */
record UnitForces(List<List<Fraction>> clean) {

    UnitForces {
        clean = clean.stream().map(List::copyOf).toList();
    }

    /** Empty where the joint equations have not exactly one answer. */
    static Optional<UnitForces> of(TrussModel truss, Lattice lattice, Shape shape, LoadPlan plan) {
        return new Builder(truss, lattice, shape, plan).build();
    }

    /** The common denominators, by group, of the forces that a unit of load causes. */
    List<BigInteger> denominators() {
        List<BigInteger> multiples = new ArrayList<>();
        for (int g = 0; !clean.isEmpty() && g < clean.get(0).size(); g++) {
            BigInteger multiple = BigInteger.ONE;
            for (List<Fraction> force : clean) {
                multiple = Rationals.lcm(multiple, force.get(g).denominator());
            }
            multiples.add(multiple);
        }
        return multiples;
    }

    /** Every clean force under loads of these sizes. */
    List<Fraction> under(List<Fraction> sizes) {
        return clean.stream().map(force -> {
            Fraction sum = Fraction.ZERO;
            for (int g = 0; g < sizes.size(); g++) {
                sum = sum.plus(force.get(g).times(sizes.get(g)));
            }
            return sum;
        }).toList();
    }

    private static final class Builder {
        private final TrussModel truss;
        private final Lattice lattice;
        private final Shape shape;
        private final LoadPlan plan;
        private final Directions directions;
        private final List<Fraction> lengths = new ArrayList<>();
        private final Map<String, List<Map<Integer, Fraction>>> rows = new HashMap<>();

        Builder(TrussModel truss, Lattice lattice, Shape shape, LoadPlan plan) {
            this.truss = truss;
            this.lattice = lattice;
            this.shape = shape;
            this.plan = plan;
            this.directions = new Directions(truss, lattice, shape);
        }

        Optional<UnitForces> build() {
            truss.joints().forEach(joint -> rows.put(joint.name(), List.of(new HashMap<>(), new HashMap<>())));
            truss.members().forEach(this::member);
            truss.supports().forEach(this::support);
            ExactSystem system = ExactSystem.of(lengths.size(), plan.sizes().size());
            for (Joint joint : truss.joints()) {
                system.add(rows.get(joint.name()).get(0), loads(joint.name(), true));
                system.add(rows.get(joint.name()).get(1), loads(joint.name(), false));
            }
            if (system.rank() < lengths.size()) {
                return Optional.empty();
            }
            return forces(system);
        }

        private Optional<UnitForces> forces(ExactSystem system) {
            List<List<Fraction>> forces = new ArrayList<>();
            lengths.forEach(length -> forces.add(new ArrayList<>()));
            for (int g = 0; g < plan.sizes().size(); g++) {
                if (!(system.solve(g) instanceof ExactSystem.Solution.Unique unique)) {
                    return Optional.empty();
                }
                for (int i = 0; i < lengths.size(); i++) {
                    forces.get(i).add(unique.values().get(i).times(lengths.get(i)));
                }
            }
            List<List<Fraction>> clean = new ArrayList<>();
            for (int i = 0; i < lengths.size(); i++) {
                if (!lengths.get(i).isZero()) {
                    clean.add(forces.get(i));
                }
            }
            return Optional.of(new UnitForces(clean));
        }

        private void member(Member member) {
            Way way = shape.way(lattice.way(member));
            int number = lengths.size();
            put(member.from(), number, way);
            put(member.to(), number, way.negate());
            lengths.add(Rationals.length(way.x(), way.y()).orElse(Fraction.ZERO));
        }

        private void support(Support support) {
            for (Direction reaction : support.reactions()) {
                Way way = directions.of(support.joint(), reaction);
                put(support.joint(), lengths.size(), way);
                lengths.add(Rationals.length(way.x(), way.y()).orElse(Fraction.ZERO));
            }
        }

        private void put(String joint, int number, Way way) {
            rows.get(joint).get(0).put(number, way.x());
            rows.get(joint).get(1).put(number, way.y());
        }

        private List<Fraction> loads(String joint, boolean along) {
            List<Fraction> sums = new ArrayList<>();
            plan.sizes().forEach(size -> sums.add(Fraction.ZERO));
            for (LoadPlan.Part part : plan.parts()) {
                if (part.joint().equals(joint)) {
                    Way way = directions.of(joint, part.direction());
                    Fraction length = Rationals.length(way.x(), way.y()).orElse(Fraction.ONE);
                    Fraction share = (along ? way.x() : way.y()).over(length);
                    sums.set(part.group(), sums.get(part.group()).minus(share));
                }
            }
            return sums;
        }
    }
}
