package kingpost.kernel.client;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
import kingpost.kernel.cli.Host;
import kingpost.kernel.cli.KernelProcess;
import kingpost.kernel.evaluation.Evaluator;
import kingpost.kernel.session.MemoryHistory;
import kingpost.kernel.wire.Json;

/** A kernel with real sockets on free ports of this machine, in this VM, and its connection file. */
public final class KernelUnderTest implements AutoCloseable {

    public static final String KEY = "0f1e2d3c-a-key-of-the-tests";

    private final Path file;
    private final CompletableFuture<Integer> status;
    private final ByteArrayOutputStream errors = new ByteArrayOutputStream();

    private KernelUnderTest(Path folder, Map<String, Object> more, Evaluator evaluator) {
        this.file = folder.resolve("connection.json");
        write(file, more);
        this.status = CompletableFuture.supplyAsync(() -> new KernelProcess("test", () -> evaluator,
                new MemoryHistory(), Host.NONE, new PrintStream(errors, true, StandardCharsets.UTF_8)).serve(file),
                task -> new Thread(task).start());
    }

    /** Writes a connection file with free ports and these fields besides. */
    public static void write(Path file, Map<String, Object> more) {
        Map<String, Object> fields = new LinkedHashMap<>(Map.of("transport", "tcp", "ip", "127.0.0.1", "key", KEY,
                "signature_scheme", "hmac-sha256", "shell_port", 0, "iopub_port", 0, "stdin_port", 0,
                "control_port", 0, "hb_port", 0));
        fields.putAll(more);
        try {
            Files.writeString(file, Json.write(fields));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Starts it and waits until its ports are known. */
    public static KernelUnderTest start(Path folder, Evaluator evaluator) {
        return start(folder, Map.of(), evaluator);
    }

    public static KernelUnderTest start(Path folder, Map<String, Object> more, Evaluator evaluator) {
        KernelUnderTest kernel = new KernelUnderTest(folder, more, evaluator);
        long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(40);
        while (kernel.connection().get("shell_port").equals(0L) && !kernel.status.isDone()
                && System.nanoTime() < end) {
            LockSupport.parkNanos(5_000_000);
        }
        return kernel;
    }

    public SocketClient connect() {
        return new SocketClient(connection()).subscribe();
    }

    public Map<String, Object> connection() {
        try {
            return Json.readObject(Files.readString(file));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The exit status, once it has ended. */
    public int exitStatus() {
        return status.orTimeout(40, TimeUnit.SECONDS).join();
    }

    public String errors() {
        return errors.toString(StandardCharsets.UTF_8);
    }

    @Override
    public void close() {
        if (!status.isDone()) {
            try (SocketClient client = new SocketClient(connection())) {
                client.ask(SocketClient.On.CONTROL, "shutdown_request", Map.of("restart", false));
            }
        }
        exitStatus();
    }
}
