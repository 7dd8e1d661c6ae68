package kingpost.units;

import static kingpost.units.StructuralUnits.*;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Collectors;
import javax.measure.Dimension;
import javax.measure.Unit;

/** What kind of quantity a unit measures, in an engineer's words. */
final class DimensionName {

    private static final Map<Dimension, String> WORDS = words();

    private DimensionName() {
    }

    /** "force", "length", "stress or pressure" and so on; for a rare kind its base dimensions. */
    static String of(Unit<?> unit) {
        if (isAngle(unit)) {
            return "angle";
        }
        String word = WORDS.get(unit.getDimension());
        return word != null ? word : fromBase(unit.getDimension());
    }

    /** An angle and a plain number have the same dimension, but adding one to the other is a slip. */
    static boolean isAngle(Unit<?> unit) {
        return unit.getSystemUnit().equals(rad);
    }

    private static Map<Dimension, String> words() {
        Map<Dimension, String> words = new LinkedHashMap<>();
        words.put(one.getDimension(), "plain number");
        words.put(m.getDimension(), "length");
        words.put(m2.getDimension(), "area");
        words.put(m3.getDimension(), "volume or section modulus");
        words.put(mm4.getDimension(), "second moment of area");
        words.put(N.getDimension(), "force");
        words.put(Pa.getDimension(), "stress or pressure");
        words.put(N_per_m.getDimension(), "force per length");
        words.put(Nm.getDimension(), "moment");
        words.put(N.multiply(m2).getDimension(), "force times area");
        words.put(kN_per_m3.getDimension(), "force per volume");
        words.put(m.divide(N).getDimension(), "length per force");
        words.put(kg.getDimension(), "mass");
        words.put(kg.divide(m).getDimension(), "mass per length");
        words.put(kg.divide(m2).getDimension(), "mass per area");
        words.put(kg_per_m3.getDimension(), "density");
        words.put(sec.getDimension(), "time");
        words.put(one.divide(sec).getDimension(), "frequency");
        words.put(m.divide(sec).getDimension(), "velocity");
        words.put(m.divide(sec.pow(2)).getDimension(), "acceleration");
        words.put(one.divide(m).getDimension(), "curvature");
        return Map.copyOf(words);
    }

    private static final Map<String, String> BASE = Map.of("[L]", "length", "[M]", "mass", "[T]", "time",
            "[\u0398]", "temperature", "[I]", "electric current", "[N]", "amount of substance",
            "[J]", "luminous intensity");

    private static String fromBase(Dimension dimension) {
        Map<? extends Dimension, Integer> base = dimension.getBaseDimensions();
        if (base == null) {
            return BASE.getOrDefault(dimension.toString(), dimension.toString());
        }
        return base.entrySet().stream()
                .map(e -> BASE.getOrDefault(e.getKey().toString(), e.getKey().toString())
                        + (e.getValue() == 1 ? "" : "^" + e.getValue()))
                .sorted()
                .collect(Collectors.joining(" \u00b7 "));
    }
}
