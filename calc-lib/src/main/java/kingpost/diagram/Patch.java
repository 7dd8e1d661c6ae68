package kingpost.diagram;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** A convex patch of the sheet that something covers: a label, a line with its thickness, a support. */
final class Patch {

    private final double[] xs;
    private final double[] ys;
    /** Ways across the sides, length 1: the only ones along which two convex patches need be compared. */
    private final double[] acrossX;
    private final double[] acrossY;
    private final double left;
    private final double right;
    private final double top;
    private final double bottom;

    private Patch(List<Place> corners) {
        xs = corners.stream().mapToDouble(Place::x).toArray();
        ys = corners.stream().mapToDouble(Place::y).toArray();
        List<Place> across = across(corners);
        acrossX = across.stream().mapToDouble(Place::x).toArray();
        acrossY = across.stream().mapToDouble(Place::y).toArray();
        left = Arrays.stream(xs).min().orElseThrow();
        right = Arrays.stream(xs).max().orElseThrow();
        top = Arrays.stream(ys).min().orElseThrow();
        bottom = Arrays.stream(ys).max().orElseThrow();
    }

    private static List<Place> across(List<Place> corners) {
        List<Place> across = new ArrayList<>();
        for (int i = 0; i < corners.size(); i++) {
            Place way = corners.get((i + 1) % corners.size()).minus(corners.get(i)).unit().left();
            boolean same = across.stream().anyMatch(a -> Math.abs(a.cross(way)) < 1e-9);
            if (way.norm() > 0 && !same) {
                across.add(way);
            }
        }
        return across;
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
        for (int i = 0; i < acrossX.length; i++) {
            double x = acrossX[i];
            double y = acrossY[i];
            depth = Math.min(depth, Math.min(reach(x, y) + other.reach(-x, -y), other.reach(x, y) + reach(-x, -y)));
        }
        return depth;
    }

    private double reach(double wayX, double wayY) {
        double reach = -Double.MAX_VALUE;
        for (int i = 0; i < xs.length; i++) {
            reach = Math.max(reach, xs[i] * wayX + ys[i] * wayY);
        }
        return reach;
    }
}
