package kingpost.statics;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A solution looked at again by someone who has only the truss and the answers: nothing of the way in which they were
 * found is used. Loads, directions and lengths are taken from the coordinates anew; the answers are put into the balance
 * of each joint and of the whole; and every force is found once more from all joint equations at once, by orthogonal
 * elimination (QR, EJML), which shares neither order nor method with the steps.
 *
 * <p><b>Units</b>: N and N m. <b>Signs</b>: tension positive; x right, y up; moments counter-clockwise about the
 * first supported joint, or the first joint; a reaction acts on the truss.
 *
 * @param whole     sums over the truss: along each axis, then the moment, about each axis in space
 * @param joints    what is left of the forces at each joint
 * @param forces    members, then reactions: as answered, and as found again; empty where it is too large to be found again
 * @param disagreements what the answers say against themselves, in words
 * @param scale     N, the largest force or load: what remainders are measured against
 * @param extent    m, the largest extent of the truss: moments are measured against scale times extent
 */
public record SecondLook(List<WholeSum> whole, List<JointBalance> joints, List<FoundAgain> forces,
                         List<String> disagreements, double scale, double extent) {

    /** Remainders up to this part of the largest force are rounding. */
    public static final double TOLERANCE = 1e-9;

    /** Differences from the forces found again up to this part of the largest force are rounding. */
    public static final double AGAIN = 1e-7;

    public SecondLook {
        whole = List.copyOf(whole);
        joints = List.copyOf(joints);
        forces = List.copyOf(forces);
        disagreements = List.copyOf(disagreements);
    }

    /**
     * @param what      "along x", "moment"
     * @param isMoment  whether it is in N m
     * @param loads     sum of the loads
     * @param reactions sum of the reactions as answered
     */
    public record WholeSum(String what, boolean isMoment, double loads, double reactions) {
        public double remainder() {
            return loads + reactions;
        }
    }

    /** What the members, the reactions and the loads at a joint leave, by axis. */
    public record JointBalance(String joint, List<Double> remainders) {
        public JointBalance {
            remainders = List.copyOf(remainders);
        }

        public double largest() {
            return remainders.stream().mapToDouble(Math::abs).max().orElse(0);
        }
    }

    /**
     * @param source   a member or a reaction
     * @param answered the answer looked at
     * @param again    the force found again
     */
    public record FoundAgain(Source source, double answered, double again) {
        public double difference() {
            return answered - again;
        }
    }

    /** Where something is left over, and how much, as a part of what it may be measured against. */
    public record Worst(String where, double part) {
    }

    /** Looks at a solution. */
    public static SecondLook of(Solution solution) {
        return new SecondLookWork(solution).look();
    }

    /** The largest remainder of a balance. */
    public Worst worstBalance() {
        Stream<Worst> sums = whole.stream().map(sum -> new Worst("the whole truss, " + sum.what(),
                Math.abs(sum.remainder()) / (sum.isMoment() ? scale * extent : scale)));
        Stream<Worst> each = joints.stream().map(joint -> new Worst("joint " + joint.joint(), joint.largest() / scale));
        return Stream.concat(sums, each).max(Comparator.comparingDouble(Worst::part)).orElse(new Worst("", 0));
    }

    /** The force that differs most from the one found again. */
    public Optional<FoundAgain> worstForce() {
        return forces.stream().max(Comparator.comparingDouble(each -> Math.abs(each.difference())));
    }

    /** Whether all is balanced, all forces are found again, and nothing contradicts itself. */
    public boolean agrees() {
        return disagreements.isEmpty() && worstBalance().part() <= TOLERANCE
                && worstForce().map(each -> Math.abs(each.difference()) <= AGAIN * scale).orElse(true);
    }

    /** Joints that are out of balance by more than rounding. */
    public List<String> unbalanced() {
        List<String> names = new ArrayList<>();
        joints.stream().filter(joint -> joint.largest() > TOLERANCE * scale).forEach(joint -> names.add(joint.joint()));
        return names;
    }
}
