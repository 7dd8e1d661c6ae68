package kingpost.marking;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.Map;
import kingpost.marking.Reading.Force;
import kingpost.marking.Reading.Said;
import kingpost.marking.Slip.Kind;

/** Suppositions about the senses of a whole sheet: counted the other way round, or not stated at all. */
final class SenseOfSheet {

    private static final int ENOUGH = 3;

    private final Unknowns unknowns;
    private final double[] right;

    SenseOfSheet(Unknowns unknowns, double[] right) {
        this.unknowns = unknowns;
        this.right = right;
    }

    /** For each supposition that the sheet allows, what it would then state. */
    Map<Kind, Map<Integer, Force>> suppositions(Map<Integer, Force> forces) {
        Map<Kind, Map<Integer, Force>> suppositions = new EnumMap<>(Kind.class);
        if (members(forces) < ENOUGH) {
            return suppositions;
        }
        if (forces.entrySet().stream().noneMatch(e -> unknowns.isMember(e.getKey()) && hasSense(e.getValue()))) {
            suppositions.put(Kind.SENSE_NOT_STATED, turned(forces, true));
        } else if (forces.entrySet().stream().noneMatch(e -> unknowns.isMember(e.getKey())
                && !e.getValue().isZero() && e.getValue().said() == Said.WORD)) {
            suppositions.put(Kind.SENSE_REVERSED, turned(forces, false));
        }
        return suppositions;
    }

    private long members(Map<Integer, Force> forces) {
        return forces.entrySet().stream().filter(e -> unknowns.isMember(e.getKey()) && !e.getValue().isZero()).count();
    }

    private static boolean hasSense(Force force) {
        return !force.isZero() && force.said() != Said.NOTHING;
    }

    private Map<Integer, Force> turned(Map<Integer, Force> forces, boolean asRight) {
        Map<Integer, Force> turned = new HashMap<>(forces);
        turned.replaceAll((unknown, force) -> {
            boolean turn = unknowns.isMember(unknown)
                    && (!asRight || Math.signum(force.value()) == -Math.signum(right[unknown]));
            return turn ? force.reversed() : force;
        });
        return turned;
    }
}
