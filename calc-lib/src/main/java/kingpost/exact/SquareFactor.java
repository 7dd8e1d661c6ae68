package kingpost.exact;

import java.math.BigInteger;

/**
 * A whole number as root^2 times a rest without square factors.
 *
 * @param root the number whose square was taken out
 * @param rest what remains
 */
record SquareFactor(BigInteger root, BigInteger rest) {

    private static final long LARGEST_TRIAL = 1_000_000;

    /** Divides by the primes in turn, up to the cube root of what remains: then only a whole square can be left. */
    static SquareFactor of(BigInteger number) {
        BigInteger root = BigInteger.ONE;
        BigInteger kept = BigInteger.ONE;
        BigInteger left = number;
        for (long trial = 2; trial <= LARGEST_TRIAL && isCubeWithin(trial, left); trial += trial == 2 ? 1 : 2) {
            BigInteger divisor = BigInteger.valueOf(trial);
            int times = 0;
            for (BigInteger next = exactQuotient(left, trial, divisor); next != null;
                    next = exactQuotient(left, trial, divisor)) {
                left = next;
                times++;
            }
            root = root.multiply(divisor.pow(times / 2));
            kept = times % 2 == 1 ? kept.multiply(divisor) : kept;
        }
        BigInteger last = left.sqrt();
        return last.multiply(last).equals(left)
                ? new SquareFactor(root.multiply(last), kept)
                : new SquareFactor(root, kept.multiply(left));
    }

    private static boolean isCubeWithin(long trial, BigInteger left) {
        return left.bitLength() > 62 || trial * trial * trial <= left.longValue();
    }

    /** {@code left / trial}, or null when it does not divide. */
    private static BigInteger exactQuotient(BigInteger left, long trial, BigInteger divisor) {
        if (left.bitLength() <= 62) {
            long small = left.longValue();
            return small % trial == 0 && small != 0 ? BigInteger.valueOf(small / trial) : null;
        }
        BigInteger[] parts = left.divideAndRemainder(divisor);
        return parts[1].signum() == 0 ? parts[0] : null;
    }
}
