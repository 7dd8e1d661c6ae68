package kingpost.units;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Collection;
import java.util.Comparator;
import javax.measure.Unit;

/**
 * How a quantity is written for engineers: 12.5 kN, 3 mm, \u22120.75 m, 29\u202f000 ksi.
 *
 * <ul>
 * <li>Three significant figures, unless set otherwise. A zero at the end is kept only where it tells of rounding:
 * 12 kN is 12 kN, 11.998 kN is 12.0 kN.
 * <li>The unit stays as given while its number is from 0.1 to 9999; otherwise the unit of the same system whose number
 * starts at 1 is taken: 12\u202f500 N is 12.5 kN, 0.003 m is 3 mm, 12\u202f500 lbf is 12.5 kip. Metric never becomes
 * US customary or back.
 * <li>A real minus sign, never "\u22120". From five digits on, groups of three are set apart by a narrow space that
 * does not break, as the SI brochure has it (5.4.4).
 * <li>Powers of ten only below 0.0001 and from 10^9 on, when no unit helps.
 * </ul>
 */
public final class EngineeringFormat {

    static final char MINUS = '\u2212';
    static final char GROUP = '\u202f';

    private static final EngineeringFormat STANDARD = new EngineeringFormat(3, true);
    private static final EngineeringFormat GIVEN = new EngineeringFormat(12, false);
    private static final double SMALLEST_PLAIN = 1e-4;
    private static final double LARGEST_PLAIN = 1e9;
    /** Digits that survive a calculation of usual length. */
    private static final int CERTAIN_DIGITS = 13;
    private static final double NOISE = 1e-9;

    private final int figures;
    private final boolean choosesUnit;

    private EngineeringFormat(int figures, boolean choosesUnit) {
        this.figures = figures;
        this.choosesUnit = choosesUnit;
    }

    /** Three significant figures, and the unit that suits. */
    public static EngineeringFormat standard() {
        return STANDARD;
    }

    /** For data that someone gave: their unit, and all their figures (up to twelve, so that no noise shows). */
    public static EngineeringFormat given() {
        return GIVEN;
    }

    /**
     * The same with another number of significant figures.
     *
     * @throws CalculationException when the number is not from 1 to 15
     */
    public EngineeringFormat withFigures(int significant) {
        if (significant < 1 || significant > 15) {
            throw new CalculationException("Number format: " + significant
                    + " significant figures; choose from 1 to 15.");
        }
        return new EngineeringFormat(significant, choosesUnit);
    }

    /** The same, but every quantity stays in its own unit. */
    public EngineeringFormat keepingUnits() {
        return new EngineeringFormat(figures, false);
    }

    /** The number and the unit's label. */
    public String format(Quantity quantity) {
        Quantity shown = choose(quantity);
        String label = UnitLabel.of(shown.getUnit());
        String gap = label.isEmpty() || label.equals("\u00b0") ? "" : " ";
        return number(shown.getValue()) + gap + label;
    }

    /** The quantity in the unit in which it would be written. */
    public Quantity choose(Quantity quantity) {
        if (!choosesUnit || isComfortable(quantity)) {
            return quantity;
        }
        return UnitFamily.of(quantity.getUnit()).stream()
                .map(quantity::to)
                .filter(in -> Math.abs(rounded(in.getValue()).doubleValue()) >= 1)
                .min(Comparator.comparingDouble(in -> Math.abs(in.getValue())))
                .orElseGet(() -> UnitFamily.smallest(quantity));
    }

    /**
     * The unit in which a column of like quantities is best written: the one chosen for the largest.
     *
     * @throws UnitMismatchException when they are not alike
     */
    public Unit<?> unitFor(Collection<Quantity> quantities) {
        return quantities.stream()
                .max(Comparator.comparing(Quantity::abs))
                .map(this::choose)
                .map(Quantity::getUnit)
                .orElse(StructuralUnits.one);
    }

    /** A bare number, written as the number of a quantity is. */
    public String number(double value) {
        BigDecimal rounded = rounded(value);
        if (rounded.signum() == 0) {
            return "0";
        }
        String text = isPlain(value) ? grouped(rounded.toPlainString()) : powerOfTen(rounded);
        return text.replace('-', MINUS);
    }

    /**
     * The same number in plain digits for programs and page makers: ASCII minus, no groups, {@code 1.2e-6} for a power
     * of ten.
     */
    public String digits(double value) {
        BigDecimal rounded = rounded(value);
        if (rounded.signum() == 0) {
            return "0";
        }
        if (isPlain(value)) {
            return rounded.toPlainString();
        }
        int exponent = exponent(rounded);
        return rounded.movePointLeft(exponent).toPlainString() + "e" + exponent;
    }

    private boolean isComfortable(Quantity quantity) {
        double size = Math.abs(rounded(quantity.getValue()).doubleValue());
        return size == 0 || size >= 0.1 && size < 10_000;
    }

    private BigDecimal rounded(double value) {
        BigDecimal rounded = withoutNoise(value).round(new MathContext(figures, RoundingMode.HALF_UP));
        BigDecimal brief = rounded.signum() == 0 ? BigDecimal.ZERO : rounded.stripTrailingZeros();
        boolean toldExactly = Math.abs(value - brief.doubleValue()) <= NOISE * Math.abs(value);
        return toldExactly ? brief : rounded;
    }

    /** So that 74.25 and the 74.24999999999999 that another way of working gives are written alike. */
    private BigDecimal withoutNoise(double value) {
        BigDecimal exact = BigDecimal.valueOf(value);
        return figures < CERTAIN_DIGITS ? exact.round(new MathContext(CERTAIN_DIGITS, RoundingMode.HALF_EVEN)) : exact;
    }

    private static String grouped(String plain) {
        int point = plain.indexOf('.');
        int end = point < 0 ? plain.length() : point;
        int start = plain.startsWith("-") ? 1 : 0;
        if (end - start < 5) {
            return plain;
        }
        StringBuilder text = new StringBuilder(plain);
        for (int i = end - 3; i > start; i -= 3) {
            text.insert(i, GROUP);
        }
        return text.toString();
    }

    private static String powerOfTen(BigDecimal rounded) {
        int exponent = exponent(rounded);
        return rounded.movePointLeft(exponent).toPlainString() + "\u00d710" + UnitLabel.superscript(exponent);
    }

    private static int exponent(BigDecimal rounded) {
        return rounded.precision() - rounded.scale() - 1;
    }

    private static boolean isPlain(double value) {
        double size = Math.abs(value);
        return size >= SMALLEST_PLAIN && size < LARGEST_PLAIN;
    }
}
