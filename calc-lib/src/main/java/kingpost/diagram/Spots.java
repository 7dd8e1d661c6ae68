package kingpost.diagram;

import java.util.ArrayList;
import java.util.List;

/** Where labels of joints, members and arrows could stand. */
final class Spots {

    private static final double[] RINGS = {7.5, 11, 16, 23};
    private static final double[] PARTS = {0.5, 0.44, 0.56, 0.38, 0.62, 0.31, 0.69, 0.25, 0.75};

    /** Breaks the tie between left and right, the same way for every joint. */
    private static final double LEFT = 0.02;

    private Spots() {
    }

    /** Round a joint, best on the side that {@code outward} points to. */
    static List<Spot> around(Place joint, Caption caption, Place outward) {
        List<Spot> spots = new ArrayList<>();
        for (int ring = 0; ring < RINGS.length; ring++) {
            for (int i = 0; i < 24; i++) {
                Place way = Place.towards(90 + 15 * i);
                double cost = 0.5 * ring + 0.6 * way.degreesTo(outward) / 180 + (i % 3 == 0 ? 0 : 0.1)
                        + LEFT * (1 - way.x());
                spots.add(new Spot(beside(joint, way, RINGS[ring], caption), 0, joint.plus(way.times(8)), cost));
            }
        }
        return spots;
    }

    /**
     * Beside a member, about its middle: level, or turned along the member.
     *
     * @param gap    from the line to the label, px
     * @param turned whether turned writing is the first choice
     */
    static List<Spot> along(Place from, Place to, Caption caption, double gap, boolean turned) {
        Place way = to.x() < from.x() || to.x() == from.x() && to.y() > from.y() ? from.minus(to) : to.minus(from);
        double degrees = way.degrees();
        boolean level = Math.abs(degrees) < 4;
        List<Spot> spots = new ArrayList<>();
        for (int i = 0; i < PARTS.length; i++) {
            Place foot = from.along(to, PARTS[i]);
            double cost = 0.08 * i;
            for (Place side : List.of(way.unit().left(), way.unit().left().times(-1))) {
                double other = side.y() <= 0 ? 0 : 0.15;
                Place near = foot.plus(side.times(gap - 1));
                Place off = foot.plus(side.times(gap + caption.height() / 2));
                spots.add(new Spot(off, level ? 0 : degrees, near, cost + other + (turned || level ? 0 : 0.5)));
                if (!level) {
                    spots.add(new Spot(beside(foot, side, gap, caption), 0, near, cost + other + (turned ? 0.5 : 0)));
                }
            }
        }
        return spots;
    }

    /** At the far end of an arrow, or beside its shaft. */
    static List<Spot> atArrow(Place near, Place far, Caption caption) {
        Place way = far.minus(near).unit();
        List<Spot> spots = new ArrayList<>();
        for (double gap : new double[] {4, 8, 13}) {
            spots.add(new Spot(beside(far, way, gap, caption), 0, far.plus(way.times(2)), gap / 20 - 0.2));
        }
        for (double part : new double[] {1, 0.8, 0.6, 0.4}) {
            Place foot = near.along(far, part);
            for (Place side : List.of(way.left(), way.left().times(-1))) {
                for (double gap : new double[] {6, 11}) {
                    double cost = 0.35 + (1 - part) / 2 + (side.x() >= 0 ? 0 : 0.05) + (gap - 6) / 20;
                    spots.add(new Spot(beside(foot, side, gap, caption), 0, foot.plus(side.times(5)), cost));
                }
            }
        }
        return spots;
    }

    /** The middle of a level label that lies {@code gap} px from {@code place} on the side of {@code way}. */
    static Place beside(Place place, Place way, double gap, Caption caption) {
        double reach = Math.abs(way.x()) * caption.width() / 2 + Math.abs(way.y()) * caption.height() / 2;
        double corner = Math.min(reach, Math.min(
                caption.width() / 2 / Math.max(1e-9, Math.abs(way.x())),
                caption.height() / 2 / Math.max(1e-9, Math.abs(way.y()))));
        return place.plus(way.times(gap + (gap < 8 ? reach : Math.max(corner, reach * 0.8))));
    }
}
