package kingpost.kernel.session;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import kingpost.kernel.client.MessageSchema;
import kingpost.kernel.message.Channel;
import kingpost.kernel.message.Header;
import kingpost.kernel.message.Message;
import kingpost.kernel.message.Outlet;
import kingpost.kernel.wire.Json;

/**
 * Watches, without keeping what is sent, that each request of shell and control is answered in the protocol's order:
 * busy first, idle last, at most one reply, each message as the schema says.
 */
final class Brackets implements Outlet {

    private static final long PATIENCE_NANOS = TimeUnit.SECONDS.toNanos(30);

    /** Where the answer to one request stands. */
    private static final class Answer {
        private boolean busy;
        private int replies;
    }

    private final int schemaEvery;
    private long seen;
    private final Map<String, Answer> open = new LinkedHashMap<>();
    private final List<String> faults = new ArrayList<>();

    /** @param schemaEvery one message in so many is held against the schema */
    Brackets(int schemaEvery) {
        this.schemaEvery = schemaEvery;
    }

    /** From now on this request must be answered, unless it is on stdin, where nothing is. */
    synchronized void expect(Channel channel, Message request) {
        if (channel != Channel.STDIN) {
            open.put(request.header().id(), new Answer());
        }
    }

    /** Waits until every request has its idle. */
    synchronized void awaitAll(String when) throws InterruptedException {
        long end = System.nanoTime() + PATIENCE_NANOS;
        while (!open.isEmpty() && System.nanoTime() < end) {
            wait(100);
        }
        if (!open.isEmpty()) {
            throw new AssertionError(when + ": without idle: " + open.keySet());
        }
    }

    synchronized List<String> faults() {
        return List.copyOf(faults);
    }

    @Override
    public synchronized void send(Channel channel, Message message) {
        Answer answer = judged(message);
        if (answer != null && message.type().endsWith("_reply") && ++answer.replies > 1) {
            faults.add("two replies: " + message.type());
        }
    }

    @Override
    public synchronized void publish(Message message) {
        Answer answer = judged(message);
        if (answer == null) {
            return;
        }
        if ("busy".equals(message.content().get("execution_state"))) {
            answer.busy = true;
        } else if (!answer.busy) {
            faults.add("before busy: " + message.type());
        }
        if ("idle".equals(message.content().get("execution_state"))) {
            open.remove(message.parent().orElseThrow().id());
            notifyAll();
        }
    }

    /** The answer that this message belongs to; none when it has no parent. */
    private Answer judged(Message message) {
        try {
            if (seen++ % schemaEvery == 0) {
                MessageSchema.check(message.header().fields(),
                        message.parent().map(Header::fields).orElse(Map.of()),
                        Json.readObject(Json.write(message.content())));
            }
        } catch (AssertionError e) {
            faults.add(e.getMessage());
        }
        if (message.parent().isEmpty()) {
            return null;
        }
        Answer answer = open.get(message.parent().get().id());
        if (answer == null) {
            faults.add("after idle, or for nobody: " + message.type());
        }
        return answer;
    }
}
