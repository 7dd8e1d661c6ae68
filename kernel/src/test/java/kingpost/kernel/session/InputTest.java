package kingpost.kernel.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import kingpost.kernel.message.Channel;
import kingpost.kernel.message.Message;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** Cells that ask the user. */
@Timeout(60)
class InputTest {

    private final ScriptedEvaluator evaluator = ScriptedEvaluator.withUsualCells();
    private final SessionBench bench = new SessionBench(evaluator);

    @AfterEach
    void closeBench() {
        bench.close();
    }

    @Test
    void asksTheClientOfTheCellAfterAllOutput() {
        evaluator.on("talk and ask", (cell, out) -> {
            out.stream("stdout", "first");
            return ScriptedEvaluator.value(out.input("pass: ", true).orElse("<end>"));
        });
        Message cell = bench.execute("talk and ask", "allow_stdin", true);
        SessionBench.Sent question = question(cell);
        assertEquals("stdin", question.where());
        assertEquals(Map.of("prompt", "pass: ", "password", true), question.message().content());
        assertEquals(cell.identities(), question.message().identities());
        assertEquals(List.of("busy", "execute_input", "stream first", "input_request"),
                bench.about(cell).stream().map(SessionBench.Sent::brief).toList());
        answer("c1", "secret", Optional.of(question.message()));
        assertEquals("secret", result(cell));
    }

    @Test
    void takesAnAnswerWithoutParent() {
        Message cell = bench.execute("ask", "allow_stdin", true);
        question(cell);
        answer("c1", "plain", Optional.empty());
        assertEquals("plain", result(cell));
    }

    @Test
    void takesTheEndOfInput() {
        Message cell = bench.execute("ask", "allow_stdin", true);
        question(cell);
        answer("c1", "\u0004", Optional.empty());
        assertEquals("<end>", result(cell));
    }

    @Test
    void ignoresAnswersOfOthersAndToOthersAndFromBefore() {
        answer("c1", "too early", Optional.empty());
        Message cell = bench.execute("ask", "allow_stdin", true);
        SessionBench.Sent question = question(cell);
        answer("c2", "from another client", Optional.of(question.message()));
        answer("c1", "to another question", Optional.of(SessionBench.request("x", "input_request", Map.of())));
        answer("c1", "right", Optional.of(question.message()));
        assertEquals("right", result(cell));
    }

    @Test
    void endsTheWaitWhenInterrupted() {
        Message cell = bench.execute("ask", "allow_stdin", true);
        question(cell);
        bench.send(Channel.CONTROL, "interrupt_request", Map.of());
        assertEquals("Interrupted", bench.reply(cell).get("ename"));
    }

    @Test
    void asksNobodyWhenTheClientCannotAnswer() {
        Message cell = bench.execute("ask");
        assertEquals("<end>", result(cell));
        assertTrue(bench.about(cell).stream().noneMatch(sent -> sent.type().equals("input_request")));
    }

    private SessionBench.Sent question(Message cell) {
        return bench.await(cell, sent -> sent.type().equals("input_request"));
    }

    private void answer(String client, String value, Optional<Message> question) {
        Message plain = SessionBench.request(client, "input_reply", Map.of("value", value));
        bench.session.received(Channel.STDIN, new Message(plain.identities(), plain.header(),
                question.map(Message::header), plain.metadata(), plain.content(), List.of()));
    }

    private Object result(Message cell) {
        SessionBench.Sent result = bench.await(cell, sent -> sent.type().equals("execute_result"));
        return ((Map<?, ?>) result.get("data")).get("text/plain");
    }
}
