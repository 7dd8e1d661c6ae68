package kingpost.svg;

/**
 * A place in the picture, y down.
 *
 * @param x user units to the right
 * @param y user units down
 */
public record Point(double x, double y) {

    public static Point of(double x, double y) {
        return new Point(x, y);
    }

    public Point plus(double dx, double dy) {
        return new Point(x + dx, y + dy);
    }

    /** The point {@code distance} away in the direction {@code degrees}, clockwise from the x-axis on the screen. */
    public Point towards(double degrees, double distance) {
        double angle = Math.toRadians(degrees);
        return plus(distance * Math.cos(angle), distance * Math.sin(angle));
    }

    /** The point at {@code fraction} of the way to {@code other}. */
    public Point between(Point other, double fraction) {
        return plus((other.x - x) * fraction, (other.y - y) * fraction);
    }

    public double distanceTo(Point other) {
        return Math.hypot(other.x - x, other.y - y);
    }

    /** Degrees of the direction from here to {@code other}, clockwise from the x-axis on the screen. */
    public double directionTo(Point other) {
        return Math.toDegrees(Math.atan2(other.y - y, other.x - x));
    }
}
