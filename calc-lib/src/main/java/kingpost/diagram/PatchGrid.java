package kingpost.diagram;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Patches sorted into square cells, so that those near a place are found without looking at all. */
final class PatchGrid {

    private static final double CELL = 40;

    private final Map<Long, List<Patch>> cells = new HashMap<>();

    PatchGrid(Collection<Patch> patches) {
        for (Patch patch : patches) {
            for (long cell : cellsOf(patch, 0)) {
                cells.computeIfAbsent(cell, c -> new ArrayList<>()).add(patch);
            }
        }
    }

    /** Patches whose box comes within {@code distance} px of the box of {@code patch}, each once. */
    Set<Patch> near(Patch patch, double distance) {
        Set<Patch> near = new LinkedHashSet<>();
        for (long cell : cellsOf(patch, distance)) {
            for (Patch other : cells.getOrDefault(cell, List.of())) {
                if (patch.isWithin(other, distance)) {
                    near.add(other);
                }
            }
        }
        return near;
    }

    private static List<Long> cellsOf(Patch patch, double distance) {
        List<Long> cells = new ArrayList<>();
        long right = cell(patch.right() + distance);
        long bottom = cell(patch.bottom() + distance);
        for (long x = cell(patch.left() - distance); x <= right; x++) {
            for (long y = cell(patch.top() - distance); y <= bottom; y++) {
                cells.add((x << 32) ^ (y & 0xffffffffL));
            }
        }
        return cells;
    }

    private static long cell(double coordinate) {
        return (long) Math.floor(coordinate / CELL);
    }
}
