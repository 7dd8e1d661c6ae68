package kingpost.kernel.bench;

import java.lang.management.ManagementFactory;
import java.lang.management.MemoryPoolMXBean;
import java.lang.management.MemoryType;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kingpost.kernel.display.MimeBundle;
import kingpost.kernel.evaluation.CellOutput;
import kingpost.kernel.evaluation.CellRequest;
import kingpost.kernel.evaluation.JShellEvaluator;
import kingpost.kernel.evaluation.Outcome;

/**
 * One session of many cells: what a cell costs early and late, and what both VMs keep. By hand: the first argument is
 * the number of cells, 10,000 unless given; the second {@code values} runs {@code 1 + n} alone instead of the mixture.
 */
public final class LongSession {

    /** What a person writes again and again; {@code %1$d} is the cell's number. */
    private static final List<String> MIXTURE = List.of(
            "1 + %1$d",
            "System.out.println(\"cell %1$d\");",
            "var height = 3.5 + %1$d;",
            "int area(int width) { return width * %1$d; }",
            "area(%1$d) + height",
            "height = 2.0 * %1$d",
            "IntStream.range(0, 10).map(i -> i + %1$d).sum()",
            "for (int i = 0; i < 3; i++) { height += i; }",
            "mistake + %1$d",
            "Objects.requireNonNull(null, \"cell %1$d\");");

    private static final String MEMORY_OF_CALC_VM = """
            System.gc(); String.valueOf(List.of(Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory(),
                java.lang.management.ManagementFactory.getMemoryPoolMXBeans().stream()
                    .filter(p -> p.getType() == java.lang.management.MemoryType.NON_HEAP)
                    .mapToLong(p -> p.getUsage().getUsed()).sum(),
                (long) java.lang.management.ManagementFactory.getClassLoadingMXBean().getLoadedClassCount(),
                ProcessHandle.current().pid()))
            """;

    private LongSession() {
    }

    public static void main(String[] arguments) throws Exception {
        int cells = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 10_000;
        List<String> codes = arguments.length > 1 ? MIXTURE.subList(0, 1) : MIXTURE;
        long[] nanos = new long[cells + 1];
        try (JShellEvaluator evaluator = JShellEvaluator.start()) {
            evaluator.run(CellRequest.of("double height = 1;"), Quiet.INSTANCE);
            for (int cell = 1; cell <= cells; cell++) {
                String code = codes.get(cell % codes.size()).formatted(cell);
                long start = System.nanoTime();
                evaluator.run(CellRequest.of(code), Quiet.INSTANCE);
                nanos[cell] = System.nanoTime() - start;
                if (cell == 500 || cell % 1000 == 0) {
                    report(evaluator, cell, nanos);
                }
            }
        }
        System.out.printf("first 100 after the first 100: %.2f ms, last 100: %.2f ms%n", median(nanos, 101, 200),
                median(nanos, cells - 99, cells));
    }

    private static void report(JShellEvaluator evaluator, int cell, long[] nanos) throws Exception {
        System.gc();
        long heap = Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory();
        long other = ManagementFactory.getMemoryPoolMXBeans().stream().filter(p -> p.getType() == MemoryType.NON_HEAP)
                .mapToLong((MemoryPoolMXBean p) -> p.getUsage().getUsed()).sum();
        var outcome = (Outcome.Completed) evaluator.run(CellRequest.of(MEMORY_OF_CALC_VM), Quiet.INSTANCE);
        String[] calc = ((String) outcome.result().orElseThrow().data().get(MimeBundle.PLAIN)).replaceAll("[\\[\\] ]", "")
                .split(",");
        System.out.printf("cell %6d: median of 100 %6.2f ms; kernel VM heap %6.1f MB, other %5.1f MB, resident %4d MB;"
                + " calc VM heap %5.1f MB, other %5.1f MB, resident %4d MB, %s classes%n", cell,
                median(nanos, cell - 99, cell), heap / 1e6, other / 1e6, resident(ProcessHandle.current().pid()),
                Long.parseLong(calc[0]) / 1e6, Long.parseLong(calc[1]) / 1e6, resident(Long.parseLong(calc[3])), calc[2]);
    }

    private static double median(long[] nanos, int from, int to) {
        long[] window = Arrays.copyOfRange(nanos, from, to + 1);
        Arrays.sort(window);
        return window[window.length / 2] / 1e6;
    }

    /** Resident memory in MB, where the system tells it; else 0. */
    private static long resident(long pid) throws Exception {
        Path status = Path.of("/proc/" + pid + "/status");
        return !Files.exists(status) ? 0 : Files.readAllLines(status).stream().filter(line -> line.startsWith("VmRSS:"))
                .mapToLong(line -> Long.parseLong(line.replaceAll("\\D", "")) / 1000).findFirst().orElse(0);
    }

    private enum Quiet implements CellOutput {
        INSTANCE;

        @Override
        public void stream(String name, String text) { }

        @Override
        public void display(MimeBundle bundle, Optional<String> displayId) { }

        @Override
        public void update(MimeBundle bundle, String displayId) { }

        @Override
        public void clear(boolean wait) { }

        @Override
        public Optional<String> input(String prompt, boolean password) {
            return Optional.empty();
        }

        @Override
        public void comm(String type, Map<String, Object> content, Map<String, Object> metadata, List<byte[]> buffers) { }
    }
}
