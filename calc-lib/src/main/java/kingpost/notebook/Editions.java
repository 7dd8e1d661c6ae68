package kingpost.notebook;

import java.util.Map;
import java.util.Optional;
import kingpost.derivation.Derivation;
import kingpost.explain.AnswerKey;
import kingpost.explain.Handout;
import kingpost.explain.Question;
import kingpost.render.Edition;
import kingpost.render.Exhibit;
import kingpost.render.PlainRenderer;
import kingpost.statics.Solution;
import kingpost.truss.TrussModel;

/** What a truss and its solution show in a handout and in a key. */
final class Editions {

    private Editions() {
    }

    /** The truss alone: in a handout its problem, in a key nothing. */
    static Optional<Map<String, Object>> of(TrussModel truss, Edition edition) {
        return edition == Edition.HANDOUT
                ? Optional.of(marked(Handout.problem(truss), edition, truss, false)) : Optional.empty();
    }

    /** Anything worked out of it: in a handout the problem with room for the work, in a key the answers. */
    static Optional<Map<String, Object>> of(Solution solution, Edition edition) {
        TrussModel truss = solution.truss();
        return Optional.of(edition == Edition.HANDOUT ? marked(Handout.of(truss), edition, truss, true)
                : marked(AnswerKey.of(solution), edition, truss, true));
    }

    /** A question about a truss: in a handout with room for the answer, in a key the answer. */
    static Map<String, Object> of(Question question, Edition edition) {
        Derivation shown = edition == Edition.HANDOUT ? question.handout() : question.key();
        return Exhibit.of(shown).madeFor(edition, about(question.truss()) + " " + question.title(), true).show();
    }

    private static Map<String, Object> marked(Derivation derivation, Edition edition, TrussModel truss, boolean whole) {
        return Exhibit.of(derivation).madeFor(edition, about(truss), whole).show();
    }

    /** A mark of the problem that a truss poses: the same for the same problem. */
    static String about(TrussModel truss) {
        return Integer.toHexString(new PlainRenderer().render(Handout.problem(truss)).hashCode());
    }
}
