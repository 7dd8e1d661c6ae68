package kingpost.marking;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiFunction;
import kingpost.marking.Reading.Force;
import kingpost.marking.Reading.Said;
import kingpost.marking.Slip.Kind;
import kingpost.marking.Slip.Place;

/**
 * Suppositions about the writing of a whole sheet: senses counted the other way round, or not stated at all; two answers
 * in each other's places; all answers in another unit.
 */
final class SenseOfSheet {

    private static final int ENOUGH = 3;

    private final Unknowns unknowns;
    private final double[] right;
    private final double truss;

    SenseOfSheet(Unknowns unknowns, double[] right, double truss) {
        this.unknowns = unknowns;
        this.right = right;
        this.truss = truss;
    }

    /** For each supposition that the sheet allows, what it would then state. */
    Map<Slip, Map<Integer, Force>> suppositions(Map<Integer, Force> forces) {
        Map<Slip, Map<Integer, Force>> suppositions = new LinkedHashMap<>();
        exchanged(forces, suppositions);
        if (members(forces) < ENOUGH) {
            return suppositions;
        }
        scaled(forces, suppositions);
        if (forces.entrySet().stream().noneMatch(e -> unknowns.isMember(e.getKey()) && hasSense(e.getValue()))) {
            suppositions.put(whole(Kind.SENSE_NOT_STATED, ""), turned(forces, true));
        } else if (forces.entrySet().stream().noneMatch(e -> unknowns.isMember(e.getKey())
                && !e.getValue().isZero() && e.getValue().said() == Said.WORD)) {
            suppositions.put(whole(Kind.SENSE_REVERSED, ""), turned(forces, false));
        }
        return suppositions;
    }

    private static Slip whole(Kind kind, String other) {
        return new Slip(kind, new Place.Throughout(), "", other);
    }

    private long members(Map<Integer, Force> forces) {
        return forces.entrySet().stream().filter(e -> unknowns.isMember(e.getKey()) && !e.getValue().isZero()).count();
    }

    private static boolean hasSense(Force force) {
        return !force.isZero() && force.said() != Said.NOTHING;
    }

    private Map<Integer, Force> turned(Map<Integer, Force> forces, boolean asRight) {
        return changed(forces, (unknown, force) -> {
            boolean turn = unknowns.isMember(unknown)
                    && (!asRight || Math.signum(force.value()) == -Math.signum(right[unknown]));
            return turn ? force.reversed() : force;
        });
    }

    private static Map<Integer, Force> changed(Map<Integer, Force> forces, BiFunction<Integer, Force, Force> change) {
        Map<Integer, Force> changed = new HashMap<>(forces);
        changed.replaceAll(change);
        return changed;
    }

    /** Members each of which has the right answer of the other, and not its own. */
    private void exchanged(Map<Integer, Force> forces, Map<Slip, Map<Integer, Force>> suppositions) {
        List<Integer> wrong = new ArrayList<>(forces.keySet().stream().sorted().filter(unknown -> unknowns.isMember(unknown)
                && !Figures.agree(forces.get(unknown), right[unknown], truss)).toList());
        for (int a : wrong) {
            for (int b : wrong) {
                if (a < b && Figures.agree(forces.get(a), right[b], truss) && Figures.agree(forces.get(b), right[a], truss)) {
                    Map<Integer, Force> changed = new HashMap<>(forces);
                    changed.put(a, forces.get(b));
                    changed.put(b, forces.get(a));
                    suppositions.put(new Slip(Kind.VALUES_EXCHANGED, new Place.Throughout(), unknowns.name(a),
                            unknowns.name(b)), changed);
                }
            }
        }
    }

    /** All answers as if a thousand times larger or smaller, where that makes most of them right. */
    private void scaled(Map<Integer, Force> forces, Map<Slip, Map<Integer, Force>> suppositions) {
        for (int power : new int[] {3, -3}) {
            double factor = Math.pow(10, -power);
            Map<Integer, Force> scaled = changed(forces, (unknown, force) -> force.times(factor));
            long fit = scaled.entrySet().stream().filter(each -> !each.getValue().isZero()
                    && Figures.agree(each.getValue(), right[each.getKey()], truss)).count();
            if (fit >= ENOUGH && 2 * fit > members(forces)) {
                suppositions.put(whole(Kind.POWER_OF_TEN, Integer.toString(power)), scaled);
            }
        }
    }
}
