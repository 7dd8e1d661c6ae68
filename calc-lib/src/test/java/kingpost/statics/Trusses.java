package kingpost.statics;

import java.util.function.Function;
import kingpost.truss.Direction;
import kingpost.truss.TrussBuilder;
import kingpost.truss.TrussModel;
import kingpost.units.StructuralUnits;

/** Small trusses for tests, in metres and kilonewtons. */
final class Trusses {

    private Trusses() {
    }

    static TrussBuilder<TrussModel> named(String name) {
        return new TrussBuilder<TrussModel>(name, Function.identity()).units(StructuralUnits.m, StructuralUnits.kN);
    }

    /** A (0, 0) pin, B (3, 0), C (6, 0) roller, D (3, 2.25) with 12 kN down. */
    static TrussModel canopy() {
        return named("Canopy").joint("A", 0, 0).joint("B", 3, 0).joint("C", 6, 0).joint("D", 3, 2.25)
                .members("AB BC AD BD CD").pin("A").roller("C").load("D", 12, Direction.DOWN).build();
    }

    /** Two square panels on four joints each way; the second panel has a diagonal only where asked. */
    static TrussBuilder<TrussModel> twoPanels(boolean secondDiagonal) {
        TrussBuilder<TrussModel> builder = named("Two panels")
                .joint("A", 0, 0).joint("B", 4, 0).joint("C", 8, 0)
                .joint("D", 0, 4).joint("E", 4, 4).joint("F", 8, 4)
                .members("AB BC DE EF AD BE CF AE").load("E", 10, Direction.DOWN);
        return secondDiagonal ? builder.members("CE") : builder;
    }
}
