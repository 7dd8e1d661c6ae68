package kingpost.kernel.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import kingpost.kernel.display.MimeBundle;
import kingpost.kernel.evaluation.CellOutput;
import kingpost.kernel.evaluation.Outcome;
import kingpost.kernel.message.Channel;
import kingpost.kernel.message.Message;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** How cells are numbered, run, answered and aborted. */
@Timeout(60)
class CellsTest {

    private final ScriptedEvaluator evaluator = ScriptedEvaluator.withUsualCells();
    private final SessionBench bench = new SessionBench(evaluator);

    @AfterEach
    void closeBench() {
        bench.close();
    }

    @Test
    void sendsEverythingInOrder() {
        evaluator.on("all", (cell, out) -> {
            out.stream("stdout", "a");
            out.stream("stdout", "b");
            out.stream("stderr", "c");
            out.display(MimeBundle.plain("d"), Optional.of("id"));
            out.update(MimeBundle.plain("e"), "id");
            out.stream("stdout", "f");
            return ScriptedEvaluator.value("g");
        });
        assertEquals(List.of("busy", "execute_input", "stream ab", "stream c", "display_data", "update_display_data",
                "stream f", "execute_result", "execute_reply ok", "idle"), bench.briefs(bench.execute("all")));
    }

    @Test
    void givesOneNumberInAllMessagesOfACell() {
        bench.all(bench.execute("hello"));
        Message request = bench.execute("1 + 1");
        for (SessionBench.Sent sent : bench.all(request)) {
            Object number = sent.get("execution_count");
            assertTrue(number == null || number.equals(2), sent.brief());
        }
    }

    @Test
    void returnsCodeUnchanged() {
        String code = "  var x\u0001 = \"\uD835\uDF0E\\n\";\r\n\t//<&>\u2028";
        assertEquals(code, bench.await(bench.execute(code), sent -> sent.type().equals("execute_input")).get("code"));
    }

    @Test
    void showsTheErrorOnceAndRepliesWithTheSameFields() {
        Message request = bench.execute("fail");
        List<SessionBench.Sent> sent = bench.all(request);
        assertEquals(List.of("busy", "execute_input", "error", "execute_reply error", "idle"), bench.briefs(request));
        for (String field : List.of("ename", "evalue", "traceback")) {
            assertEquals(sent.get(2).get(field), sent.get(3).get(field));
        }
        assertEquals(1, sent.get(3).get("execution_count"));
    }

    @Test
    void publishesIdleAfterFailureOfTheEvaluatorItself() {
        evaluator.on("break", (cell, out) -> {
            throw new AssertionError("broken");
        });
        Message request = bench.execute("break");
        assertEquals(List.of("busy", "execute_input", "error", "execute_reply error", "idle"), bench.briefs(request));
        assertEquals("KernelError", bench.reply(request).get("ename"));
        assertEquals("execute_reply ok", bench.reply(bench.execute("1 + 1")).brief());
    }

    @Test
    void failsCellsClearlyWhenTheEvaluatorCannotStart() {
        try (SessionBench broken = new SessionBench(() -> {
            throw new IllegalStateException("no memory for it");
        })) {
            String message = (String) broken.reply(broken.execute("1 + 1")).get("evalue");
            assertTrue(message.contains("could not be started: no memory for it"), message);
        }
    }

    @Test
    void keepsStreamsButNoInputResultOrNumberOfASilentCell() {
        evaluator.on("talk", (cell, out) -> {
            out.stream("stdout", "heard");
            return ScriptedEvaluator.value("2");
        });
        assertEquals(List.of("busy", "stream heard", "execute_reply ok", "idle"),
                bench.briefs(bench.execute("talk", "silent", true, "store_history", true)));
        assertEquals(1, bench.reply(bench.execute("1 + 1")).get("execution_count"));
    }

    @Test
    void showsTheLastNumberForACellThatIsNotStored() {
        bench.all(bench.execute("1 + 1"));
        Message unstored = bench.execute("1 + 1", "store_history", false);
        for (SessionBench.Sent sent : bench.all(unstored)) {
            Object number = sent.get("execution_count");
            assertTrue(number == null || number.equals(1), sent.brief());
        }
        assertEquals(2, bench.reply(bench.execute("1 + 1")).get("execution_count"));
    }

    @Test
    void givesABlankCellNoNumberAndNoResult() {
        assertEquals(List.of("busy", "execute_input", "execute_reply ok", "idle"), bench.briefs(bench.execute(" \n")));
        assertEquals(1, bench.reply(bench.execute("1 + 1")).get("execution_count"));
    }

    @Test
    void answersUserExpressionsGoodAndBad() {
        Map<String, Outcome.ExpressionValue> values = new LinkedHashMap<>();
        values.put("good", new Outcome.ExpressionValue.Shown(MimeBundle.plain("5")));
        values.put("bad", new Outcome.ExpressionValue.Failed("E", "m", List.of("t")));
        evaluator.on("", (cell, out) -> new Outcome.Completed(Optional.empty(), values,
                List.of(Map.of("source", "page", "data", Map.of("text/plain", "help"), "start", 0))));
        SessionBench.Sent reply = bench.reply(bench.execute("", "silent", true, "user_expressions", Map.of("good", "2+3")));
        Map<?, ?> found = (Map<?, ?>) reply.get("user_expressions");
        assertEquals(Map.of("status", "ok", "data", Map.of("text/plain", "5"), "metadata", Map.of()), found.get("good"));
        assertEquals(Map.of("status", "error", "ename", "E", "evalue", "m", "traceback", List.of("t")), found.get("bad"));
        assertEquals(1, ((List<?>) reply.get("payload")).size());
    }

    @Test
    void abortsCellsQueuedAtAnErrorButNothingElseAndNothingLater() {
        CountDownLatch queued = new CountDownLatch(1);
        evaluator.on("fail later", (cell, out) -> {
            queued.await();
            return ScriptedEvaluator.failed("E", "m");
        });
        bench.execute("fail later");
        Message second = bench.execute("1 + 1");
        Message info = bench.send(Channel.SHELL, "kernel_info_request", Map.of());
        Message third = bench.execute("1 + 1", "silent", true);
        queued.countDown();
        bench.all(third);
        Message later = bench.execute("1 + 1");
        assertEquals(List.of("busy", "execute_reply aborted", "idle"), bench.briefs(second));
        assertEquals(Map.of("status", "aborted"), bench.reply(second).message().content());
        assertEquals("kernel_info_reply", bench.reply(info).type());
        assertEquals("execute_reply aborted", bench.reply(third).brief());
        assertEquals("execute_reply ok", bench.reply(later).brief());
        assertEquals(2, bench.reply(later).get("execution_count"));
    }

    @Test
    void goesOnAfterAnErrorWhenToldSo() {
        Message first = bench.execute("fail", "stop_on_error", false);
        Message second = bench.execute("1 + 1");
        assertEquals("execute_reply error", bench.reply(first).brief());
        assertEquals("execute_reply ok", bench.reply(second).brief());
    }

    @Test
    void abortsNothingForASilentError() {
        CountDownLatch queued = new CountDownLatch(1);
        evaluator.on("fail later", (cell, out) -> {
            queued.await();
            return ScriptedEvaluator.failed("E", "m");
        });
        Message silent = bench.execute("fail later", "silent", true);
        Message next = bench.execute("1 + 1");
        queued.countDown();
        assertEquals("execute_reply ok", bench.reply(next).brief());
        assertEquals(List.of("busy", "execute_reply error", "idle"), bench.briefs(silent));
    }

    @Test
    void interruptsTheCellAndAbortsTheQueueEvenWhenItShouldGoOnAfterErrors() {
        Message running = bench.execute("sleep", "stop_on_error", false);
        Message queued = bench.execute("1 + 1");
        bench.await(running, sent -> sent.type().equals("execute_input"));
        Message interrupt = bench.send(Channel.CONTROL, "interrupt_request", Map.of());
        assertEquals("ok", bench.reply(interrupt).get("status"));
        assertEquals("Interrupted", bench.reply(running).get("ename"));
        assertEquals("execute_reply aborted", bench.reply(queued).brief());
    }

    @Test
    void takesAnInterruptWithoutACellLightly() {
        for (int i = 0; i < 3; i++) {
            assertEquals("ok", bench.reply(bench.send(Channel.CONTROL, "interrupt_request", Map.of())).get("status"));
        }
        assertEquals("execute_reply ok", bench.reply(bench.execute("1 + 1")).brief());
    }

    @Test
    void sendsLateOutputToTheCellThatItBelongsTo() {
        Message first = bench.execute("hello");
        bench.all(first);
        CellOutput late = evaluator.lastOutput;
        Message second = bench.execute("sleep");
        bench.await(second, sent -> sent.type().equals("execute_input"));
        late.stream("stdout", "afterwards");
        bench.await(first, sent -> sent.brief().equals("stream afterwards"));
        bench.session.interrupt();
        bench.all(second);
    }

    @Test
    void givesLateReadersTheEndOfInput() throws InterruptedException {
        bench.all(bench.execute("hello", "allow_stdin", true));
        assertEquals(Optional.empty(), evaluator.lastOutput.input("? ", false));
    }

    /** As when the memory is full: the log itself needs some. */
    @Test
    void goesOnAfterAFailureThatCannotBeLogged() {
        evaluator.on("full", (cell, out) -> {
            throw new OutOfMemoryError("no room") {
                @Override
                public void printStackTrace(java.io.PrintWriter to) {
                    throw new OutOfMemoryError("no room for the log either");
                }
            };
        });
        assertEquals("execute_reply error", bench.briefs(bench.execute("full")).get(3));
        assertTrue(bench.briefs(bench.execute("1 + 1")).contains("execute_reply ok"));
    }
}
