package kingpost.explain;

import java.util.ArrayList;
import java.util.List;

import kingpost.derivation.Block;
import kingpost.derivation.Derivation;
import kingpost.statics.Solution;

/** The answers to a problem and nothing else: member forces with their senses, reactions. */
public final class AnswerKey {

    private AnswerKey() {
    }

    public static Derivation of(Solution solution) {
        List<Block> blocks = new ArrayList<>(Pictures.results(solution));
        blocks.add(ResultsTable.members(solution));
        blocks.add(ResultsTable.reactions(solution));
        return new Derivation(solution.truss().name() + ": key", blocks);
    }
}
