package kingpost.render;

import java.util.Map;
import java.util.Optional;

/** A value that shows itself in a notebook in more than one form. */
public interface Showable {

    /**
     * MIME type to content, richest forms included and {@code text/plain} always among them.
     *
     * <p>Content is a {@code String}; for a {@code +json} type a tree of {@code Map}, {@code List}, {@code String},
     * {@code Number} and {@code Boolean}; for {@code image/png} base64 text.
     */
    Map<String, Object> show();

    /**
     * The forms made for one edition; empty where the value has none. Forms for a handout hold nothing that was worked
     * out, in no form and in no hidden part. Each kind of value has to decide.
     */
    Optional<Map<String, Object>> show(Edition edition);
}
