package kingpost.kernel.recheck;

/**
 * How far two numbers may lie apart and still be the same.
 *
 * @param relative share of the larger of the two
 * @param noise    share of the largest number beside them, below which a difference is rounding
 */
public record Tolerance(double relative, double noise) {

    /** One millionth: far less than what anything prints, far more than another order of adding makes. */
    public static final Tolerance STANDARD = of(1e-6);

    /** A thousandth of a drawing's size: the eye does not see less. */
    static final Tolerance DRAWING = new Tolerance(1e-3, 1e-3);

    public Tolerance {
        if (!(relative >= 0 && relative < 1)) {
            throw new IllegalArgumentException("Tolerance: " + relative + " given; give a share from 0 up to 1, such as 1e-6.");
        }
    }

    public static Tolerance of(double relative) {
        return new Tolerance(relative, 1e-9);
    }

    /** Whether {@code a} and {@code b} are the same beside numbers as large as {@code largest}. */
    boolean same(double a, double b, double largest) {
        double apart = Math.abs(a - b);
        return apart <= relative * Math.max(Math.abs(a), Math.abs(b)) || apart <= noise * Math.abs(largest)
                || Double.compare(a, b) == 0;
    }
}
