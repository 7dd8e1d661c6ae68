package kingpost.graphic;

import kingpost.statics.Vector;

/**
 * A force on a joint, and where round the joint it lies.
 *
 * @param cause  where it comes from
 * @param place  from the joint, length 1: along the member, or to the side on which the arrow of a load or reaction is
 *               drawn (its tail's side when it pushes on the joint, else its tip's)
 * @param vector N, on the joint
 */
public record Side(Cause cause, Vector place, Vector vector) {

    /** Whether it lies across its place, because members take both its own sides. */
    public boolean liesAcross() {
        return Math.abs(place.cross(vector).z()) > 0.5 * vector.norm();
    }

    /** Whether it points away from the joint, on its own side. */
    public boolean pulls() {
        return place.dot(vector) > 0;
    }
}
