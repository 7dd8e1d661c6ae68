package kingpost.kernel.session;

import static org.junit.jupiter.api.Assertions.fail;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Predicate;
import java.util.function.Supplier;
import kingpost.kernel.client.MessageSchema;
import kingpost.kernel.evaluation.Evaluator;
import kingpost.kernel.message.Channel;
import kingpost.kernel.message.Frame;
import kingpost.kernel.message.Header;
import kingpost.kernel.message.Message;
import kingpost.kernel.message.Outlet;
import kingpost.kernel.wire.Json;

/** A session without sockets, and everything that it sends, in one order; each message is checked by the schema. */
final class SessionBench implements AutoCloseable, Outlet {

    /** A message that the session sent: {@code where} is iopub or a channel's label. */
    record Sent(String where, Message message) {
        String type() {
            return message.type();
        }

        Object get(String field) {
            return message.content().get(field);
        }

        String brief() {
            return switch (type()) {
                case "status" -> (String) get("execution_state");
                case "stream" -> "stream " + get("text");
                case "execute_reply" -> "execute_reply " + get("status");
                default -> type();
            };
        }
    }

    private static final long PATIENCE_NANOS = 40_000_000_000L;

    final KernelSession session;
    private final List<Sent> sent = new ArrayList<>();

    SessionBench(Evaluator evaluator) {
        this(() -> evaluator);
    }

    SessionBench(Supplier<Evaluator> maker) {
        session = new KernelSession(new KernelDescription("test", Map.of("shell_port", 1, "iopub_port", 2,
                "stdin_port", 3, "control_port", 4, "hb_port", 5)), maker, new MemoryHistory(), this,
                new OutputLimits(1_000, 10, 100_000));
        session.start();
    }

    /** A request that could come from a client named {@code client}. */
    static Message request(String client, String type, Map<String, Object> content) {
        return request(client, type, content, Map.of(), List.of());
    }

    static Message request(String client, String type, Map<String, Object> content, Map<String, Object> moreHeader,
                           List<byte[]> buffers) {
        Map<String, Object> header = new LinkedHashMap<>(Map.of("msg_id", UUID.randomUUID().toString(),
                "session", client, "username", "tester", "date", "2026-11-25T08:00:00.000001Z", "msg_type", type,
                "version", "5.5", "unknown_field", 1L));
        header.putAll(moreHeader);
        return new Message(List.of(Frame.of(client.getBytes()), Frame.of(new byte[] {0, 1})), new Header(header),
                Optional.empty(), Map.of(), content, Frame.listOf(buffers));
    }

    Message send(Channel channel, String type, Map<String, Object> content) {
        Message message = request("c1", type, content);
        session.received(channel, message);
        return message;
    }

    Message execute(String code, Object... more) {
        Map<String, Object> content = new LinkedHashMap<>();
        content.put("code", code);
        for (int i = 0; i < more.length; i += 2) {
            content.put((String) more[i], more[i + 1]);
        }
        return send(Channel.SHELL, "execute_request", content);
    }

    /** Everything sent for a request, once its idle is there. */
    List<Sent> all(Message request) {
        await(request, sent -> sent.brief().equals("idle"));
        return about(request);
    }

    List<String> briefs(Message request) {
        return all(request).stream().map(Sent::brief).toList();
    }

    /** The reply to a request. */
    Sent reply(Message request) {
        Sent reply = await(request, sent -> sent.type().endsWith("_reply") && !sent.where().equals("iopub"));
        return reply;
    }

    /** The first message for a request that fits, when it comes. */
    synchronized Sent await(Message request, Predicate<Sent> wanted) {
        long end = System.nanoTime() + PATIENCE_NANOS;
        while (System.nanoTime() < end) {
            for (Sent each : about(request)) {
                if (wanted.test(each)) {
                    return each;
                }
            }
            try {
                wait(50);
            } catch (InterruptedException e) {
                throw new IllegalStateException(e);
            }
        }
        return fail("not sent for " + request.type() + "; sent: " + about(request).stream().map(Sent::brief).toList());
    }

    synchronized List<Sent> about(Message request) {
        return sent.stream().filter(each -> each.message().parent()
                .filter(parent -> parent.equals(request.header())).isPresent()).toList();
    }

    synchronized List<Sent> everything() {
        return List.copyOf(sent);
    }

    @Override
    public void send(Channel channel, Message message) {
        keep(new Sent(channel.label(), message));
    }

    @Override
    public void publish(Message message) {
        keep(new Sent("iopub", message));
    }

    @Override
    public void close() {
        session.end();
        session.close();
    }

    private synchronized void keep(Sent message) {
        Message m = message.message();
        MessageSchema.check(m.header().fields(), m.parent().map(Header::fields).orElse(Map.of()),
                Json.readObject(Json.write(m.content())));
        sent.add(message);
        notifyAll();
    }
}
