package kingpost.kernel.session;

import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicLong;
import kingpost.kernel.message.Content;
import kingpost.kernel.message.Frame;
import kingpost.kernel.message.Header;
import kingpost.kernel.message.Message;
import kingpost.kernel.message.Publication;

/** Puts what the kernel says into messages, each with an id of its own under one session that lasts as long as the process. */
final class Envelopes {

    private static final String USERNAME = "kernel";

    private final String session = UUID.randomUUID().toString();
    private final String prefix = session + "_" + ProcessHandle.current().pid() + "_";
    private final AtomicLong count = new AtomicLong();
    private final Clock clock;

    Envelopes(Clock clock) {
        this.clock = clock;
    }

    /** A message to the client that the identities name. */
    Message to(List<Frame> identities, Header parent, Content content, Map<String, Object> moreMetadata) {
        return build(identities, Optional.of(parent), content, moreMetadata);
    }

    /** A message to every client, with its topic in front. */
    Message published(Optional<Header> parent, Publication content) {
        String topic = "kernel." + session + "." + content.type();
        return build(topicFrame(topic), parent, content, Map.of());
    }

    /** A message to the subscribers of one topic. */
    Message published(String topic, Publication content) {
        return build(topicFrame(topic), Optional.empty(), content, Map.of());
    }

    /** The time now as headers and metadata give it: ISO 8601 in UTC, to the microsecond. */
    String now() {
        return Instant.now(clock).truncatedTo(ChronoUnit.MICROS).toString();
    }

    private Message build(List<Frame> identities, Optional<Header> parent, Content content,
                          Map<String, Object> moreMetadata) {
        Header header = Header.of(prefix + count.incrementAndGet(), session, USERNAME, now(), content.type());
        Map<String, Object> metadata = new LinkedHashMap<>(content.metadata());
        metadata.putAll(moreMetadata);
        return new Message(identities, header, parent, metadata, content.fields(), content.buffers());
    }

    private static List<Frame> topicFrame(String topic) {
        return List.of(Frame.of(topic.getBytes(StandardCharsets.UTF_8)));
    }
}
