package kingpost.graphic;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import kingpost.statics.AxisEquation;
import kingpost.statics.JointForce;
import kingpost.statics.Solution;
import kingpost.statics.Source;
import kingpost.statics.Step;
import kingpost.statics.Vector;
import kingpost.truss.TrussModel;

/**
 * The forces on one joint drawn tip to tail, clockwise round the joint. Those that were known when the joint was worked
 * come first, as far as they lie side by side.
 *
 * @param truss the truss
 * @param joint the joint
 * @param sides every force, in the order drawn; members that carry nothing are among them
 * @param known for each side whether it was known when the joint was worked; all, where it was not worked as a joint
 * @param scale N, the largest force in the truss or on it
 */
public record ForcePolygon(TrussModel truss, String joint, List<Side> sides, List<Boolean> known, double scale) {

    public ForcePolygon {
        sides = List.copyOf(sides);
        known = List.copyOf(known);
    }

    /**
     * The polygon of a joint.
     *
     * @param joint a joint of the truss
     * @throws kingpost.units.CalculationException for a space truss
     */
    public static ForcePolygon of(Solution solution, String joint) {
        PlaneTruss truss = new PlaneTruss(solution, "Force polygon");
        Embedding embedding = new Embedding(truss);
        int number = truss.number(joint);
        int[] outside = IntStream.range(0, embedding.out(number).length)
                .filter(k -> embedding.outer().contains(embedding.cornerFace(number, k))).toArray();
        boolean plain = outside.length > 0 && embedding.crossing().isEmpty();
        List<Side> sides = new Round(truss, embedding, number,
                k -> !plain || IntStream.of(outside).anyMatch(o -> o == k)).all();
        List<Boolean> known = known(solution, joint, sides);
        int start = start(known);
        return new ForcePolygon(solution.truss(), joint, turned(sides, start), turned(known, start), truss.scale());
    }

    /** Where the tip of each side lies, N, the first tail being at the origin. */
    public List<Vector> corners() {
        List<Vector> corners = new ArrayList<>();
        Vector at = new Vector(0, 0, 0);
        for (Side side : sides) {
            at = at.plus(side.vector());
            corners.add(at);
        }
        return corners;
    }

    /** N, from the last tip to the first tail. */
    public double gap() {
        return sides.isEmpty() ? 0 : corners().get(sides.size() - 1).norm();
    }

    private static List<Boolean> known(Solution solution, String joint, List<Side> sides) {
        Set<Object> unknown = new HashSet<>();
        for (Step step : solution.steps()) {
            if (step instanceof Step.AtJoint at && at.joint().equals(joint)) {
                at.forces().stream().filter(f -> !f.known()).map(JointForce::source).forEach(s -> unknown.add(key(s)));
                at.equations().stream().flatMap(e -> e.terms().stream()).map(AxisEquation.Term::force)
                        .filter(f -> !f.known()).map(JointForce::source).forEach(s -> unknown.add(key(s)));
            }
        }
        return sides.stream().map(side -> !unknown.contains(key(side.cause()))).toList();
    }

    private static Object key(Source source) {
        return source instanceof Source.OfMember of ? of.member()
                : source instanceof Source.OfReaction of ? of.joint() : source;
    }

    private static Object key(Cause cause) {
        return cause instanceof Cause.OfMember of ? of.member()
                : cause instanceof Cause.OfSupport of ? of.joint() : cause;
    }

    /** The first of the longest run of known forces. */
    private static int start(List<Boolean> known) {
        int best = 0;
        int longest = 0;
        for (int i = 0; i < known.size(); i++) {
            int run = 0;
            while (run < known.size() && known.get((i + run) % known.size())) {
                run++;
            }
            if (run > longest) {
                longest = run;
                best = i;
            }
        }
        return best;
    }

    private static <T> List<T> turned(List<T> items, int start) {
        List<T> turned = new ArrayList<>(items.subList(start, items.size()));
        turned.addAll(items.subList(0, start));
        return turned;
    }
}
