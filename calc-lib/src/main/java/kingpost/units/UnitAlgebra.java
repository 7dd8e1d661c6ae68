package kingpost.units;

import static kingpost.units.StructuralUnits.*;

import java.util.LinkedHashMap;
import java.util.Map;
import javax.measure.Unit;
import tech.units.indriya.unit.ProductUnit;
import tech.units.indriya.unit.Units;

/**
 * The unit of a product or quotient, as an engineer would write it: kN over MPa is an area in mm^2, N over mm^2 is
 * MPa, an angle times a radius is an arc. Units of one kind are merged into the one met first.
 */
final class UnitAlgebra {

    /** Units with a name of their own, in the units that are multiplied to make them. */
    private static final Map<Unit<?>, Map<Unit<?>, Integer>> MADE_OF = Map.of(
            Pa, Map.of(N, 1, m, -2),
            kPa, Map.of(kN, 1, m, -2),
            MPa, Map.of(N, 1, mm, -2),
            GPa, Map.of(kN, 1, mm, -2),
            Units.JOULE, Map.of(N, 1, m, 1));

    /** Products that get a name of their own, not always at the same scale; kN/m^2 stays as it is written on load plans. */
    private static final Map<Map<Unit<?>, Integer>, Unit<?>> NAMED = Map.of(
            MADE_OF.get(Pa), Pa,
            MADE_OF.get(MPa), MPa,
            MADE_OF.get(GPa), MPa,
            Map.of(MN, 1, m, -2), MPa);

    private UnitAlgebra() {
    }

    static Unit<?> product(Unit<?> left, Unit<?> right) {
        return combine(left, right, 1);
    }

    static Unit<?> quotient(Unit<?> left, Unit<?> right) {
        return combine(left, right, -1);
    }

    static Unit<?> power(Unit<?> unit, int exponent) {
        Map<Unit<?>, Integer> factors = new LinkedHashMap<>();
        gather(unit, exponent, factors);
        return compose(factors);
    }

    /**
     * The unit of which {@code unit} is the power of that degree, or {@code null} when there is none.
     */
    static Unit<?> root(Unit<?> unit, int degree) {
        Map<Unit<?>, Integer> factors = new LinkedHashMap<>();
        gather(unit, 1, factors);
        factors = merge(factors);
        if (factors.values().stream().anyMatch(exponent -> exponent % degree != 0)) {
            return null;
        }
        factors.replaceAll((factor, exponent) -> exponent / degree);
        return compose(factors);
    }

    /** True for the unit of a plain number and for per cent. */
    static boolean isPlain(Unit<?> unit) {
        return unit.getSystemUnit().equals(one);
    }

    private static Unit<?> combine(Unit<?> left, Unit<?> right, int sign) {
        if (isPlain(right)) {
            return left.equals(percent) ? one : left;
        }
        if (isPlain(left) && sign > 0) {
            return right;
        }
        Map<Unit<?>, Integer> factors = new LinkedHashMap<>();
        gather(left, 1, factors);
        gather(right, sign, factors);
        return compose(merge(factors));
    }

    private static void gather(Unit<?> unit, int exponent, Map<Unit<?>, Integer> into) {
        if (MADE_OF.containsKey(unit)) {
            MADE_OF.get(unit).forEach((factor, power) -> add(into, factor, power * exponent));
        } else if (unit instanceof ProductUnit<?> product) {
            for (int i = 0; i < product.getUnitCount(); i++) {
                gather(product.getUnit(i), product.getUnitPow(i) * exponent, into);
            }
        } else if (!isPlain(unit) && !DimensionName.isAngle(unit)) {
            add(into, unit, exponent);
        }
    }

    private static void add(Map<Unit<?>, Integer> into, Unit<?> factor, int exponent) {
        into.merge(factor, exponent, Integer::sum);
    }

    private static Map<Unit<?>, Integer> merge(Map<Unit<?>, Integer> factors) {
        Map<Unit<?>, Integer> merged = new LinkedHashMap<>();
        factors.forEach((factor, exponent) -> {
            Unit<?> met = merged.keySet().stream()
                    .filter(other -> other.getDimension().equals(factor.getDimension()))
                    .findFirst().orElse(factor);
            add(merged, met, exponent);
        });
        return merged;
    }

    private static Unit<?> compose(Map<Unit<?>, Integer> factors) {
        factors.values().removeIf(exponent -> exponent == 0);
        Unit<?> named = NAMED.get(factors);
        if (named != null) {
            return named;
        }
        Unit<?> unit = one;
        for (Map.Entry<Unit<?>, Integer> factor : factors.entrySet()) {
            unit = unit.multiply(factor.getKey().pow(factor.getValue()));
        }
        return unit;
    }
}
