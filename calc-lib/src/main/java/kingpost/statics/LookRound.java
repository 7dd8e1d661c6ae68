package kingpost.statics;

import java.util.AbstractList;
import java.util.ArrayList;
import java.util.List;

/**
 * The joints not yet done at one turn, counted when someone asks: a long truss has as many turns as joints, and a
 * list for each would grow as the square.
 */
final class LookRound extends AbstractList<Step.JointCount> {

    private final Network network;
    private final Progress progress;
    private final int turn;

    LookRound(Network network, Progress progress, int turn) {
        this.network = network;
        this.progress = progress;
        this.turn = turn;
    }

    @Override
    public Step.JointCount get(int index) {
        return counts().get(index);
    }

    @Override
    public int size() {
        return counts().size();
    }

    @Override
    public java.util.Iterator<Step.JointCount> iterator() {
        return counts().iterator();
    }

    private List<Step.JointCount> counts() {
        List<Step.JointCount> counts = new ArrayList<>();
        for (int joint = 0; joint < network.joints(); joint++) {
            List<Integer> unknowns = progress.unknownsAt(joint, turn);
            if (!unknowns.isEmpty()) {
                counts.add(new Step.JointCount(network.name(joint), unknowns.stream().map(network::source).toList(),
                        progress.isReady(joint, unknowns)));
            }
        }
        return counts;
    }
}
