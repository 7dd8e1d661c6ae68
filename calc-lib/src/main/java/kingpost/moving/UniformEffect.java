package kingpost.moving;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kingpost.exact.Fraction;
import kingpost.exact.Surd;
import kingpost.moving.InfluenceLine.Ordinate;
import kingpost.truss.TrussModel;
import kingpost.units.CalculationException;
import kingpost.units.Quantity;
import kingpost.units.StructuralUnits;
import kingpost.units.UnitLabel;

/**
 * The most that a uniform load of any extent does: it stands where the influence line has one sign.
 *
 * @param line      the influence line
 * @param intensity force per length, as given
 * @param parts     stretches of one sign, from left to right
 * @param largest   N, over all stretches above zero
 * @param smallest  N, over all stretches below zero
 * @param whole     N, over the whole chord
 * @param exact     the same three in the truss's force unit, in that order; empty where something is not rational
 */
public record UniformEffect(InfluenceLine line, Quantity intensity, List<Part> parts, double largest,
                            double smallest, double whole, List<Surd> exact) {

    public UniformEffect {
        parts = List.copyOf(parts);
        exact = List.copyOf(exact);
    }

    /**
     * A stretch in which the ordinates have one sign.
     *
     * @param from x in the truss's length unit
     * @param to   likewise
     * @param area between line and base, with its sign; in the truss's length unit
     */
    public record Part(double from, double to, double area) {
    }

    /**
     * The most that a load of this intensity does.
     *
     * @throws CalculationException when the intensity is no force per length, or not above zero
     */
    public static UniformEffect of(InfluenceLine line, Quantity intensity) {
        TrussModel truss = line.truss();
        var unit = truss.forceUnit().divide(truss.lengthUnit());
        if (intensity == null || !intensity.isCompatible(unit)) {
            throw new CalculationException("Uniform load: it is " + (intensity == null ? "missing" : intensity)
                    + "; give a force per length, in " + UnitLabel.of(unit) + " for instance.");
        }
        if (!(intensity.getValue() > 0) || Double.isInfinite(intensity.getValue())) {
            throw new CalculationException("Uniform load: it is " + intensity + "; give a finite number above zero.");
        }
        List<Part> parts = parts(line);
        double perLength = Quantity.of(intensity.in(unit), truss.forceUnit()).in(StructuralUnits.N);
        double above = parts.stream().mapToDouble(Part::area).filter(a -> a > 0).sum();
        double below = parts.stream().mapToDouble(Part::area).filter(a -> a < 0).sum();
        return new UniformEffect(line, intensity, parts, perLength * above, perLength * below, perLength * (above + below),
                exact(line, intensity.in(unit)));
    }

    /** Of all stretches above zero, in the truss's length unit. */
    public double areaAbove() {
        return parts.stream().mapToDouble(Part::area).filter(a -> a > 0).sum();
    }

    /** Of all stretches below zero, a negative number. */
    public double areaBelow() {
        return parts.stream().mapToDouble(Part::area).filter(a -> a < 0).sum();
    }

    /** Stretches of one sign of an influence line, from left to right. */
    public static List<Part> parts(InfluenceLine line) {
        List<Part> parts = new ArrayList<>();
        for (int i = 1; i < line.ordinates().size(); i++) {
            Ordinate a = line.ordinates().get(i - 1);
            Ordinate b = line.ordinates().get(i);
            if (a.value() * b.value() < 0) {
                double zero = a.x() + (b.x() - a.x()) * a.value() / (a.value() - b.value());
                add(parts, a.x(), zero, a.value() / 2);
                add(parts, zero, b.x(), b.value() / 2);
            } else {
                add(parts, a.x(), b.x(), (a.value() + b.value()) / 2);
            }
        }
        return parts;
    }

    private static void add(List<Part> parts, double from, double to, double mean) {
        if (mean == 0) {
            return;
        }
        Part last = parts.isEmpty() ? null : parts.get(parts.size() - 1);
        if (last != null && last.to() == from && last.area() > 0 == mean > 0) {
            parts.set(parts.size() - 1, new Part(last.from(), to, last.area() + mean * (to - from)));
        } else {
            parts.add(new Part(from, to, mean * (to - from)));
        }
    }

    private static List<Surd> exact(InfluenceLine line, double intensity) {
        Optional<ExactSum> exact = ExactSum.of(line);
        Optional<Fraction> perLength = ExactSum.fraction(intensity);
        if (exact.isEmpty() || perLength.isEmpty()) {
            return List.of();
        }
        Fraction above = Fraction.ZERO;
        Fraction below = Fraction.ZERO;
        Fraction half = Fraction.of(1, 2);
        for (int i = 1; i < line.ordinates().size(); i++) {
            Fraction a = exact.get().heights().get(i - 1);
            Fraction b = exact.get().heights().get(i);
            Fraction panel = exact.get().places().get(i).minus(exact.get().places().get(i - 1));
            Fraction aPart = a.signum() * b.signum() < 0 ? panel.times(a).over(a.minus(b)) : panel;
            Fraction bPart = a.signum() * b.signum() < 0 ? panel.minus(aPart) : panel;
            Fraction one = a.times(aPart).times(half);
            Fraction other = b.times(bPart).times(half);
            above = above.plus(a.signum() > 0 ? one : Fraction.ZERO).plus(b.signum() > 0 ? other : Fraction.ZERO);
            below = below.plus(a.signum() < 0 ? one : Fraction.ZERO).plus(b.signum() < 0 ? other : Fraction.ZERO);
        }
        Fraction w = perLength.get();
        return List.of(exact.get().surd(above.times(w)), exact.get().surd(below.times(w)),
                exact.get().surd(above.plus(below).times(w)));
    }
}
