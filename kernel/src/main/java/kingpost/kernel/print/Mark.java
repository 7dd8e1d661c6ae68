package kingpost.kernel.print;

import java.util.List;
import java.util.stream.Stream;

/** Something that is drawn at a place. Lengths in font sizes of the formula; x right, y down from its baseline. */
sealed interface Mark {

    /** Its left edge. */
    double x();

    /** Its right edge. */
    double right();

    /** The same elsewhere. */
    Mark moved(double right, double down);

    /** The same about its own origin, smaller or larger. */
    Mark scaled(double factor);

    /**
     * Letters on a line.
     *
     * @param stretch how much taller than wide they are drawn: 1 as they are
     */
    record Letters(String text, PrintFont font, double size, double stretch, double x, double y) implements Mark {
        @Override
        public double right() {
            return x + font.width(text) * size;
        }

        @Override
        public Mark moved(double right, double down) {
            return new Letters(text, font, size, stretch, x + right, y + down);
        }

        @Override
        public Mark scaled(double factor) {
            return new Letters(text, font, size * factor, stretch, x * factor, y * factor);
        }
    }

    /** A filled bar; x and y are its upper left corner. */
    record Bar(double x, double y, double width, double height) implements Mark {
        @Override
        public double right() {
            return x + width;
        }

        @Override
        public Mark moved(double right, double down) {
            return new Bar(x + right, y + down, width, height);
        }

        @Override
        public Mark scaled(double factor) {
            return new Bar(x * factor, y * factor, width * factor, height * factor);
        }
    }

    /**
     * Marks that a reader copies and hears as {@code text}, whatever signs they are drawn with.
     *
     * @param marks drawn; none of them says a text of its own
     */
    record Said(String text, List<Mark> marks) implements Mark {
        public Said {
            marks = marks.stream().flatMap(mark -> mark instanceof Said said ? said.marks.stream() : Stream.of(mark)).toList();
        }

        @Override
        public double x() {
            return marks.stream().mapToDouble(Mark::x).min().orElse(0);
        }

        @Override
        public double right() {
            return marks.stream().mapToDouble(Mark::right).max().orElse(0);
        }

        @Override
        public Mark moved(double right, double down) {
            return new Said(text, marks.stream().map(mark -> mark.moved(right, down)).toList());
        }

        @Override
        public Mark scaled(double factor) {
            return new Said(text, marks.stream().map(mark -> mark.scaled(factor)).toList());
        }
    }
}
