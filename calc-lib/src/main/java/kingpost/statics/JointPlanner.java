package kingpost.statics;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import kingpost.statics.Step.Selection.Reason;

/**
 * Chooses which joint comes next, by counting unknowns and without any force: the fewest unknowns first, then the
 * joint next to the one just worked, then the truss's order. Joints where only reactions are left wait until every
 * member is known. Each unknown is struck out once, so the time grows with the truss (and the logarithm of a search
 * tree).
 */
final class JointPlanner {

    private final Network network;
    private final Progress progress;
    /** Joints that can be worked: by number of unknowns, and last those with reactions only. */
    private final List<TreeSet<Integer>> ready = new ArrayList<>();
    private final List<Turn> turns = new ArrayList<>();
    private final int reactionsOnly;
    private int open;

    /**
     * @param number   1 for the first
     * @param joint    the joint worked
     * @param unknowns what its equations give
     * @param reason   why it was chosen
     */
    record Turn(int number, int joint, List<Integer> unknowns, Reason reason) {
    }

    JointPlanner(Network network, Inspections inspections) {
        this.network = network;
        this.progress = new Progress(network, inspections);
        reactionsOnly = network.dimension() + 1;
        for (int i = 0; i <= reactionsOnly; i++) {
            ready.add(new TreeSet<>());
        }
        for (int u = 0; u < network.unknowns(); u++) {
            open += progress.isSolved(u) ? 0 : 1;
        }
        for (int joint = 0; joint < network.joints(); joint++) {
            sort(joint);
        }
    }

    Progress progress() {
        return progress;
    }

    List<Turn> turns() {
        return turns;
    }

    /** Whether every unknown was reached. */
    boolean isComplete() {
        return open == 0;
    }

    /** Counts the reactions as known before the first joint. */
    JointPlanner withReactions() {
        for (int u = network.members(); u < network.unknowns(); u++) {
            strike(u, 0);
        }
        return this;
    }

    /** Works joint after joint until none is ready. */
    JointPlanner run() {
        int last = -1;
        for (int bucket = next(); bucket > 0; bucket = next()) {
            last = work(bucket, last);
        }
        return this;
    }

    private int work(int bucket, int last) {
        int along = nextTo(last, bucket);
        int joint = along >= 0 ? along : ready.get(bucket).first();
        Reason reason = reason(bucket, along);
        int number = turns.size() + 1;
        List<Integer> unknowns = progress.unknownsAt(joint, number);
        turns.add(new Turn(number, joint, unknowns, reason));
        unknowns.forEach(u -> strike(u, number));
        return joint;
    }

    private Reason reason(int bucket, int along) {
        int candidates = ready.get(bucket).size();
        int all = ready.stream().mapToInt(TreeSet::size).sum();
        if (all == 1) {
            return Reason.ONLY_ONE;
        }
        if (candidates == 1 && bucket < reactionsOnly && all > ready.get(reactionsOnly).size() + 1) {
            return Reason.FEWEST_UNKNOWNS;
        }
        return along >= 0 ? Reason.NEXT_ALONG : Reason.FIRST_NAMED;
    }

    /** The first set of joints that is not empty, or 0. */
    private int next() {
        for (int i = 1; i <= reactionsOnly; i++) {
            if (!ready.get(i).isEmpty()) {
                return i;
            }
        }
        return 0;
    }

    private int nextTo(int last, int bucket) {
        int best = -1;
        if (last >= 0) {
            for (int u : network.unknownsAt(last)) {
                int other = network.isMember(u) ? network.otherEnd(u, last) : -1;
                if (other >= 0 && ready.get(bucket).contains(other) && (best < 0 || other < best)) {
                    best = other;
                }
            }
        }
        return best;
    }

    private void strike(int unknown, int turn) {
        for (int solved : progress.solve(unknown, turn)) {
            open--;
            for (int joint : network.jointsOf(solved)) {
                sort(joint);
            }
        }
    }

    private void sort(int joint) {
        ready.forEach(set -> set.remove(joint));
        List<Integer> unknowns = progress.unknownsAt(joint, Integer.MAX_VALUE);
        if (progress.isReady(joint, unknowns)) {
            boolean members = unknowns.stream().anyMatch(network::isMember);
            ready.get(members ? unknowns.size() : reactionsOnly).add(joint);
        }
    }
}
