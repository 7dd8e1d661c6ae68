package kingpost.variant;

import kingpost.derivation.Derivation;
import kingpost.explain.AnswerKey;
import kingpost.explain.Handout;
import kingpost.explain.SolutionExplanation;
import kingpost.statics.Solution;
import kingpost.truss.TrussModel;

/**
 * A truss like another, with its answers.
 *
 * @param number   from 1
 * @param seed     that the set was made from
 * @param solution its solution, which knows its truss
 * @param clean    whether every force in it is a whole number or a short decimal
 */
public record Variant(int number, long seed, Solution solution, boolean clean) {

    public TrussModel truss() {
        return solution.truss();
    }

    /** What a student gets: problem, figure, free bodies and a table to fill in; no answer is in it. */
    public Derivation handout() {
        return Handout.of(solution.truss());
    }

    /** The answers and nothing else. */
    public Derivation key() {
        return AnswerKey.of(solution);
    }

    /** The whole worked solution. */
    public Derivation working() {
        return SolutionExplanation.of(solution);
    }
}
