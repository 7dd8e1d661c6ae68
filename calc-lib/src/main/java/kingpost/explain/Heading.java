package kingpost.explain;

import kingpost.derivation.Expression.Sense;
import kingpost.statics.Source;
import kingpost.statics.Vector;
import kingpost.truss.Direction;

/** Directions in words and as arrows. */
final class Heading {

    private static final Sense[] ROUND = {Sense.RIGHT, Sense.UP_RIGHT, Sense.UP, Sense.UP_LEFT, Sense.LEFT,
        Sense.DOWN_LEFT, Sense.DOWN, Sense.DOWN_RIGHT};
    private static final double ALMOST = 1e-9;

    private Heading() {
    }

    static Vector vector(Direction direction) {
        return new Vector(direction.x(), direction.y(), direction.z());
    }

    /** The nearest of eight arrows. */
    static Sense sense(Vector direction) {
        double eighths = Math.toDegrees(Math.atan2(direction.y(), direction.x())) / 45;
        return ROUND[Math.floorMod(Math.round(eighths), ROUND.length)];
    }

    /** Whether it lies along x, y or z. */
    static boolean isUpright(Vector direction) {
        return isHorizontal(direction) || isVertical(direction) || isAlongZ(direction);
    }

    static boolean isHorizontal(Vector direction) {
        return Math.abs(direction.y()) <= ALMOST * direction.norm() && Math.abs(direction.z()) <= ALMOST * direction.norm();
    }

    static boolean isVertical(Vector direction) {
        return Math.abs(direction.x()) <= ALMOST * direction.norm() && Math.abs(direction.z()) <= ALMOST * direction.norm();
    }

    private static boolean isAlongZ(Vector direction) {
        return Math.hypot(direction.x(), direction.y()) <= ALMOST * direction.norm();
    }

    /** How a reaction of {@code value} acts on the truss; nothing for zero. */
    static String words(Source.OfReaction reaction, double value) {
        return value == 0 ? "" : words(vector(reaction.direction()).times(Math.signum(value)));
    }

    /** "upwards", "to the left", "downwards to the right"; in space "towards the reader", "along (−1, 1, 2)". */
    static String words(Vector direction) {
        if (isAlongZ(direction)) {
            return direction.z() > 0 ? "towards the reader" : "away from the reader";
        }
        if (Math.abs(direction.z()) > ALMOST * direction.norm()) {
            return "along (" + plain(direction.x()) + ", " + plain(direction.y()) + ", " + plain(direction.z()) + ")";
        }
        return switch (isHorizontal(direction) ? (direction.x() > 0 ? Sense.RIGHT : Sense.LEFT)
                : isVertical(direction) ? (direction.y() > 0 ? Sense.UP : Sense.DOWN) : inclined(direction)) {
            case RIGHT -> "to the right";
            case LEFT -> "to the left";
            case UP -> "upwards";
            case DOWN -> "downwards";
            case UP_RIGHT -> "upwards to the right";
            case UP_LEFT -> "upwards to the left";
            case DOWN_RIGHT -> "downwards to the right";
            case DOWN_LEFT -> "downwards to the left";
            case COUNTERCLOCKWISE -> "counter-clockwise";
        };
    }

    private static String plain(double number) {
        return Notation.four(number).digits().replace('-', '\u2212');
    }

    private static Sense inclined(Vector direction) {
        boolean right = direction.x() > 0;
        return direction.y() > 0 ? right ? Sense.UP_RIGHT : Sense.UP_LEFT : right ? Sense.DOWN_RIGHT : Sense.DOWN_LEFT;
    }
}
