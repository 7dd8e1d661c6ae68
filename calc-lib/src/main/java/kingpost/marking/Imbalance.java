package kingpost.marking;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import kingpost.marking.Reading.Force;

/**
 * How many slips a sheet must hold at least: joints whose stated forces do not balance are counted. One slip upsets two
 * joints at most, the ends of a member, and the slips of a working together a few more where its ends meet. A joint that
 * would balance with sines and cosines exchanged counts for none, as one slip throughout may upset them all.
 */
final class Imbalance {

    /** Joints at which a working ends, where all that went wrong before comes together. */
    private static final int LAST_JOINTS = 3;
    /** Of the largest force at a joint: what rounding may leave. */
    private static final double ROUNDING = 0.02;

    private final Bodies bodies;
    private final List<Terms> joints = new ArrayList<>();

    Imbalance(Bodies bodies) {
        this.bodies = bodies;
        List<Measure> axes = bodies.isInSpace() ? List.of(Measure.X, Measure.Y, Measure.Z) : List.of(Measure.X, Measure.Y);
        bodies.unknowns().truss().joints().forEach(joint -> joints.add(new Terms(bodies.at(joint.name()), axes)));
    }

    /** The least number of slips. */
    int leastSlips(Map<Integer, Force> stated) {
        int upset = 0;
        for (Terms joint : joints) {
            boolean complete = joint.acting().stream().allMatch(force -> force.isLoad() || stated.containsKey(force.unknown()));
            upset += complete && !balances(joint, stated, false) && !balances(joint, stated, true) ? 1 : 0;
        }
        return Math.max(0, (upset - LAST_JOINTS + 1) / 2);
    }

    private boolean balances(Terms joint, Map<Integer, Force> stated, boolean swapped) {
        for (int row = 0; row < joint.rows(); row++) {
            double sum = 0;
            double largest = 0;
            for (int f = 0; f < joint.acting().size(); f++) {
                Acting force = joint.acting().get(f);
                double value = force.isLoad() ? bodies.load(force.load()) : stated.get(force.unknown()).value();
                sum += value * (swapped ? joint.swapped(row, f) : joint.plain(row, f));
                largest = Math.max(largest, Math.abs(value));
            }
            if (Math.abs(sum) > ROUNDING * largest + 1e-9) {
                return false;
            }
        }
        return true;
    }
}
