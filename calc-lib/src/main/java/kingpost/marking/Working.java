package kingpost.marking;

import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;

/** A way through a truss: the stages in the order in which a person takes them. */
final class Working {

    private final List<Stage> stages;
    private final double unlikely;
    private final boolean[][] needed;
    private final boolean[][] loaded;
    private final Map<Stage.Balance, List<Terms>> terms = new IdentityHashMap<>();

    /**
     * @param stages   in order
     * @param unlikely how much less likely it is than the way of the worked solution, in slips
     * @param unknowns how many forces the truss has to find
     * @param loads    how many loads it carries
     */
    Working(List<Stage> stages, double unlikely, int unknowns, int loads) {
        this.stages = List.copyOf(stages);
        this.unlikely = unlikely;
        this.needed = new boolean[stages.size() + 1][unknowns];
        this.loaded = new boolean[stages.size() + 1][loads];
        for (int i = stages.size() - 1; i >= 0; i--) {
            needed[i] = needed[i + 1].clone();
            loaded[i] = loaded[i + 1].clone();
            take(stages.get(i), needed[i], loaded[i]);
        }
    }

    private void take(Stage stage, boolean[] forces, boolean[] loads) {
        if (stage instanceof Stage.Same same) {
            forces[same.as()] = true;
        }
        for (Stage.Balance balance : stage.balances()) {
            terms.put(balance, balance.choices().stream().map(each -> new Terms(balance.acting(), each)).toList());
            for (Acting force : balance.acting()) {
                if (force.isLoad()) {
                    loads[force.load()] = true;
                } else {
                    forces[force.unknown()] = true;
                }
            }
        }
    }

    List<Stage> stages() {
        return stages;
    }

    double unlikely() {
        return unlikely;
    }

    /** The equations of one of its stages, a set for each choice. */
    List<Terms> terms(Stage.Balance balance) {
        return terms.get(balance);
    }

    /** Whether {@code load} takes part in a stage after number {@code stage}. */
    boolean needsLater(int load, int stage) {
        return loaded[stage + 1][load];
    }

    /** Which unknowns take part in a stage after number {@code stage}. */
    boolean[] neededAfter(int stage) {
        return needed[stage + 1];
    }
}
