package kingpost.kernel.evaluation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** Comm messages both ways. */
@Timeout(60)
class CommIT {

    private static JShellEvaluator evaluator;

    private final RecordedOutput output = new RecordedOutput();

    @BeforeAll
    static void start() {
        evaluator = JShellEvaluator.start();
    }

    @AfterAll
    static void stop() {
        evaluator.close();
    }

    private void comm(String type, Map<String, Object> content, byte[]... buffers) {
        evaluator.comm(type, content, Map.of(), List.of(buffers), output);
    }

    private void run(String code) {
        assertInstanceOf(Outcome.Completed.class, evaluator.run(CellRequest.of(code), output));
    }

    @Test
    void closesWhatNobodyAccepts() {
        comm("comm_open", Map.of("comm_id", "1", "target_name", "nobody", "data", Map.of()));
        assertEquals(1, output.events.size());
        assertTrue(output.events.get(0).startsWith("comm_close"), output.events.toString());
        assertTrue(output.events.get(0).contains("comm_id=1"), output.events.toString());
        assertEquals(Map.of(), evaluator.comms());
        comm("comm_msg", Map.of("comm_id", "1", "data", Map.of()));
        assertEquals(1, output.events.size());
    }

    @Test
    void carriesMessagesAndBuffersBothWays() {
        run("""
                Comm.accept("echo", (comm, opening) -> comm.onMessage(message -> {
                    System.out.println("got " + message.data() + message.buffers().get(0).length);
                    comm.send(new CommMessage(Map.of("twice", 2 * (Integer) message.data().get("n")), Map.of(), message.buffers()));
                }).onClose(message -> System.out.println("closed")));""");
        comm("comm_open", Map.of("comm_id", "7", "target_name", "echo", "data", Map.of()));
        assertEquals(Map.of("7", "echo"), evaluator.comms());
        comm("comm_msg", Map.of("comm_id", "7", "data", Map.of("n", 21)), new byte[] {1, 2, 3});
        assertEquals("got {n=21}3\n", output.stdout.toString());
        String sent = output.events.get(1);
        assertTrue(sent.startsWith("comm_msg ") && sent.contains("{twice=42}") && sent.endsWith(" 1"), sent);
        comm("comm_close", Map.of("comm_id", "7", "data", Map.of()));
        assertTrue(output.stdout.toString().endsWith("closed\n"));
        assertEquals(Map.of(), evaluator.comms());
    }

    @Test
    void opensFromACell() {
        run("var line = Comm.open(\"panel\", CommMessage.of(Map.of(\"a\", 1)));");
        assertTrue(output.events.get(0).startsWith("comm_open"), output.events.toString());
        assertEquals(List.of("panel"), List.copyOf(evaluator.comms().values()));
        run("line.close();");
        assertEquals(Map.of(), evaluator.comms());
    }

    @Test
    void tellsOfAnActionThatFails() {
        run("Comm.accept(\"bad\", (comm, opening) -> { throw new IllegalStateException(\"no\"); });");
        comm("comm_open", Map.of("comm_id", "9", "target_name", "bad", "data", Map.of()));
        assertEquals("A comm message could not be handled: IllegalStateException: no\n", output.stderr.toString());
        assertTrue(output.events.get(0).startsWith("comm_close"), output.events.toString());
    }
}
