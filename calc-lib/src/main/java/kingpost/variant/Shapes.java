package kingpost.variant;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import kingpost.exact.Fraction;
import kingpost.truss.TrussModel;

/** Geometries for a truss with as many whole-number slopes as there can be. */
final class Shapes {

    private static final double STEEPER = 2.2;
    private static final double LARGER = 2.0;
    private static final List<String> STEPS = List.of("0.05", "0.1", "0.15", "0.2", "0.25", "0.3", "0.4", "0.5", "0.6",
            "0.75", "1", "1.2", "1.5", "2", "2.5", "3", "4", "5", "6", "8", "10", "12", "15", "20", "25", "30", "40", "50",
            "60", "75", "100", "120", "150", "200", "250", "300", "400", "500");
    private static final int MOST_DECIMALS = 2;

    private final TrussModel truss;
    private final Lattice lattice;

    private Shapes(TrussModel truss, Lattice lattice) {
        this.truss = truss;
        this.lattice = lattice;
    }

    /** The geometries with the fewest surds, in a fixed order; the truss's own where its lattice allows no other. */
    static List<Shape> of(TrussModel truss, Lattice lattice) {
        Shapes shapes = new Shapes(truss, lattice);
        Set<Shape> all = new LinkedHashSet<>();
        if (lattice.isRegular()) {
            shapes.ratios().forEach((ratio, simple) -> shapes.addSizes(ratio, simple, all));
        }
        if (all.isEmpty()) {
            return both(lattice.along(), lattice.up(), shapes.surds(lattice.along(), lattice.up()), true);
        }
        int fewest = all.stream().mapToInt(Shape::surds).min().orElseThrow();
        return all.stream().filter(shape -> shape.surds() == fewest).toList();
    }

    /**
     * Ratios of a step up to a step along that give some member a whole-number slope, not far from the truss's own, and
     * whether the slope is a simple one.
     */
    private Map<Fraction, Boolean> ratios() {
        double own = lattice.up().doubleValue() / lattice.along().doubleValue();
        Map<Fraction, Boolean> ratios = new LinkedHashMap<>();
        truss.members().stream().map(lattice::way).filter(way -> way.along() != 0 && way.up() != 0).forEach(way -> {
            for (Triple triple : Triple.ALL) {
                Fraction ratio = triple.slope().times(Fraction.of(Math.abs(way.along()), Math.abs(way.up())));
                if (ratio.doubleValue() <= own * STEEPER && ratio.doubleValue() >= own / STEEPER) {
                    ratios.merge(ratio, triple.isSimple(), Boolean::logicalOr);
                }
            }
        });
        return ratios;
    }

    private void addSizes(Fraction ratio, boolean simple, Set<Shape> all) {
        double own = lattice.along().doubleValue();
        for (String step : STEPS) {
            Fraction along = Fraction.of(ratio.denominator()).times(Rationals.of(step));
            Fraction up = Fraction.of(ratio.numerator()).times(Rationals.of(step));
            boolean size = along.doubleValue() <= own * LARGER && along.doubleValue() >= own / LARGER;
            if (size && isShort(along) && isShort(up)) {
                all.addAll(both(along, up, surds(along, up), simple));
            }
        }
    }

    private static List<Shape> both(Fraction along, Fraction up, int surds, boolean simple) {
        List<Shape> both = new ArrayList<>();
        both.add(new Shape(along, up, false, surds, simple));
        both.add(new Shape(along, up, true, surds, simple));
        return both;
    }

    private static boolean isShort(Fraction number) {
        int decimals = Rationals.decimals(number);
        return decimals >= 0 && decimals <= MOST_DECIMALS;
    }

    private int surds(Fraction along, Fraction up) {
        return (int) truss.members().stream().map(lattice::way).filter(way -> Rationals.length(along.times(way.along()),
                up.times(way.up())).isEmpty()).count();
    }
}
