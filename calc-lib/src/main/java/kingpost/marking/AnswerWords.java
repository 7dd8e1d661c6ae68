package kingpost.marking;

import static kingpost.units.StructuralUnits.MN;
import static kingpost.units.StructuralUnits.N;
import static kingpost.units.StructuralUnits.kN;
import static kingpost.units.StructuralUnits.kip;
import static kingpost.units.StructuralUnits.lbf;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import javax.measure.Unit;
import kingpost.marking.AnswerReader.NotRead;
import kingpost.truss.Direction;
import kingpost.units.Quantity;
import kingpost.units.UnitLabel;

/**
 * What stands round the number of an answer: a unit, a sense, or both.
 *
 * @param unit the unit said, or the truss's
 * @param sign of the sense said: 1 for tension, or along a reaction's direction; 0 when nothing was said
 */
record AnswerWords(Unit<?> unit, int sign) {

    private static final Set<String> TENSION = Set.of("t", "tens", "tension", "tensile", "(t)");
    private static final Set<String> COMPRESSION =
            Set.of("c", "comp", "compr", "compression", "compressive", "(c)");
    private static final Set<String> FILLERS = Set.of("in", "a", "of", "force", "is", "to", "the", "acting", "-");
    private static final Map<String, Direction> WAYS = ways();
    private static final Map<String, Unit<?>> UNITS = Map.ofEntries(Map.entry("n", N), Map.entry("newton", N),
            Map.entry("newtons", N), Map.entry("kn", kN), Map.entry("lbf", lbf), Map.entry("lb", lbf),
            Map.entry("lbs", lbf), Map.entry("pounds", lbf), Map.entry("kip", kip), Map.entry("kips", kip));

    static AnswerWords of(String text, Unit<?> forceUnit, Optional<Direction> along) throws NotRead {
        Unit<?> unit = null;
        int sign = 0;
        for (String token : text.replaceAll("[()\\[\\],;:]", " ").strip().split("\\s+")) {
            String word = token.toLowerCase(Locale.ROOT).replaceAll("\\.$", "");
            int sense = along.isPresent() ? way(word, along.get()) : sense(word);
            if (sense != 0) {
                sign = agree(sign, sense);
            } else if (unitOf(token, forceUnit) != null) {
                unit = onlyOne(unit, unitOf(token, forceUnit));
            } else if (!word.isEmpty() && !FILLERS.contains(word)) {
                throw notKnown(token, along.isPresent());
            }
        }
        return new AnswerWords(unit == null ? forceUnit : unit, sign);
    }

    /** Whether {@code text} says a sense, a way or a unit and nothing else, as behind a comma: "12 kN, tension". */
    static boolean isAll(String text) {
        String[] words = text.toLowerCase(Locale.ROOT).replaceAll("[()\\[\\]]", " ").strip().split("\\s+");
        return Arrays.stream(words).map(word -> word.replaceAll("\\.$", "")).allMatch(word -> sense(word) != 0
                || WAYS.containsKey(word) || FILLERS.contains(word) || UNITS.containsKey(word));
    }

    /** Units of {@code target} in one of the unit said. */
    double unitIn(Unit<?> target) {
        return Quantity.of(1, unit).in(target);
    }

    private static int sense(String word) {
        return TENSION.contains(word) ? 1 : COMPRESSION.contains(word) ? -1 : 0;
    }

    private static int way(String word, Direction along) {
        Direction way = WAYS.get(word);
        return way == null ? 0 : (int) Math.signum(Math.rint(1e6
                * (way.cosX() * along.cosX() + way.cosY() * along.cosY())));
    }

    private static int agree(int before, int now) throws NotRead {
        if (before != 0 && before != now) {
            throw new NotRead("it says two opposite senses; keep one of them");
        }
        return now;
    }

    private static Unit<?> onlyOne(Unit<?> before, Unit<?> now) throws NotRead {
        if (before != null && !before.equals(now)) {
            throw new NotRead("it has two units; keep one of them");
        }
        return now;
    }

    private static Unit<?> unitOf(String token, Unit<?> forceUnit) {
        if (token.equals("MN")) {
            return MN;
        }
        boolean customary = forceUnit.equals(lbf) || forceUnit.equals(kip);
        if (token.equalsIgnoreCase("k") && customary) {
            return kip;
        }
        return UNITS.get(token.toLowerCase(Locale.ROOT));
    }

    private static NotRead notKnown(String token, boolean reaction) {
        if (token.matches(".*\\d.*")) {
            return new NotRead("there is more than one number in it (\"" + token + "\"); give one force");
        }
        return new NotRead("\"" + token + "\" is no unit of force and no " + (reaction ? "direction" : "sense")
                + "; use N, kN, lbf or kip, and " + (reaction ? "up, down, left or right" : "T or C"));
    }

    private static Map<String, Direction> ways() {
        Map<String, Direction> ways = new HashMap<>();
        for (String up : new String[] {"up", "upward", "upwards", "\u2191"}) {
            ways.put(up, Direction.UP);
        }
        for (String down : new String[] {"down", "downward", "downwards", "\u2193"}) {
            ways.put(down, Direction.DOWN);
        }
        for (String left : new String[] {"left", "leftward", "leftwards", "\u2190"}) {
            ways.put(left, Direction.LEFT);
        }
        for (String right : new String[] {"right", "rightward", "rightwards", "\u2192"}) {
            ways.put(right, Direction.RIGHT);
        }
        return Map.copyOf(ways);
    }

    /** The truss's force unit as it is written. */
    static String label(Unit<?> forceUnit) {
        return UnitLabel.of(forceUnit);
    }
}
