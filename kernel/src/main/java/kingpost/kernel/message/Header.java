package kingpost.kernel.message;

import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * A message's header. Fields that this version does not know are kept, so that a request's header comes back in its
 * answers as it was sent.
 *
 * <p>Source: messaging protocol 5.5, "Message header".
 *
 * @param fields every field, by the protocol's name; {@code msg_id} and {@code msg_type} are present and text
 */
public record Header(Map<String, Object> fields) {

    /** The protocol version that the kernel speaks. */
    public static final String PROTOCOL_VERSION = "5.5";

    /**
     * @throws ContentException when {@code msg_id} or {@code msg_type} is absent or no text
     */
    public Header {
        fields = Tree.copy(Objects.requireNonNull(fields, "fields"));
        Fields reader = new Fields("header", fields);
        reader.text("msg_id");
        reader.text("msg_type");
    }

    /** A header of ours; {@code date} is ISO 8601 with zone. */
    public static Header of(String id, String session, String username, String date, String type) {
        return new Header(Tree.of("msg_id", id, "session", session, "username", username, "date", date,
                "msg_type", type, "version", PROTOCOL_VERSION));
    }

    public String id() {
        return (String) fields.get("msg_id");
    }

    public String type() {
        return (String) fields.get("msg_type");
    }

    /** The sender's session; empty text when it gives none. */
    public String session() {
        return fields.get("session") instanceof String text ? text : "";
    }

    /** The subshell that the request is for, if it names one. */
    public Optional<String> subshell() {
        return fields.get("subshell_id") instanceof String id ? Optional.of(id) : Optional.empty();
    }
}
