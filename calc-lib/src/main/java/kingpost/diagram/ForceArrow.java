package kingpost.diagram;

import kingpost.graphic.Side;

/**
 * Where the arrow of a force on a joint lies when it keeps to its own side of the joint.
 *
 * @param tail where it begins
 * @param tip  where it ends
 * @param near the end nearer the joint
 * @param far  the other end
 */
record ForceArrow(Place tail, Place tip, Place near, Place far) {

    /**
     * @param gap    from the joint to the near end, px
     * @param length px
     * @param off    how far it is moved clockwise round the joint, px
     */
    static ForceArrow of(Place joint, Side side, double gap, double length, double off) {
        Place way = TrussLayout.way(side.place());
        Place foot = joint.plus(way.left().times(-off));
        if (side.liesAcross()) {
            Place half = TrussLayout.way(side.vector()).times(length / 2);
            Place centre = foot.plus(way.left().times(-off)).plus(way.times(2 * gap));
            return new ForceArrow(centre.minus(half), centre.plus(half), centre.minus(half), centre.plus(half));
        }
        Place near = foot.plus(way.times(gap));
        Place far = foot.plus(way.times(gap + length));
        return side.pulls() ? new ForceArrow(near, far, near, far) : new ForceArrow(far, near, near, far);
    }

    Place middle() {
        return tail.middle(tip);
    }
}
