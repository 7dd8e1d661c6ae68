package kingpost.kernel.print;

/** Something that is drawn at a place. Lengths in font sizes of the formula; x right, y down from its baseline. */
sealed interface Mark {

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
        public Mark moved(double right, double down) {
            return new Bar(x + right, y + down, width, height);
        }

        @Override
        public Mark scaled(double factor) {
            return new Bar(x * factor, y * factor, width * factor, height * factor);
        }
    }
}
