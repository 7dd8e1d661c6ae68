package kingpost.diagram;

import java.util.Arrays;

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

    /** Made by the thousand while labels look for places: plain loops. */
    private Patch(Place... corners) {
        int n = corners.length;
        xs = new double[n];
        ys = new double[n];
        double[] wayX = new double[n];
        double[] wayY = new double[n];
        int ways = 0;
        double west = Double.POSITIVE_INFINITY;
        double east = Double.NEGATIVE_INFINITY;
        double north = Double.POSITIVE_INFINITY;
        double south = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < n; i++) {
            xs[i] = corners[i].x();
            ys[i] = corners[i].y();
            west = Math.min(west, xs[i]);
            east = Math.max(east, xs[i]);
            north = Math.min(north, ys[i]);
            south = Math.max(south, ys[i]);
            Place way = corners[(i + 1) % n].minus(corners[i]).unit().left();
            if (way.norm() > 0 && isNew(way, wayX, wayY, ways)) {
                wayX[ways] = way.x();
                wayY[ways++] = way.y();
            }
        }
        acrossX = Arrays.copyOf(wayX, ways);
        acrossY = Arrays.copyOf(wayY, ways);
        left = west;
        right = east;
        top = north;
        bottom = south;
    }

    private static boolean isNew(Place way, double[] wayX, double[] wayY, int ways) {
        for (int i = 0; i < ways; i++) {
            if (Math.abs(wayX[i] * way.y() - wayY[i] * way.x()) < 1e-9) {
                return false;
            }
        }
        return true;
    }

    /** The convex patch with these corners, given in order round it. */
    static Patch of(Place... corners) {
        return new Patch(corners);
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
        Place[] corners = new Place[8];
        for (int i = 0; i < 8; i++) {
            corners[i] = centre.plus(Place.towards(22.5 + 45 * i).times(radius * 1.0824));
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
