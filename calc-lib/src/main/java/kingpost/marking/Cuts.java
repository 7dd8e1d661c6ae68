package kingpost.marking;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import kingpost.marking.Slip.Place;
import kingpost.marking.Stage.Balance;
import kingpost.statics.Vector;
import kingpost.truss.Joint;
import kingpost.truss.Member;

/** Every way to cut a planar truss in two through three members that do not meet in one point. */
final class Cuts {

    /** A truss with more members is not searched for cuts. */
    private static final int MOST_MEMBERS = 60;
    private static final double SMALL = 1e-9;

    private final Bodies bodies;
    private final List<Member> members;
    private final int[][] ends;

    private Cuts(Bodies bodies) {
        this.bodies = bodies;
        this.members = bodies.unknowns().truss().members();
        List<String> joints = bodies.unknowns().truss().joints().stream().map(Joint::name).toList();
        this.ends = members.stream().map(each -> new int[] {joints.indexOf(each.from()), joints.indexOf(each.to())})
                .toArray(int[][]::new);
    }

    /** In the order in which their parts lie along the truss; none for a truss in space. */
    static List<Cut> of(Bodies bodies) {
        return bodies.isInSpace() || bodies.unknowns().truss().members().size() > MOST_MEMBERS ? List.of()
                : new Cuts(bodies).all();
    }

    private List<Cut> all() {
        List<Cut> cuts = new ArrayList<>();
        for (int a = 0; a < members.size(); a++) {
            for (int b = a + 1; b < members.size(); b++) {
                for (int c = b + 1; c < members.size(); c++) {
                    cut(List.of(a, b, c)).ifPresent(cuts::add);
                }
            }
        }
        cuts.sort(Comparator.comparingDouble(cut -> cut.here().stream().mapToDouble(j -> bodies.place(j).x()).max().orElse(0)));
        return cuts;
    }

    private Optional<Cut> cut(List<Integer> three) {
        if (hangTogether(three)) {
            return Optional.empty();
        }
        List<List<String>> parts = bodies.parted(new LinkedHashSet<>(three)).orElse(List.of());
        if (parts.isEmpty() || parts.get(0).size() < 2 || parts.get(1).size() < 2) {
            return Optional.empty();
        }
        boolean swap = least(parts.get(1)) < least(parts.get(0));
        Cut cut = new Cut(bodies, three, parts.get(swap ? 1 : 0), parts.get(swap ? 0 : 1));
        return cut.balance(cut.here(), three).isPresent() ? Optional.of(cut) : Optional.empty();
    }

    /** Whether the ends of the first of three members still hang together when all three are cut. */
    private boolean hangTogether(List<Integer> three) {
        BitSet reached = new BitSet();
        reached.set(ends[three.get(0)][0]);
        boolean more = true;
        while (more && !reached.get(ends[three.get(0)][1])) {
            more = false;
            for (int i = 0; i < ends.length; i++) {
                if (reached.get(ends[i][0]) != reached.get(ends[i][1]) && !three.contains(i)) {
                    reached.set(ends[i][0]);
                    reached.set(ends[i][1]);
                    more = true;
                }
            }
        }
        return reached.get(ends[three.get(0)][1]);
    }

    private double least(List<String> part) {
        return part.stream().mapToDouble(joint -> bodies.place(joint).x()).min().orElse(0);
    }

    /**
     * One cut.
     *
     * @param bodies  of the truss
     * @param members numbers of the three members cut
     * @param here    joints of the part that lies first along the truss
     * @param there   joints of the other part
     */
    record Cut(Bodies bodies, List<Integer> members, List<String> here, List<String> there) {

        /** Whether the cut lies between panels: one part ends, along the truss, before the other begins. */
        boolean partsAlong() {
            double end = here.stream().mapToDouble(joint -> bodies.place(joint).x()).max().orElse(0);
            return there.stream().allMatch(joint -> bodies.place(joint).x() > end + SMALL);
        }

        /** The balance of a part that gives some of the members cut, each from an equation that holds none of the others. */
        Optional<Balance> balance(List<String> part, List<Integer> wanted) {
            List<Acting> forces = bodies.part(part);
            List<Measure> alone = new ArrayList<>();
            for (int unknown : wanted) {
                alone.add(without(forces, members.stream().filter(other -> other != unknown).toList()));
            }
            if (wanted.isEmpty() || !Path.isRegular(alone, forces, wanted)) {
                return Optional.empty();
            }
            List<List<Measure>> choices = new ArrayList<>(List.of(alone));
            for (Measure sum : List.of(Measure.Y, Measure.X)) {
                for (int i = 0; i < wanted.size(); i++) {
                    List<Measure> other = new ArrayList<>(alone);
                    other.set(i, sum);
                    boolean holds = Math.abs(sum.of(Path.acting(forces, wanted.get(i)))) > 0.1;
                    if (holds && choices.size() < 3 && Path.isRegular(other, forces, wanted)) {
                        choices.add(other);
                    }
                }
            }
            Place place = new Place.AtSection(members.stream().map(bodies.unknowns()::name).toList());
            return Optional.of(new Balance(place, forces, choices, wanted));
        }

        /** The equation that two members drop out of: moments about where they meet, or a sum across them. */
        private static Measure without(List<Acting> forces, List<Integer> two) {
            Acting a = Path.acting(forces, two.get(0));
            Acting b = Path.acting(forces, two.get(1));
            double sine = a.along().cross(b.along()).z();
            if (Math.abs(sine) < SMALL) {
                return new Measure.Along(new Vector(-a.along().y(), a.along().x(), 0));
            }
            double along = b.at().minus(a.at()).cross(b.along()).z() / sine;
            return new Measure.About(a.at().plus(a.along().times(along)));
        }
    }
}
