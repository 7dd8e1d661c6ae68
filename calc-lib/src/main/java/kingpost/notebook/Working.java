package kingpost.notebook;

import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import kingpost.render.Edition;
import kingpost.render.Exhibit;
import kingpost.render.Showable;
import kingpost.statics.Solution;

/**
 * A part of a solution as a reader sees it. A handout shows the problem in its place, a key the answers.
 *
 * @param exhibit how it is shown in the solution
 */
public record Working(Solution solution, Exhibit exhibit) implements Showable {

    public Working {
        Objects.requireNonNull(solution, "solution");
        Objects.requireNonNull(exhibit, "exhibit");
    }

    @Override
    public Map<String, Object> show() {
        return exhibit.show();
    }

    @Override
    public Optional<Map<String, Object>> show(Edition edition) {
        return edition == Edition.SOLUTION ? Optional.of(show()) : Editions.of(solution, edition);
    }

    /** The plain text. */
    @Override
    public String toString() {
        return exhibit.toString();
    }
}
