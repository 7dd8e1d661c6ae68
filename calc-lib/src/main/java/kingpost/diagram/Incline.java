package kingpost.diagram;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.Optional;
import kingpost.statics.Vector;

/**
 * A right triangle of whole numbers, as a slope is told: 3 across, 4 up, 5 along.
 *
 * @param run   whole number to the side
 * @param rise  whole number upwards
 * @param along whole number along the slope
 */
record Incline(long run, long rise, long along) {

    private static final long LARGEST = 150;
    private static final int DECIMALS = 9;

    /** The triangle of a direction, where all three of its sides are whole numbers up to 150. */
    static Optional<Incline> of(Vector direction) {
        BigInteger x = whole(direction.x());
        BigInteger y = whole(direction.y());
        BigInteger common = x.gcd(y);
        if (x.signum() == 0 || y.signum() == 0) {
            return Optional.empty();
        }
        BigInteger run = x.divide(common);
        BigInteger rise = y.divide(common);
        BigInteger[] root = run.multiply(run).add(rise.multiply(rise)).sqrtAndRemainder();
        boolean small = root[0].bitLength() < 31 && root[0].longValue() <= LARGEST;
        return small && root[1].signum() == 0
                ? Optional.of(new Incline(run.longValue(), rise.longValue(), root[0].longValue())) : Optional.empty();
    }

    /** The decimal that a number prints as, times 10^9, without its sign. */
    private static BigInteger whole(double number) {
        return BigDecimal.valueOf(number).scaleByPowerOfTen(DECIMALS)
                .setScale(0, java.math.RoundingMode.HALF_EVEN).toBigInteger().abs();
    }
}
