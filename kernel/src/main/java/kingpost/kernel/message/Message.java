package kingpost.kernel.message;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * One message, in either direction.
 *
 * @param identities routing frames in front: of the client on shell, control and stdin; one topic on iopub
 * @param header     who says what
 * @param parent     header of the request that this message answers or belongs to
 * @param metadata   what is said about the message
 * @param content    what is said
 * @param buffers    binary frames after the content
 */
public record Message(List<Frame> identities, Header header, Optional<Header> parent, Map<String, Object> metadata,
                      Map<String, Object> content, List<Frame> buffers) {

    public Message {
        identities = List.copyOf(identities);
        Objects.requireNonNull(header, "header");
        Objects.requireNonNull(parent, "parent");
        metadata = Tree.copy(metadata);
        content = Tree.copy(content);
        buffers = List.copyOf(buffers);
    }

    public String type() {
        return header.type();
    }
}
