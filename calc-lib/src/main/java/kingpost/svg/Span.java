package kingpost.svg;

import java.util.ArrayList;
import java.util.List;

/**
 * A stretch of text in one form.
 *
 * @param text  as the user typed it; escaped when written
 * @param level on the line, below it or above it
 */
public record Span(String text, Level level) {

    /** Where a stretch of text stands. */
    public enum Level { LINE, SUBSCRIPT, SUPERSCRIPT }

    public static Span of(String text) {
        return new Span(text, Level.LINE);
    }

    public static Span sub(String text) {
        return new Span(text, Level.SUBSCRIPT);
    }

    public static Span sup(String text) {
        return new Span(text, Level.SUPERSCRIPT);
    }

    /** {@code base} with {@code index} below it: F and AB for the force in member AB. */
    public static List<Span> indexed(String base, String index) {
        List<Span> spans = new ArrayList<>(List.of(of(base)));
        if (!index.isEmpty()) {
            spans.add(sub(index));
        }
        return List.copyOf(spans);
    }
}
