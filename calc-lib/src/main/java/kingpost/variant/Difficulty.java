package kingpost.variant;

import kingpost.statics.Solution;
import kingpost.statics.Solution.Found;
import kingpost.statics.Solution.Sense;
import kingpost.statics.Step;

/**
 * How much work a truss is: what a variant must have in common with the truss it comes from.
 *
 * @param steps         reactions and joints worked
 * @param reactionsFirst whether the reactions are needed first
 * @param zeroBySight   members seen to carry nothing
 * @param zeroByWork    members that turn out to carry nothing
 */
record Difficulty(int steps, boolean reactionsFirst, int zeroBySight, int zeroByWork) {

    static Difficulty of(Solution solution) {
        int bySight = (int) solution.members().stream().filter(m -> m.found() == Found.INSPECTION).count();
        int zero = (int) solution.members().stream().filter(m -> m.sense() == Sense.ZERO).count();
        boolean reactions = !solution.steps().isEmpty() && solution.steps().get(0) instanceof Step.Reactions;
        return new Difficulty(solution.steps().size(), reactions, bySight, zero - bySight);
    }
}
