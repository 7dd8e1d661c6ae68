package kingpost.statics;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * What is known at which turn of the work. Turn 0 is inspection and reactions; an unknown solved in turn {@code t} is
 * known from turn {@code t + 1} on. Members in line that carry one force become known together.
 */
final class Progress {

    /** Not solved yet. */
    private static final int NEVER = Integer.MAX_VALUE;

    private final Network network;
    private final Inspections inspections;
    private final int[] solvedIn;
    private final List<List<Integer>> followers;
    private final int[] left;

    Progress(Network network, Inspections inspections) {
        this.network = network;
        this.inspections = inspections;
        solvedIn = new int[network.unknowns()];
        Arrays.fill(solvedIn, NEVER);
        followers = new ArrayList<>(java.util.Collections.nCopies(network.unknowns(), List.of()));
        for (int u = 0; u < network.unknowns(); u++) {
            if (inspections.isZero(u)) {
                solvedIn[u] = 0;
            }
            follow(u);
        }
        left = new int[network.joints()];
        for (int u = 0; u < network.unknowns(); u++) {
            count(u, isSolved(u) ? 0 : 1);
        }
    }

    private void count(int unknown, int change) {
        for (int joint : network.jointsOf(unknown)) {
            left[joint] += change;
        }
    }

    private void follow(int unknown) {
        int leader = inspections.leader(unknown);
        if (leader != unknown) {
            if (followers.get(leader).isEmpty()) {
                followers.set(leader, new ArrayList<>(2));
            }
            followers.get(leader).add(unknown);
        }
    }

    /** Marks an unknown, and every member in line that carries the same, as solved; returns all of them. */
    List<Integer> solve(int unknown, int turn) {
        List<Integer> solved = new ArrayList<>(2);
        int leader = inspections.leader(unknown);
        mark(leader, turn, solved);
        for (int follower : followers.get(leader)) {
            mark(follower, turn, solved);
        }
        return solved;
    }

    /** Every member that carries the same force as a member, itself included; a reaction alone. */
    List<Integer> sameAs(int unknown) {
        int leader = inspections.leader(unknown);
        List<Integer> same = new ArrayList<>(followers.get(leader));
        same.add(leader);
        return same;
    }

    private void mark(int unknown, int turn, List<Integer> solved) {
        if (solvedIn[unknown] == NEVER) {
            solvedIn[unknown] = turn;
            solved.add(unknown);
            count(unknown, -1);
        }
    }

    boolean isSolved(int unknown) {
        return solvedIn[unknown] != NEVER;
    }

    Inspections inspections() {
        return inspections;
    }

    /** Whether an unknown is left out of free bodies because inspection found it to carry nothing. */
    boolean isOmitted(int unknown) {
        return inspections.isZero(unknown);
    }

    /** Whether an unknown was known before a turn. */
    boolean isKnownBefore(int unknown, int turn) {
        return solvedIn[unknown] < turn;
    }

    /** What is unknown at a joint when a turn begins; nothing where inspection used up the joint's equations. */
    List<Integer> unknownsAt(int joint, int turn) {
        List<Integer> unknowns = new ArrayList<>();
        if (!inspections.isUsedUp(joint)) {
            for (int u : network.unknownsAt(joint)) {
                if (!isKnownBefore(u, turn)) {
                    unknowns.add(u);
                }
            }
        }
        return unknowns;
    }

    /** Whether there is anything unknown at a joint, and no more than it has equations; asked of every joint anew. */
    boolean hasFewUnknowns(int joint) {
        return left[joint] > 0 && left[joint] <= network.dimension() && !inspections.isUsedUp(joint);
    }

    /** Whether unknowns at a joint can be found from the joint's own equations. */
    boolean isReady(int joint, List<Integer> unknowns) {
        int n = unknowns.size();
        if (n == 0 || n > network.dimension()) {
            return false;
        }
        Vector first = network.unit(unknowns.get(0), joint);
        if (n == 1) {
            return true;
        }
        Vector normal = first.cross(network.unit(unknowns.get(1), joint));
        return n == 2 ? normal.norm() > Network.IN_LINE
                : Math.abs(normal.dot(network.unit(unknowns.get(2), joint))) > Network.IN_LINE;
    }
}
