package kingpost.notebook;

import java.util.List;
import java.util.Map;

/**
 * What comes with a comm message.
 *
 * @param data     a tree of {@code Map}, {@code List}, {@code String}, {@code Number} and {@code Boolean}
 * @param metadata likewise; often empty
 * @param buffers  binary parts, in order
 */
public record CommMessage(Map<String, Object> data, Map<String, Object> metadata, List<byte[]> buffers) {

    public CommMessage {
        buffers = List.copyOf(buffers);
    }

    public static CommMessage of(Map<String, Object> data) {
        return new CommMessage(data, Map.of(), List.of());
    }
}
