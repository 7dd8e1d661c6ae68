package kingpost.units;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import javax.measure.Unit;
import javax.measure.UnitConverter;
import tech.units.indriya.function.RationalNumber;

/**
 * How many of its SI unit one unit is, as an exact fraction (degrees: pi to more digits than a double holds).
 *
 * @param dividend above the line
 * @param divisor  below the line, positive
 */
record UnitFactor(BigInteger dividend, BigInteger divisor) {

    /** Asking the unit library costs microseconds; a factor never changes, so it is asked once for each unit. */
    private static final Map<Unit<?>, UnitFactor> KNOWN = new ConcurrentHashMap<>();

    /**
     * The factor of {@code unit}.
     *
     * @throws CalculationException when the unit's scale does not start at zero, as a thermometer's
     */
    static UnitFactor of(Unit<?> unit) {
        return KNOWN.computeIfAbsent(unit, UnitFactor::ask);
    }

    /** {@code value} of {@code from} in {@code to}; the caller has checked that they go together. */
    static double convert(double value, Unit<?> from, Unit<?> to) {
        if (from.equals(to) || value == 0) {
            return value;
        }
        UnitFactor a = of(from);
        UnitFactor b = of(to);
        BigDecimal above = new BigDecimal(a.dividend.multiply(b.divisor));
        BigDecimal below = new BigDecimal(a.divisor.multiply(b.dividend));
        return BigDecimal.valueOf(value).multiply(above).divide(below, MathContext.DECIMAL128).doubleValue();
    }

    private static UnitFactor ask(Unit<?> unit) {
        UnitConverter toSystem = toSystem(unit);
        if (!toSystem.isLinear()) {
            throw new CalculationException("Unit " + unit + ": its scale does not start at zero; give a temperature "
                    + "change in K.");
        }
        return of(toSystem.convert((Number) 1));
    }

    private static <Q extends javax.measure.Quantity<Q>> UnitConverter toSystem(Unit<Q> unit) {
        return unit.getConverterTo(unit.getSystemUnit());
    }

    private static UnitFactor of(Number number) {
        if (number instanceof RationalNumber ratio) {
            return new UnitFactor(ratio.getDividend(), ratio.getDivisor());
        }
        BigDecimal decimal = new BigDecimal(number.toString());
        return decimal.scale() <= 0
                ? new UnitFactor(decimal.toBigIntegerExact(), BigInteger.ONE)
                : new UnitFactor(decimal.unscaledValue(), BigInteger.TEN.pow(decimal.scale()));
    }
}
