package kingpost.kernel.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.ConnectException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.Socket;
import java.net.StandardProtocolFamily;
import java.net.UnixDomainSocketAddress;
import java.nio.channels.ServerSocketChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.stream.Collectors;
import kingpost.kernel.client.KernelUnderTest;
import kingpost.kernel.client.RawPeer;
import kingpost.kernel.client.Received;
import kingpost.kernel.client.SocketClient;
import kingpost.kernel.client.SocketClient.On;
import kingpost.kernel.evaluation.CellOutput;
import kingpost.kernel.session.ScriptedEvaluator;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Clients that come late, come in twos, read slowly, or sign in other ways. */
@Timeout(120)
class ClientsIT {

    @TempDir
    Path folder;

    private final ScriptedEvaluator evaluator = ScriptedEvaluator.withUsualCells();
    private KernelUnderTest kernel;

    @AfterEach
    void stopKernel() {
        kernel.close();
    }

    @Test
    void servesTwoClientsWhoSeeEachOthersCells() {
        kernel = KernelUnderTest.start(folder, evaluator);
        try (SocketClient one = kernel.connect(); SocketClient two = kernel.connect()) {
            String ofOne = one.execute("1 + 1");
            String ofTwo = two.execute("hello");
            assertEquals("ok", one.reply(On.SHELL, ofOne).text("status"));
            assertEquals("ok", two.reply(On.SHELL, ofTwo).text("status"));
            assertTrue(one.briefs(ofTwo).contains("stream hello, world\n"));
            assertTrue(two.briefs(ofOne).contains("execute_result"));
            assertTrue(one.await(On.SHELL, message -> true, Duration.ofMillis(100)).isEmpty());
        }
    }

    @Test
    void tellsALateClientThatItIsAliveWhileACellRuns() {
        kernel = KernelUnderTest.start(folder, evaluator);
        try (SocketClient early = kernel.connect()) {
            String cell = early.execute("sleep");
            early.await(On.IOPUB, message -> message.type().equals("execute_input"));
            try (SocketClient late = kernel.connect()) {
                assertEquals("ok", late.ask(On.CONTROL, "kernel_info_request", Map.of()).text("status"));
                Received completion = late.ask(On.SHELL, "complete_request", Map.of("code", "al", "cursor_pos", 2));
                assertFalse(((List<?>) completion.content().get("matches")).isEmpty());
                late.ask(On.CONTROL, "interrupt_request", Map.of());
                assertEquals("error", early.reply(On.SHELL, cell).text("status"));
                assertTrue(late.briefs(cell).contains("error"));
            }
        }
    }

    @Test
    void takesAnInterruptHoweverManyCellsAreQueued() {
        kernel = KernelUnderTest.start(folder, evaluator);
        try (SocketClient client = kernel.connect()) {
            String running = client.execute("sleep");
            client.await(On.IOPUB, message -> message.type().equals("execute_input"));
            for (int i = 0; i < 6_000; i++) {
                client.execute("1 + 1");
            }
            client.ask(On.CONTROL, "interrupt_request", Map.of());
            assertEquals("Interrupted", client.reply(On.SHELL, running).text("ename"));
            assertEquals("ok", client.ask(On.CONTROL, "kernel_info_request", Map.of()).text("status"));
        }
    }

    @Test
    void answersAClientThatComesBackWhileItsOldConnectionStillStands() throws Exception {
        kernel = KernelUnderTest.start(folder, evaluator);
        SocketClient client = new SocketClient(kernel.connection());
        try (RawPeer before = RawPeer.tcp((Long) kernel.connection().get("shell_port"))) {
            before.shakeHands("DEALER", "known-client");
            before.sendMessage(client.signed(client.header("kernel_info_request"), Map.of(), Map.of()));
            assertEquals(6, before.receive().size());
            try (RawPeer after = RawPeer.tcp((Long) kernel.connection().get("shell_port"))) {
                after.shakeHands("DEALER", "known-client");
                after.sendMessage(client.signed(client.header("kernel_info_request"), Map.of(), Map.of()));
                assertEquals(6, after.receive().size());
            }
        } finally {
            client.close();
        }
    }

    @Test
    void speaksOverUnixSocketsForTheirOwnerOnly() throws Exception {
        Path sockets = Files.createTempDirectory("kp");
        kernel = KernelUnderTest.start(folder, Map.of("transport", "ipc", "ip", sockets.resolve("k").toString()), evaluator);
        Map<String, Object> fields = kernel.connection();
        Path shell = sockets.resolve("k-" + fields.get("shell_port"));
        Path control = sockets.resolve("k-" + fields.get("control_port"));
        assertEquals("rw-------", PosixFilePermissions.toString(Files.getPosixFilePermissions(shell)));
        SocketClient signer = SocketClient.unconnected();
        try (RawPeer peer = RawPeer.unix(shell); RawPeer end = RawPeer.unix(control)) {
            peer.shakeHands("DEALER", "c").sendMessage(signer.signed(signer.header("execute_request"), Map.of(),
                    Map.of("code", "1 + 1")));
            assertTrue(new String(peer.receive().get(5)).contains("\"status\":\"ok\""));
            end.shakeHands("DEALER", "c").sendMessage(signer.signed(signer.header("shutdown_request"), Map.of(), Map.of()));
            assertEquals(0, kernel.exitStatus());
        } finally {
            signer.close();
        }
        try (var left = Files.list(sockets)) {
            assertEquals(List.of(), left.toList());
        }
        Files.delete(sockets);
    }

    @Test
    void delivers200000LinesInOrderAndIdleLast() {
        System.setProperty("kingpost.streamLimit", "100000000");
        try {
            evaluator.on("print", (cell, out) -> {
                for (int i = 0; i < 200_000; i++) {
                    out.stream("stdout", i + "\n");
                }
                return ScriptedEvaluator.nothing();
            });
            kernel = KernelUnderTest.start(folder, evaluator);
            try (SocketClient client = kernel.connect()) {
                List<Received> all = client.published(client.execute("print"));
                String text = all.stream().filter(message -> message.type().equals("stream"))
                        .map(message -> message.text("text")).collect(Collectors.joining());
                assertEquals(200_000, text.lines().count());
                assertTrue(text.startsWith("0\n1\n2\n") && text.endsWith("\n199999\n"));
            }
        } finally {
            System.clearProperty("kingpost.streamLimit");
        }
    }

    @Test
    void goesOnForOthersWhenOneClientNeverReads() {
        evaluator.on("flood", (cell, out) -> {
            for (int i = 0; i < 3_000; i++) {
                out.comm("comm_msg", Map.of("comm_id", "c1", "data", Map.of("text", "x".repeat(20_000))), Map.of(),
                        List.of());
            }
            return ScriptedEvaluator.nothing();
        });
        kernel = KernelUnderTest.start(folder, evaluator);
        try (SocketClient deaf = SocketClient.withSmallQueue(kernel.connection()); SocketClient client = kernel.connect()) {
            deaf.subscribe();
            String id = client.execute("flood");
            assertEquals(3_000, client.published(id).stream().filter(m -> m.type().equals("comm_msg")).count());
            assertEquals("ok", client.reply(On.SHELL, id).text("status"));
            assertEquals("ok", client.ask(On.CONTROL, "kernel_info_request", Map.of()).text("status"));
        }
    }

    @Test
    void sendsLateOutputWithTheCellThatStartedIt() throws InterruptedException {
        CountDownLatch go = new CountDownLatch(1);
        evaluator.on("background", (cell, out) -> {
            CellOutput output = out;
            Thread thread = new Thread(() -> {
                try {
                    go.await();
                } catch (InterruptedException e) {
                    return;
                }
                output.stream("stdout", "late");
            });
            thread.setDaemon(true);
            thread.start();
            return ScriptedEvaluator.nothing();
        });
        kernel = KernelUnderTest.start(folder, evaluator);
        try (SocketClient client = kernel.connect()) {
            String id = client.execute("background");
            client.published(id);
            client.published(client.execute("1 + 1"));
            go.countDown();
            Optional<Received> late = client.await(On.IOPUB, message -> message.type().equals("stream"),
                    Duration.ofSeconds(30));
            assertEquals(id, late.orElseThrow().parentId());
        }
    }

    @Test
    void startsAgainAtOnceOnThePortsOfTheKernelBefore() {
        kernel = KernelUnderTest.start(folder, evaluator);
        Map<String, Object> ports = kernel.connection();
        for (int i = 0; i < 3; i++) {
            try (SocketClient client = kernel.connect()) {
                assertEquals("ok", client.reply(On.SHELL, client.execute("1 + 1")).text("status"));
                client.ask(On.CONTROL, "shutdown_request", Map.of("restart", true));
                assertEquals(0, kernel.exitStatus(), kernel.errors());
            }
            kernel = KernelUnderTest.start(folder, ports, ScriptedEvaluator.withUsualCells());
        }
        try (SocketClient client = kernel.connect()) {
            assertEquals("ok", client.reply(On.SHELL, client.execute("1 + 1")).text("status"));
        }
    }

    @Test
    void replacesTheSocketsOfAKernelThatWasKilled() throws Exception {
        Path sockets = Files.createTempDirectory("kp");
        for (int i = 1; i <= 5; i++) {
            try (ServerSocketChannel left = ServerSocketChannel.open(StandardProtocolFamily.UNIX)) {
                left.bind(UnixDomainSocketAddress.of(sockets.resolve("k-" + i)));
            }
        }
        kernel = KernelUnderTest.start(folder, Map.of("transport", "ipc", "ip", sockets.resolve("k").toString(),
                "shell_port", 1, "iopub_port", 2, "stdin_port", 3, "control_port", 4, "hb_port", 5), evaluator);
        SocketClient signer = SocketClient.unconnected();
        try (RawPeer end = RawPeer.unixOnceItListens(sockets.resolve("k-4"))) {
            end.shakeHands("DEALER", "c").sendMessage(signer.signed(signer.header("shutdown_request"), Map.of(), Map.of()));
            assertEquals(0, kernel.exitStatus(), kernel.errors());
        } finally {
            signer.close();
        }
        Files.delete(sockets);
    }

    @ParameterizedTest
    @ValueSource(strings = {"hmac-sha512", "hmac-md5"})
    void signsByTheSchemeOfTheFile(String scheme) {
        kernel = KernelUnderTest.start(folder, Map.of("signature_scheme", scheme), evaluator);
        try (SocketClient client = kernel.connect()) {
            assertEquals("ok", client.reply(On.SHELL, client.execute("1 + 1")).text("status"));
        }
    }

    @Test
    void checksNothingWhenTheKeyIsEmpty() {
        kernel = KernelUnderTest.start(folder, Map.of("key", ""), evaluator);
        try (SocketClient client = kernel.connect()) {
            assertEquals("ok", client.reply(On.SHELL, client.execute("1 + 1")).text("status"));
        }
    }

    @Test
    void listensOnlyOnTheAddressOfTheFile() throws Exception {
        kernel = KernelUnderTest.start(folder, evaluator);
        int port = ((Long) kernel.connection().get("shell_port")).intValue();
        InetAddress other = InetAddress.getByName("127.0.0.2");
        try (Socket socket = new Socket()) {
            ConnectException refused = assertThrows(
                    ConnectException.class, () -> socket.connect(new InetSocketAddress(other, port), 2_000));
            assertTrue(refused.getMessage().contains("refused"));
        }
    }
}
