package kingpost.marking;

import java.util.List;

/**
 * A way through a truss: the stages in the order in which a person takes them.
 *
 * @param stages     in order
 * @param unlikely   how much less likely it is than the way of the worked solution, in slips
 */
record Working(List<Stage> stages, double unlikely) {

    Working {
        stages = List.copyOf(stages);
    }

    /** Whether {@code load} takes part in a stage after number {@code stage}. */
    boolean needsLater(int load, int stage) {
        return stages.subList(stage + 1, stages.size()).stream().flatMap(later -> later.balances().stream())
                .anyMatch(balance -> balance.acting().stream().anyMatch(force -> force.load() == load));
    }

    /** Which of {@code unknowns} take part in a stage after number {@code stage}. */
    boolean[] neededAfter(int stage, int unknowns) {
        boolean[] needed = new boolean[unknowns];
        for (Stage later : stages.subList(stage + 1, stages.size())) {
            if (later instanceof Stage.Same same) {
                needed[same.as()] = true;
            }
            later.balances().forEach(balance -> balance.acting().stream().filter(force -> !force.isLoad())
                    .forEach(force -> needed[force.unknown()] = true));
        }
        return needed;
    }
}
