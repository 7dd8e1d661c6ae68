package kingpost.kernel.client;

import java.util.List;
import java.util.Map;

/** A message that a test client has received from the kernel. */
public record Received(SocketClient.On channel, Map<String, Object> header, Map<String, Object> parent,
                       Map<String, Object> metadata, Map<String, Object> content, List<byte[]> buffers) {

    public String type() {
        return (String) header.get("msg_type");
    }

    public String parentId() {
        return (String) parent.getOrDefault("msg_id", "");
    }

    public String text(String field) {
        return (String) content.get(field);
    }

    /** The type, and for the short ones what they say: {@code status busy}. */
    public String brief() {
        return switch (type()) {
            case "status" -> "status " + content.get("execution_state");
            case "stream" -> "stream " + content.get("text");
            default -> type();
        };
    }
}
