package kingpost.statics;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import kingpost.exact.Surd;
import kingpost.truss.TrussModel;

/**
 * What a load of one unit, straight down, does to some members or supports when it stands on each of some joints in
 * turn. The joint equations are factored once for all of them; where coordinates are rational they are solved in
 * fractions as well, for all joints at once. The truss's own loads play no part.
 *
 * @param truss    the truss
 * @param joints   the joints loaded, one at a time
 * @param effects  what is asked for: members and reaction components
 * @param forces   per unit of load, a list for each joint with a number for each effect: tension positive; reactions
 *                 along their directions
 * @param exact    the same as fraction times surd where it can be told
 * @param worst    largest difference between fractions and factors, over the largest force; 0 without fractions
 */
public record UnitLoads(TrussModel truss, List<String> joints, List<Source> effects, List<List<Double>> forces,
                        List<List<Optional<Surd>>> exact, double worst) {

    /** A force smaller than this part of the largest is rounding. */
    private static final double NOISE = 1e-12;

    public UnitLoads {
        joints = List.copyOf(joints);
        effects = List.copyOf(effects);
        forces = forces.stream().map(List::copyOf).toList();
        exact = exact.stream().map(List::copyOf).toList();
    }

    /**
     * Loads each of these joints in turn.
     *
     * @param effects members and reactions of the truss
     * @throws NotSolvable when the truss is a mechanism or indeterminate
     */
    public static UnitLoads of(TrussModel model, List<String> joints, List<Source> effects) {
        Network network = new Network(model);
        Route route = Route.of(network, new Inspections(network));
        Determinacy determinacy = Determinacies.of(network, route);
        if (!(determinacy instanceof Determinacy.Determinate)) {
            throw NotSolvable.because(model.name(), determinacy);
        }
        SolutionOrder order = SolutionOrder.of(network, route.moves());
        List<Integer> numbers = joints.stream().map(network::number).toList();
        List<Integer> wanted = effects.stream().map(e -> IntStream.range(0, network.unknowns())
                .filter(u -> network.source(u).equals(e)).findFirst().orElseThrow()).toList();
        Optional<List<List<Optional<Surd>>>> surds = ExactRoute.ofUnitLoads(network, order, numbers, wanted);
        List<List<Double>> forces = new ArrayList<>();
        List<List<Optional<Surd>>> exact = new ArrayList<>();
        double[] worst = {0};
        new EquilibriumSystem(network, order).solve(numbers, Vector.Y.times(-1), all -> {
            List<Optional<Surd>> here = surds.map(s -> s.get(forces.size()))
                    .orElseGet(() -> wanted.stream().map(u -> Optional.<Surd>empty()).toList());
            double largest = IntStream.range(0, all.length).mapToDouble(u -> Math.abs(all[u])).max().orElse(1);
            List<Double> values = new ArrayList<>();
            for (int i = 0; i < wanted.size(); i++) {
                double factored = all[wanted.get(i)];
                double value = here.get(i).map(Surd::doubleValue)
                        .orElse(Math.abs(factored) <= NOISE * largest ? 0 : factored);
                worst[0] = Math.max(worst[0], here.get(i).isEmpty() ? 0 : Math.abs(value - factored) / largest);
                values.add(value);
            }
            forces.add(values);
            exact.add(here);
        });
        return new UnitLoads(model, joints, effects, forces, exact, worst[0]);
    }
}
