package kingpost.units;

import static kingpost.units.StructuralUnits.*;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import javax.measure.Unit;

/** Units among which an engineer would choose for one kind of quantity in one system. */
final class UnitFamily {

    private static final Map<Unit<?>, List<Unit<?>>> FAMILIES = families();

    private UnitFamily() {
    }

    /** The units that may stand in for {@code unit}; only itself when it has no family. */
    static List<Unit<?>> of(Unit<?> unit) {
        return FAMILIES.getOrDefault(unit, List.of(unit));
    }

    /** {@code quantity} in the smallest unit of its family. */
    static Quantity smallest(Quantity quantity) {
        return of(quantity.getUnit()).stream()
                .map(quantity::to)
                .max(Comparator.comparingDouble(in -> Math.abs(in.getValue())))
                .orElse(quantity);
    }

    private static Map<Unit<?>, List<Unit<?>>> families() {
        Map<Unit<?>, List<Unit<?>>> families = new HashMap<>();
        put(families, List.of(mm, m, km), cm);
        put(families, List.of(in, ft), yd);
        put(families, List.of(N, kN, MN));
        put(families, List.of(lbf, kip));
        put(families, List.of(mm2, m2), cm2);
        put(families, List.of(in2, ft2));
        put(families, List.of(mm3, cm3, m3));
        put(families, List.of(mm4, cm4), m.pow(4));
        put(families, List.of(Pa, kPa, MPa, GPa), kN_per_m2);
        put(families, List.of(psi, ksi));
        put(families, List.of(psf, ksf));
        put(families, List.of(N_per_m, kN_per_m), N_per_mm);
        put(families, List.of(plf, klf));
        put(families, List.of(Nm, kNm), N.multiply(mm), kN.multiply(mm));
        put(families, List.of(lbf_ft, kip_ft));
        put(families, List.of(lbf.multiply(in), kip_in));
        put(families, List.of(kg, t));
        return Map.copyOf(families);
    }

    private static void put(Map<Unit<?>, List<Unit<?>>> families, List<Unit<?>> chosenFrom, Unit<?>... guests) {
        chosenFrom.forEach(unit -> families.put(unit, chosenFrom));
        for (Unit<?> guest : guests) {
            families.put(guest, chosenFrom);
        }
    }
}
