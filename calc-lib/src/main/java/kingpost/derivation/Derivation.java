package kingpost.derivation;

import java.util.List;
import java.util.Objects;

/**
 * A worked calculation: its title and its blocks in reading order.
 *
 * @param title  plain text
 * @param blocks in reading order, at least one
 */
public record Derivation(String title, List<Block> blocks) {

    public Derivation {
        title = PlainText.line(title);
        blocks = List.copyOf(Objects.requireNonNull(blocks, "blocks"));
        if (blocks.isEmpty()) {
            throw new IllegalArgumentException("Derivation \"" + title + "\": it has no blocks; give at least one");
        }
    }

    public static Derivation of(String title, Block... blocks) {
        return new Derivation(title, List.of(blocks));
    }
}
