package kingpost.svg;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Numbers as the picture's text holds them: two decimals at most, no trailing zeros, no "-0", no exponent. */
final class Numbers {

    private Numbers() {
    }

    static String text(double number) {
        if (!Double.isFinite(number)) {
            throw new IllegalArgumentException("a coordinate is " + number);
        }
        BigDecimal rounded = BigDecimal.valueOf(number).setScale(2, RoundingMode.HALF_UP);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }

    static String text(Point point) {
        return text(point.x()) + "," + text(point.y());
    }
}
