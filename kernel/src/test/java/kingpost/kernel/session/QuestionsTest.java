package kingpost.kernel.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import kingpost.kernel.message.Channel;
import kingpost.kernel.message.Message;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** Completion, inspection and completeness, also beside a running cell. */
@Timeout(60)
class QuestionsTest {

    /** Two characters, three UTF-16 units. */
    private static final String SIGMA = "\uD835\uDF0E ";

    private final ScriptedEvaluator evaluator = ScriptedEvaluator.withUsualCells();
    private final SessionBench bench = new SessionBench(evaluator);

    @AfterEach
    void closeBench() {
        bench.close();
    }

    @Test
    void countsCharactersNotUnitsInCompletions() {
        SessionBench.Sent reply = bench.reply(bench.send(Channel.SHELL, "complete_request",
                Map.of("code", SIGMA + "al \uD835\uDF0E", "cursor_pos", 4)));
        assertEquals(List.of("alpha", "beta"), reply.get("matches"));
        assertEquals(2, reply.get("cursor_start"));
        assertEquals(4, reply.get("cursor_end"));
        List<?> typed = (List<?>) ((Map<?, ?>) reply.get("metadata")).get("_jupyter_types_experimental");
        assertEquals(Map.of("start", 2, "end", 4, "text", "beta", "type", "function", "signature", "beta()"),
                typed.get(1));
    }

    @Test
    void givesTheEvaluatorUnitsNotCharacters() {
        Message request = bench.send(Channel.SHELL, "inspect_request",
                Map.of("code", "known" + SIGMA, "cursor_pos", 7, "detail_level", 1));
        assertEquals(Map.of("text/plain", "known at 8, detail 1"), bench.reply(request).get("data"));
    }

    @Test
    void bringsACursorOutsideTheCodeBackIntoIt() {
        for (Object cursor : List.of(-3, 99, new BigInteger("99999999999999999999"))) {
            SessionBench.Sent reply = bench.reply(bench.send(Channel.SHELL, "inspect_request",
                    Map.of("code", "known", "cursor_pos", cursor)));
            assertTrue((Boolean) reply.get("found"));
        }
    }

    @Test
    void findsNothingWithoutFailing() {
        SessionBench.Sent reply = bench.reply(bench.send(Channel.SHELL, "inspect_request", Map.of("code", "?")));
        assertEquals(false, reply.get("found"));
        assertEquals(Map.of(), reply.get("data"));
    }

    @Test
    void givesAnIndentOnlyWithIncompleteCode() {
        assertEquals(Map.of("status", "incomplete", "indent", "    "), bench.reply(bench.send(Channel.SHELL,
                "is_complete_request", Map.of("code", "for (;;) {"))).message().content());
        assertEquals(Map.of("status", "complete"), bench.reply(bench.send(Channel.SHELL,
                "is_complete_request", Map.of("code", "1"))).message().content());
    }

    @Test
    void answersWhileACellRunsAndKeepsTheCellBusy() {
        Message cell = bench.execute("sleep");
        bench.await(cell, sent -> sent.type().equals("execute_input"));
        Message question = bench.send(Channel.SHELL, "complete_request", Map.of("code", "a", "cursor_pos", 1));
        assertEquals(List.of("busy", "complete_reply", "idle"), bench.briefs(question));
        bench.all(bench.send(Channel.CONTROL, "kernel_info_request", Map.of()));
        bench.session.interrupt();
        bench.reply(cell);
        List<String> briefs = bench.briefs(cell);
        // the control channel has a thread of its own, so its renewed busy may come while the cell is ending
        assertEquals(3, briefs.stream().filter("busy"::equals).count(), briefs::toString);
        assertEquals("busy", briefs.get(0));
        assertEquals(List.of("execute_input", "error", "execute_reply error", "idle"),
                briefs.stream().filter(brief -> !brief.equals("busy")).toList());
        assertEquals("idle", briefs.get(briefs.size() - 1));
    }

    @Test
    void answersOnlyTheNewestOfManyCompletionsThatWait() throws InterruptedException {
        Message cell = bench.execute("sleep");
        bench.await(cell, sent -> sent.type().equals("execute_input"));
        List<Message> requests = new ArrayList<>();
        for (int i = 0; i < 50; i++) {
            requests.add(bench.send(Channel.SHELL, "complete_request", Map.of("code", "al", "cursor_pos", 2)));
        }
        Message last = requests.get(requests.size() - 1);
        assertFalse(((List<?>) bench.reply(last).get("matches")).isEmpty());
        requests.forEach(request -> assertEquals(List.of("busy", "complete_reply", "idle"), bench.briefs(request)));
        bench.session.interrupt();
        bench.all(cell);
    }
}
