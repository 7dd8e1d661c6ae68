package kingpost.svg;

/**
 * An upright rectangle: what a label or a picture takes up.
 *
 * @param left   smallest x
 * @param top    smallest y
 * @param width  not negative
 * @param height not negative
 */
public record Box(double left, double top, double width, double height) {

    public Box {
        if (!(width >= 0 && height >= 0)) {
            throw new IllegalArgumentException("a box of width " + width + " and height " + height);
        }
    }

    /** The smallest box that holds both points. */
    public static Box around(Point a, Point b) {
        return new Box(Math.min(a.x(), b.x()), Math.min(a.y(), b.y()),
                Math.abs(a.x() - b.x()), Math.abs(a.y() - b.y()));
    }

    /** The box of this size with its middle at {@code middle}. */
    public static Box centredOn(Point middle, double width, double height) {
        return new Box(middle.x() - width / 2, middle.y() - height / 2, width, height);
    }

    public double right() {
        return left + width;
    }

    public double bottom() {
        return top + height;
    }

    public Point middle() {
        return new Point(left + width / 2, top + height / 2);
    }

    /** This box with {@code margin} more on every side. */
    public Box grown(double margin) {
        return new Box(left - margin, top - margin, width + 2 * margin, height + 2 * margin);
    }

    public Box union(Box other) {
        double l = Math.min(left, other.left);
        double t = Math.min(top, other.top);
        return new Box(l, t, Math.max(right(), other.right()) - l, Math.max(bottom(), other.bottom()) - t);
    }

    /** True when the two share some area; boxes that only touch do not. */
    public boolean overlaps(Box other) {
        return left < other.right() && other.left < right() && top < other.bottom() && other.top < bottom();
    }

    public boolean contains(Point p) {
        return left <= p.x() && p.x() <= right() && top <= p.y() && p.y() <= bottom();
    }

    /** True when some part of the straight line from {@code a} to {@code b} lies in the box. */
    public boolean crosses(Point a, Point b) {
        double[] range = {0, 1};
        return clip(a.x(), b.x() - a.x(), left, right(), range) && clip(a.y(), b.y() - a.y(), top, bottom(), range);
    }

    /** Narrows {@code range}, the part of the line still inside, by one pair of sides; false when nothing is left. */
    private static boolean clip(double start, double change, double low, double high, double[] range) {
        if (change == 0) {
            return low <= start && start <= high;
        }
        double one = (low - start) / change;
        double other = (high - start) / change;
        range[0] = Math.max(range[0], Math.min(one, other));
        range[1] = Math.min(range[1], Math.max(one, other));
        return range[0] <= range[1];
    }
}
