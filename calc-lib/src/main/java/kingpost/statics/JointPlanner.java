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
    /** In which of them a joint is; in the first, which stays empty, for none. */
    private final int[] readyIn;
    private final List<Move> moves = new ArrayList<>();
    private final int reactionsOnly;
    private int open;
    private int joints;
    private int last = -1;

    JointPlanner(Network network, Inspections inspections) {
        this.network = network;
        this.progress = new Progress(network, inspections);
        reactionsOnly = network.dimension() + 1;
        readyIn = new int[network.joints()];
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

    List<Move> moves() {
        return moves;
    }

    /** The number of the next move. */
    int nextTurn() {
        return moves.size() + 1;
    }

    /** The number of the next joint. */
    int nextNumber() {
        return joints + 1;
    }

    /** Whether every unknown was reached. */
    boolean isComplete() {
        return open == 0;
    }

    /** Counts some reactions as known before the first joint. */
    JointPlanner with(List<Integer> reactions) {
        reactions.forEach(u -> strike(u, 0));
        return this;
    }

    /** Works joint after joint until none is ready. */
    JointPlanner run() {
        for (int bucket = next(); bucket > 0; bucket = next()) {
            work(bucket);
        }
        return this;
    }

    /** Makes a move chosen elsewhere. */
    void make(Move move) {
        moves.add(move);
        joints += move instanceof Move.AtJoint ? 1 : 0;
        move.unknowns().forEach(u -> strike(u, move.turn()));
    }

    private void work(int bucket) {
        int along = nextTo(last, bucket);
        int joint = along >= 0 ? along : ready.get(bucket).first();
        make(new Move.AtJoint(nextTurn(), nextNumber(), joint, progress.unknownsAt(joint, nextTurn()),
                reason(bucket, along)));
        last = joint;
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

    private int nextTo(int from, int bucket) {
        int best = -1;
        if (from >= 0) {
            for (int u : network.unknownsAt(from)) {
                int other = network.isMember(u) ? network.otherEnd(u, from) : -1;
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
        ready.get(readyIn[joint]).remove(joint);
        readyIn[joint] = bucket(joint);
        if (readyIn[joint] > 0) {
            ready.get(readyIn[joint]).add(joint);
        }
    }

    private int bucket(int joint) {
        if (!progress.hasFewUnknowns(joint)) {
            return 0;
        }
        List<Integer> unknowns = progress.unknownsAt(joint, Integer.MAX_VALUE);
        if (!progress.isReady(joint, unknowns)) {
            return 0;
        }
        return unknowns.stream().anyMatch(network::isMember) ? unknowns.size() : reactionsOnly;
    }
}
