package kingpost.units;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** How a quantity is written. */
public final class EngineeringFormat {

    private static final EngineeringFormat STANDARD = new EngineeringFormat(3);

    private final int figures;

    private EngineeringFormat(int figures) {
        this.figures = figures;
    }

    /** Three significant figures. */
    public static EngineeringFormat standard() {
        return STANDARD;
    }

    /** The quantity's number and unit label. */
    public String format(Quantity quantity) {
        return number(quantity.getValue()) + " " + UnitLabel.of(quantity.getUnit());
    }

    private String number(double value) {
        BigDecimal rounded = BigDecimal.valueOf(value).round(new MathContext(figures, RoundingMode.HALF_UP));
        return rounded.stripTrailingZeros().toPlainString().replace('-', '\u2212');
    }
}
