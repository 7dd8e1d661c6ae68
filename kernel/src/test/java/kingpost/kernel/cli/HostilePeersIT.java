package kingpost.kernel.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.logging.Handler;
import java.util.logging.LogRecord;
import java.util.logging.Logger;
import kingpost.kernel.channels.MessageLimits;
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
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Peers without the key, and bytes that are no messages: nothing runs, the log says so once, the kernel goes on. */
@Timeout(120)
class HostilePeersIT {

    private static final List<String> PORTS = List.of("shell_port", "iopub_port", "stdin_port", "control_port", "hb_port");

    @TempDir
    Path folder;

    private final AtomicInteger evil = new AtomicInteger();
    private final ScriptedEvaluator evaluator = ScriptedEvaluator.withUsualCells().on("evil", (cell, out) -> {
        evil.incrementAndGet();
        return ScriptedEvaluator.nothing();
    });
    private final LogLines log = new LogLines();
    private KernelUnderTest kernel;
    private SocketClient client;

    @BeforeEach
    void startKernel() {
        Logger.getLogger("kingpost.channels").addHandler(log);
        Logger.getLogger("kingpost.channels").setUseParentHandlers(false);
        kernel = KernelUnderTest.start(folder, evaluator);
        client = kernel.connect();
    }

    @AfterEach
    void stopKernel() {
        client.close();
        kernel.close();
        Logger.getLogger("kingpost.channels").removeHandler(log);
        Logger.getLogger("kingpost.channels").setUseParentHandlers(true);
    }

    @Test
    void dropsForgedUnsignedReplayedAndTruncatedMessagesAndLogsEachOnce() {
        List<byte[]> good = client.signed(client.header("execute_request"), Map.of(), Map.of("code", "evil"));
        List<byte[]> forged = new ArrayList<>(good);
        forged.set(5, "{\"code\":\"evil\",\"silent\":true}".getBytes(StandardCharsets.UTF_8));
        List<byte[]> unsigned = new ArrayList<>(good);
        unsigned.set(1, new byte[0]);
        for (On channel : List.of(On.SHELL, On.CONTROL, On.STDIN)) {
            client.sendRaw(channel, forged);
            client.sendRaw(channel, unsigned);
            client.sendRaw(channel, good.subList(0, 4));
            client.sendRaw(channel, good.subList(1, 6));
            client.sendRaw(channel, client.sealed(List.of(new byte[] {(byte) 0xff}, bytes("{}"), bytes("{}"), bytes(channel.name()))));
            client.sendRaw(channel, client.sealed(List.of(bytes("{"), bytes("{}"), bytes("{}"), bytes(channel.name()))));
        }
        assertAnswers();
        assertEquals(0, evil.get());
        client.sendRaw(On.SHELL, good);
        client.sendRaw(On.SHELL, good);
        assertAnswers();
        client.sendRaw(On.CONTROL, good);
        assertAnswers();
        assertEquals(1, evil.get());
        log.await(6 * 3 + 2);
        for (String words : List.of("wrong signature", "not signed", "fewer than five", "no delimiter", "not UTF-8",
                "not a JSON object")) {
            assertEquals(3, log.lines.stream().filter(line -> line.contains(words)).count(), words);
        }
        assertEquals(2, log.lines.stream().filter(line -> line.contains("signature seen before")).count());
        assertFalse(log.lines.stream().anyMatch(line -> line.contains("evil") || line.contains(KernelUnderTest.KEY)));
    }

    @Test
    void dropsMessagesThatAreTooLargeOrHaveTooManyFrames() {
        long limit = MessageLimits.configured().bytes();
        List<byte[]> large = new ArrayList<>(client.signed(client.header("execute_request"), Map.of(),
                Map.of("code", "evil")));
        large.add(new byte[(int) limit + 1]);
        client.sendRaw(On.SHELL, large);
        List<byte[]> many = new ArrayList<>(large.subList(0, 6));
        for (int i = 0; i < 2_000; i++) {
            many.add(new byte[1]);
        }
        client.sendRaw(On.SHELL, many);
        assertAnswers();
        assertEquals(0, evil.get());
        log.await(2);
        assertEquals(2, log.lines.stream().filter(line -> line.contains("larger than the limit")).count());
    }

    @Test
    void cutsOffPeersThatBeginMoreThanAnyMessageMayHold() throws Exception {
        long limit = MessageLimits.configured().bytes();
        try (RawPeer endless = open("shell_port"); RawPeer large = open("stdin_port")) {
            endless.send(RawPeer.greeting());
            endless.send(RawPeer.ready("DEALER", "endless"));
            endless.send(oneByteFrames(20_000));
            assertTrue(endless.isCutOff());
            large.send(RawPeer.greeting());
            large.send(RawPeer.ready("DEALER", "large"));
            large.send(ByteBuffer.allocate(9).put((byte) 3).putLong(2 * limit + 1).array());
            assertTrue(large.isCutOff());
        }
        assertAnswers();
    }

    @Test
    void takesNoMemoryForManyLargeMessagesThatAreNeverFinished() throws Exception {
        long limit = MessageLimits.configured().bytes();
        List<RawPeer> peers = new ArrayList<>();
        int cut = 0;
        for (int i = 0; i < 20; i++) {
            RawPeer peer = open("shell_port");
            peer.send(RawPeer.greeting());
            peer.send(RawPeer.ready("DEALER", "p" + i));
            peer.send(ByteBuffer.allocate(9).put((byte) 3).putLong(limit).array());
            peers.add(peer);
        }
        assertAnswers();
        for (RawPeer peer : peers.subList(10, 20)) {
            cut += peer.isCutOff() ? 1 : 0;
        }
        assertEquals(10, cut);
        for (RawPeer peer : peers) {
            peer.close();
        }
        assertAnswers();
    }

    @Test
    void survivesAFloodOfLargeForgedMessages() throws Exception {
        byte[] body = new byte[(int) MessageLimits.configured().bytes() / 4];
        try (RawPeer peer = open("shell_port")) {
            peer.shakeHands("DEALER", "flood");
            for (int i = 0; i < 12; i++) {
                peer.sendMessage(List.of("<IDS|MSG>".getBytes(StandardCharsets.US_ASCII), new byte[64], body, new byte[0], new byte[0], new byte[0]));
            }
        }
        assertAnswers();
    }

    @Test
    void makesRoomForClientsWhenManyConnectionsSayNothing() throws Exception {
        List<RawPeer> silent = new ArrayList<>();
        for (int i = 0; i < 400; i++) {
            silent.add(open("shell_port"));
        }
        assertAnswers();
        for (RawPeer peer : silent) {
            peer.close();
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {-1, Long.MIN_VALUE, Long.MIN_VALUE + 5, 0x8000_0000_7fff_fff0L, Integer.MAX_VALUE, 1L << 40})
    void answersWithinThreeSecondsOfAFrameWithAnImpossibleLength(long length) throws Exception {
        for (String port : PORTS) {
            for (boolean greeted : new boolean[] {true, false}) {
                try (RawPeer peer = open(port)) {
                    peer.send(RawPeer.greeting());
                    if (greeted) {
                        peer.send(RawPeer.ready(port.equals("iopub_port") ? "SUB" : port.equals("hb_port") ? "REQ" : "DEALER", ""));
                    }
                    peer.send(ByteBuffer.allocate(19).put((byte) 2).putLong(length).array());
                    assertTrue(peer.isCutOff(), port);
                }
            }
            assertTrue(isAnsweredInTime(), port);
        }
        log.await(2 * PORTS.size());
        assertEquals(2 * PORTS.size(), log.lines.size(), () -> log.lines.toString());
    }

    @Test
    void survivesGarbageOnEveryPort() throws Exception {
        Random random = new Random(7);
        for (int i = 0; i < 300; i++) {
            try (RawPeer peer = open(PORTS.get(i % PORTS.size()))) {
                byte[] bytes = new byte[random.nextInt(2_000)];
                random.nextBytes(bytes);
                peer.send(bytes);
            }
        }
        assertAnswers();
    }

    @Test
    void survivesDamagedFramesOfTheTransport() throws Exception {
        Random random = new Random(8);
        for (int i = 0; i < 300; i++) {
            try (RawPeer peer = open(PORTS.get(i % PORTS.size()))) {
                peer.send(RawPeer.greeting());
                byte[] bytes = new byte[random.nextInt(300)];
                random.nextBytes(bytes);
                int kind = random.nextInt(4);
                if (kind == 0) {
                    peer.send(ready(random));
                } else if (kind == 1) {
                    peer.send(ready(random));
                    peer.send(ByteBuffer.allocate(9).put((byte) 2).putLong(random.nextLong()).array());
                } else if (kind == 2) {
                    peer.send(ready(random));
                    peer.send(ByteBuffer.allocate(9).put((byte) 2).putLong(1L << 30).array());
                }
                peer.send(bytes);
            }
        }
        assertAnswers();
    }

    @Test
    void keepsServingWhileConnectionsStandIdle() throws Exception {
        List<RawPeer> idle = new ArrayList<>();
        for (int i = 0; i < 100; i++) {
            RawPeer peer = open(PORTS.get(i % PORTS.size()));
            peer.send(Arrays.copyOf(RawPeer.greeting(), i % 64));
            idle.add(peer);
        }
        assertAnswers();
        for (RawPeer peer : idle) {
            peer.close();
        }
    }

    @Test
    void ignoresSubscriptionsThatAreNoText() throws Exception {
        try (RawPeer peer = open("iopub_port")) {
            peer.send(RawPeer.greeting());
            peer.send(RawPeer.ready("SUB", ""));
            peer.send(new byte[] {0, 3, 1, (byte) 0xff, (byte) 0xfe});
            peer.send(new byte[] {0, 0});
            peer.send(new byte[] {0, 2, 7, 7});
            assertAnswers();
        }
    }

    private void assertAnswers() {
        assertEquals("ok", client.reply(On.SHELL, client.execute("1 + 1")).text("status"));
        assertEquals("ok", client.ask(On.CONTROL, "kernel_info_request", Map.of()).text("status"));
        assertArrayEquals(new byte[] {1}, client.beat(new byte[] {1}));
        try (SocketClient fresh = kernel.connect()) {
            String id = fresh.execute("1 + 1");
            assertTrue(fresh.briefs(id).contains("execute_result"));
        }
    }

    private static byte[] oneByteFrames(int count) {
        ByteBuffer frames = ByteBuffer.allocate(3 * count);
        for (int i = 0; i < count; i++) {
            frames.put((byte) 1).put((byte) 1).put((byte) 'x');
        }
        return frames.array();
    }

    private RawPeer open(String port) throws IOException {
        return RawPeer.tcp((Long) kernel.connection().get(port));
    }

    private static byte[] ready(Random random) {
        return RawPeer.ready(List.of("DEALER", "SUB", "REQ", "PUB", "nonsense").get(random.nextInt(5)), "");
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    /** Keeps log lines. */
    /** Within three seconds, in one of five tries: a machine that has other things to do must not decide. */
    private boolean isAnsweredInTime() {
        for (int i = 0; i < 5; i++) {
            long begin = System.nanoTime();
            assertAnswers();
            if (Duration.ofNanos(System.nanoTime() - begin).toMillis() < 3_000) {
                return true;
            }
        }
        return false;
    }

    private static final class LogLines extends Handler {

        final List<String> lines = new CopyOnWriteArrayList<>();

        @Override
        public void publish(LogRecord entry) {
            lines.add(entry.getMessage());
        }

        void await(int count) {
            long end = System.nanoTime() + 30_000_000_000L;
            while (lines.size() < count && System.nanoTime() < end) {
                Thread.onSpinWait();
            }
        }

        @Override
        public void flush() {
            // lines are there at once
        }

        @Override
        public void close() {
            // nothing is open
        }
    }
}
