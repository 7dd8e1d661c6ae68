package kingpost.notebook;

import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import kingpost.render.Edition;
import kingpost.render.Exhibit;
import kingpost.render.Showable;

/**
 * Something that is a handout or a key already: the solution shows it as it is, the edition that it was made for too,
 * the other one not at all.
 *
 * @param about what it is about; a document shows the same only once
 */
public record MadeFor(Edition edition, String about, Exhibit exhibit) implements Showable {

    public MadeFor {
        Objects.requireNonNull(edition, "edition");
        Objects.requireNonNull(about, "about");
        Objects.requireNonNull(exhibit, "exhibit");
    }

    @Override
    public Map<String, Object> show() {
        return exhibit.show();
    }

    @Override
    public Optional<Map<String, Object>> show(Edition wanted) {
        return wanted == Edition.SOLUTION ? Optional.of(show())
                : wanted == edition ? Optional.of(exhibit.madeFor(edition, about, true).show()) : Optional.empty();
    }

    /** The plain text. */
    @Override
    public String toString() {
        return exhibit.toString();
    }
}
