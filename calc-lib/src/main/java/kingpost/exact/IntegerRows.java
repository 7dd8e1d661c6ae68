package kingpost.exact;

import java.math.BigInteger;
import java.util.Map;
import java.util.TreeMap;

/** Rows of whole numbers by column, zeros left out, and the steps of elimination on them. */
final class IntegerRows {

    private IntegerRows() {
    }

    /** {@code row} times the number that clears its denominators. */
    static TreeMap<Integer, BigInteger> of(Map<Integer, Fraction> row) {
        BigInteger multiple = BigInteger.ONE;
        for (Fraction value : row.values()) {
            BigInteger d = value.denominator();
            multiple = multiple.multiply(d.divide(multiple.gcd(d)));
        }
        TreeMap<Integer, BigInteger> whole = new TreeMap<>();
        for (Map.Entry<Integer, Fraction> each : row.entrySet()) {
            Fraction value = each.getValue();
            if (!value.isZero()) {
                whole.put(each.getKey(), value.numerator().multiply(multiple.divide(value.denominator())));
            }
        }
        return whole;
    }

    /** Changes {@code row} by a multiple of {@code pivot} so that nothing is left in {@code column}. */
    static void eliminate(TreeMap<Integer, BigInteger> row, TreeMap<Integer, BigInteger> pivot, int column) {
        BigInteger here = row.get(column);
        BigInteger there = pivot.get(column);
        BigInteger common = here.gcd(there);
        BigInteger keep = there.divide(common);
        BigInteger take = here.divide(common);
        if (!keep.equals(BigInteger.ONE)) {
            row.replaceAll((c, value) -> value.multiply(keep));
        }
        pivot.forEach((c, value) -> row.merge(c, value.multiply(take).negate(), IntegerRows::sumOrNothing));
        if (!keep.abs().equals(BigInteger.ONE)) {
            removeCommonFactor(row);
        }
    }

    /** Divides the whole row by what all its numbers share. */
    static void removeCommonFactor(TreeMap<Integer, BigInteger> row) {
        BigInteger common = BigInteger.ZERO;
        for (BigInteger value : row.values()) {
            common = common.gcd(value);
            if (common.equals(BigInteger.ONE)) {
                return;
            }
        }
        if (common.signum() != 0) {
            BigInteger divisor = common;
            row.replaceAll((c, value) -> value.divide(divisor));
        }
    }

    private static BigInteger sumOrNothing(BigInteger a, BigInteger b) {
        BigInteger sum = a.add(b);
        return sum.signum() == 0 ? null : sum;
    }
}
