package kingpost.kernel.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.logging.Handler;
import java.util.logging.LogRecord;
import java.util.logging.Logger;
import kingpost.kernel.client.KernelUnderTest;
import kingpost.kernel.client.RawPeer;
import kingpost.kernel.client.SocketClient;
import kingpost.kernel.client.SocketClient.On;
import kingpost.kernel.session.ScriptedEvaluator;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** When a thread of the transport dies, the kernel ends, so that the front end sees it and can start another. */
@Timeout(60)
class TransportBreaksIT {

    @TempDir
    Path folder;

    /** Fails in the transport's thread, in which it is told that a connection was cut. */
    private static final class Deadly extends Handler {
        @Override
        public void publish(LogRecord line) {
            if (line.getMessage().startsWith("A connection")) {
                throw new AssertionError("made for the test");
            }
        }

        @Override
        public void flush() {
            // nothing is kept
        }

        @Override
        public void close() {
            // nothing is open
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"shell_port", "hb_port"})
    void endsWithOneLineThatSaysWhy(String port) throws Exception {
        Logger log = Logger.getLogger("kingpost.channels");
        Handler deadly = new Deadly();
        log.addHandler(deadly);
        log.setUseParentHandlers(false);
        KernelUnderTest kernel = KernelUnderTest.start(folder, ScriptedEvaluator.withUsualCells());
        try (SocketClient client = kernel.connect(); RawPeer peer = RawPeer.tcp((Long) kernel.connection().get(port))) {
            assertEquals("ok", client.reply(On.SHELL, client.execute("1 + 1")).text("status"));
            peer.send("GET / HTTP/1.1\r\nHost: localhost\r\n\r\n".getBytes(StandardCharsets.US_ASCII));
            assertEquals(1, kernel.exitStatus());
            assertTrue(kernel.errors().matches("Transport: its thread \\S+ has ended \\(.*made for the test\\), so that no client"
                    + " can be served any more; the kernel ends, start it again\\.\\R"), kernel.errors());
        } finally {
            log.removeHandler(deadly);
            log.setUseParentHandlers(true);
        }
    }
}
