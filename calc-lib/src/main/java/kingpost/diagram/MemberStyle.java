package kingpost.diagram;

import kingpost.statics.Solution;
import kingpost.svg.Element;

/** How a member is drawn for what it does: told by form first, so that the figure reads in grey. */
enum MemberStyle {

    /** One thin line, as a rope. */
    TENSION("T", "tension (T): pulls at its joints", Ink.TENSION, 2.2),
    /** Two rails with white between them, as a strut. */
    COMPRESSION("C", "compression (C): pushes at its joints", Ink.COMPRESSION, 6.4),
    /** Dashes. */
    ZERO("0", "no force", Ink.ZERO, 1.6),
    /** A rope between two rails. */
    REVERSAL("T, C", "tension or compression, as the loads are", Ink.UNKNOWN, 6.4),
    /** A pale line. */
    UNKNOWN("", "not yet known", Ink.PALE, 2.6);

    private static final double CORE = 2.8;

    private final String letter;
    private final String words;
    private final String colour;
    private final double width;

    MemberStyle(String letter, String words, String colour, double width) {
        this.letter = letter;
        this.words = words;
        this.colour = colour;
        this.width = width;
    }

    static MemberStyle of(Solution.Sense sense) {
        return switch (sense) {
            case TENSION -> TENSION;
            case COMPRESSION -> COMPRESSION;
            case ZERO -> ZERO;
        };
    }

    String letter() {
        return letter;
    }

    /** What a legend says of it. */
    String words() {
        return words;
    }

    String colour() {
        return colour;
    }

    double width() {
        return width;
    }

    /** Draws a member from joint to joint. */
    void draw(Sheet sheet, Place from, Place to) {
        draw(sheet, from, to, 1);
    }

    /** The same, {@code finer} times as thick. */
    void draw(Sheet sheet, Place from, Place to, double finer) {
        Patch patch = Patch.line(from, to, width * finer);
        Element line = new Element.Line(from.point(), to.point(), this == ZERO
                ? Ink.line(colour, width * finer).dashed(6, 5) : Ink.line(colour, width * finer));
        sheet.add(Layer.MEMBERS, line, patch);
        if (this == REVERSAL) {
            sheet.add(Layer.MEMBERS, new Element.Line(from.point(), to.point(), Ink.line(Ink.PAPER, CORE + 1)));
            sheet.add(Layer.MEMBERS, new Element.Line(from.point(), to.point(), Ink.line(colour, 1.4).dashed(7, 4)));
        }
        if (this == COMPRESSION) {
            sheet.add(Layer.MEMBERS, new Element.Line(from.point(), to.point(), Ink.line(Ink.PAPER, CORE * finer)));
        }
    }
}
