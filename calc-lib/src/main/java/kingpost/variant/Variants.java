package kingpost.variant;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.function.Function;
import kingpost.exact.Fraction;
import kingpost.statics.NotSolvable;
import kingpost.statics.Solution;
import kingpost.statics.Solver;
import kingpost.truss.Direction;
import kingpost.truss.Load;
import kingpost.truss.Support;
import kingpost.truss.TrussBuilder;
import kingpost.truss.TrussModel;
import kingpost.units.CalculationException;
import kingpost.units.Quantity;
import kingpost.variant.Shape.Way;

/**
 * Makes variants of a truss.
 *
 * <p>The same truss, count and seed give the same variants; a larger count begins with the variants of a smaller one.
 */
public final class Variants {

    private static final int TRIES = 40;
    private static final int DRAWS = 12;
    /** Where every shape keeps roots, none is clean, and it is not worth while to look for long. */
    private static final int FEW_DRAWS = 3;
    private static final int FINEST = 4;
    private static final int SHORT = 2;

    private final TrussModel truss;
    private final Lattice lattice;
    private final LoadPlan plan;
    private final List<Shape> shapes;
    private final Difficulty difficulty;
    private final Way corner;
    private final Map<Shape, Optional<LoadSizes>> sizes = new LinkedHashMap<>();
    private final Set<List<Object>> met = new HashSet<>();
    private final Set<List<Object>> tried = new HashSet<>();
    /** Up to {@code FINEST} only clean variants are taken; beyond it, it starts again with all. */
    private int fineness;

    private Variants(TrussModel truss) {
        this.truss = truss;
        this.lattice = Lattice.of(truss);
        this.plan = LoadPlan.of(truss);
        this.shapes = Shapes.of(truss, lattice);
        this.corner = corner(truss);
        Solution own = Solver.solve(truss);
        this.difficulty = Difficulty.of(own);
        met.add(answers(own));
        fineness = shapes.get(0).surds() == 0 ? 0 : FINEST + 1;
    }

    /**
     * So many variants, no two alike and none like the truss itself.
     *
     * @throws CalculationException when the count is not positive, the truss is in space, carries no load or cannot be
     *                              solved, or fewer variants can be found than are asked for
     */
    public static List<Variant> of(TrussModel truss, int count, long seed) {
        if (count < 1) {
            throw new CalculationException("Variants of " + truss.name() + ": " + count
                    + " were asked for; ask for one or more.");
        }
        if (truss.joints().stream().anyMatch(joint -> joint.z().getValue() != 0)) {
            throw new CalculationException("Variants of " + truss.name()
                    + ": it is a truss in space, and only plane trusses can be varied; write its variants down one by one.");
        }
        if (LoadPlan.of(truss).parts().isEmpty()) {
            throw new CalculationException("Variants of " + truss.name() + ": no load acts on it; add a load.");
        }
        return new Variants(truss).make(count, seed);
    }

    private List<Variant> make(int count, long seed) {
        Random random = new Random(seed);
        List<Variant> variants = new ArrayList<>();
        for (int i = 1; i <= count; i++) {
            Variant next = next(i, seed, random).orElseThrow(() -> new CalculationException("Variants of " + truss.name()
                    + ": only " + variants.size() + " different ones as hard as the first could be found; ask for no"
                    + " more, or take another seed."));
            variants.add(next);
        }
        return variants;
    }

    /** Looks among round sizes first, among finer ones where those are used up, and last among those not clean. */
    private Optional<Variant> next(int number, long seed, Random random) {
        for (; fineness <= 2 * FINEST + 1; fineness++) {
            for (int i = 0; i < TRIES; i++) {
                Optional<Variant> variant = cleanest(random)
                        .flatMap(draft -> solution(number, draft.shape(), draft.choice().sizes()))
                        .filter(solution -> fineness > FINEST || isClean(solution))
                        .filter(solution -> met.add(answers(solution)))
                        .map(solution -> new Variant(number, seed, solution, isClean(solution)));
                if (variant.isPresent()) {
                    return variant;
                }
            }
        }
        return Optional.empty();
    }

    private record Draft(Shape shape, LoadSizes.Choice choice) {
        int awkward() {
            return choice.awkward() + shape.awkward();
        }

        List<Object> key() {
            return List.of(shape, choice.sizes());
        }
    }

    /** Of several shapes and loads not tried before the cleanest. */
    private Optional<Draft> cleanest(Random random) {
        Draft best = null;
        int draws = shapes.get(0).surds() == 0 ? DRAWS : FEW_DRAWS;
        for (int i = 0; i < draws; i++) {
            Shape shape = shapes.get(random.nextInt(shapes.size()));
            Optional<LoadSizes> choices = sizes.computeIfAbsent(shape,
                    s -> UnitForces.of(truss, lattice, s, plan).map(forces -> new LoadSizes(forces, plan)));
            if (choices.isPresent()) {
                Draft draft = new Draft(shape, choices.get().choose(random, fineness % (FINEST + 1)));
                boolean better = best == null || draft.awkward() < best.awkward();
                best = better && !tried.contains(draft.key()) ? draft : best;
            }
        }
        if (best != null) {
            tried.add(best.key());
        }
        return Optional.ofNullable(best);
    }

    private Optional<Solution> solution(int number, Shape shape, List<Fraction> sizes) {
        try {
            Solution solution = Solver.solve(model(number, shape, sizes));
            boolean good = Difficulty.of(solution).equals(difficulty) && solution.checks().pass();
            return good ? Optional.of(solution) : Optional.empty();
        } catch (NotSolvable e) {
            return Optional.empty();
        }
    }

    private static boolean isClean(Solution solution) {
        return solution.members().stream().allMatch(member -> member.exact().isPresent()
                && member.exact().get().isRational() && isShort(member.exact().get().coefficient()));
    }

    private static boolean isShort(Fraction force) {
        int decimals = Rationals.decimals(force);
        return decimals >= 0 && decimals <= SHORT;
    }

    /** What would make two variants alike for someone who looks at a neighbour's sheet: the same forces. */
    private static List<Object> answers(Solution solution) {
        List<Object> answers = new ArrayList<>();
        solution.members().forEach(member -> answers.add(Math.round(member.force() * 1e3)));
        return answers;
    }

    private TrussModel model(int number, Shape shape, List<Fraction> sizes) {
        TrussBuilder<TrussModel> builder = new TrussBuilder<TrussModel>(truss.name() + ", variant " + number,
                Function.identity()).units(truss.lengthUnit(), truss.forceUnit());
        Map<String, Way> places = new LinkedHashMap<>();
        truss.joints().forEach(joint -> places.put(joint.name(), shape.way(lattice.places().get(joint.name()))));
        Fraction left = least(places.values().stream().map(Way::x).toList());
        Fraction low = least(places.values().stream().map(Way::y).toList());
        places.forEach((joint, way) -> builder.joint(joint, corner.x().plus(way.x().minus(left)).doubleValue(),
                corner.y().plus(way.y().minus(low)).doubleValue()));
        truss.members().forEach(member -> builder.member(member.from(), member.to()));
        Directions directions = new Directions(truss, lattice, shape);
        truss.supports().forEach(support -> support(builder, support, directions));
        loads(builder, directions, sizes);
        return builder.build();
    }

    private static Fraction least(List<Fraction> numbers) {
        return numbers.stream().min(Comparator.naturalOrder()).orElseThrow();
    }

    /** The lowest and leftmost coordinates of a truss. */
    private static Way corner(TrussModel truss) {
        return new Way(least(truss.joints().stream().map(j -> Fraction.ofDecimal(j.x().in(truss.lengthUnit()))).toList()),
                least(truss.joints().stream().map(j -> Fraction.ofDecimal(j.y().in(truss.lengthUnit()))).toList()));
    }

    private static void support(TrussBuilder<TrussModel> builder, Support support, Directions directions) {
        if (support.kind() == Support.Kind.PIN) {
            builder.pin(support.joint());
            return;
        }
        for (Direction reaction : support.reactions()) {
            Direction way = Directions.said(directions.of(support.joint(), reaction));
            if (support.kind() == Support.Kind.ROLLER) {
                builder.roller(support.joint(), way);
            } else {
                builder.link(support.joint(), way);
            }
        }
    }

    private void loads(TrussBuilder<TrussModel> builder, Directions directions, List<Fraction> sizes) {
        for (int i = 0; i < truss.loads().size(); i++) {
            int number = i;
            List<LoadPlan.Part> parts = plan.parts().stream().filter(part -> part.load() == number).toList();
            if (truss.loads().get(i) instanceof Load.Components) {
                double fx = parts.stream().mapToDouble(p -> along(p, directions, sizes, true)).sum();
                double fy = parts.stream().mapToDouble(p -> along(p, directions, sizes, false)).sum();
                builder.load(truss.loads().get(i).joint(), force(fx), force(fy));
            } else if (!parts.isEmpty()) {
                LoadPlan.Part part = parts.get(0);
                builder.load(part.joint(), inUnitOf(part, sizes.get(part.group()).doubleValue()),
                        Directions.said(directions.of(part.joint(), part.direction())));
            }
        }
    }

    private double along(LoadPlan.Part part, Directions directions, List<Fraction> sizes, boolean x) {
        Way way = directions.of(part.joint(), part.direction());
        return (x ? way.x() : way.y()).signum() * sizes.get(part.group()).doubleValue();
    }

    private Quantity force(double value) {
        return Quantity.of(value, truss.forceUnit());
    }

    private Quantity inUnitOf(LoadPlan.Part part, double value) {
        return force(value).to(part.unit());
    }
}
