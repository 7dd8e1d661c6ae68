package kingpost.svg;

/**
 * A path, step by step; each step gives a new outline.
 *
 * @param data the steps in SVG's path notation, absolute coordinates
 */
public record Outline(String data) {

    public static Outline from(Point start) {
        return new Outline("M" + Numbers.text(start));
    }

    /** A new piece that starts at {@code start}. */
    public Outline moveTo(Point start) {
        return new Outline(data + "M" + Numbers.text(start));
    }

    public Outline lineTo(Point end) {
        return new Outline(data + "L" + Numbers.text(end));
    }

    /**
     * An arc of a circle.
     *
     * @param large     the longer way round
     * @param clockwise as seen on the screen
     */
    public Outline arcTo(Point end, double radius, boolean large, boolean clockwise) {
        String r = Numbers.text(radius);
        return new Outline(data + "A" + r + "," + r + " 0 " + (large ? 1 : 0) + " " + (clockwise ? 1 : 0) + " "
                + Numbers.text(end));
    }

    /** A cubic curve that leaves towards {@code first} and arrives from {@code second}. */
    public Outline curveTo(Point first, Point second, Point end) {
        return new Outline(data + "C" + Numbers.text(first) + " " + Numbers.text(second) + " " + Numbers.text(end));
    }

    public Outline close() {
        return new Outline(data + "Z");
    }
}
