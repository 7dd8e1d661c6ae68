package kingpost.truss;

import kingpost.units.CalculationException;

/**
 * A direction as a person says it: down, at 225 degrees, along a slope of 3 across and 4 down.
 *
 * @param x     component to the right; only the ratio of the three counts
 * @param y     component upwards
 * @param z     component towards the reader
 * @param words how the user said it, for a figure or a sentence: "down", "at 225°", "3 across, 4 down"
 * @param exact true if x, y and z are the decimals that the user wrote (a slope or an axis), not cosines of an angle
 */
public record Direction(double x, double y, double z, String words, boolean exact) {

    public static final Direction RIGHT = new Direction(1, 0, 0, "right", true);
    public static final Direction LEFT = new Direction(-1, 0, 0, "left", true);
    public static final Direction UP = new Direction(0, 1, 0, "up", true);
    public static final Direction DOWN = new Direction(0, -1, 0, "down", true);

    public Direction {
        double length = Math.sqrt(x * x + y * y + z * z);
        if (!Double.isFinite(length) || length == 0) {
            throw new CalculationException("Direction (" + x + ", " + y + ", " + z
                    + "): it points nowhere; give finite numbers that are not all zero.");
        }
    }

    /** Length of (x, y, z), in the unit of the ratio; not a force. */
    public double norm() {
        return Math.sqrt(x * x + y * y + z * z);
    }

    /** Cosine with the x axis. */
    public double cosX() {
        return x / norm();
    }

    /** Cosine with the y axis. */
    public double cosY() {
        return y / norm();
    }

    /** Cosine with the z axis. */
    public double cosZ() {
        return z / norm();
    }
}
