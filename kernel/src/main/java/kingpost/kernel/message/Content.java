package kingpost.kernel.message;

import java.util.List;
import java.util.Map;

/** What an outgoing message carries. */
public interface Content {

    /** The message type that goes with this content, as the header names it. */
    String type();

    /** The content's fields, in the protocol's names. */
    Map<String, Object> fields();

    /** The message's metadata; empty unless the kind of message has some. */
    default Map<String, Object> metadata() {
        return Map.of();
    }

    /** Binary buffers after the content; none unless the kind of message has some. */
    default List<Frame> buffers() {
        return List.of();
    }
}
