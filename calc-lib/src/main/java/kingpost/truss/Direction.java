package kingpost.truss;

import java.math.BigDecimal;
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
    public static final Direction NEAR = new Direction(0, 0, 1, "towards the reader", true);
    public static final Direction FAR = new Direction(0, 0, -1, "away from the reader", true);

    /** x components of the directions at 0, 45 ... 315 degrees; a quarter turn back gives the y components. */
    private static final int[] EIGHTHS_X = {1, 1, 0, -1, -1, -1, 0, 1};

    public Direction {
        double length = Math.sqrt(x * x + y * y + z * z);
        if (!Double.isFinite(length) || length == 0) {
            throw new CalculationException("Direction (" + x + ", " + y + ", " + z
                    + "): it points nowhere; give finite numbers that are not all zero.");
        }
    }

    /**
     * At an angle from the x axis.
     *
     * @param degrees counter-clockwise from x; multiples of 45 give exact components
     */
    public static Direction at(double degrees) {
        if (!Double.isFinite(degrees)) {
            throw new CalculationException("Direction: the angle " + degrees
                    + " is not a number of degrees; give a finite one, counter-clockwise from x.");
        }
        String words = "at " + plain(degrees) + "\u00b0";
        double turn = degrees - 360 * Math.floor(degrees / 360);
        if (turn % 45 == 0) {
            int eighth = (int) (turn / 45) % 8;
            return new Direction(EIGHTHS_X[eighth], EIGHTHS_X[(eighth + 6) % 8], 0, words, true);
        }
        return new Direction(Math.cos(Math.toRadians(turn)), Math.sin(Math.toRadians(turn)), 0, words, false);
    }

    /**
     * Along a slope.
     *
     * @param run  how far to the right; negative: to the left
     * @param rise how far up; negative: down
     */
    public static Direction slope(double run, double rise) {
        if (!Double.isFinite(run) || !Double.isFinite(rise)) {
            throw new CalculationException("Direction: a slope of " + run + " across and " + rise
                    + " up points nowhere; give finite numbers that are not both zero.");
        }
        return new Direction(run, rise, 0, plain(Math.abs(run)) + " across, " + plain(Math.abs(rise))
                + (rise < 0 ? " down" : " up"), true);
    }

    /**
     * Along a slope in space.
     *
     * @param x part to the right
     * @param y part upwards
     * @param z part towards the reader
     */
    public static Direction slope(double x, double y, double z) {
        if (!Double.isFinite(x + y + z)) {
            throw new CalculationException("Direction (" + x + ", " + y + ", " + z
                    + "): it points nowhere; give finite numbers that are not all zero.");
        }
        return new Direction(x, y, z, "along (" + plain(x) + ", " + plain(y) + ", " + plain(z) + ")", true);
    }

    /** The opposite way. */
    public Direction reversed() {
        String turned = switch (words) {
            case "right" -> "left";
            case "left" -> "right";
            case "up" -> "down";
            case "down" -> "up";
            default -> "against " + words;
        };
        return new Direction(0 - x, 0 - y, 0 - z, turned, exact);
    }

    /** Along a slope in space; a direction along an axis is called by its name, as {@link #UP}. */
    static Direction along(double x, double y, double z) {
        Direction slope = slope(x, y, z);
        if (!slope.isAxis()) {
            return slope;
        }
        return x > 0 ? RIGHT : x < 0 ? LEFT : y > 0 ? UP : y < 0 ? DOWN : z > 0 ? NEAR : FAR;
    }

    /** Whether it lies along the x, y or z axis, either way. */
    public boolean isAxis() {
        return (x != 0 ? 1 : 0) + (y != 0 ? 1 : 0) + (z != 0 ? 1 : 0) == 1;
    }

    private static String plain(double number) {
        return BigDecimal.valueOf(number).stripTrailingZeros().toPlainString().replace('-', '\u2212');
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
