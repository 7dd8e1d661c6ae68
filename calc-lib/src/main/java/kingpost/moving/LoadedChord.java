package kingpost.moving;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import kingpost.truss.Joint;
import kingpost.truss.Member;
import kingpost.truss.TrussModel;
import kingpost.units.CalculationException;

/**
 * The joints that take the moving load, from left to right; stringers between them carry it to the two joints next to
 * it.
 */
public record LoadedChord(List<String> joints) {

    private static final double LEVEL = 1e-9;

    public LoadedChord {
        joints = List.copyOf(joints);
    }

    /**
     * The chord through these joints of the truss.
     *
     * @throws CalculationException for fewer than two, or where one does not lie to the right of the one before it
     */
    public static LoadedChord through(TrussModel truss, List<String> joints) {
        plane(truss);
        if (joints.size() < 2) {
            throw new CalculationException("Loaded chord: " + (joints.isEmpty() ? "no joint is" : "only joint "
                    + joints.get(0) + " is") + " named; name two or more from left to right, as in along(\"L0 L1 L2\").");
        }
        for (int i = 1; i < joints.size(); i++) {
            if (x(truss, joints.get(i)) <= x(truss, joints.get(i - 1)) + LEVEL * extent(truss)) {
                throw new CalculationException("Loaded chord: joint " + joints.get(i) + " does not lie to the right of "
                        + joints.get(i - 1) + "; name the joints from left to right.");
            }
        }
        return new LoadedChord(joints);
    }

    /**
     * The chord on the level of the supports: every joint there, each joined to the next by a member.
     *
     * @throws CalculationException where there is no such chord, saying how to name one
     */
    public static LoadedChord atSupports(TrussModel truss) {
        plane(truss);
        List<String> held = truss.supports().stream().map(s -> s.joint()).distinct().toList();
        double level = y(truss, held.get(0));
        double slack = LEVEL * extent(truss);
        for (String joint : held) {
            if (Math.abs(y(truss, joint) - level) > slack) {
                throw unclear("the supports " + held.get(0) + " and " + joint + " are not on one level");
            }
        }
        List<String> chord = new ArrayList<>(truss.joints().stream().map(Joint::name)
                .filter(j -> Math.abs(y(truss, j) - level) <= slack)
                .sorted(Comparator.comparingDouble(j -> x(truss, j))).toList());
        for (int i = 1; i < chord.size(); i++) {
            String one = chord.get(i - 1);
            String other = chord.get(i);
            if (truss.membersAt(one).stream().map((Member m) -> m.otherEnd(one)).noneMatch(other::equals)) {
                throw unclear("no member joins " + one + " and " + other + " on the level of the supports");
            }
        }
        if (chord.size() < 2) {
            throw unclear("only joint " + chord.get(0) + " lies on the level of the supports");
        }
        return new LoadedChord(chord);
    }

    private static CalculationException unclear(String why) {
        return new CalculationException("Loaded chord: " + why
                + "; name the joints that carry the load from left to right, as in along(\"L0 L1 L2\").");
    }

    private static void plane(TrussModel truss) {
        if (truss.joints().stream().anyMatch(j -> j.z().getValue() != 0)) {
            throw new CalculationException("Influence line: " + truss.name()
                    + " is a space truss; moving loads are worked in plane trusses; put the load on one"
                    + " joint after another, and solve() each.");
        }
    }

    static double x(TrussModel truss, String joint) {
        return truss.joint(joint).orElseThrow().x().getValue();
    }

    private static double y(TrussModel truss, String joint) {
        return truss.joint(joint).orElseThrow().y().getValue();
    }

    private static double extent(TrussModel truss) {
        double left = truss.joints().stream().mapToDouble(j -> j.x().getValue()).min().orElse(0);
        double right = truss.joints().stream().mapToDouble(j -> j.x().getValue()).max().orElse(0);
        return right - left;
    }
}
