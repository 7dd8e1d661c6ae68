package kingpost.statics;

import java.util.Arrays;
import java.util.Locale;
import java.util.function.IntFunction;
import java.util.function.Supplier;
import kingpost.truss.TrussModel;

/**
 * Measures how the time of building and solving grows with the number of members; run by hand, it is no test.
 * Prints the least of several runs for 1,000, 10,000 and 100,000 members, and the ratio of the last two.
 */
final class ScaleByHand {

    private static final int[] SIZES = {1_000, 10_000, 100_000};

    private ScaleByHand() {
    }

    public static void main(String[] args) {
        int runs = args.length > 0 ? Integer.parseInt(args[0]) : 5;
        measure("Warren", Strips::warren, runs);
        measure("Pratt", Strips::pratt, runs);
        measure("mast", Strips::mast, runs);
    }

    private static void measure(String form, IntFunction<TrussModel> strip, int runs) {
        Solver.solve(strip.apply(2_000));
        double[] build = new double[SIZES.length];
        double[] solve = new double[SIZES.length];
        for (int i = 0; i < SIZES.length; i++) {
            int size = SIZES[i];
            TrussModel[] truss = new TrussModel[1];
            Solution[] solution = new Solution[1];
            build[i] = least(runs, () -> truss[0] = strip.apply(size));
            solve[i] = least(runs, () -> solution[0] = Solver.solve(truss[0]));
            Checks checks = solution[0].checks();
            System.out.printf(Locale.ROOT, "%-8s %,8d members: build %7.3f s, solve %7.3f s; worst %.1e, condition %.1e%n",
                    form, truss[0].members().size(), build[i], solve[i], checks.worst(), checks.condition());
        }
        int last = SIZES.length - 1;
        System.out.printf(Locale.ROOT, "%-8s ten times the members: build %.1f times, solve %.1f times, both %.1f times%n", form,
                build[last] / build[last - 1], solve[last] / solve[last - 1],
                (build[last] + solve[last]) / (build[last - 1] + solve[last - 1]));
    }

    private static double least(int runs, Supplier<?> work) {
        double[] seconds = new double[runs];
        for (int i = 0; i < runs; i++) {
            long start = System.nanoTime();
            work.get();
            seconds[i] = (System.nanoTime() - start) * 1e-9;
        }
        return Arrays.stream(seconds).min().orElseThrow();
    }
}
