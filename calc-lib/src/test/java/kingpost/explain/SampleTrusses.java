package kingpost.explain;

import static kingpost.units.StructuralUnits.ft;
import static kingpost.units.StructuralUnits.kN;
import static kingpost.units.StructuralUnits.kip;
import static kingpost.units.StructuralUnits.m;

import java.util.function.Function;

import kingpost.truss.Direction;
import kingpost.truss.TrussBuilder;
import kingpost.truss.TrussModel;

/** Trusses of our own for the texts: each shows something that another does not. */
final class SampleTrusses {

    private SampleTrusses() {
    }

    static TrussBuilder<TrussModel> named(String name) {
        return new TrussBuilder<>(name, Function.identity());
    }

    /** Reactions first, a 3-4-5 slope, a load at the apex over a hanger that carries nothing. */
    static TrussModel canopy() {
        return named("Loading-dock canopy").units(m, kN)
                .joint("A", 0, 0).joint("B", 3, 0).joint("C", 6, 0).joint("D", 3, 2.25)
                .members("AB BC AD BD CD").pin("A").roller("C").load("D", 12, Direction.DOWN).build();
    }

    /** A cantilever: no reactions needed, 45-degree members. */
    static TrussModel bracket() {
        return named("Sign bracket").units(m, kN)
                .joint("A", 0, 2).joint("B", 2, 2).joint("C", 4, 0).joint("D", 2, 0).joint("E", 0, 0)
                .members("AB BC CD DE BE BD").pin("A").pin("E")
                .load("C", 8, Direction.DOWN).load("D", 5, Direction.DOWN).build();
    }

    /** US customary, longer names, several panels, zero-force members, an inclined load. */
    static TrussModel footbridge() {
        return named("Creek footbridge").units(ft, kip)
                .joint("L0", 0, 0).joint("L1", 12, 0).joint("L2", 24, 0).joint("L3", 36, 0).joint("L4", 48, 0)
                .joint("U1", 12, 9).joint("U2", 24, 9).joint("U3", 36, 9)
                .members("L0-L1 L1-L2 L2-L3 L3-L4 L0-U1 U1-U2 U2-U3 U3-L4 L1-U1 L2-U2 L3-U3 U1-L2 L2-U3")
                .pin("L0").roller("L4").load("L1", 4, Direction.DOWN).load("L2", 6, Direction.DOWN)
                .load("U3", 1.5, Direction.slope(-3, -4)).build();
    }

    /** Irregular slopes, a roller on an incline, several loads at a joint. */
    static TrussModel roof() {
        return named("Workshop roof").units(m, kN)
                .joint("A", 0, 0).joint("B", 3, 1.7).joint("C", 6, 3.4).joint("D", 9, 1.7).joint("E", 12, 0)
                .joint("F", 4, 0).joint("G", 8, 0)
                .members("AB BC CD DE AF FG GE BF CF CG DG").pin("A").roller("E", 100)
                .load("B", 4.5, Direction.at(300)).load("C", 6, Direction.DOWN).load("C", 2, Direction.RIGHT)
                .load("D", 4.5, Direction.DOWN).build();
    }
}
