package kingpost.notebook;

import java.util.Map;
import java.util.Objects;
import kingpost.render.Exhibit;
import kingpost.render.Showable;

/**
 * What a truss answers to a question: the facts, for Java code, and how a reader sees them.
 *
 * @param facts   the record that holds the facts
 * @param exhibit how it is shown
 */
public record Answer<T>(T facts, Exhibit exhibit) implements Showable {

    public Answer {
        Objects.requireNonNull(facts, "facts");
        Objects.requireNonNull(exhibit, "exhibit");
    }

    @Override
    public Map<String, Object> show() {
        return exhibit.show();
    }

    /** The plain text. */
    @Override
    public String toString() {
        return exhibit.toString();
    }
}
