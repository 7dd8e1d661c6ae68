package kingpost.diagram;

import java.util.ArrayList;
import java.util.List;

/** A convex patch of the sheet that something covers: a label, a line with its thickness, a support. */
final class Patch {

    private final List<Place> corners;
    private final double left;
    private final double right;
    private final double top;
    private final double bottom;

    private Patch(List<Place> corners) {
        this.corners = List.copyOf(corners);
        left = corners.stream().mapToDouble(Place::x).min().orElseThrow();
        right = corners.stream().mapToDouble(Place::x).max().orElseThrow();
        top = corners.stream().mapToDouble(Place::y).min().orElseThrow();
        bottom = corners.stream().mapToDouble(Place::y).max().orElseThrow();
    }

    /** The convex patch with these corners, given in order round it. */
    static Patch of(Place... corners) {
        return new Patch(List.of(corners));
    }

    /** A straight line of that thickness, ends square. */
    static Patch line(Place from, Place to, double thickness) {
        Place side = to.minus(from).unit().left().times(thickness / 2);
        return of(from.plus(side), to.plus(side), to.minus(side), from.minus(side));
    }

    /** A box about {@code centre}, turned counter-clockwise. */
    static Patch box(Place centre, double width, double height, double degrees) {
        Place along = Place.towards(degrees).times(width / 2);
        Place up = Place.towards(degrees).left().times(height / 2);
        return of(centre.minus(along).minus(up), centre.plus(along).minus(up),
                centre.plus(along).plus(up), centre.minus(along).plus(up));
    }

    /** An upright box from its edges. */
    static Patch edges(double left, double top, double right, double bottom) {
        return of(new Place(left, top), new Place(right, top), new Place(right, bottom), new Place(left, bottom));
    }

    /** A disc, as an octagon about it. */
    static Patch disc(Place centre, double radius) {
        List<Place> corners = new ArrayList<>();
        for (int i = 0; i < 8; i++) {
            corners.add(centre.plus(Place.towards(22.5 + 45 * i).times(radius * 1.0824)));
        }
        return new Patch(corners);
    }

    double left() {
        return left;
    }

    double right() {
        return right;
    }

    double top() {
        return top;
    }

    double bottom() {
        return bottom;
    }

    /** The same patch moved. */
    Patch moved(Place by) {
        return new Patch(corners.stream().map(c -> c.plus(by)).toList());
    }

    /** Whether the boxes round the two come within {@code distance} px of each other. */
    boolean isWithin(Patch other, double distance) {
        return right + distance > other.left && other.right + distance > left
                && bottom + distance > other.top && other.bottom + distance > top;
    }

    /** Whether the two share more than {@code slack} px, measured across the best line between them. */
    boolean overlaps(Patch other, double slack) {
        return isWithin(other, 0) && depth(other) > slack;
    }

    boolean overlaps(Patch other) {
        return overlaps(other, 0);
    }

    /** How far one would have to move to be clear of the other, px; zero or less when clear already. */
    double depth(Patch other) {
        return Math.min(depthAcrossSides(other), other.depthAcrossSides(this));
    }

    private double depthAcrossSides(Patch other) {
        double depth = Double.MAX_VALUE;
        for (int i = 0; i < corners.size(); i++) {
            Place across = corners.get((i + 1) % corners.size()).minus(corners.get(i)).unit().left();
            if (across.norm() > 0) {
                depth = Math.min(depth, sharedAcross(across, other));
            }
        }
        return depth;
    }

    private double sharedAcross(Place across, Patch other) {
        return Math.min(reach(across) + other.reach(across.times(-1)), other.reach(across) + reach(across.times(-1)));
    }

    private double reach(Place way) {
        double reach = -Double.MAX_VALUE;
        for (Place corner : corners) {
            reach = Math.max(reach, corner.dot(way));
        }
        return reach;
    }
}
