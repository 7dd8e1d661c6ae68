package kingpost.diagram;

import java.util.List;

/** Rows under a figure that say what its lines mean. */
final class Legend {

    private static final double SIZE = 11;
    private static final double SAMPLE = 34;
    private static final double ROW = 18;

    private final Sheet sheet;

    Legend(Sheet sheet) {
        this.sheet = sheet;
    }

    /** One sample for each style, side by side as far as {@code widest} px allow. */
    void draw(List<MemberStyle> styles, double widest) {
        double left = sheet.bounds().left();
        double x = left;
        double y = sheet.bounds().bottom() + 20;
        for (MemberStyle style : styles) {
            Caption caption = Caption.of(style.words(), SIZE, Ink.BLACK);
            double width = SAMPLE + 6 + caption.width();
            if (x > left && x + width - left > widest) {
                x = left;
                y += ROW;
            }
            style.draw(sheet, new Place(x + 2, y), new Place(x + SAMPLE - 2, y));
            sheet.writeFrom(caption, new Place(x + SAMPLE + 6, y));
            x += width + 18;
        }
    }
}
