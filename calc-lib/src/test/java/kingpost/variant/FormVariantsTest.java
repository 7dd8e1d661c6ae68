package kingpost.variant;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.management.ManagementFactory;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import kingpost.csv.CsvTable;
import kingpost.form.Form;
import kingpost.form.FormTrusses;
import kingpost.statics.Solver;
import kingpost.truss.TrussModel;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Variants of every ready-made form. {@code -Dvariants=200} makes a long campaign of it, {@code -Dshow=true} tells
 * how many are clean and how long one takes.
 */
class FormVariantsTest {

    private static final int COUNT = Integer.getInteger("variants", 2);

    static Stream<TrussModel> forms() {
        return Arrays.stream(Form.values()).map(form -> FormTrusses.loaded(form,
                IntStream.of(6, 4, 3).filter(form::allows).findFirst().orElseThrow()));
    }

    /** The keys as written, against all joint equations at once by plain elimination. */
    @ParameterizedTest
    @MethodSource("forms")
    void keysAreRightNoTwoAreAlikeAndTheDifficultyIsKept(TrussModel truss) {
        long start = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
        VariantSet set = VariantSet.of(truss, COUNT, 8);
        double milliseconds = (ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - start) / 1e6 / COUNT;
        CsvTable keys = CsvTable.read("Keys", set.keys().write());
        Difficulty own = Difficulty.of(Solver.solve(truss));
        Set<List<String>> met = new HashSet<>();
        for (Variant variant : set.variants()) {
            double[] forces = DenseForces.of(variant.truss());
            double largest = Arrays.stream(forces).map(Math::abs).max().orElseThrow();
            List<String> row = keys.rows().get(variant.number() - 1).cells();
            for (int i = 0; i < forces.length; i++) {
                assertEquals(forces[i], Double.parseDouble(row.get(i + 1)), 1e-5 * largest, variant.truss().name());
            }
            assertTrue(met.add(row.subList(1, forces.length + 1)), variant.truss().name());
            assertEquals(own, Difficulty.of(variant.solution()), variant.truss().name());
        }
        if (Boolean.getBoolean("show")) {
            long clean = set.variants().stream().filter(Variant::clean).count();
            System.err.printf("%-36s %d variants, %d clean, %.1f ms of processor each%n", truss.name(), COUNT, clean, milliseconds);
        }
    }
}
