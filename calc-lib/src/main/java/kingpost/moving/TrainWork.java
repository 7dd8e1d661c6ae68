package kingpost.moving;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kingpost.exact.Fraction;
import kingpost.exact.Surd;
import kingpost.moving.InfluenceLine.Ordinate;
import kingpost.moving.TrainEffect.Edge;
import kingpost.moving.TrainEffect.Placement;
import kingpost.moving.TrainEffect.WheelPlace;
import kingpost.moving.WheelTrain.Wheel;
import kingpost.units.StructuralUnits;

/**
 * Sets each wheel on each joint, both ways: between such positions the effect changes evenly, so one of them is the
 * largest. Where the line ends off zero, the effect jumps as a wheel leaves, and the moment before and after counts too.
 */
final class TrainWork {

    /** A larger effect must be larger by this part, so that equal ones keep the first. */
    private static final double CLEARLY = 1e-12;

    private final InfluenceLine line;
    private final WheelTrain train;
    private final boolean jumps;
    private double scale;
    private Found largest;
    private Found smallest;
    private int positions;

    private record Found(boolean rightward, int wheel, Ordinate at, Edge edge, double effect) {
    }

    TrainWork(InfluenceLine line, WheelTrain train) {
        this.line = line;
        this.train = train;
        jumps = line.at(line.start()) != 0 || line.at(line.end()) != 0;
        for (Wheel wheel : train.wheels()) {
            scale += newtons(wheel) * Math.abs(line.peak().value());
        }
    }

    TrainEffect effect() {
        for (boolean rightward : new boolean[] {true, false}) {
            for (int wheel = 0; wheel < train.wheels().size(); wheel++) {
                for (Ordinate ordinate : line.ordinates()) {
                    positions++;
                    consider(rightward, wheel, ordinate, Edge.AT);
                    if (jumps) {
                        consider(rightward, wheel, ordinate, Edge.BEFORE);
                        consider(rightward, wheel, ordinate, Edge.AFTER);
                    }
                }
            }
        }
        return new TrainEffect(line, train, Optional.ofNullable(largest).map(this::placement),
                Optional.ofNullable(smallest).map(this::placement), positions);
    }

    private void consider(boolean rightward, int wheel, Ordinate at, Edge edge) {
        Found found = new Found(rightward, wheel, at, edge, 0);
        double effect = places(found).stream().mapToDouble(WheelPlace::effect).sum();
        double clearly = CLEARLY * scale;
        if (effect > (largest == null ? 0 : largest.effect) + clearly) {
            largest = new Found(rightward, wheel, at, edge, effect);
        }
        if (effect < (smallest == null ? 0 : smallest.effect) - clearly) {
            smallest = new Found(rightward, wheel, at, edge, effect);
        }
    }

    private List<WheelPlace> places(Found found) {
        List<WheelPlace> places = new ArrayList<>();
        for (int i = 0; i < train.wheels().size(); i++) {
            Wheel wheel = train.wheels().get(i);
            double x = x(found, i);
            boolean on = isOn(x, found);
            double ordinate = on ? line.at(x) : 0;
            places.add(new WheelPlace(i + 1, wheel.load(), x, on, ordinate, newtons(wheel) * ordinate));
        }
        return places;
    }

    private double x(Found found, int wheel) {
        double ahead = train.wheels().get(found.wheel).behind() - train.wheels().get(wheel).behind();
        return found.at.x() + (found.rightward ? ahead : -ahead);
    }

    /** A moment before, the train stood a little back against its way; a moment after, a little ahead. */
    private boolean isOn(double x, Found found) {
        double step = found.edge == Edge.AT ? 0 : 2 * line.slack() * (found.edge == Edge.AFTER == found.rightward ? 1 : -1);
        return x + step >= line.start() - line.slack() && x + step <= line.end() + line.slack();
    }

    private Placement placement(Found found) {
        return new Placement(found.rightward, found.wheel + 1, found.at.joint(), found.edge, places(found), found.effect,
                exact(found));
    }

    private Optional<Surd> exact(Found found) {
        Optional<ExactSum> exact = ExactSum.of(line);
        if (exact.isEmpty()) {
            return Optional.empty();
        }
        Fraction sum = Fraction.ZERO;
        Optional<Fraction> reference = ExactSum.fraction(train.wheels().get(found.wheel).behind());
        for (int i = 0; i < train.wheels().size(); i++) {
            Wheel wheel = train.wheels().get(i);
            Optional<Fraction> load = ExactSum.fraction(wheel.load().in(line.truss().forceUnit()));
            Optional<Fraction> behind = ExactSum.fraction(wheel.behind());
            if (load.isEmpty() || behind.isEmpty() || reference.isEmpty()) {
                return Optional.empty();
            }
            if (isOn(x(found, i), found)) {
                Fraction ahead = reference.get().minus(behind.get());
                Fraction x = Fraction.ofDecimal(found.at.x()).plus(found.rightward ? ahead : ahead.negate());
                sum = sum.plus(load.get().times(exact.get().at(x)));
            }
        }
        return Optional.of(exact.get().surd(sum));
    }

    private static double newtons(Wheel wheel) {
        return wheel.load().in(StructuralUnits.N);
    }
}
