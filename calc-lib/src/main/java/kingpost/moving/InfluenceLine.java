package kingpost.moving;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import kingpost.exact.Fraction;
import kingpost.exact.Surd;
import kingpost.statics.Source;
import kingpost.statics.UnitLoads;
import kingpost.truss.Direction;
import kingpost.truss.TrussModel;
import kingpost.units.CalculationException;

/**
 * What a unit load does as it moves along a chord: straight between joints, because stringers share it there by the
 * lever.
 *
 * @param truss     the truss
 * @param effect    what is changed
 * @param ordinates one for each joint of the chord, from left to right; at least two
 * @param worst     largest difference between the ordinates' two routes, over the largest force
 */
public record InfluenceLine(TrussModel truss, Effect effect, List<Ordinate> ordinates, double worst) {

    /** A shear smaller than this part of the load is rounding. */
    private static final double NOISE = 1e-12;

    public InfluenceLine {
        ordinates = List.copyOf(ordinates);
    }

    /**
     * The effect with the unit load on one joint.
     *
     * @param x     of the joint, in the truss's length unit
     * @param value per unit of load
     * @param exact the same as fraction times surd where coordinates are rational
     */
    public record Ordinate(String joint, double x, double value, Optional<Surd> exact) {
    }

    /**
     * The influence line of an effect along a chord.
     *
     * @throws CalculationException when the truss is a mechanism or indeterminate, or a shear is asked for in what is no
     *                              panel of the chord
     */
    public static InfluenceLine of(TrussModel truss, Effect effect, LoadedChord chord) {
        UnitLoads loads = UnitLoads.of(truss, chord.joints(), effect.accept(new Effect.Visitor<List<Source>>() {
            @Override
            public List<Source> member(Effect.OfMember of) {
                return List.of(new Source.OfMember(of.member()));
            }

            @Override
            public List<Source> reaction(Effect.OfReaction of) {
                return List.of(of.reaction());
            }

            @Override
            public List<Source> shear(Effect.OfShear of) {
                return List.copyOf(Source.OfReaction.of(truss));
            }
        }));
        List<Ordinate> ordinates = new ArrayList<>();
        for (int i = 0; i < chord.joints().size(); i++) {
            String joint = chord.joints().get(i);
            double x = LoadedChord.x(truss, joint);
            ordinates.add(effect instanceof Effect.OfShear panel ? shear(loads, panel, i)
                    : new Ordinate(joint, x, loads.forces().get(i).get(0), loads.exact().get(i).get(0)));
        }
        return new InfluenceLine(truss, effect, ordinates, loads.worst());
    }

    /** Vertical reactions to the left of the panel, less the unit load when it stands there. */
    private static Ordinate shear(UnitLoads loads, Effect.OfShear panel, int loaded) {
        int left = loads.joints().indexOf(panel.left());
        if (left < 0 || left + 1 >= loads.joints().size() || !loads.joints().get(left + 1).equals(panel.right())) {
            throw new CalculationException("Panel " + panel.left() + " " + panel.right() + ": it is not one of the loaded"
                    + " chord " + String.join(" ", loads.joints()) + "; name two joints of it that follow each other.");
        }
        double sum = loaded <= left ? -1 : 0;
        Optional<Fraction> exact = Optional.of(loaded <= left ? Fraction.ONE.negate() : Fraction.ZERO);
        for (int i = 0; i < loads.effects().size(); i++) {
            Source.OfReaction reaction = (Source.OfReaction) loads.effects().get(i);
            if (LoadedChord.x(loads.truss(), reaction.joint()) <= LoadedChord.x(loads.truss(), panel.left())) {
                sum += loads.forces().get(loaded).get(i) * reaction.direction().cosY();
                Optional<Fraction> part = upward(loads.exact().get(loaded).get(i), reaction.direction());
                exact = exact.flatMap(e -> part.map(e::plus));
            }
        }
        String joint = loads.joints().get(loaded);
        double value = exact.map(Fraction::doubleValue).orElse(Math.abs(sum) < NOISE ? 0 : sum);
        return new Ordinate(joint, LoadedChord.x(loads.truss(), joint), value, exact.map(Surd::of));
    }

    private static Optional<Fraction> upward(Optional<Surd> reaction, Direction direction) {
        if (!direction.exact() || reaction.isEmpty()) {
            return Optional.empty();
        }
        Fraction x = Fraction.ofDecimal(direction.x());
        Fraction y = Fraction.ofDecimal(direction.y());
        if (y.isZero()) {
            return Optional.of(Fraction.ZERO);
        }
        Surd up = reaction.get().over(Surd.squareRoot(x.squared().plus(y.squared()))).times(y);
        return up.isRational() ? Optional.of(up.coefficient()) : Optional.empty();
    }

    public double start() {
        return ordinates.get(0).x();
    }

    public double end() {
        return ordinates.get(ordinates.size() - 1).x();
    }

    /** The effect with the unit load at {@code x}; nothing beyond the ends of the chord. */
    public double at(double x) {
        double slack = slack();
        if (x < start() - slack || x > end() + slack) {
            return 0;
        }
        int next = next(x);
        for (int near = next - 1; near <= next; near++) {
            if (Math.abs(ordinates.get(near).x() - x) <= slack) {
                return ordinates.get(near).value();
            }
        }
        Ordinate a = ordinates.get(next - 1);
        Ordinate b = ordinates.get(next);
        return a.value() + (b.value() - a.value()) * (x - a.x()) / (b.x() - a.x());
    }

    /** Number of the joint at the right end of the stringer on which {@code x} lies. */
    private int next(double x) {
        int left = 0;
        int right = ordinates.size() - 1;
        while (right - left > 1) {
            int middle = (left + right) / 2;
            if (ordinates.get(middle).x() < x) {
                left = middle;
            } else {
                right = middle;
            }
        }
        return right;
    }

    /** The ordinate that is largest as a number; the first of equals. */
    public Ordinate highest() {
        return ordinates.stream().max(Comparator.comparingDouble(Ordinate::value)).orElseThrow();
    }

    public Ordinate lowest() {
        return ordinates.stream().min(Comparator.comparingDouble(Ordinate::value)).orElseThrow();
    }

    /** The ordinate largest in size; the first of equals. */
    public Ordinate peak() {
        Ordinate peak = ordinates.get(0);
        for (Ordinate ordinate : ordinates) {
            peak = Math.abs(ordinate.value()) > Math.abs(peak.value()) * (1 + 1e-9) ? ordinate : peak;
        }
        return peak;
    }

    /** Places nearer than this are the same, in the truss's length unit. */
    double slack() {
        return 1e-9 * (end() - start());
    }
}
