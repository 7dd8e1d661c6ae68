package kingpost.kernel.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import kingpost.kernel.client.KernelUnderTest;
import kingpost.kernel.client.Received;
import kingpost.kernel.client.SocketClient;
import kingpost.kernel.client.SocketClient.On;
import kingpost.kernel.session.ScriptedEvaluator;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

@Timeout(60)
class KernelProcessIT {

    @TempDir
    Path folder;

    private final ScriptedEvaluator evaluator = ScriptedEvaluator.withUsualCells();
    private KernelUnderTest kernel;
    private SocketClient client;

    @BeforeEach
    void startKernel() {
        kernel = KernelUnderTest.start(folder, evaluator);
        client = kernel.connect();
    }

    @AfterEach
    void stopKernel() {
        client.close();
        kernel.close();
    }

    @Test
    void runsACellInTheOrderOfTheProtocol() {
        String id = client.execute("1 + 1");
        Received reply = client.reply(On.SHELL, id);
        assertEquals("ok", reply.text("status"));
        assertEquals(1L, reply.content().get("execution_count"));
        assertEquals(List.of("status busy", "execute_input", "execute_result", "status idle"), client.briefs(id));
    }

    @Test
    void answersKernelInfoOnShellAndControl() {
        for (On channel : List.of(On.SHELL, On.CONTROL)) {
            for (int i = 0; i < 10; i++) {
                String id = client.send(channel, "kernel_info_request", Map.of());
                assertEquals("kernel_info_reply", client.reply(channel, id).type());
                assertEquals(List.of("status busy", "status idle"), client.briefs(id));
            }
        }
    }

    @Test
    void echoesTheHeartbeat() {
        assertArrayEquals(new byte[] {7, 0, 9}, client.beat(new byte[] {7, 0, 9}));
    }

    @Test
    void interruptsACellAndAbortsTheQueue() {
        String running = client.execute("sleep");
        String queued = client.execute("1 + 1");
        client.await(On.IOPUB, message -> message.type().equals("execute_input"));
        // answered beside the running cell, and in order of arrival: the queued cell is there by then
        client.ask(On.SHELL, "complete_request", Map.of("code", "al", "cursor_pos", 2));
        assertEquals("ok", client.ask(On.CONTROL, "interrupt_request", Map.of()).text("status"));
        assertEquals("Interrupted", client.reply(On.SHELL, running).text("ename"));
        assertEquals(Map.of("status", "aborted"), client.reply(On.SHELL, queued).content());
        List<String> said = client.briefs(queued);
        assertEquals("status busy", said.get(0));
        assertEquals("status idle", said.get(said.size() - 1));
        // busy may be said again, after the idle of the interrupt request; an input or an output never is
        assertTrue(said.stream().allMatch(brief -> brief.startsWith("status ")), said.toString());
        assertEquals("ok", client.reply(On.SHELL, client.execute("1 + 1")).text("status"));
    }

    @Test
    void asksTheClientOfTheCellForInput() {
        String id = client.execute("ask", Map.of("allow_stdin", true));
        Received question = client.await(On.STDIN, message -> true);
        assertEquals(Map.of("prompt", "name? ", "password", false), question.content());
        client.send(On.STDIN, "input_reply", Map.of("value", "Ada"), question.header(), Map.of(), List.of());
        client.reply(On.SHELL, id);
        Received result = client.await(On.IOPUB, message -> message.type().equals("execute_result"));
        assertEquals(Map.of("text/plain", "Ada"), result.content().get("data"));
    }

    @Test
    void shutsDownQuicklyWhileACellRuns() {
        client.execute("sleep");
        client.await(On.IOPUB, message -> message.type().equals("execute_input"));
        long begin = System.nanoTime();
        Received reply = client.ask(On.CONTROL, "shutdown_request", Map.of("restart", true));
        assertEquals(true, reply.content().get("restart"));
        client.await(On.IOPUB, message -> message.type().equals("shutdown_reply"));
        assertEquals(0, kernel.exitStatus());
        assertTrue(evaluator.closed);
        assertTrue(Duration.ofNanos(System.nanoTime() - begin).toMillis() < 30_000);
    }
}
