package kingpost.variant;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import kingpost.exact.Fraction;
import kingpost.truss.Joint;
import kingpost.truss.Member;
import kingpost.truss.TrussModel;

/**
 * The joints of a truss on a lattice: whole steps along and up from the first joint, and the size of a step.
 *
 * @param places joint to its steps along and up
 * @param along  one step along, in the truss's length unit; zero where all joints are above each other
 * @param up     one step up, likewise
 */
record Lattice(Map<String, Place> places, Fraction along, Fraction up) {

    /** More steps than this between joints means that the coordinates have no common step worth the name. */
    private static final long MOST_STEPS = 400;

    Lattice {
        places = Map.copyOf(places);
    }

    /**
     * @param along whole steps to the right
     * @param up    whole steps upwards
     */
    record Place(long along, long up) {
        Place minus(Place other) {
            return new Place(along - other.along, up - other.up);
        }
    }

    static Lattice of(TrussModel truss) {
        List<Fraction> xs = offsets(truss, joint -> joint.x().in(truss.lengthUnit()));
        List<Fraction> ys = offsets(truss, joint -> joint.y().in(truss.lengthUnit()));
        Fraction along = step(xs);
        Fraction up = step(ys);
        Map<String, Place> places = new HashMap<>();
        for (int i = 0; i < xs.size(); i++) {
            places.put(truss.joints().get(i).name(), new Place(steps(xs.get(i), along), steps(ys.get(i), up)));
        }
        return new Lattice(places, along, up);
    }

    private static List<Fraction> offsets(TrussModel truss, Function<Joint, Double> coordinate) {
        List<Fraction> offsets = new ArrayList<>();
        Fraction first = Fraction.ofDecimal(coordinate.apply(truss.joints().get(0)));
        truss.joints().forEach(joint -> offsets.add(Fraction.ofDecimal(coordinate.apply(joint)).minus(first)));
        return offsets;
    }

    private static Fraction step(List<Fraction> offsets) {
        return offsets.stream().filter(offset -> !offset.isZero()).map(Fraction::abs).reduce(Rationals::common)
                .orElse(Fraction.ZERO);
    }

    private static long steps(Fraction offset, Fraction step) {
        return offset.isZero() ? 0 : offset.over(step).numerator().longValueExact();
    }

    /** Whether the steps are few enough for other steps to make clean coordinates. */
    boolean isRegular() {
        return !along.isZero() && !up.isZero() && places.values().stream()
                .allMatch(place -> Math.abs(place.along()) <= MOST_STEPS && Math.abs(place.up()) <= MOST_STEPS);
    }

    Place way(Member member) {
        return places.get(member.to()).minus(places.get(member.from()));
    }
}
