package kingpost.svg;

import java.util.List;
import kingpost.svg.Element.Group;
import kingpost.svg.Element.Line;
import kingpost.svg.Element.Polygon;

/** Arrows whose heads are polygons, so that every viewer draws them alike. */
public final class Arrow {

    private Arrow() {
    }

    /**
     * A shaft from {@code tail} to {@code tip} with a filled head that ends exactly at the tip.
     *
     * @param head  length of the head; no more than the arrow's length is used
     * @param style of the shaft; its last dash pattern is not used for the head
     */
    public static Element of(Point tail, Point tip, double head, String colour, double width) {
        return of(tail, tip, head, colour, width, Style.none());
    }

    /** The same, with {@code shaft} set for the shaft alone: a dash pattern, for instance. */
    public static Element of(Point tail, Point tip, double head, String colour, double width, Style shaft) {
        double length = tail.distanceTo(tip);
        double used = Math.min(head, length);
        Point neck = length == 0 ? tip : tip.between(tail, used * 0.8 / length);
        return Group.of(
                new Line(tail, neck, Style.stroke(colour, width).and(shaft)),
                head(tip, tail.directionTo(tip), used, colour));
    }

    /** An arrow head alone: its tip at {@code tip}, pointing in the direction {@code degrees}. */
    public static Element head(Point tip, double degrees, double length, String colour) {
        Point back = tip.towards(degrees + 180, length);
        double half = length * 0.36;
        return new Polygon(List.of(tip, back.towards(degrees + 90, half), back.towards(degrees - 90, half)),
                Style.fill(colour));
    }
}
