package kingpost.kernel.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import kingpost.kernel.client.KernelUnderTest;
import kingpost.kernel.client.Received;
import kingpost.kernel.client.SocketClient;
import kingpost.kernel.client.SocketClient.On;
import kingpost.kernel.evaluation.CalcOptions;
import kingpost.kernel.evaluation.JShellEvaluator;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Cells that do harm, in one kernel with real sockets and a real calc VM, one after the other. After each the kernel
 * tells of itself within three seconds, and the next cell works.
 */
@Timeout(180)
class SurvivalIT {

    private static final Duration PATIENCE = Duration.ofSeconds(60);

    private static KernelUnderTest kernel;
    private static SocketClient client;

    @BeforeAll
    static void start(@TempDir Path folder) {
        var options = CalcOptions.standard().plusFlag("-Xmx160m").plusFlag("-XX:MaxMetaspaceSize=96m")
                .plusFlag("-XX:ErrorFile=" + folder.resolve("crash.txt"));
        // patient, so that a machine that has other things to do does not decide how a cell ends
        kernel = KernelUnderTest.start(folder, JShellEvaluator.start(new CalcOptions(options.java(), options.classPath(),
                options.flags(), Duration.ofSeconds(8))));
        client = kernel.connect();
    }

    @AfterAll
    static void stop() {
        client.close();
        kernel.close();
    }

    /** What is done, the milliseconds until an interrupt (-1: none), and words of what the cell tells in the end. */
    private static Arguments probe(String code, long interrupt, String told) {
        return Arguments.of(code, interrupt, told);
    }

    static Stream<Arguments> harm() {
        return Stream.of(
                // interrupts in every state
                probe("Math.sqrt(2)", 0, ""),
                probe("while (true) { }", 0, "nterrupted"),
                probe("Thread.currentThread().setName(\"mine\"); while (true) { }", 400, "nterrupted"),
                probe("for (;;) { try { Thread.sleep(9_000); } finally { continue; } }", 400, ""),
                // values that resist being shown
                probe("new Object() { public String toString() { return null; } }", -1, "null"),
                probe("new Object() { public String toString() { return toString() + 1; } }", -1, "StackOverflowError"),
                probe("new Object() { public String toString() { System.exit(4); return \"\"; } }", -1, "exit code 4"),
                probe("new Object() { public String toString() { for (;;) { } } }", 400, "nterrupted"),
                probe("new ArrayList<Object>() { public Iterator<Object> iterator() { throw new Error(\"none\"); }"
                        + " public String toString() { throw new Error(\"no text\"); } }", -1, "no text"),
                probe("var ring = new ArrayList<Object>(); ring.add(ring); ring.add(\"x\"); ring", -1, "\"x\""),
                // exceptions that resist being told
                probe("throw new RuntimeException() { public StackTraceElement[] getStackTrace() { return null; } };", -1,
                        "RuntimeException"),
                probe("throw new RuntimeException() { public String getMessage() { throw new Error(\"deep\"); } };", -1,
                        "could not be read"),
                probe("throw new RuntimeException() { public Throwable getCause() { throw new Error(\"deep\"); } };", -1,
                        "RuntimeException"),
                probe("throw new RuntimeException(\"a\".repeat(100_000_000));", -1, "aaa"),
                // much text
                probe("System.out.print(\"b\".repeat(10_000_000)); System.err.print(\"e\".repeat(2_000_000));", -1, "bbb"),
                probe("List.of(\"c\".repeat(50_000_000), \"d\")", -1, "ccc"),
                probe("for (int t = 0; t < 20; t++) { var w = new Thread(() -> { while (true) System.out.println(\"flood\"); });"
                        + " w.setDaemon(true); w.start(); } Thread.sleep(500);", -1, "flood"),
                probe("System.exit(5)", -1, "exit code 5"),
                probe("new ProcessBuilder(\"sh\", \"-c\", \"while :; do echo child; done\").inheritIO().start();"
                        + " Thread.sleep(500);", -1, "child"),
                probe("ProcessHandle.current().descendants().forEach(ProcessHandle::destroyForcibly); \"gone\"", -1, "gone"),
                // what cells share with the agent
                probe("System.out.close(); System.err.close(); System.in.close(); System.out.println(\"still\")", -1, "still"),
                probe("Thread.setDefaultUncaughtExceptionHandler((t, e) -> { while (true) { } });"
                        + " new Thread(() -> { throw new Error(); }).start(); Thread.sleep(200); \"on\"", -1, "on"),
                probe("Thread.getAllStackTraces().keySet().forEach(Thread::interrupt); \"awake\"", -1, "awake"),
                probe("Locale.setDefault(Locale.forLanguageTag(\"ar-EG-u-nu-arab\")); TimeZone.setDefault(TimeZone.getTimeZone("
                        + "\"Asia/Kathmandu\")); kN(1234.5).toString() + \"y\".repeat(200_000)", -1, "200,0"),
                probe("Thread.currentThread().setContextClassLoader(null); Thread.currentThread().setPriority(1); kN(2)", -1,
                        "2 kN"),
                probe("System.getProperties().clear(); Truss.named(\"t\").units(m, kN).joint(\"A\", 0, 0).joint(\"B\", 4, 0)"
                        + ".joint(\"C\", 2, 2).members(\"AB BC CA\").pin(\"A\").roller(\"B\").load(\"C\", 5, DOWN).build()", -1,
                        ""),
                probe("{ Thread.currentThread().interrupt(); System.out.println(\"kept\"); Thread.sleep(1); }", -1,
                        "InterruptedException"),
                // memory of every kind
                probe("var hoard = new ArrayList<Object>(); while (true) hoard.add(java.nio.ByteBuffer.allocateDirect(1 << 22));",
                        -1, "emory"),
                probe("long[][] all = new long[1 << 20][]; for (int i = 0; ; i++) all[i % all.length] = new long[1 << 14];", -1,
                        "emory"),
                probe("int down(long a) { return down(a + 1) + 1; } Stream.of(1L).parallel().mapToInt(a -> down(a)).sum()", -1,
                        "StackOverflowError"),
                // the process itself
                probe("var u = Class.forName(\"sun.misc.Unsafe\").getDeclaredField(\"theUnsafe\"); u.setAccessible(true);"
                        + " ((sun.misc.Unsafe) u.get(null)).putAddress(0, 0);", -1, "Lost: u"),
                probe("new ProcessBuilder(\"kill\", \"-STOP\", \"\" + ProcessHandle.current().pid()).start().waitFor();"
                        + " Thread.sleep(300); \"?\"", 600, "Lost"),
                probe("Runtime.getRuntime().addShutdownHook(new Thread(() -> { while (true) { } })); System.exit(6);", -1,
                        "shutdown hook"),
                // threads that start threads, and classes that the VM forgets as fast as they are made
                probe("class Doubling implements Runnable { public void run() { while (true) new Thread(new Doubling()).start(); } }"
                        + " new Doubling().run();", -1, "threads"),
                probe("for (;;) java.lang.reflect.Proxy.newProxyInstance(new ClassLoader() { }, new Class<?>[] {Runnable.class},"
                        + " (p, m, a) -> null);", 1_000, "nterrupted"),
                // the compiler; it depends on the run whether its stack is enough
                probe("String sum = " + Stream.generate(() -> "\"a\"").limit(6_000).collect(Collectors.joining(" + x() + "))
                        + ";", -1, ""),
                probe("int nested = " + "(".repeat(3_000) + "1" + ")".repeat(3_000) + ";", -1, ""))
                .filter(each -> each.get()[0].toString().contains(System.getProperty("kingpost.probe", "")));
    }

    @ParameterizedTest
    @MethodSource("harm")
    void isSurvived(String code, long interrupt, String told) throws InterruptedException {
        String shown = code.length() > 100 ? code.substring(0, 100) + "..." : code;
        long start = System.nanoTime();
        String id = client.execute(code);
        if (interrupt >= 0) {
            client.await(On.IOPUB, message -> message.type().equals("execute_input") && message.parentId().equals(id), PATIENCE);
            Thread.sleep(interrupt);
            start = System.nanoTime();
            client.ask(On.CONTROL, "interrupt_request", Map.of());
        }
        Received reply = client.await(On.SHELL, message -> message.parentId().equals(id), PATIENCE)
                .orElseThrow(() -> new AssertionError("no reply: " + shown));
        long ended = System.nanoTime();
        assertTrue(Stream.of(1, 2, 3, 4, 5).anyMatch(attempt -> client.await(On.CONTROL, byId(client.send(On.CONTROL,
                "kernel_info_request", Map.of())), Duration.ofSeconds(3)).isPresent()), () -> "no answer within 3 s: " + shown);
        long info = System.nanoTime();
        List<Received> published = client.published(id);
        String all = reply.content() + published.stream().map(Received::content).map(Object::toString)
                .map(text -> text.length() > 2_000 ? text.substring(0, 1_000) + text.substring(text.length() - 1_000) : text)
                .collect(Collectors.joining("\n"));
        System.out.printf("%s%n    ended %d ms, information %d ms: %s%n", shown, (ended - start) / 1_000_000,
                (info - ended) / 1_000_000, reply.text("status") + " " + reply.content().getOrDefault("evalue", ""));
        assertTrue(all.contains(told), () -> shown + "\n" + (all.length() > 4_000 ? all.substring(0, 4_000) : all));
        String next = client.execute("6 * 7");
        Received answer = client.await(On.SHELL, byId(next), PATIENCE).orElseThrow();
        assertEquals("ok", answer.text("status"), () -> shown + " -> " + answer.content());
        assertTrue(client.published(next).stream().anyMatch(message -> message.content().toString().contains("42")), shown);
    }

    private static java.util.function.Predicate<Received> byId(String id) {
        return message -> message.parentId().equals(id);
    }
}
