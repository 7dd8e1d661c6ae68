package kingpost.diagram;

import java.util.List;
import kingpost.statics.Vector;

/** From where a truss is looked at. Parallel lines stay parallel, and nothing is drawn smaller for being far. */
enum View {

    /** A plane truss as it is. */
    FLAT("", Vector.X, Vector.Y),
    /** A space truss from before, to the right and above, so that all three axes show. */
    PICTORIAL("Seen from before, right and above", new Vector(cos(26), 0, -sin(26)),
            new Vector(-sin(26) * sin(20), cos(20), -cos(26) * sin(20))),
    /** Against z: x to the right, y up. */
    FRONT("Front: x and y", Vector.X, Vector.Y),
    /** Against y, from above: x to the right, z down the page. */
    PLAN("Plan: x and z", Vector.X, Vector.Z.times(-1)),
    /** Along x, from the left: z to the right, y up. */
    SIDE("Side: z and y", Vector.Z, Vector.Y);

    /** Shorter than this part of itself, a direction points at the reader. */
    private static final double NOTHING = 1e-9;

    private final String caption;
    private final Vector right;
    private final Vector up;

    View(String caption, Vector right, Vector up) {
        this.caption = caption;
        this.right = right;
        this.up = up;
    }

    private static double cos(double degrees) {
        return Math.cos(Math.toRadians(degrees));
    }

    private static double sin(double degrees) {
        return Math.sin(Math.toRadians(degrees));
    }

    /** What stands under it. */
    String caption() {
        return caption;
    }

    /** Across and up, in the same unit. */
    Vector flatten(Vector place) {
        return this == FLAT ? place : new Vector(place.dot(right), place.dot(up), 0);
    }

    /** The way a direction points on the sheet, length 1; of no length where it points at the reader. */
    Place way(Vector direction) {
        Place way = new Place(direction.dot(right), -direction.dot(up));
        return way.norm() <= NOTHING * direction.norm() ? Place.ORIGIN : way.unit();
    }

    /** Axes that can be seen, each with its name. */
    List<Axis> axes() {
        return List.of(new Axis("x", Vector.X), new Axis("y", Vector.Y), new Axis("z", Vector.Z)).stream()
                .filter(axis -> way(axis.direction()).norm() > 0).toList();
    }

    /** The way of an axis on the sheet, shorter than 1 where it comes towards the reader. */
    Place foreshortened(Vector direction) {
        return new Place(direction.dot(right), -direction.dot(up));
    }

    record Axis(String name, Vector direction) {
    }
}
