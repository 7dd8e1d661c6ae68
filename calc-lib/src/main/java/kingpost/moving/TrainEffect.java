package kingpost.moving;

import java.util.List;
import java.util.Optional;
import kingpost.exact.Surd;
import kingpost.units.Quantity;

/**
 * The most that a train of wheels does on its way over the chord, in either direction.
 *
 * @param line      the influence line
 * @param train     the train
 * @param largest   where the effect is largest as a number (tension); empty where it is nowhere above zero
 * @param smallest  where it is smallest (compression); empty where it is nowhere below zero
 * @param positions how many positions were compared: each wheel at each joint, both ways
 */
public record TrainEffect(InfluenceLine line, WheelTrain train, Optional<Placement> largest,
                          Optional<Placement> smallest, int positions) {

    /** The most that {@code train} does to what {@code line} is the influence line of. */
    public static TrainEffect of(InfluenceLine line, WheelTrain train) {
        return new TrainWork(line, train).effect();
    }

    /**
     * The train where it does most.
     *
     * @param rightward whether it travels to the right, its leading wheel ahead
     * @param wheel     number of the wheel that stands at a joint, from 1
     * @param joint     that joint
     * @param edge      AT where all wheels at the chord's ends count; else that the train has come just short of it
     *                  (BEFORE) or gone just past (AFTER), so that a wheel at the end of the chord is off it
     * @param wheels    every wheel
     * @param effect    N
     * @param exact     in the truss's force unit, where ordinates, loads and distances are rational
     */
    public record Placement(boolean rightward, int wheel, String joint, Edge edge, List<WheelPlace> wheels,
                            double effect, Optional<Surd> exact) {
        public Placement {
            wheels = List.copyOf(wheels);
        }
    }

    /** On which side of a position the effect was taken. */
    public enum Edge { AT, BEFORE, AFTER }

    /**
     * @param number   from 1, the leading wheel first
     * @param x        in the truss's length unit
     * @param on       whether it is on the chord
     * @param ordinate of the influence line under it; 0 when it is off
     * @param effect   N, load times ordinate
     */
    public record WheelPlace(int number, Quantity load, double x, boolean on, double ordinate, double effect) {
    }
}
