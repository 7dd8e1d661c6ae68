package kingpost.units;

import static kingpost.units.StructuralUnits.*;

import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import javax.measure.Unit;

/** The names by which units are read and written; the first name of a unit is the one written. */
final class UnitNames {

    private static final Map<String, Unit<?>> READ = read();
    private static final Map<Unit<?>, String> WRITTEN = written();

    private UnitNames() {
    }

    /** The unit called {@code name}, or null. */
    static Unit<?> unit(String name) {
        return READ.get(name);
    }

    /** The name to write for {@code unit}, or null when it is written as a product. */
    static String name(Unit<?> unit) {
        return WRITTEN.get(unit);
    }

    static Set<String> all() {
        return READ.keySet();
    }

    private static Map<String, Unit<?>> read() {
        Map<String, Unit<?>> names = new LinkedHashMap<>();
        put(names, m, "m");
        put(names, mm, "mm");
        put(names, cm, "cm");
        put(names, km, "km");
        put(names, in, "in", "inch", "inches");
        put(names, ft, "ft", "feet", "foot");
        put(names, yd, "yd");
        put(names, kg, "kg");
        put(names, t, "t");
        put(names, lb, "lb");
        put(names, sec, "s");
        put(names, N, "N");
        put(names, kN, "kN");
        put(names, MN, "MN");
        put(names, lbf, "lbf");
        put(names, kip, "kip", "kips");
        put(names, Pa, "Pa");
        put(names, kPa, "kPa");
        put(names, MPa, "MPa");
        put(names, GPa, "GPa");
        put(names, psi, "psi");
        put(names, ksi, "ksi");
        put(names, psf, "psf");
        put(names, ksf, "ksf");
        put(names, plf, "plf");
        put(names, klf, "klf");
        put(names, pcf, "pcf");
        put(names, Nm, "Nm");
        put(names, kNm, "kNm");
        put(names, rad, "rad");
        put(names, deg, "\u00b0", "deg");
        put(names, percent, "%", "percent");
        return Collections.unmodifiableMap(names);
    }

    private static void put(Map<String, Unit<?>> names, Unit<?> unit, String... called) {
        for (String name : called) {
            names.put(name, unit);
        }
    }

    private static Map<Unit<?>, String> written() {
        Map<Unit<?>, String> names = new HashMap<>();
        READ.forEach((name, unit) -> names.putIfAbsent(unit, name));
        names.put(one, "");
        Set.of(klf, Nm, kNm).forEach(names::remove);
        return Map.copyOf(names);
    }
}
