package kingpost.statics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.Gson;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import kingpost.form.Form;
import kingpost.truss.Direction;
import kingpost.truss.Joint;
import kingpost.truss.TrussBuilder;
import kingpost.truss.TrussModel;
import kingpost.truss.TrussProblems;
import kingpost.units.StructuralUnits;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * 500 generated trusses, every ready-made form, space trusses and simple ones at random, against SciPy's sparse LU decomposition as an
 * independent solver. Runs where {@code /usr/bin/python3} has SciPy.
 */
@Tag("clients")
class IndependentSolverTest {

    private static final int COUNT = 500;
    private static final int OF_EACH_FORM = 4;
    private static final int IN_SPACE = 100;
    /** Of the largest force or load in the truss. */
    private static final double TOLERANCE = 1e-9;
    private static final Path SCRIPT = Path.of("src", "test", "python", "equilibrium.py").toAbsolutePath();

    @TempDir
    Path folder;

    @Test
    void agreesWithSciPyOnTrussesOfEveryForm() throws Exception {
        need(run("-c", "import numpy, scipy.sparse.linalg").isEmpty());
        List<TrussModel> trusses = trusses();
        assertEquals(COUNT, trusses.size());

        double[][] answers = answersOf(trusses);

        double worst = 0;
        for (int t = 0; t < trusses.size(); t++) {
            worst = Math.max(worst, compare(trusses.get(t), answers[t]));
        }
        System.out.println("Largest difference from SciPy over " + COUNT + " trusses: " + worst
                + " of the largest force or load");
    }

    private static List<TrussModel> trusses() {
        Stream<TrussModel> forms = Stream.of(Form.values()).flatMap(form -> IntStream.rangeClosed(2, 12)
                .filter(form::allows).boxed().flatMap(panels -> IntStream.range(0, OF_EACH_FORM)
                        .mapToObj(i -> loaded(form, panels, new Random(31L * panels + i)))));
        Stream<TrussModel> space = LongStream.iterate(1, seed -> seed + 1).mapToObj(SpaceTrusses::random)
                .flatMap(IndependentSolverTest::ifSound).limit(IN_SPACE);
        return Stream.concat(Stream.concat(forms, space), RandomTrusses.simple(COUNT, 2718)).limit(COUNT).toList();
    }

    /** The truss, unless chance has put a joint on a member or made a mechanism or nearly one. */
    private static Stream<TrussModel> ifSound(TrussBuilder<TrussModel> builder) {
        try {
            return Stream.of(builder.build()).filter(truss -> Determinacies.of(truss) instanceof Determinacy.Determinate d
                    && d.condition() < 1e4);
        } catch (TrussProblems unlucky) {
            return Stream.empty();
        }
    }

    /** Any span and rise, and at every joint a load in any direction. */
    private static TrussModel loaded(Form form, int panels, Random random) {
        double span = 5 + 60 * random.nextDouble();
        double rise = span * (0.08 + 0.3 * random.nextDouble());
        TrussBuilder<TrussModel> builder = form.of(span, rise, panels, Function.<TrussModel>identity())
                .units(StructuralUnits.m, StructuralUnits.kN)
                .named(form.title() + ", " + panels + " panels, span " + span);
        for (Joint joint : form.of(span, rise, panels, Function.<TrussModel>identity())
                .units(StructuralUnits.m, StructuralUnits.kN).build().joints()) {
            builder.load(joint.name(), 1 + 50 * random.nextDouble(), Direction.at(360 * random.nextDouble()));
        }
        return builder.build();
    }

    private double[][] answersOf(List<TrussModel> trusses) throws IOException, InterruptedException {
        Path given = folder.resolve("given.json");
        Path found = folder.resolve("found.json");
        Files.writeString(given, new Gson().toJson(trusses.stream().map(IndependentSolverTest::written).toList()));
        String failure = run(SCRIPT.toString(), given.toString(), found.toString());
        assertEquals("", failure);
        return new Gson().fromJson(Files.readString(found), double[][].class);
    }

    private static Map<String, Object> written(TrussModel truss) {
        List<String> names = truss.joints().stream().map(Joint::name).toList();
        boolean space = truss.joints().stream().anyMatch(j -> j.z().getValue() != 0);
        List<double[]> reactions = new ArrayList<>();
        truss.supports().forEach(s -> s.reactions().forEach(d -> reactions.add(row(space, names.indexOf(s.joint()),
                d.cosX(), d.cosY(), d.cosZ()))));
        return Map.of(
                "joints", truss.joints().stream().map(j -> point(space, j.x().in(StructuralUnits.m),
                        j.y().in(StructuralUnits.m), j.z().in(StructuralUnits.m))).toList(),
                "members", truss.members().stream().map(m -> List.of(names.indexOf(m.from()), names.indexOf(m.to())))
                        .toList(),
                "reactions", reactions,
                "loads", truss.loads().stream().map(l -> row(space, names.indexOf(l.joint()),
                        l.fx().in(StructuralUnits.N), l.fy().in(StructuralUnits.N), l.fz().in(StructuralUnits.N)))
                        .toList());
    }

    private static double[] point(boolean space, double x, double y, double z) {
        return space ? new double[] {x, y, z} : new double[] {x, y};
    }

    private static double[] row(boolean space, int joint, double x, double y, double z) {
        return space ? new double[] {joint, x, y, z} : new double[] {joint, x, y};
    }

    /** The largest difference, over the largest force or load. */
    private static double compare(TrussModel truss, double[] answers) {
        Solution solution = Solver.solve(truss);
        List<Double> ours = Stream.concat(solution.members().stream().map(Solution.MemberResult::force),
                solution.reactions().stream().map(Solution.ReactionResult::force)).toList();
        assertEquals(answers.length, ours.size(), truss.name());
        double scale = truss.loads().stream().mapToDouble(l -> l.magnitude().in(StructuralUnits.N)).max().orElse(0);
        for (double answer : answers) {
            scale = Math.max(scale, Math.abs(answer));
        }
        double worst = 0;
        for (int u = 0; u < answers.length; u++) {
            double difference = Math.abs(answers[u] - ours.get(u)) / scale;
            assertTrue(difference <= TOLERANCE, truss.name() + ", unknown " + u + ": " + ours.get(u) + " N here, "
                    + answers[u] + " N by SciPy");
            worst = Math.max(worst, difference);
        }
        return worst;
    }

    /** Skips the test, or fails it where clients are required, unless {@code there}. */
    private static void need(boolean there) {
        if (Boolean.getBoolean("kingpost.requireClients")) {
            assertTrue(there, "Python with SciPy is required here and is not installed");
        }
        Assumptions.assumeTrue(there, "Python with SciPy is not installed; this comparison is skipped");
    }

    /** What Python said when it failed; empty when it went well. */
    private String run(String... arguments) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(Files.isExecutable(Path.of("/usr/bin/python3"))
                ? "/usr/bin/python3" : "python3"));
        command.addAll(List.of(arguments));
        Path log = Files.createTempFile(folder, "python", ".log");
        try {
            Process process = new ProcessBuilder(command).redirectErrorStream(true)
                    .redirectOutput(log.toFile()).start();
            process.getOutputStream().close();
            boolean ended = process.waitFor(60, TimeUnit.SECONDS);
            if (!ended) {
                process.destroyForcibly().waitFor();
            }
            return ended && process.exitValue() == 0 ? "" : "Python failed: " + Files.readString(log);
        } catch (IOException absent) {
            return "no Python: " + absent.getMessage();
        }
    }
}
