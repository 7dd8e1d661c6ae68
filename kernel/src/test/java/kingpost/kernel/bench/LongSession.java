package kingpost.kernel.bench;

import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import kingpost.kernel.client.KernelUnderTest;
import kingpost.kernel.client.Received;
import kingpost.kernel.client.SocketClient;
import kingpost.kernel.client.SocketClient.On;
import kingpost.kernel.evaluation.CalcOptions;
import kingpost.kernel.evaluation.JShellEvaluator;

/**
 * One session of many cells at real sockets, with a real calc VM: what a cell costs early and late, and what both VMs
 * keep. The kernel VM is the one in which this runs. By hand: the argument is the number of cells, 10,000 unless given.
 */
public final class LongSession {

    /** A cell costs what it will cost once it has been compiled a few times; what is compared begins here. */
    private static final int WARM = 100;
    private static final int WINDOW = 100;
    private static final int STEP = 250;

    /** A cell's source and a piece of what it is told; {@code %1$d} is its number, {@code %2$d} one of forty. */
    private record Kind(String source, String told) { }

    /** What a person writes again and again. */
    private static final List<Kind> MIXTURE = List.of(
            new Kind("1000000 + %1$d", "10%1$05d"),
            new Kind("System.out.println(\"cell %1$d\");", "cell %1$d"),
            new Kind("var height = 3.5 + %1$d;", "ok"),
            new Kind("int area(int width) { return width * %1$d; }", "ok"),
            new Kind("area(2) == 2 * (%1$d - 1) && height == 3.5 + %1$d - 2", "true"),
            new Kind("height = 2.0 * %1$d", "ok"),
            new Kind("var canopy = Truss.named(\"Canopy %1$d\").units(m, kN).joint(\"A\", 0, 0).joint(\"B\", 3, 0)\n"
                    + "    .joint(\"C\", 6, 0).joint(\"D\", 3, 2.25).members(\"AB BC AD BD CD\")\n"
                    + "    .pin(\"A\").roller(\"C\").load(\"D\", %2$d, DOWN).build();", "ok"),
            new Kind("canopy", "image/svg+xml"),
            new Kind("canopy.solve()", "Canopy"),
            new Kind("var inAB = canopy.solve().force(\"AB\");", "ok"),
            new Kind("inAB.divide(MPa(165)).to(mm2).getValue() > 0", "true"),
            new Kind("IntStream.range(0, 10).map(i -> i + %1$d).sum() - 10 * %1$d", "45"),
            new Kind("for (int i = 0; i < 3; i++) { height += i; }", "ok"),
            new Kind("mistake + %1$d", "mistake"),
            new Kind("Objects.requireNonNull(null, \"cell %1$d\");", "cell %1$d"),
            new Kind("double span%2$d = %1$d;", "ok"),
            new Kind("String span%2$d = \"%1$d\";", "ok"),
            new Kind("record Part%2$d(String name, double length) { double twice() { return 2 * length + %1$d; } }", "ok"),
            new Kind("import java.util.concurrent.atomic.AtomicInteger; new AtomicInteger(%1$d).incrementAndGet() - %1$d", "1"),
            new Kind("canopy.section(\"AB AD\")", "Section"));

    private static final String MEMORY_OF_CALC_VM = """
            System.gc(); String.valueOf(List.of(Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory(),
                java.lang.management.ManagementFactory.getMemoryPoolMXBeans().stream()
                    .filter(p -> p.getName().contains("etaspace") || p.getName().contains("Class Space"))
                    .mapToLong(p -> p.getUsage().getUsed()).sum(),
                (long) java.lang.management.ManagementFactory.getClassLoadingMXBean().getLoadedClassCount(),
                ProcessHandle.current().pid()))
            """;

    /**
     * Where a session stands; memory in bytes after a collection of garbage.
     *
     * @param millis     the median of the last hundred cells, from the request to reply and idle
     * @param processing processor time of both VMs for a cell, the mean since the mark before, ms
     */
    public record Mark(int cell, double millis, double processing, long kernelHeap, long calcHeap, long calcClassMemory,
                       long calcClasses) {
        @Override
        public String toString() {
            return String.format("cell %6d: median of 100 %6.2f ms, processor %6.2f ms; kernel VM heap %6.2f MB; calc VM"
                    + " heap %6.2f MB, classes %6.2f MB (%d)", cell, millis, processing, kernelHeap / 1e6, calcHeap / 1e6,
                    calcClassMemory / 1e6, calcClasses);
        }
    }

    /** @param early the median of a hundred cells when warm, ms; @param late that of the last hundred */
    public record Report(List<Mark> marks, double early, double late) { }

    private final SocketClient client;
    private final long[] nanos;
    private int markedCell;
    private long markedProcessing;

    private LongSession(SocketClient client, int cells) {
        this.client = client;
        nanos = new long[cells + 1];
    }

    public static void main(String[] arguments) throws Exception {
        Path folder = Files.createTempDirectory("session");
        try {
            run(folder, arguments.length > 0 ? Integer.parseInt(arguments[0]) : 10_000, CalcOptions.standard(), System.out);
        } finally {
            Files.deleteIfExists(folder.resolve("connection.json"));
            Files.delete(folder);
        }
    }

    /** Runs so many cells and says what they cost; fails when one does not tell what it should. */
    public static Report run(Path folder, int cells, CalcOptions options, PrintStream out) throws InterruptedException {
        try (KernelUnderTest kernel = KernelUnderTest.start(folder, JShellEvaluator.start(options));
             SocketClient client = kernel.connect()) {
            return new LongSession(client, cells).run(out);
        }
    }

    private Report run(PrintStream out) throws InterruptedException {
        int cells = nanos.length - 1;
        var marks = new ArrayList<Mark>();
        tell("double height = 1;");
        markedProcessing = processing();
        for (int cell = 1; cell <= cells; cell++) {
            Kind kind = MIXTURE.get((cell - 1) % MIXTURE.size());
            int one = cell / MIXTURE.size() % 40 + 1;
            long start = System.nanoTime();
            String told = tell(kind.source.formatted(cell, one));
            nanos[cell] = System.nanoTime() - start;
            if (!told.contains(kind.told.formatted(cell, one))) {
                throw new AssertionError("cell " + cell + ": " + kind.source.formatted(cell, one) + "\n" + told);
            }
            if (cell % STEP == 0) {
                marks.add(mark(cell));
                out.println(marks.get(marks.size() - 1));
            }
        }
        var report = new Report(marks, median(WARM + 1), median(cells - WINDOW + 1));
        out.printf("Java %d, %d cells: cells %d to %d %.2f ms, the last %d %.2f ms, ratio %.2f%n",
                Runtime.version().feature(), cells, WARM + 1, WARM + WINDOW, report.early, WINDOW, report.late,
                report.late / report.early);
        for (int kind = 0; kind < MIXTURE.size(); kind++) {
            out.printf("%10.2f ms  %s%n", ofKind(kind), MIXTURE.get(kind).source.lines().findFirst().orElse(""));
        }
        return report;
    }

    /** The median of the last ten of a kind. */
    private double ofKind(int kind) {
        int rounds = (nanos.length - 1) / MIXTURE.size();
        long[] last = IntStream.range(Math.max(0, rounds - 10), rounds)
                .mapToLong(round -> nanos[round * MIXTURE.size() + kind + 1]).sorted().toArray();
        return last[last.length / 2] / 1e6;
    }

    /** Runs a cell to its reply and its idle; all that it is told. */
    private String tell(String code) {
        String id = client.execute(code, Map.of("stop_on_error", false));
        Received reply = client.await(On.SHELL, id, 60);
        return reply.content() + "\n" + client.published(id).stream().filter(message -> !message.type().equals("execute_input"))
                .map(message -> message.content().toString()).collect(Collectors.joining("\n"));
    }

    private Mark mark(int cell) throws InterruptedException {
        String[] calc = tell(MEMORY_OF_CALC_VM).replaceAll("(?s).*\\[(\\d+(?:, \\d+){3})\\].*", "$1").split(", ");
        long processing = processing() - markedProcessing;
        var mark = new Mark(cell, median(cell - WINDOW + 1), processing / 1e6 / (cell - markedCell), ownHeap(),
                Long.parseLong(calc[0]), Long.parseLong(calc[1]), Long.parseLong(calc[2]));
        markedProcessing = processing();
        markedCell = cell;
        return mark;
    }

    /** Of this VM and those that it has started, ns. */
    private static long processing() {
        ProcessHandle self = ProcessHandle.current();
        return Stream.concat(Stream.of(self), self.descendants()).flatMap(each -> each.info().totalCpuDuration().stream())
                .mapToLong(Duration::toNanos).sum();
    }

    /** The least of several: what can go may go only at a second collection, and not each moves what is left together. */
    private static long ownHeap() throws InterruptedException {
        long least = Long.MAX_VALUE;
        for (int look = 0; look < 4; look++) {
            System.gc();
            Thread.sleep(20);
            least = Math.min(least, Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory());
        }
        return least;
    }

    private double median(int from) {
        long[] window = Arrays.copyOfRange(nanos, from, from + WINDOW);
        Arrays.sort(window);
        return window[WINDOW / 2] / 1e6;
    }
}
