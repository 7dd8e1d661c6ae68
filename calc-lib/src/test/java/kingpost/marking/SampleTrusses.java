package kingpost.marking;

import static kingpost.units.StructuralUnits.kN;
import static kingpost.units.StructuralUnits.m;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.Function;
import kingpost.statics.Solution;
import kingpost.statics.Solver;
import kingpost.truss.Direction;
import kingpost.truss.TrussBuilder;
import kingpost.truss.TrussModel;

/** Trusses to mark answers for. */
final class SampleTrusses {

    private SampleTrusses() {
    }

    static TrussBuilder<TrussModel> named(String name) {
        return new TrussBuilder<TrussModel>(name, Function.identity()).units(m, kN);
    }

    /** Six joints on 3-4-5 slopes; loads down and to the right. */
    static Solution footbridge() {
        return Solver.solve(named("Footbridge")
                .joint("A", 0, 0).joint("B", 4, 0).joint("C", 8, 0).joint("D", 12, 0).joint("E", 4, 3).joint("F", 8, 3)
                .members("AB BC CD AE EF FD BE CE CF").pin("A").roller("D")
                .load("B", 12, Direction.DOWN).load("F", 9, Direction.DOWN).load("E", 4, Direction.RIGHT).build());
    }

    /** A parallel-chord or pitched truss on a pin and a roller with random sizes and loads. */
    static Solution random(Random random) {
        int panels = 3 + random.nextInt(3);
        double width = 1.5 + random.nextInt(10) * 0.35;
        double height = 1.2 + random.nextInt(10) * 0.3;
        boolean pitched = random.nextInt(3) == 0;
        TrussBuilder<TrussModel> builder = named("Random");
        List<String> free = new ArrayList<>();
        for (int i = 0; i <= panels; i++) {
            builder.joint("L" + i, i * width, 0);
            free.add("L" + i);
        }
        StringBuilder members = new StringBuilder();
        for (int i = 0; i < panels; i++) {
            members.append("L" + i + "-L" + (i + 1) + " ");
        }
        for (int i = 1; i < panels; i++) {
            double rise = pitched ? height * (1 + 0.4 * Math.min(i, panels - i)) : height;
            builder.joint("U" + i, i * width, rise);
            free.add("U" + i);
            members.append("L" + i + "-U" + i + " ");
            if (i > 1) {
                members.append("U" + (i - 1) + "-U" + i + " ");
                members.append(random.nextBoolean() ? "L" + (i - 1) + "-U" + i + " " : "U" + (i - 1) + "-L" + i + " ");
            }
        }
        members.append("L0-U1 U" + (panels - 1) + "-L" + panels);
        builder.members(members.toString()).pin("L0").roller("L" + panels);
        loads(builder, free, random);
        return Solver.solve(builder.build());
    }

    private static void loads(TrussBuilder<TrussModel> builder, List<String> free, Random random) {
        int count = 2 + random.nextInt(3);
        for (int i = 0; i < count; i++) {
            String joint = free.remove(random.nextInt(free.size()));
            double size = 5 + random.nextInt(90) * 0.5;
            Direction way = random.nextInt(4) > 0 ? Direction.DOWN
                    : new Direction(3, -4, 0, "3 across, 4 down", true);
            builder.load(joint, size, way);
        }
    }
}
