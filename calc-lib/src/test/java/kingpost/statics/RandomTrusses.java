package kingpost.statics;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import kingpost.truss.Direction;
import kingpost.truss.TrussBuilder;
import kingpost.truss.TrussModel;
import kingpost.truss.TrussProblems;
import kingpost.units.StructuralUnits;

/** Seeded simple trusses: a triangle, then joint after joint hung on two others; whole coordinates and loads. */
public final class RandomTrusses {

    private RandomTrusses() {
    }

    /** So many determinate trusses of up to 14 joints, the same ones every time. */
    public static Stream<TrussModel> simple(int count, long seed) {
        return IntStream.iterate(0, i -> i + 1)
                .mapToObj(i -> attempt(new Random(seed + i), "truss " + (seed + i)))
                .flatMap(Optional::stream)
                .filter(t -> Determinacies.of(t) instanceof Determinacy.Determinate)
                .limit(count);
    }

    private static Optional<TrussModel> attempt(Random random, String name) {
        TrussBuilder<TrussModel> builder = new TrussBuilder<>(name, Function.identity());
        builder.units(StructuralUnits.m, StructuralUnits.kN);
        int joints = 3 + random.nextInt(12);
        List<int[]> places = new ArrayList<>();
        for (int j = 0; j < joints; j++) {
            places.add(new int[] {random.nextInt(13), random.nextInt(9)});
            builder.joint("J" + j, places.get(j)[0], places.get(j)[1]);
        }
        builder.member("J0", "J1").member("J1", "J2").member("J0", "J2");
        for (int j = 3; j < joints; j++) {
            int a = random.nextInt(j);
            int b = (a + 1 + random.nextInt(j - 1)) % j;
            builder.member("J" + j, "J" + a).member("J" + j, "J" + b);
        }
        int held = random.nextInt(joints);
        builder.pin("J" + held);
        builder.roller("J" + (held + 1 + random.nextInt(joints - 1)) % joints, roller(random));
        for (int k = 0; k <= random.nextInt(4); k++) {
            load(builder, random, joints);
        }
        return built(builder);
    }

    private static Direction roller(Random random) {
        return switch (random.nextInt(4)) {
            case 0 -> Direction.RIGHT;
            case 1 -> Direction.slope(1 + random.nextInt(4), 1 + random.nextInt(4));
            default -> Direction.UP;
        };
    }

    private static void load(TrussBuilder<?> builder, Random random, int joints) {
        String joint = "J" + random.nextInt(joints);
        if (random.nextBoolean()) {
            builder.load(joint, 1 + random.nextInt(40), random.nextBoolean() ? Direction.DOWN : Direction.LEFT);
        } else {
            builder.load(joint, random.nextInt(41) - 20, 1 + random.nextInt(20));
        }
    }

    /** Joints at one place, or on a member, or members in line: such a truss is left out. */
    private static Optional<TrussModel> built(TrussBuilder<TrussModel> builder) {
        try {
            return Optional.of(builder.build());
        } catch (TrussProblems unlucky) {
            return Optional.empty();
        }
    }
}
