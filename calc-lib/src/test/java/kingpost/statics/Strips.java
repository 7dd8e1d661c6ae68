package kingpost.statics;

import kingpost.truss.Direction;
import kingpost.truss.TrussBuilder;
import kingpost.truss.TrussModel;

/** Long trusses of one bay after another, by the number of their members. */
final class Strips {

    private Strips() {
    }

    /**
     * A row of equilateral triangles on two supports, loaded at every bottom joint inside the span.
     *
     * @param members at least this many less three; always odd
     */
    static TrussModel warren(int members) {
        int bays = (members - 3) / 4;
        TrussBuilder<TrussModel> builder = Trusses.named("Warren strip");
        for (int i = 0; i <= bays; i++) {
            builder.joint("L" + i, 2 * i, 0).joint("U" + i, 2 * i + 1, 1.5);
        }
        builder.joint("L" + (bays + 1), 2 * bays + 2, 0);
        for (int i = 0; i <= bays; i++) {
            builder.member("L" + i, "L" + (i + 1)).member("L" + i, "U" + i).member("U" + i, "L" + (i + 1));
            if (i < bays) {
                builder.member("U" + i, "U" + (i + 1)).load("L" + (i + 1), 1, Direction.DOWN);
            }
        }
        return builder.pin("L0").roller("L" + (bays + 1)).build();
    }

    /** A girder with posts and with diagonals that fall towards mid-span, on two supports. */
    static TrussModel pratt(int members) {
        return ParallelChords.pratt((members + 3) / 4, 3, 4, 1);
    }

    /** A mast: square bays, one above the other on a pin and a roller, a diagonal in each, pushed at every level. */
    static TrussModel mast(int members) {
        int bays = members / 4;
        TrussBuilder<TrussModel> builder = Trusses.named("Mast").joint("A0", 0, 0).joint("B0", 2, 0).member("A0", "B0");
        for (int i = 1; i <= bays; i++) {
            builder.joint("A" + i, 0, 2 * i).joint("B" + i, 2, 2 * i).member("A" + i, "B" + i)
                    .member("A" + (i - 1), "A" + i).member("B" + (i - 1), "B" + i).member("A" + (i - 1), "B" + i)
                    .load("A" + i, 0.001, Direction.RIGHT);
        }
        return builder.pin("A0").roller("B0").build();
    }
}
