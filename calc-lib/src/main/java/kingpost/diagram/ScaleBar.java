package kingpost.diagram;

import kingpost.svg.Element;

/** The scale of forces: a bar of a round size with its ends ticked and its size beside it. */
final class ScaleBar {

    private static final double LONGEST = 110;
    private static final double TICK = 4;
    private static final double SIZE = 11;

    private final Sheet sheet;
    private final ForceText text;

    ScaleBar(Sheet sheet, ForceText text) {
        this.sheet = sheet;
        this.text = text;
    }

    /**
     * Draws the bar from {@code left} on.
     *
     * @param pixels px for one newton
     * @param newtons of the truss's unit of force
     */
    void draw(Place left, double pixels, double newtons) {
        double round = round(LONGEST / (pixels * newtons));
        Place right = left.plus(new Place(round * newtons * pixels, 0));
        rule(left, right);
        rule(left.minus(new Place(0, TICK)), left.plus(new Place(0, TICK)));
        rule(right.minus(new Place(0, TICK)), right.plus(new Place(0, TICK)));
        sheet.writeFrom(Caption.of(text.ofNewtons(round * newtons), SIZE, Ink.BLACK), right.plus(new Place(8, 0)));
    }

    /** The largest of 1, 2, 5, 10 ... that is no more than {@code most}. */
    static double round(double most) {
        double power = Math.pow(10, Math.floor(Math.log10(most)));
        double lead = most / power;
        return power * (lead >= 5 ? 5 : lead >= 2 ? 2 : 1);
    }

    private void rule(Place from, Place to) {
        sheet.add(Layer.GUIDES, new Element.Line(from.point(), to.point(), Ink.line(Ink.BLACK, 1.2)),
                Patch.line(from, to, 1.2));
    }
}
