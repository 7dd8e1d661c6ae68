package kingpost.diagram;

import java.util.List;
import kingpost.svg.Span;

/**
 * How large and how wordy the labels of a figure are.
 *
 * @param size   font size, px
 * @param isBare whether forces go without their unit, which the legend then tells once
 * @param isTerse whether forces go without the letter of their sense, which the line tells
 * @param width  px that the truss itself may take across
 * @param height px that it may take up
 */
record Lettering(double size, boolean isBare, boolean isTerse, double width, double height) {

    /** From the most comfortable to the tightest. */
    static final List<Lettering> ALL = List.of(
            new Lettering(13, false, false, 520, 330),
            new Lettering(12, false, false, 600, 420),
            new Lettering(12, true, false, 640, 480),
            new Lettering(11, true, false, 660, 620),
            new Lettering(11, true, true, 700, 620));

    /** The same for the pictorial view of a space truss, which leaves room for other views. */
    static final List<Lettering> IN_SPACE = List.of(
            new Lettering(13, false, false, 480, 310),
            new Lettering(12, false, false, 560, 360),
            new Lettering(12, true, false, 600, 400),
            new Lettering(11, true, false, 640, 420),
            new Lettering(11, true, true, 660, 430));

    Caption caption(String text, String colour) {
        return Caption.of(text, size, colour);
    }

    Caption caption(List<Span> spans, String colour) {
        return Caption.of(spans, size, colour);
    }
}
