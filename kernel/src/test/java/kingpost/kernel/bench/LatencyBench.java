package kingpost.kernel.bench;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import jdk.jshell.JShell;
import jdk.jshell.Snippet;
import jdk.jshell.SnippetEvent;
import kingpost.kernel.client.KernelUnderTest;
import kingpost.kernel.client.SocketClient;
import kingpost.kernel.client.SocketClient.On;
import kingpost.kernel.evaluation.CellOutput;
import kingpost.kernel.evaluation.CellRequest;
import kingpost.kernel.evaluation.JShellEvaluator;
import kingpost.kernel.evaluation.Outcome;

/**
 * How long a warm cell {@code 1 + 1} takes: raw JShell in this VM, the evaluator with its calc VM, and a client at real
 * sockets, in turn within one run. Run by hand; it reports, and asserts nothing about speed.
 */
public final class LatencyBench {

    private static final int WARM = 300;
    private static final int ROUNDS = 20;
    private static final int IN_A_ROUND = 25;

    private LatencyBench() {
    }

    /** One way to run a cell, and what its runs took. */
    private static final class Way {
        private final String name;
        private final Consumer<String> cell;
        private final long[] nanos = new long[ROUNDS * IN_A_ROUND];
        private int count;

        private Way(String name, Consumer<String> cell) {
            this.name = name;
            this.cell = cell;
        }

        private void warmUp(String code) {
            for (int i = 0; i < WARM; i++) {
                cell.accept(code);
            }
        }

        private void round(String code) {
            for (int i = 0; i < IN_A_ROUND; i++) {
                long start = System.nanoTime();
                cell.accept(code);
                nanos[count++] = System.nanoTime() - start;
            }
        }

        private double median() {
            return at(0.5);
        }

        private double at(double share) {
            long[] sorted = nanos.clone();
            Arrays.sort(sorted);
            return sorted[(int) (share * (sorted.length - 1))] / 1e6;
        }
    }

    public static void main(String[] arguments) throws Exception {
        String code = arguments.length > 0 ? arguments[0] : "1 + 1";
        Path folder = Files.createTempDirectory("latency");
        try (JShell raw = JShell.builder().executionEngine("local").build();
             JShell imported = JShell.builder().executionEngine("local").build();
             JShellEvaluator evaluator = JShellEvaluator.start();
             KernelUnderTest kernel = KernelUnderTest.start(folder, JShellEvaluator.start());
             SocketClient client = kernel.connect()) {
            imports().forEach(imported::eval);
            List<Way> ways = List.of(new Way("raw JShell in process", cell -> raw(raw, cell)),
                    new Way("the same with the notebook's imports", cell -> raw(imported, cell)),
                    new Way("evaluator and calc VM", cell -> evaluated(evaluator, cell)),
                    new Way("client at sockets, to the reply and idle", cell -> asked(client, cell)));
            ways.forEach(way -> way.warmUp(code));
            for (int round = 0; round < ROUNDS; round++) {
                ways.forEach(way -> way.round(code));
            }
            report(code, ways);
        } finally {
            Files.deleteIfExists(folder.resolve("connection.json"));
            Files.delete(folder);
        }
    }

    private static void report(String code, List<Way> ways) {
        double base = ways.get(0).median();
        System.out.printf("cell %s, Java %s, %d runs each, ms%n", code, Runtime.version().feature(), ROUNDS * IN_A_ROUND);
        System.out.printf("%-45s %8s %8s %8s %8s%n", "", "10 %", "median", "90 %", "ratio");
        for (Way way : ways) {
            System.out.printf("%-45s %8.2f %8.2f %8.2f %8.2f%n", way.name, way.at(0.1), way.median(), way.at(0.9),
                    way.median() / base);
        }
    }

    private static List<String> imports() throws Exception {
        try (var in = LatencyBench.class.getResourceAsStream("/kingpost/notebook/preload.txt")) {
            return new String(in.readAllBytes()).lines().filter(line -> line.startsWith("import ")).toList();
        }
    }

    /** Drops the temporary variable, as JShell grows slower with each that is kept. */
    private static void raw(JShell shell, String code) {
        for (SnippetEvent event : shell.eval(code)) {
            if (event.value() == null) {
                throw new IllegalStateException(code + ": no value");
            }
            Snippet snippet = event.snippet();
            shell.drop(snippet);
        }
    }

    private static void evaluated(JShellEvaluator evaluator, String code) {
        if (!(evaluator.run(CellRequest.of(code), new Silent()) instanceof Outcome.Completed)) {
            throw new IllegalStateException(code + ": failed");
        }
    }

    private static void asked(SocketClient client, String code) {
        String id = client.execute(code);
        client.reply(On.SHELL, id);
        client.published(id);
    }

    private record Silent() implements CellOutput {
        @Override
        public void stream(String name, String text) { }

        @Override
        public void display(kingpost.kernel.display.MimeBundle bundle, Optional<String> displayId) { }

        @Override
        public void update(kingpost.kernel.display.MimeBundle bundle, String displayId) { }

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
