package kingpost.units;

import static kingpost.units.StructuralUnits.*;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import javax.measure.Unit;
import tech.units.indriya.unit.ProductUnit;

/** A unit as people write it: kN/m², mm⁴, kip·ft, ksi, °. */
public final class UnitLabel {

    private static final Map<Unit<?>, String> NAMES = names();
    private static final String SUPERSCRIPTS = "\u2070\u00b9\u00b2\u00b3\u2074\u2075\u2076\u2077\u2078\u2079";

    private UnitLabel() {
    }

    /** The label of {@code unit}; empty for a plain number. */
    public static String of(Unit<?> unit) {
        String name = NAMES.get(unit);
        if (name != null) {
            return name;
        }
        return unit instanceof ProductUnit<?> product ? product(product) : unit.toString();
    }

    private static Map<Unit<?>, String> names() {
        Map<Unit<?>, String> names = new HashMap<>();
        names.put(m, "m");
        names.put(mm, "mm");
        names.put(cm, "cm");
        names.put(km, "km");
        names.put(in, "in");
        names.put(ft, "ft");
        names.put(yd, "yd");
        names.put(kg, "kg");
        names.put(t, "t");
        names.put(lb, "lb");
        names.put(s, "s");
        names.put(N, "N");
        names.put(kN, "kN");
        names.put(MN, "MN");
        names.put(lbf, "lbf");
        names.put(kip, "kip");
        names.put(Pa, "Pa");
        names.put(kPa, "kPa");
        names.put(MPa, "MPa");
        names.put(GPa, "GPa");
        names.put(psi, "psi");
        names.put(ksi, "ksi");
        names.put(psf, "psf");
        names.put(ksf, "ksf");
        names.put(plf, "plf");
        names.put(pcf, "pcf");
        names.put(rad, "rad");
        names.put(deg, "\u00b0");
        names.put(one, "");
        names.put(percent, "%");
        return Map.copyOf(names);
    }

    private static String product(ProductUnit<?> product) {
        List<String> above = new ArrayList<>();
        List<String> below = new ArrayList<>();
        for (int i = 0; i < product.getUnitCount(); i++) {
            Unit<?> factor = product.getUnit(i);
            int power = product.getUnitPow(i);
            String text = of(factor) + superscript(Math.abs(power));
            List<String> side = power > 0 ? above : below;
            if (isForce(factor)) {
                side.add(0, text);
            } else {
                side.add(text);
            }
        }
        String top = above.isEmpty() ? "1" : String.join("\u00b7", above);
        if (below.isEmpty()) {
            return top;
        }
        String bottom = String.join("\u00b7", below);
        return top + "/" + (below.size() == 1 ? bottom : "(" + bottom + ")");
    }

    private static boolean isForce(Unit<?> factor) {
        return factor.getDimension().equals(N.getDimension());
    }

    private static String superscript(int power) {
        if (power == 1) {
            return "";
        }
        StringBuilder text = new StringBuilder();
        for (char digit : Integer.toString(power).toCharArray()) {
            text.append(SUPERSCRIPTS.charAt(digit - '0'));
        }
        return text.toString();
    }
}
