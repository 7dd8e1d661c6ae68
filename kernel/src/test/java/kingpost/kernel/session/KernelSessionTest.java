package kingpost.kernel.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.CountDownLatch;
import java.util.stream.Collectors;
import kingpost.kernel.message.Channel;
import kingpost.kernel.message.Message;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** What is answered, in which order, whatever happens. */
@Timeout(60)
class KernelSessionTest {

    private final ScriptedEvaluator evaluator = ScriptedEvaluator.withUsualCells();
    private final SessionBench bench = new SessionBench(evaluator);

    @AfterEach
    void closeBench() {
        bench.close();
    }

    @Test
    void saysOnceThatItIsStartingBeforeAnythingElse() {
        bench.all(bench.send(Channel.SHELL, "kernel_info_request", Map.of()));
        List<String> briefs = bench.everything().stream().map(SessionBench.Sent::brief).toList();
        assertEquals("starting", briefs.get(0));
        assertEquals(1, briefs.stream().filter("starting"::equals).count());
        assertTrue(bench.everything().get(0).message().parent().isEmpty());
    }

    @Test
    void welcomesASubscriberUnderItsTopic() {
        bench.session.subscribed("kernel.");
        SessionBench.Sent welcome = bench.everything().get(bench.everything().size() - 1);
        assertEquals("iopub_welcome", welcome.type());
        assertEquals("kernel.", welcome.get("subscription"));
        assertEquals("kernel.", new String(welcome.message().identities().get(0).bytes()));
    }

    @Test
    void answersToTheIdentitiesAndWithTheWholeHeaderOfTheRequest() {
        Message request = bench.send(Channel.CONTROL, "kernel_info_request", Map.of());
        Message reply = bench.reply(request).message();
        assertEquals(request.identities(), reply.identities());
        assertEquals(request.header().fields(), reply.parent().orElseThrow().fields());
        assertTrue(reply.metadata().get("started") instanceof String);
    }

    @Test
    void keepsOneSessionAndNeverRepeatsAnId() {
        for (int i = 0; i < 5; i++) {
            bench.all(bench.execute("hello"));
        }
        List<Message> sent = bench.everything().stream().map(SessionBench.Sent::message).toList();
        assertEquals(1, sent.stream().map(message -> message.header().session()).distinct().count());
        assertEquals(sent.size(), sent.stream().map(message -> message.header().id()).distinct().count());
    }

    @Test
    void runsOnlyUnknownRequestsWithoutReply() {
        for (String type : List.of("make_coffee_request", "create_subshell_request", "list_subshell_request")) {
            assertEquals(List.of("busy", "idle"), bench.briefs(bench.send(Channel.CONTROL, type, Map.of())));
        }
    }

    @Test
    void refusesARequestForASubshell() {
        Message request = SessionBench.request("c1", "execute_request", Map.of("code", "1 + 1"),
                Map.of("subshell_id", "s1"), List.of());
        bench.session.received(Channel.SHELL, request);
        assertEquals("error", bench.reply(request).get("status"));
        assertEquals(List.of("busy", "execute_reply error", "idle"), bench.briefs(request));
    }

    @Test
    void refusesADebuggerInTheDebugAdaptersWay() {
        Message request = bench.send(Channel.CONTROL, "debug_request",
                Map.of("type", "request", "seq", 3, "command", "initialize"));
        SessionBench.Sent reply = bench.reply(request);
        assertEquals(false, reply.get("success"));
        assertEquals(3, reply.get("request_seq"));
        assertEquals("initialize", reply.get("command"));
    }

    @Test
    void announcesNeitherDebuggerNorSubshells() {
        SessionBench.Sent reply = bench.reply(bench.send(Channel.SHELL, "kernel_info_request", Map.of()));
        assertEquals(List.of(), reply.get("supported_features"));
        assertFalse(reply.message().content().containsKey("debugger"));
        assertEquals("java", ((Map<?, ?>) reply.get("language_info")).get("name"));
    }

    @Test
    void answersACellOnTheControlChannelWithAnError() {
        Message request = bench.send(Channel.CONTROL, "execute_request", Map.of("code", "1 + 1"));
        assertEquals(List.of("busy", "execute_reply error", "idle"), bench.briefs(request));
    }

    @Test
    void answersMissingAndWrongFieldsWithAnErrorThatNamesThem() {
        Set<String> complaints = new TreeSet<>();
        for (Map<String, Object> content : List.<Map<String, Object>>of(Map.of(), Map.of("code", 7),
                Map.of("code", "x", "silent", "no"), Map.of("code", "x", "user_expressions", Map.of("a", 1)))) {
            complaints.add((String) bench.reply(bench.send(Channel.SHELL, "execute_request", content)).get("evalue"));
        }
        assertEquals(List.of("execute_request: field code is absent; give text.",
                "execute_request: field code is of the wrong kind; give text.",
                "execute_request: field silent is of the wrong kind; give true or false.",
                "execute_request: field user_expressions is of the wrong kind; give an object of texts."),
                List.copyOf(complaints));
    }

    @Test
    void listsCommsOfATargetOrAll() {
        assertEquals(Map.of("c1", Map.of("target_name", "slider")),
                bench.reply(bench.send(Channel.SHELL, "comm_info_request", Map.of("target_name", "slider"))).get("comms"));
        Map<?, ?> all = (Map<?, ?>) bench.reply(bench.send(Channel.SHELL, "comm_info_request", Map.of())).get("comms");
        assertEquals(Set.of("c1", "c2"), all.keySet());
    }

    @Test
    void closesACommThatNobodyWantsToOpen() {
        Message request = bench.send(Channel.SHELL, "comm_open",
                Map.of("comm_id", "new", "target_name", "nothing", "data", Map.of()));
        assertEquals(List.of("busy", "comm_close", "idle"), bench.briefs(request));
    }

    @Test
    void passesCommBuffersBothWaysUnderTheCommMessage() {
        Message request = SessionBench.request("c1", "comm_msg", Map.of("comm_id", "c1", "data", Map.of("a", 1)),
                Map.of(), List.of(new byte[] {1, 2}, new byte[0]));
        bench.session.received(Channel.SHELL, request);
        assertEquals(List.of("busy", "stream heard c1", "comm_msg", "idle"), bench.briefs(request));
        Message back = bench.all(request).get(2).message();
        assertEquals(request.buffers(), back.buffers());
    }

    @Test
    void keepsOnlyTheNewestOfASlidersUpdatesThatWaitBehindACell() {
        Message cell = bench.execute("sleep");
        bench.await(cell, sent -> sent.type().equals("execute_input"));
        Message first = update("c1", Map.of("value", 1));
        Message other = update("c2", Map.of("value", 7));
        Message custom = bench.send(Channel.SHELL, "comm_msg",
                Map.of("comm_id", "c3", "data", Map.of("method", "custom", "content", Map.of("event", "click"))));
        Message second = update("c1", Map.of("value", 2));
        Message customAgain = bench.send(Channel.SHELL, "comm_msg",
                Map.of("comm_id", "c3", "data", Map.of("method", "custom", "content", Map.of("event", "click"))));
        Message moreThanTheNext = update("c1", Map.of("value", 3, "step", 1));
        Message last = update("c1", Map.of("value", 4));
        Message lastCell = bench.execute("1 + 1");
        Message afterTheCell = update("c1", Map.of("value", 5));
        bench.send(Channel.CONTROL, "interrupt_request", Map.of());
        bench.all(afterTheCell);
        for (Message overtaken : List.of(first, second)) {
            assertEquals(List.of("busy", "idle"), bench.briefs(overtaken));
        }
        for (Message served : List.of(other, custom, customAgain, moreThanTheNext, last, afterTheCell)) {
            assertEquals(4, bench.briefs(served).size(), () -> "" + bench.briefs(served));
        }
        bench.all(lastCell);
    }

    private Message update(String comm, Map<String, Object> state) {
        return bench.send(Channel.SHELL, "comm_msg",
                Map.of("comm_id", comm, "data", Map.of("method", "update", "state", state, "buffer_paths", List.of())));
    }

    @Test
    void doesNotBeginACellThatWasInterruptedWhileItWaitedForTheEvaluator() throws InterruptedException {
        CountDownLatch ready = new CountDownLatch(1);
        try (SessionBench slow = new SessionBench(() -> {
            try {
                ready.await();
            } catch (InterruptedException e) {
                throw new IllegalStateException(e);
            }
            return evaluator;
        })) {
            Message cell = slow.execute("1 + 1");
            slow.await(cell, sent -> sent.type().equals("execute_input"));
            slow.all(slow.send(Channel.CONTROL, "interrupt_request", Map.of()));
            ready.countDown();
            assertEquals("Interrupted", slow.reply(cell).get("ename"));
            assertEquals("execute_reply ok", slow.reply(slow.execute("1 + 1")).brief());
        }
    }

    @Test
    void refusesACommMessageWhoseDataIsNoObject() {
        assertEquals(List.of("busy", "idle"),
                bench.briefs(bench.send(Channel.SHELL, "comm_msg", Map.of("comm_id", "c1", "data", "text"))));
        assertEquals(List.of("busy", "stream heard c1", "comm_msg", "idle"),
                bench.briefs(bench.send(Channel.SHELL, "comm_msg", Map.of("comm_id", "c1"))));
    }

    @Test
    void tellsWhatItTakesOfTheMachine() {
        Message request = bench.send(Channel.CONTROL, "usage_request", Map.of());
        SessionBench.Sent reply = bench.reply(request);
        assertEquals(ProcessHandle.current().pid(), reply.get("pid"));
        long memory = (Long) reply.get("kernel_memory");
        assertTrue(memory > 10_000_000 && memory < (Long) ((Map<?, ?>) reply.get("host_virtual_memory")).get("total"));
    }

    @Test
    void answersHistoryRequests() {
        bench.all(bench.execute("1 + 1"));
        bench.all(bench.execute("hello"));
        bench.all(bench.execute("hello", "store_history", false));
        assertEquals(List.of(List.of(1, 1, "1 + 1"), List.of(1, 2, "hello")),
                history(Map.of("hist_access_type", "tail", "n", 5, "output", false, "raw", true)));
        List<Object> pair = new ArrayList<>(List.of("1 + 1", "2"));
        assertEquals(List.of(List.of(1, 1, pair)), history(Map.of("hist_access_type", "range", "session", 0,
                "start", 1, "stop", 2, "output", true)));
        assertEquals(List.of(List.of(1, 2, "hello")),
                history(Map.of("hist_access_type", "search", "pattern", "h?llo*", "n", 3, "unique", true)));
        assertEquals("error", bench.reply(bench.send(Channel.SHELL, "history_request",
                Map.of("hist_access_type", "dig"))).get("status"));
    }

    @Test
    void tellsEveryoneThatItShutsDownAndWhetherToRestart() {
        Message request = bench.send(Channel.SHELL, "shutdown_request", Map.of("restart", true));
        assertEquals(List.of("busy", "shutdown_reply", "shutdown_reply", "idle"), bench.briefs(request));
        assertEquals(List.of("iopub", "iopub", "shell", "iopub"),
                bench.all(request).stream().map(SessionBench.Sent::where).toList());
        assertTrue(bench.session.awaitEnd());
    }

    @Test
    void answersTwentyKernelInfosBeforeTheEvaluatorExists() {
        var never = new CountDownLatch(1);
        try (SessionBench slow = new SessionBench(() -> {
            try {
                never.await();
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
            return evaluator;
        })) {
            List<Message> requests = new ArrayList<>();
            for (int i = 0; i < 10; i++) {
                requests.add(slow.send(Channel.SHELL, "kernel_info_request", Map.of()));
                requests.add(slow.send(Channel.CONTROL, "kernel_info_request", Map.of()));
            }
            assertEquals(Set.of(List.of("busy", "kernel_info_reply", "idle")),
                    requests.stream().map(slow::briefs).collect(Collectors.toSet()));
            never.countDown();
        }
    }

    private Object history(Map<String, Object> content) {
        return bench.reply(bench.send(Channel.SHELL, "history_request", content)).get("history");
    }
}
