package kingpost.kernel.print;

/**
 * A size of paper, upright.
 *
 * <p>Source: ISO 216 for A4 (210 mm by 297 mm); ANSI/ASME Y14.1 for Letter (8.5 in by 11 in).
 */
public enum Paper {
    A4("210mm 297mm", 210),
    LETTER("8.5in 11in", 215.9);

    /** Room left and right of the text, together, in millimetres. */
    private static final double MARGINS = 42;
    private static final double PIXELS_A_MILLIMETRE = 96 / 25.4;

    private final String size;
    private final double width;

    Paper(String size, double width) {
        this.size = size;
        this.width = width;
    }

    /** Width and height, as a style sheet says them. */
    String size() {
        return size;
    }

    /** Width of the text in pixels of a style sheet. */
    double textWidth() {
        return (width - MARGINS) * PIXELS_A_MILLIMETRE;
    }
}
