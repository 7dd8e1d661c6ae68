package kingpost.kernel.display;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;

/**
 * One value in every form that it can be shown in: MIME type to content, as the {@code data} and
 * {@code metadata} of an output message carry it.
 *
 * <p>Content is a {@code String}, or for a {@code +json} type a tree of {@code Map}, {@code List}, {@code String},
 * {@code Number} and {@code Boolean}; binary content is base64 text.
 *
 * @param data     MIME type to content, without parameters; order is kept
 * @param metadata MIME type to its settings, usually empty
 */
public record MimeBundle(Map<String, Object> data, Map<String, Object> metadata) {

    public static final String PLAIN = "text/plain";

    public MimeBundle {
        data = Collections.unmodifiableMap(new LinkedHashMap<>(Objects.requireNonNull(data, "data")));
        metadata = Collections.unmodifiableMap(new LinkedHashMap<>(Objects.requireNonNull(metadata, "metadata")));
    }

    public static MimeBundle of(Map<String, Object> data) {
        return new MimeBundle(data, Map.of());
    }

    public static MimeBundle plain(String text) {
        return of(Map.of(PLAIN, text));
    }
}
