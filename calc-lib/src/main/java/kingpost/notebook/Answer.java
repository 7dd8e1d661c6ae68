package kingpost.notebook;

import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import kingpost.explain.Question;
import kingpost.render.Edition;
import kingpost.render.Exhibit;
import kingpost.render.Showable;

/**
 * What a truss answers to a question: the facts, for Java code, and how a reader sees them. A handout asks the question,
 * a key has the answer without its working.
 *
 * @param facts    the record that holds the facts
 * @param exhibit  how it is shown
 * @param question what a handout asks; none for a check, which only the solution shows
 */
public record Answer<T>(T facts, Exhibit exhibit, Optional<Question> question) implements Showable {

    public Answer {
        Objects.requireNonNull(facts, "facts");
        Objects.requireNonNull(exhibit, "exhibit");
        Objects.requireNonNull(question, "question");
    }

    static <T> Answer<T> to(Question question, T facts, Exhibit exhibit) {
        return new Answer<>(facts, exhibit, Optional.of(question));
    }

    /** A check of a solution. */
    static <T> Answer<T> check(T facts, Exhibit exhibit) {
        return new Answer<>(facts, exhibit, Optional.empty());
    }

    @Override
    public Map<String, Object> show() {
        return exhibit.show();
    }

    @Override
    public Optional<Map<String, Object>> show(Edition edition) {
        return edition == Edition.SOLUTION ? Optional.of(show()) : question.map(asked -> Editions.of(asked, edition));
    }

    /** The plain text. */
    @Override
    public String toString() {
        return exhibit.toString();
    }
}
