package kingpost.derivation;

import java.util.Objects;

import kingpost.svg.Svg;

/**
 * A picture.
 *
 * @param caption     shown under it, may be empty
 * @param description what the picture shows, in words, for a reader who cannot see it
 */
public record Figure(Svg svg, Phrase caption, String description) implements Block {

    public Figure {
        Objects.requireNonNull(svg, "svg");
        Objects.requireNonNull(caption, "caption");
        description = PlainText.line(description);
        if (description.isBlank()) {
            throw new IllegalArgumentException(
                    "Figure: it has no description; say in words what the picture shows");
        }
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
        return visitor.figure(this);
    }
}
