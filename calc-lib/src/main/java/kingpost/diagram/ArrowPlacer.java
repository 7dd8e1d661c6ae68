package kingpost.diagram;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Finds the line of an arrow that acts at a joint: its tip at the joint, or its tail, whichever leaves members,
 * supports and earlier arrows clear; moved a little to the side where both are taken.
 */
final class ArrowPlacer {

    private static final double[] GAPS = {6, 27};
    private static final double BLOCKED = 100;
    private static final double INSIDE = 6;
    private static final double PULLING = 0.5;
    private static final List<Double> SIDES = List.of(0.0, 9.0, -9.0, 18.0, -18.0, 27.0, -27.0);

    private final Sheet sheet;
    private final Hull hull;

    /** @param hull what counts as the inside of the body, where arrows had better not lie */
    ArrowPlacer(Sheet sheet, Hull hull) {
        this.sheet = sheet;
        this.hull = hull;
    }

    /** An arrow of that length that points along {@code way} and acts at {@code joint}. */
    Line place(Place joint, Place way, double length) {
        List<Line> lines = new ArrayList<>();
        for (double side : SIDES) {
            for (double gap : GAPS) {
                lines.add(line(joint.plus(way.left().times(side)), way, new Measures(gap, length, side), false));
                lines.add(line(joint.plus(way.left().times(side)), way, new Measures(gap, length, side), true));
            }
        }
        return lines.stream().min(Comparator.comparingDouble(this::cost)).orElseThrow();
    }

    private static Line line(Place foot, Place way, Measures measures, boolean pulls) {
        double sense = pulls ? 1 : -1;
        Place near = foot.plus(way.times(sense * measures.gap));
        Place far = foot.plus(way.times(sense * (measures.gap + measures.length)));
        return new Line(pulls ? near : far, pulls ? far : near, pulls, measures);
    }

    private double cost(Line line) {
        double cost = Math.abs(line.measures.side) * 0.2 + line.measures.gap * 0.1 + (line.pulls ? PULLING : 0);
        Place near = line.near().along(line.far(), 0.15);
        Patch patch = Patch.line(near, line.far(), 9);
        for (Patch other : sheet.covered()) {
            if (patch.overlaps(other)) {
                cost += BLOCKED;
            }
        }
        return cost + (hull.holds(line.far()) ? INSIDE : 0);
    }

    /**
     * @param gap    from the joint to the arrow's near end, px
     * @param length of the arrow, px
     * @param side   how far it lies off the joint, px
     */
    private record Measures(double gap, double length, double side) {
    }

    /**
     * Where an arrow lies.
     *
     * @param pulls whether its tail is at the joint
     */
    record Line(Place tail, Place tip, boolean pulls, Measures measures) {
        Place near() {
            return pulls ? tail : tip;
        }

        Place far() {
            return pulls ? tip : tail;
        }
    }
}
