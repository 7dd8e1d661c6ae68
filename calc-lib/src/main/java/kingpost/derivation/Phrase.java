package kingpost.derivation;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * Words, stresses and formulas in one run of text: a paragraph, a heading, a caption, a cell.
 *
 * <p>Built up from left to right: {@code Phrase.of("At joint ").strong("B").text(" only ").math(force).text(" is unknown.")}
 */
public record Phrase(List<Inline> pieces) {

    public static final Phrase EMPTY = new Phrase(List.of());

    public Phrase {
        pieces = List.copyOf(Objects.requireNonNull(pieces, "pieces"));
    }

    public static Phrase of(String text) {
        return EMPTY.text(text);
    }

    public static Phrase of(Expression expression) {
        return EMPTY.math(expression);
    }

    public Phrase text(String text) {
        return text.isEmpty() ? this : with(new Inline.Text(text));
    }

    public Phrase emphasis(String text) {
        return with(new Inline.Emphasis(text));
    }

    public Phrase strong(String text) {
        return with(new Inline.Strong(text));
    }

    public Phrase math(Expression expression) {
        return with(new Inline.Formula(expression));
    }

    /** This phrase and then the other one, with nothing between them. */
    public Phrase then(Phrase next) {
        List<Inline> all = new ArrayList<>(pieces);
        all.addAll(next.pieces);
        return new Phrase(all);
    }

    /** This sentence, a space, and the next sentence; an empty one adds no space. */
    public Phrase sentence(Phrase next) {
        return isEmpty() ? next : next.isEmpty() ? this : text(" ").then(next);
    }

    public Phrase sentence(String next) {
        return sentence(of(next));
    }

    public boolean isEmpty() {
        return pieces.isEmpty();
    }

    private Phrase with(Inline piece) {
        List<Inline> all = new ArrayList<>(pieces);
        all.add(piece);
        return new Phrase(all);
    }
}
