package kingpost.marking;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

/** Significant figures: how finely an answer is stated, and how close it must be. */
final class Figures {

    /** What an answer is asked for to. */
    static final int ASKED = 3;
    private static final double SLACK = 1 + 1e-7;
    private static final double COARSE = 0.01;
    /** Of the largest force: where all answers are rounded to so many decimals, small ones keep few figures. */
    private static final double FINE = 0.005;
    private static final double ROUNDING = 0.005;

    private Figures() {
    }

    /** Significant figures of a decimal as written; trailing zeros count, leading ones do not. */
    static int count(String digits) {
        String mantissa = digits.replaceAll("[eE].*", "").replace(".", "").replaceAll("^0+", "");
        return Math.max(1, mantissa.length());
    }

    /** Half of one unit in the last digit of a decimal as written. */
    static double halfUnit(String digits) {
        return new BigDecimal(digits).ulp().doubleValue() / 2;
    }

    /** Half of one unit in the last of {@code figures} significant figures of {@code value}, which is not zero. */
    static double halfUnit(double value, int figures) {
        return 0.5 * Math.pow(10, Math.floor(Math.log10(Math.abs(value))) + 1 - figures);
    }

    /** Whether a stated force is {@code value} to three figures. */
    static boolean agree(Reading.Force stated, double value, double truss) {
        return agree(stated, value, 0, truss);
    }

    /**
     * Whether a stated force is {@code value} to three figures.
     *
     * @param spread how much {@code value} itself may be off
     * @param truss  the largest force of the truss, against which a force is seen as zero
     */
    static boolean agree(Reading.Force stated, double value, double spread, double truss) {
        double off = Math.abs(stated.value() - value);
        if (isZero(value, truss) || stated.isZero()) {
            return off <= 1e-6 * truss + spread;
        }
        return off <= halfUnit(value, ASKED) * SLACK + spread;
    }

    /** Whether a stated force is {@code value} rounded to the fewer figures in which it is stated. */
    static boolean agreeCoarsely(Reading.Force stated, double value, double truss) {
        if (stated.isZero() || isZero(value, truss) || stated.figures() >= ASKED) {
            return false;
        }
        if (stated.digits().contains(".") && stated.halfUnit() <= FINE * truss) {
            return Math.abs(stated.value() - value) <= stated.halfUnit() * SLACK;
        }
        double most = stated.figures() == 2 ? stated.halfUnit() : Math.min(stated.halfUnit(), COARSE * Math.abs(value));
        return Math.abs(stated.value() - value) <= most * SLACK;
    }

    /**
     * Whether a stated force is off by no more than early rounding makes it, as of sines to two decimals: by one in the
     * third figure, or by half a per cent; common practice, no source.
     */
    static boolean near(Reading.Force stated, double value, double truss) {
        boolean compares = !stated.isZero() && !isZero(value, truss) && stated.figures() >= ASKED;
        return compares && Math.abs(stated.value() - value)
                <= Math.max(2 * halfUnit(value, ASKED) * SLACK, ROUNDING * Math.abs(value));
    }

    static boolean isZero(double value, double truss) {
        return Math.abs(value) <= 1e-9 * truss;
    }

    /** {@code value} to so many significant figures. */
    static double round(double value, int figures) {
        if (figures > 6) {
            double unit = 2 * halfUnit(value, figures);
            return Math.rint(value / unit) * unit;
        }
        return new BigDecimal(value).round(new MathContext(figures, RoundingMode.HALF_UP)).doubleValue();
    }

    /** {@code value} to so many significant figures; an exact half may go either way. */
    static double roundFast(double value, int figures) {
        return value == 0 ? 0 : roundDecimals(value, figures - 1 - (int) Math.floor(Math.log10(Math.abs(value))));
    }

    /** {@code value} to so many decimals, fewer than none for tens and hundreds; an exact half may go either way. */
    static double roundDecimals(double value, int decimals) {
        double power = Math.pow(10, Math.abs(decimals));
        double size = decimals < 0 ? Math.round(Math.abs(value) / power) * power : Math.round(Math.abs(value) * power) / power;
        return Math.copySign(size, value);
    }

    /**
     * The numbers that {@code digits} becomes when two digits side by side change places; the point stays. One that would
     * begin with a zero is no number that anyone meant.
     */
    static List<Double> transposed(String digits) {
        List<Double> numbers = new ArrayList<>();
        String mantissa = digits.replaceAll("[eE].*", "");
        for (int i = 0; i < mantissa.length(); i++) {
            int next = i + 1 < mantissa.length() && mantissa.charAt(i + 1) == '.' ? i + 2 : i + 1;
            if (next < mantissa.length() && mantissa.charAt(i) != '.' && mantissa.charAt(i) != mantissa.charAt(next)) {
                char[] swapped = mantissa.toCharArray();
                swapped[i] = mantissa.charAt(next);
                swapped[next] = mantissa.charAt(i);
                if (mantissa.charAt(0) == '0' || swapped[0] != '0') {
                    numbers.add(Double.parseDouble(new String(swapped) + digits.substring(mantissa.length())));
                }
            }
        }
        return numbers;
    }
}
