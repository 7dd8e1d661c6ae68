package kingpost.marking;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import kingpost.marking.Slip.Place;
import kingpost.statics.Inspection;
import kingpost.statics.Vector;
import kingpost.truss.Member;

/** Builds a working stage by stage, keeping track of what is known. */
final class Path {

    private static final double SMALL = 1e-9;
    /** Sets of equations for the reactions that are looked into. */
    private static final int WHOLE = 5;

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
        return new Working(stages, unlikely, known.length, bodies.loadCount());
    }

    boolean isKnown(int unknown) {
        return known[unknown];
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
     * @param asSolved the equations of the worked solution; empty for moments about supports and sums
     * @return whether it could be done
     */
    boolean whole(List<Measure> asSolved) {
        List<Acting> forces = bodies.whole();
        List<Integer> unknown = unknownIn(forces);
        List<List<Measure>> choices = new ArrayList<>();
        Stream.concat(Stream.of(asSolved), usual(forces).stream())
                .filter(set -> set.size() == unknown.size() && isRegular(set, forces, unknown)).forEach(choices::add);
        return balance(new Place.InReactions(), forces, choices.subList(0, Math.min(WHOLE, choices.size())), unknown);
    }

    private List<List<Measure>> usual(List<Acting> forces) {
        List<Vector> supports = forces.stream().filter(force -> !force.isLoad()).map(Acting::at).distinct().toList();
        if (supports.isEmpty()) {
            return List.of();
        }
        Vector first = supports.get(0);
        if (bodies.isInSpace()) {
            return List.of(List.of(Measure.X, Measure.Y, Measure.Z, new Measure.AboutLine(first, Vector.X),
                    new Measure.AboutLine(first, Vector.Y), new Measure.AboutLine(first, Vector.Z)));
        }
        List<List<Measure>> sets = new ArrayList<>();
        supports.forEach(support -> sets.add(List.of(new Measure.About(support), Measure.X, Measure.Y)));
        if (supports.size() > 1) {
            sets.add(List.of(new Measure.About(first), new Measure.About(supports.get(1)), Measure.X));
            sets.add(List.of(new Measure.About(first), new Measure.About(supports.get(1)), Measure.Y));
        }
        return sets;
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
        } else if (unknown.size() == 1) {
            alongTheLine(forces, acting(forces, unknown.get(0))).ifPresent(choices::add);
        }
        return balance(new Place.AtJoint(joint), forces, choices, unknown);
    }

    /** The sum along an inclined force that another one lies in line with: an axis that offers itself. */
    private static Optional<List<Measure>> alongTheLine(List<Acting> forces, Acting wanted) {
        boolean inclined = Math.abs(wanted.along().x()) > SMALL && Math.abs(wanted.along().y()) > SMALL;
        return inclined && forces.stream().anyMatch(force -> !force.isSameSource(wanted)
                && force.along().cross(wanted.along()).norm() < SMALL) ? Optional.of(List.of(new Measure.Along(wanted.along())))
                : Optional.empty();
    }

    /** Finds {@code wanted} on a body from given equations, which hold no other unknown. */
    boolean given(Place place, List<Acting> forces, List<Measure> measures, List<Integer> wanted) {
        List<Integer> open = wanted.stream().filter(unknown -> !known[unknown]).toList();
        boolean alone = unknownIn(forces).stream().filter(unknown -> !open.contains(unknown))
                .allMatch(unknown -> measures.stream().allMatch(each -> Math.abs(each.of(acting(forces, unknown))) < SMALL));
        return open.isEmpty() || measures.size() == open.size() && alone && isRegular(measures, forces, open)
                && balance(place, forces, List.of(measures), open);
    }

    /** Cuts the truss and works either part for the members cut that are not known yet. */
    boolean cut(Cuts.Cut cut) {
        List<Integer> open = cut.members().stream().filter(unknown -> !known[unknown]).toList();
        Optional<Stage.Balance> here = cut.balance(cut.here(), open);
        Optional<Stage.Balance> there = cut.balance(cut.there(), open);
        if (here.isEmpty() || there.isEmpty() || unknownIn(here.get().acting()).size() != open.size()
                || unknownIn(there.get().acting()).size() != open.size()) {
            return false;
        }
        stages.add(new Stage.Either(here.get(), there.get()));
        open.forEach(number -> known[number] = true);
        return true;
    }

    private boolean balance(Place place, List<Acting> forces, List<List<Measure>> choices, List<Integer> unknown) {
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
        if (!(here.place() instanceof Place.AtJoint at) || here.unknowns().size() != 1
                || !bodies.unknowns().isMember(here.unknowns().get(0))) {
            return Optional.empty();
        }
        String other = bodies.unknowns().member(here.unknowns().get(0)).otherEnd(at.joint());
        List<Acting> forces = bodies.at(other);
        List<List<Measure>> choices = choices(forces, unknownIn(forces));
        boolean alone = unknownIn(forces).size() == 1 && !choices.isEmpty();
        return alone ? Optional.of(new Stage.Balance(new Place.AtJoint(other), forces, choices, here.unknowns()))
                : Optional.empty();
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

    /**
     * As many sums as unknowns; for one unknown each sum that holds it, the one it is largest in first.
     */
    private List<List<Measure>> choices(List<Acting> forces, List<Integer> unknown) {
        return sums(unknown.size()).stream().filter(set -> isRegular(set, forces, unknown))
                .sorted(Comparator.comparingDouble(set -> unknown.size() > 1 ? 0
                        : -Math.abs(set.get(0).of(acting(forces, unknown.get(0)))))).toList();
    }

    private List<List<Measure>> sums(int count) {
        if (!bodies.isInSpace()) {
            return count == 2 ? List.of(List.of(Measure.X, Measure.Y))
                    : count == 1 ? List.of(List.of(Measure.X), List.of(Measure.Y)) : List.of();
        }
        return switch (count) {
            case 3 -> List.of(List.of(Measure.X, Measure.Y, Measure.Z));
            case 2 -> List.of(List.of(Measure.X, Measure.Y), List.of(Measure.Y, Measure.Z), List.of(Measure.X, Measure.Z));
            case 1 -> List.of(List.of(Measure.X), List.of(Measure.Y), List.of(Measure.Z));
            default -> List.of();
        };
    }

    static boolean isRegular(List<Measure> measures, List<Acting> forces, List<Integer> unknown) {
        double[][] matrix = new double[unknown.size()][unknown.size()];
        for (int row = 0; row < matrix.length; row++) {
            for (int column = 0; column < matrix.length; column++) {
                matrix[row][column] = measures.get(row).of(acting(forces, unknown.get(column)));
            }
        }
        return SmallSystem.inverse(matrix) != null;
    }

    static Acting acting(List<Acting> forces, int unknown) {
        return forces.stream().filter(f -> f.unknown() == unknown).findFirst().orElseThrow();
    }
}
