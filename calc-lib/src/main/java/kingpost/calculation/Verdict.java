package kingpost.calculation;

import java.util.Optional;
import kingpost.units.EngineeringFormat;
import kingpost.units.Quantity;
import kingpost.units.StructuralUnits;

/**
 * What came of a check: 257 kN at most 310 kN: satisfied, 83 %.
 *
 * <p>Values that agree to nine figures count as equal, so that rounding noise decides nothing.
 *
 * @param left      the value on the left
 * @param sign      how it ought to compare
 * @param right     the value on the right
 * @param satisfied whether it does
 * @param usage     what is needed over what there is, where both are above zero
 */
public record Verdict(Quantity left, Comparison.Sign sign, Quantity right, boolean satisfied, Optional<Double> usage) {

    private static final double SAME = 1e-9;
    private static final int MOST_FIGURES = 9;

    static Verdict of(Quantity left, Comparison.Sign sign, Quantity right) {
        int order = left.compareTo(right);
        double b = right.in(left.getUnit());
        boolean same = Math.abs(left.getValue() - b) <= SAME * Math.max(Math.abs(left.getValue()), Math.abs(b));
        boolean satisfied = switch (sign) {
            case AT_MOST -> same || order < 0;
            case AT_LEAST -> same || order > 0;
            case LESS -> !same && order < 0;
            case GREATER -> !same && order > 0;
            case EQUAL -> same;
        };
        return new Verdict(left, sign, right, satisfied, usage(left.getValue(), b, sign));
    }

    private static Optional<Double> usage(double left, double right, Comparison.Sign sign) {
        if (left <= 0 || right <= 0) {
            return Optional.empty();
        }
        return switch (sign) {
            case AT_MOST, LESS -> Optional.of(left / right);
            case AT_LEAST, GREATER -> Optional.of(right / left);
            case EQUAL -> Optional.empty();
        };
    }

    /** "satisfied, 83 %" or "not satisfied, 106 %". */
    public String outcome() {
        return (satisfied ? "satisfied" : "not satisfied") + usage.map(share -> ", " + percent(share)).orElse("");
    }

    /** The whole verdict in words. */
    @Override
    public String toString() {
        EngineeringFormat format = EngineeringFormat.standard().withFigures(figures(3)).keepingUnits();
        return format.format(left) + " " + sign.words() + " " + format.format(right) + ": " + outcome();
    }

    /** So many figures, from {@code least} on, that the two sides do not look equal when they are not. */
    int figures(int least) {
        for (int figures = least; figures < MOST_FIGURES; figures++) {
            EngineeringFormat format = EngineeringFormat.standard().withFigures(figures).keepingUnits();
            if (!format.format(left.to(right.getUnit())).equals(format.format(right))) {
                return figures;
            }
        }
        return least;
    }

    /** Whole per cent, unless that would put a check that fails at 100 or below, or one that holds above it. */
    private String percent(double share) {
        for (int digits = 0; digits < MOST_FIGURES; digits++) {
            double scale = Math.pow(10, digits);
            double shown = Math.round(share * 100 * scale) / scale;
            if (Math.signum(shown - 100) == Math.signum(share - 1) || Math.abs(share - 1) <= SAME) {
                return EngineeringFormat.standard().withFigures(12).number(shown) + " %";
            }
        }
        return Quantity.of(share).to(StructuralUnits.percent).toString();
    }
}
