package kingpost.diagram;

import kingpost.svg.Point;

/**
 * A place on the sheet, or the way from one place to another.
 *
 * @param x px to the right
 * @param y px downwards
 */
record Place(double x, double y) {

    static final Place ORIGIN = new Place(0, 0);

    /** The way of length 1 at {@code degrees} counter-clockwise from the right, as the reader sees it. */
    static Place towards(double degrees) {
        double radians = Math.toRadians(degrees);
        return new Place(Math.cos(radians), -Math.sin(radians));
    }

    Place plus(Place other) {
        return new Place(x + other.x, y + other.y);
    }

    Place minus(Place other) {
        return new Place(x - other.x, y - other.y);
    }

    Place times(double factor) {
        return new Place(x * factor, y * factor);
    }

    double dot(Place other) {
        return x * other.x + y * other.y;
    }

    /** Positive when {@code other} lies clockwise from this way, as the reader sees it. */
    double cross(Place other) {
        return x * other.y - y * other.x;
    }

    double norm() {
        return Math.hypot(x, y);
    }

    /** The same way with length 1; a way of no length stays as it is. */
    Place unit() {
        double norm = norm();
        return norm == 0 ? this : times(1 / norm);
    }

    /** This way turned a quarter counter-clockwise, as the reader sees it. */
    Place left() {
        return new Place(y, -x);
    }

    double distance(Place other) {
        return minus(other).norm();
    }

    Place middle(Place other) {
        return along(other, 0.5);
    }

    /** The place {@code part} of the way to {@code other}. */
    Place along(Place other, double part) {
        return new Place(x + (other.x - x) * part, y + (other.y - y) * part);
    }

    /** Degrees counter-clockwise from the right, as the reader sees it: more than -180, at most 180. */
    double degrees() {
        double degrees = Math.toDegrees(Math.atan2(-y, x));
        return degrees <= -180 ? degrees + 360 : degrees;
    }

    /** The smaller angle between the two ways, 0 to 180 degrees. */
    double degreesTo(Place other) {
        double turn = Math.abs(degrees() - other.degrees());
        return Math.min(turn, 360 - turn);
    }

    /** To whole px. */
    Place rounded() {
        return new Place(Math.rint(x), Math.rint(y));
    }

    Point point() {
        return new Point(x, y);
    }
}
