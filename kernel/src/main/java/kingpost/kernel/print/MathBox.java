package kingpost.kernel.print;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * A piece of a formula, laid out. Lengths in font sizes of the formula.
 *
 * @param width   from its left edge to where the next piece begins
 * @param ascent  how far it reaches above the baseline
 * @param descent how far it reaches below the baseline
 * @param marks   what is drawn, from its left edge and baseline
 */
record MathBox(double width, double ascent, double descent, List<Mark> marks) {

    static final MathBox EMPTY = new MathBox(0, 0, 0, List.of());

    MathBox {
        marks = List.copyOf(marks);
    }

    /** Room without a mark. */
    static MathBox space(double width) {
        return new MathBox(width, 0, 0, List.of());
    }

    /** Pieces side by side on one baseline. */
    static MathBox row(List<MathBox> pieces) {
        MathBox row = EMPTY;
        List<Mark> marks = new ArrayList<>();
        for (MathBox piece : pieces) {
            double x = row.width;
            piece.marks.forEach(mark -> marks.add(mark.moved(x, 0)));
            row = new MathBox(x + piece.width, Math.max(row.ascent, piece.ascent), Math.max(row.descent, piece.descent),
                    List.of());
        }
        return new MathBox(row.width, row.ascent, row.descent, marks);
    }

    /** This and {@code other}, which lies so far to the right and below; the room is that of both. */
    MathBox with(MathBox other, double right, double down) {
        List<Mark> all = Stream.concat(marks.stream(), other.marks.stream().map(mark -> mark.moved(right, down))).toList();
        return new MathBox(Math.max(width, right + other.width), Math.max(ascent, other.ascent - down),
                Math.max(descent, other.descent + down), all);
    }

    MathBox scaled(double factor) {
        return new MathBox(width * factor, ascent * factor, descent * factor,
                marks.stream().map(mark -> mark.scaled(factor)).toList());
    }

    /** With room on all sides. */
    MathBox padded(double left, double right, double above, double below) {
        return new MathBox(left + width + right, ascent + above, descent + below,
                marks.stream().map(mark -> mark.moved(left, 0)).toList());
    }

    MathBox drawn(Mark mark) {
        return new MathBox(width, ascent, descent, Stream.concat(marks.stream(), Stream.of(mark)).toList());
    }

    double height() {
        return ascent + descent;
    }

    /** The same, to be copied and heard as {@code text}. */
    MathBox saying(String text) {
        return text.isBlank() || marks.isEmpty() ? this
                : new MathBox(width, ascent, descent, List.of(new Mark.Said(text.strip(), marks)));
    }
}
