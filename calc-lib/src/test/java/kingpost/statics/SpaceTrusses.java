package kingpost.statics;

import java.util.Random;
import kingpost.truss.Direction;
import kingpost.truss.TrussBuilder;
import kingpost.truss.TrussModel;

/** Space trusses for tests, in metres and kilonewtons; y is up. */
public final class SpaceTrusses {

    private SpaceTrusses() {
    }

    /** A tripod of unequal legs, loaded at its top by a weight and by wind. */
    public static TrussModel tripod() {
        return Trusses.named("Signal tripod").joint("A", 0, 0, 2).joint("B", -2, 0, -1).joint("C", 2, 0, -1)
                .joint("T", 0, 4, 0).members("AT BT CT").ball("A").ball("B").ball("C")
                .load("T", 12, Direction.DOWN).load("T", 3, Direction.RIGHT).build();
    }

    /** A mast of two triangular storeys and a top, its storeys braced one way round, on three balls. */
    public static TrussModel mast() {
        return Trusses.named("Lantern mast").joint("A", 0, 0, 0).joint("B", 3, 0, 0).joint("C", 1, 0, 3)
                .joint("D", 0.5, 4, 0.5).joint("E", 2.5, 4, 0.5).joint("F", 1, 4, 2).joint("G", 1.5, 7, 1)
                .members("AD BE CF AE BF CD DE EF FD DG EG FG").ball("A").ball("B").ball("C")
                .load("G", 2, -9, 1).load("E", 1.5, Direction.slope(-1, 0, 2)).build();
    }

    /** A boom of tetrahedra, each joint hung on the three before it, held at both ends by six reactions in all. */
    public static TrussModel boom() {
        TrussBuilder<TrussModel> builder = Trusses.named("Conveyor boom");
        for (int k = 0; k < 8; k++) {
            builder.joint("J" + k, 1.5 * k, k % 3 == 1 ? 2 : 0, k % 3 == 2 ? 2 : 0);
            for (int back = 1; back <= Math.min(3, k); back++) {
                builder.member("J" + (k - back), "J" + k);
            }
        }
        return builder.ball("J0").link("J2", 0, 1, 0).link("J1", 0, 0, 1).roller("J7", 0, 1, 0)
                .load("J3", 0, -6, 0).load("J4", 0, -8, 2).load("J6", 1, -4, 0).build();
    }

    /** A simple space truss: a tetrahedron, then joint after joint hung on three others, held at three joints. */
    static TrussBuilder<TrussModel> random(long seed) {
        Random random = new Random(seed);
        int joints = 5 + random.nextInt(6);
        TrussBuilder<TrussModel> builder = Trusses.named("space truss " + seed);
        for (int j = 0; j < joints; j++) {
            builder.joint("P" + j, random.nextInt(11), random.nextInt(9), random.nextInt(9) + (j == 0 ? 1 : 0));
            int first = j <= 3 ? 0 : random.nextInt(j - 2);
            for (int k = first; k < first + Math.min(j, 3); k++) {
                builder.member("P" + k, "P" + j);
            }
        }
        builder.ball("P0").link("P1", 0, 1, 0).link("P1", 1, 0, 3).link("P2", -1, 2, 1);
        for (int k = 0; k < 3; k++) {
            builder.load("P" + random.nextInt(joints), random.nextInt(21) - 10, random.nextInt(21) - 10,
                    1 + random.nextInt(9));
        }
        return builder;
    }
}
