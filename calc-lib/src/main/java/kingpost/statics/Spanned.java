package kingpost.statics;

import java.util.List;

/**
 * What some directions through one point reach together: nothing, a line, a plane or all of space.
 *
 * @param rank   0 to 3
 * @param line   for a line, its direction
 * @param normal for a plane, the direction across it, of length 1
 */
record Spanned(int rank, Vector line, Vector normal) {

    /** What directions of length 1 span. */
    static Spanned by(List<Vector> units) {
        if (units.isEmpty()) {
            return new Spanned(0, Vector.X, Vector.X);
        }
        Vector line = units.get(0);
        Vector across = Vector.X.times(0);
        for (Vector unit : units) {
            Vector normal = line.cross(unit);
            across = normal.norm() > across.norm() ? normal : across;
        }
        if (across.norm() <= Network.IN_LINE) {
            return new Spanned(1, line, Vector.X);
        }
        Vector normal = across.unit();
        boolean flat = units.stream().allMatch(u -> Math.abs(u.dot(normal)) <= Network.IN_LINE);
        return new Spanned(flat ? 2 : 3, line, normal);
    }

    /** Whether a direction of length 1 lies in it. */
    boolean contains(Vector unit) {
        return switch (rank) {
            case 0 -> false;
            case 1 -> Network.inLine(line, unit);
            case 2 -> Math.abs(unit.dot(normal)) <= Network.IN_LINE;
            default -> true;
        };
    }
}
