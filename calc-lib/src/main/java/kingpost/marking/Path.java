package kingpost.marking;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import kingpost.statics.Inspection;
import kingpost.statics.Vector;
import kingpost.truss.Member;

/** Builds a working stage by stage, keeping track of what is known. */
final class Path {

    private static final double SMALL = 1e-9;

    private final Bodies bodies;
    private final boolean[] known;
    private final List<List<Integer>> alike = new ArrayList<>();
    private final List<Stage> stages = new ArrayList<>();

    Path(Bodies bodies) {
        this.bodies = bodies;
        this.known = new boolean[bodies.unknowns().count()];
    }

    /** Takes over what is seen before any equation. */
    Path with(Inspection inspection) {
        withZeros(inspection);
        for (Inspection.Finding finding : inspection.findings()) {
            if (finding instanceof Inspection.Finding.ThreeMembers three) {
                pair(three.first(), three.second());
            } else if (finding instanceof Inspection.Finding.SameForce same) {
                pair(same.first(), same.second());
            }
        }
        return this;
    }

    /** Takes over which members are seen to carry nothing. */
    Path withZeros(Inspection inspection) {
        List<Integer> zero = inspection.zeroForceMembers().stream().map(bodies.unknowns()::numberOf).distinct().toList();
        if (!zero.isEmpty()) {
            stages.add(new Stage.Seen(zero));
            zero.forEach(number -> known[number] = true);
        }
        return this;
    }

    private void pair(Member first, Member second) {
        alike.add(List.of(bodies.unknowns().numberOf(first), bodies.unknowns().numberOf(second)));
    }

    boolean isDone() {
        return IntStream.range(0, bodies.unknowns().truss().members().size()).allMatch(i -> known[i]);
    }

    Working working(double unlikely) {
        return new Working(stages, unlikely);
    }

    /** How many forces are unknown at a joint. */
    int unknownsAt(String joint) {
        return unknownIn(bodies.at(joint)).size();
    }

    /** Whether a joint can be worked now and gives something. */
    boolean isReady(String joint) {
        List<Integer> unknown = unknownIn(bodies.at(joint));
        return !unknown.isEmpty() && !choices(bodies.at(joint), unknown).isEmpty();
    }

    /**
     * Works the whole truss for its reactions.
     *
     * @param asSolved the equations of the worked solution; empty for moments about a support and two sums
     * @return whether it could be done
     */
    boolean whole(List<Measure> asSolved) {
        List<Acting> forces = bodies.whole();
        List<Integer> unknown = unknownIn(forces);
        List<Measure> plain = List.of(new Measure.About(forces.get(0).at()), Measure.X, Measure.Y);
        List<List<Measure>> choices = new ArrayList<>();
        for (List<Measure> measures : List.of(asSolved, plain)) {
            if (choices.isEmpty() && measures.size() == unknown.size() && isRegular(measures, forces, unknown)) {
                choices.add(measures);
            }
        }
        return balance("", forces, choices, unknown);
    }

    /**
     * Works a joint.
     *
     * @param turned axes of the worked solution where they are turned, else empty
     * @return whether it could be done
     */
    boolean joint(String joint, List<Measure> turned) {
        List<Acting> forces = bodies.at(joint);
        List<Integer> unknown = unknownIn(forces);
        List<List<Measure>> choices = new ArrayList<>(choices(forces, unknown));
        if (turned.size() == unknown.size() && isRegular(turned, forces, unknown)) {
            choices.add(turned);
        }
        return balance(joint, forces, choices, unknown);
    }

    /** Works a joint for one of its unknowns, by the equation across all the others, which lie in one line. */
    boolean across(String joint, int wanted) {
        List<Acting> forces = bodies.at(joint);
        List<Acting> others = forces.stream()
                .filter(f -> !f.isLoad() && !known[f.unknown()] && f.unknown() != wanted).toList();
        if (others.isEmpty()) {
            return joint(joint, List.of());
        }
        Vector along = others.get(0).along();
        List<Measure> measure = List.of(new Measure.Along(new Vector(-along.y(), along.x(), 0)));
        boolean inLine = others.stream().allMatch(f -> Math.abs(measure.get(0).of(f)) < SMALL);
        boolean gives = isRegular(measure, forces, List.of(wanted));
        return inLine && gives && balance(joint, forces, List.of(measure), List.of(wanted));
    }

    private boolean balance(String place, List<Acting> forces, List<List<Measure>> choices, List<Integer> unknown) {
        if (choices.isEmpty() || unknown.isEmpty()) {
            return unknown.isEmpty();
        }
        Stage.Balance here = new Stage.Balance(place, forces, choices, inOrder(choices.get(0), forces, unknown));
        stages.add(elsewhere(here).<Stage>map(there -> new Stage.Either(here, there)).orElse(here));
        unknown.forEach(number -> known[number] = true);
        copyAlike();
        return true;
    }

    /** The other end of a member that is the only unknown here, where it is the only one there too. */
    private Optional<Stage.Balance> elsewhere(Stage.Balance here) {
        if (here.isWhole() || here.unknowns().size() != 1 || !bodies.unknowns().isMember(here.unknowns().get(0))) {
            return Optional.empty();
        }
        String other = bodies.unknowns().member(here.unknowns().get(0)).otherEnd(here.joint());
        List<Acting> forces = bodies.at(other);
        List<List<Measure>> choices = choices(forces, unknownIn(forces));
        boolean alone = unknownIn(forces).size() == 1 && !choices.isEmpty();
        return alone ? Optional.of(new Stage.Balance(other, forces, choices, here.unknowns())) : Optional.empty();
    }

    /** An unknown that is in every equation comes first: the other is missing from one, which so gives the first. */
    private static List<Integer> inOrder(List<Measure> measures, List<Acting> forces, List<Integer> unknown) {
        Comparator<Integer> byEquations = Comparator.comparingLong(number -> -measures.stream()
                .filter(measure -> Math.abs(measure.of(acting(forces, number))) > SMALL).count());
        return unknown.stream().sorted(byEquations).toList();
    }

    private void copyAlike() {
        boolean more = true;
        while (more) {
            more = false;
            for (List<Integer> pair : alike) {
                int from = known[pair.get(0)] ? 0 : 1;
                if (known[pair.get(from)] && !known[pair.get(1 - from)]) {
                    stages.add(new Stage.Same(pair.get(1 - from), pair.get(from)));
                    known[pair.get(1 - from)] = true;
                    more = true;
                }
            }
        }
    }

    private List<Integer> unknownIn(List<Acting> forces) {
        return forces.stream().filter(f -> !f.isLoad() && !known[f.unknown()]).map(Acting::unknown).toList();
    }

    /** Two equations for two unknowns; for one unknown each equation that holds it, the one it is largest in first. */
    private static List<List<Measure>> choices(List<Acting> forces, List<Integer> unknown) {
        List<List<Measure>> sets = unknown.size() == 2 ? List.of(List.of(Measure.X, Measure.Y))
                : unknown.size() == 1 ? List.of(List.of(Measure.X), List.of(Measure.Y)) : List.of();
        return sets.stream().filter(set -> isRegular(set, forces, unknown))
                .sorted(Comparator.comparingDouble(set -> -Math.abs(set.get(0).of(acting(forces, unknown.get(0))))))
                .toList();
    }

    private static boolean isRegular(List<Measure> measures, List<Acting> forces, List<Integer> unknown) {
        double[][] matrix = new double[unknown.size()][unknown.size()];
        for (int row = 0; row < matrix.length; row++) {
            for (int column = 0; column < matrix.length; column++) {
                matrix[row][column] = measures.get(row).of(acting(forces, unknown.get(column)));
            }
        }
        return SmallSystem.inverse(matrix) != null;
    }

    private static Acting acting(List<Acting> forces, int unknown) {
        return forces.stream().filter(f -> f.unknown() == unknown).findFirst().orElseThrow();
    }
}
