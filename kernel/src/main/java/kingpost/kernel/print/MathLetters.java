package kingpost.kernel.print;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

/** Sets the letters of a formula: each stretch in a font that has it, blanks as room. */
final class MathLetters {

    private static final String BLANKS = "\u2009\u202f\u200a\u205f\u2006\u2005\u2004\u2003\u2002";
    private static final double[] WIDTHS = {0.17, 0.17, 0.1, 0.22, 0.17, 0.25, 0.33, 1, 0.5};
    private static final double CAPITALS = 0.68;
    private static final double SMALL_LETTERS = 0.47;
    private static final double TAILS = 0.22;
    private static final String SMALL = "aceimnorsuvwxz\u03b1\u03b5\u03b9\u03ba\u03bd\u03bf\u03c0\u03c3\u03c4\u03c5\u03c9\u2212+=\u00b7\u2248.";
    private static final String TAILED = "gjpqy,;Q()[]{}|/\u03b2\u03b3\u03b6\u03b7\u03bc\u03be\u03c1\u03c6\u03c7\u03c8\u00b5";

    private MathLetters() {
    }

    /** A line of letters; invisible signs have no room. */
    static MathBox of(String text, PrintFont font) {
        List<MathBox> pieces = new ArrayList<>();
        StringBuilder stretch = new StringBuilder();
        PrintFont current = font;
        for (int codePoint : text.codePoints().toArray()) {
            int blank = BLANKS.indexOf(codePoint);
            PrintFont here = font.with(codePoint);
            if ((blank >= 0 || here != current) && !stretch.isEmpty()) {
                pieces.add(piece(stretch.toString(), current));
                stretch.setLength(0);
            }
            current = here;
            if (blank >= 0) {
                pieces.add(MathBox.space(WIDTHS[blank]));
            } else if (!isInvisible(codePoint)) {
                stretch.appendCodePoint(codePoint == 0xa0 ? ' ' : codePoint);
            }
        }
        if (!stretch.isEmpty()) {
            pieces.add(piece(stretch.toString(), current));
        }
        return MathBox.row(pieces);
    }

    private static boolean isInvisible(int codePoint) {
        return codePoint >= 0x2060 && codePoint <= 0x2064 || codePoint == 0x200b || Character.isISOControl(codePoint);
    }

    private static MathBox piece(String text, PrintFont font) {
        double ascent = text.chars().allMatch(c -> SMALL.indexOf(c) >= 0 && c != 'i') ? SMALL_LETTERS : CAPITALS;
        double descent = text.chars().anyMatch(c -> TAILED.indexOf(c) >= 0) ? TAILS : 0;
        return new MathBox(font.width(text), ascent, descent, List.of(new Mark.Letters(text, font, 1, 1, 0, 0)));
    }

    /** One sign stretched, so that its ink reaches from {@code ascent} above the baseline to {@code descent} below. */
    static MathBox stretched(String sign, double ascent, double descent) {
        int codePoint = sign.codePointAt(0);
        PrintFont font = PrintFont.SERIF.with(codePoint);
        Rectangle2D ink = font.ink(codePoint);
        double stretch = (ascent + descent) / ink.getHeight();
        double down = descent + ink.getMinY() * stretch;
        return new MathBox(font.width(sign), ascent, descent,
                List.of(new Mark.Letters(sign, font, 1, stretch, 0, down)));
    }
}
