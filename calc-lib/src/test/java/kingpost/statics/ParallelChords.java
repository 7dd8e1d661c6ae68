package kingpost.statics;

import kingpost.truss.Direction;
import kingpost.truss.TrussBuilder;
import kingpost.truss.TrussModel;

/** Girders with parallel chords: bottom joints L0 to Ln, top joints U1 to U(n-1). */
final class ParallelChords {

    private ParallelChords() {
    }

    /** Diagonals fall towards mid-span. */
    static TrussModel pratt(int panels, double panel, double height, double load) {
        TrussBuilder<TrussModel> builder = frame(panels, panel, height, load);
        for (int i = 2; i < panels; i++) {
            boolean left = i <= panels / 2;
            builder.member(left ? "U" + (i - 1) : "L" + (i - 1), left ? "L" + i : "U" + i);
        }
        return builder.build();
    }

    /** Diagonals rise towards mid-span. */
    static TrussModel howe(int panels, double panel, double height, double load) {
        TrussBuilder<TrussModel> builder = frame(panels, panel, height, load);
        for (int i = 2; i < panels; i++) {
            boolean left = i <= panels / 2;
            builder.member(left ? "L" + (i - 1) : "U" + (i - 1), left ? "U" + i : "L" + i);
        }
        return builder.build();
    }

    private static TrussBuilder<TrussModel> frame(int panels, double panel, double height, double load) {
        TrussBuilder<TrussModel> builder = Trusses.named("Girder of " + panels + " panels");
        for (int i = 0; i <= panels; i++) {
            builder.joint("L" + i, panel * i, 0);
            if (i > 0 && i < panels) {
                builder.joint("U" + i, panel * i, height).load("L" + i, load, Direction.DOWN);
            }
        }
        for (int i = 1; i <= panels; i++) {
            builder.member("L" + (i - 1), "L" + i);
            if (i < panels) {
                builder.member("U" + i, "L" + i);
            }
            if (i > 1 && i < panels) {
                builder.member("U" + (i - 1), "U" + i);
            }
        }
        return builder.member("L0", "U1").member("U" + (panels - 1), "L" + panels).pin("L0").roller("L" + panels);
    }
}
