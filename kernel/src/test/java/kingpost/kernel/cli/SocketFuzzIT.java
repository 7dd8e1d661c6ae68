package kingpost.kernel.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.logging.Handler;
import java.util.logging.LogRecord;
import java.util.logging.Logger;
import java.util.stream.IntStream;
import kingpost.kernel.client.KernelUnderTest;
import kingpost.kernel.client.RawPeer;
import kingpost.kernel.client.SocketClient;
import kingpost.kernel.client.SocketClient.On;
import kingpost.kernel.session.ScriptedEvaluator;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/**
 * Seeded damage over real sockets: to frames of messages, and to the bytes of the transport. The number of messages
 * is the system property {@code kingpost.fuzz.socketMessages}, the seed {@code kingpost.fuzz.seed}.
 */
@Timeout(600)
class SocketFuzzIT {

    private static final int MESSAGES = Integer.getInteger("kingpost.fuzz.socketMessages", 4_000);
    private static final long SEED = Long.getLong("kingpost.fuzz.seed", 20_261_125L);
    private static final int BATCH = 500;

    @TempDir
    Path folder;

    private final Random random = new Random(SEED);
    private final AtomicInteger evil = new AtomicInteger();
    private final AtomicInteger stumbles = new AtomicInteger();
    private final ScriptedEvaluator evaluator = ScriptedEvaluator.withUsualCells().on("evil", (cell, out) -> {
        evil.incrementAndGet();
        return ScriptedEvaluator.nothing();
    });
    private final Logger log = Logger.getLogger("kingpost.channels");
    private final Handler watch = new Handler() {
        @Override
        public void publish(LogRecord entry) {
            stumbles.addAndGet(entry.getThrown() == null ? 0 : 1);
        }

        @Override
        public void flush() {
            // nothing is kept
        }

        @Override
        public void close() {
            // nothing is open
        }
    };
    private KernelUnderTest kernel;
    private SocketClient known;

    @BeforeEach
    void startKernel() {
        log.addHandler(watch);
        log.setUseParentHandlers(false);
        kernel = KernelUnderTest.start(folder, evaluator);
        known = kernel.connect();
    }

    @AfterEach
    void stopKernel() {
        known.close();
        kernel.close();
        log.removeHandler(watch);
        log.setUseParentHandlers(true);
    }

    @Test
    void executesNoMessageThatWasChangedWithoutTheKey() {
        try (SocketClient stranger = new SocketClient(kernel.connection())) {
            for (int i = 0; i < MESSAGES; i++) {
                List<byte[]> good = stranger.signed(stranger.header("execute_request"), Map.of(), Map.of("code", "evil"));
                stranger.sendRaw(List.of(On.SHELL, On.CONTROL, On.STDIN).get(random.nextInt(3)), damaged(good));
                if (i % BATCH == BATCH - 1) {
                    assertAnswers(i);
                }
            }
        }
        assertAnswers(MESSAGES);
        assertEquals(0, evil.get());
        assertEquals(0, stumbles.get());
    }

    @Test
    void servesOthersWhateverTheBytesOfTheTransport() throws Exception {
        List<String> ports = List.of("shell_port", "iopub_port", "stdin_port", "control_port", "hb_port");
        for (int i = 0; i < MESSAGES / 2; i++) {
            int channel = i % ports.size();
            try (RawPeer peer = RawPeer.tcp((Long) kernel.connection().get(ports.get(channel)))) {
                peer.send(damaged(conversation(List.of("DEALER", "SUB", "DEALER", "DEALER", "REQ").get(channel))));
            }
            if (i % BATCH == BATCH - 1) {
                assertAnswers(i);
            }
        }
        assertAnswers(MESSAGES);
        assertEquals(0, evil.get());
        assertEquals(0, stumbles.get());
    }

    private void assertAnswers(int after) {
        // in one of five tries: a machine that has other things to do must not decide
        assertTrue(IntStream.range(0, 5).anyMatch(i -> isAnsweredInTime()), "seed " + SEED + ", message " + after);
    }

    private boolean isAnsweredInTime() {
        long begin = System.nanoTime();
        assertEquals("ok", known.ask(On.SHELL, "kernel_info_request", Map.of()).text("status"));
        try (SocketClient fresh = kernel.connect()) {
            assertEquals("ok", fresh.ask(On.CONTROL, "kernel_info_request", Map.of()).text("status"));
        }
        return Duration.ofNanos(System.nanoTime() - begin).toMillis() < 3_000;
    }

    /** Frames with one thing wrong in what the signature covers, or with the signature itself. */
    private List<byte[]> damaged(List<byte[]> good) {
        List<byte[]> frames = new ArrayList<>(good);
        int at = 1 + random.nextInt(frames.size() - 1);
        switch (random.nextInt(6)) {
            case 0 -> frames.remove(at);
            case 1 -> frames.set(at, new byte[random.nextInt(300)]);
            case 2 -> frames.set(at, Arrays.copyOf(frames.get(at), random.nextInt(frames.get(at).length)));
            case 3 -> Collections.swap(frames, at, at == 1 ? 2 : 1);
            case 4 -> frames.subList(at, frames.size()).clear();
            default -> {
                byte[] copy = frames.get(at).clone();
                copy[random.nextInt(copy.length)] ^= (byte) (1 << random.nextInt(8));
                frames.set(at, copy);
            }
        }
        return frames;
    }

    /** What a peer says from its greeting to a forged message, as bytes. */
    private byte[] conversation(String type) {
        ByteArrayOutputStream all = new ByteArrayOutputStream();
        all.writeBytes(RawPeer.greeting());
        all.writeBytes(RawPeer.ready(type, type.equals("SUB") ? "" : "peer" + random.nextInt(50)));
        all.writeBytes(new byte[] {4, 7, 4, 'P', 'I', 'N', 'G', 0, 1});
        all.writeBytes(new byte[] {0, 1, 1});
        for (String part : List.of("<IDS|MSG>", "0".repeat(64), "{}", "{}", "{}", "{\"code\":\"evil\"}")) {
            byte[] body = part.getBytes(StandardCharsets.US_ASCII);
            int more = part.contains("evil") ? 0 : 1;
            Optional<ByteBuffer> large = random.nextBoolean() ? Optional.of(ByteBuffer.allocate(9)
                    .put((byte) (2 | more)).putLong(body.length)) : Optional.empty();
            all.writeBytes(large.map(ByteBuffer::array).orElse(new byte[] {(byte) more, (byte) body.length}));
            all.writeBytes(body);
        }
        return all.toByteArray();
    }

    private byte[] damaged(byte[] good) {
        byte[] bytes = random.nextInt(5) == 0 ? Arrays.copyOf(good, random.nextInt(good.length)) : good.clone();
        // the greeting is seldom touched: behind it lies more
        int from = bytes.length > 64 && random.nextInt(8) > 0 ? 64 : 0;
        for (int i = random.nextInt(4); i >= 0 && bytes.length > from; i--) {
            bytes[from + random.nextInt(bytes.length - from)] = (byte) random.nextInt();
        }
        return bytes;
    }
}
