package kingpost.kernel.pipe;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * One message on the pipe.
 *
 * @param kind   what it is
 * @param fields its fields, in the order that {@link Kind} gives: {@code null}, {@code Boolean}, {@code Integer},
 *               {@code Long}, {@code Double}, {@code String}, {@code byte[]}, {@code List} or {@code Map}
 */
public record Frame(Kind kind, List<Object> fields) {

    public Frame {
        fields = Collections.unmodifiableList(fields);
    }

    public static Frame of(Kind kind, Object... fields) {
        return new Frame(kind, Arrays.asList(fields));
    }

    public int number(int index) {
        return ((Number) fields.get(index)).intValue();
    }

    public String text(int index) {
        return (String) fields.get(index);
    }

    public Optional<String> optionalText(int index) {
        return Optional.ofNullable((String) fields.get(index));
    }

    public boolean flag(int index) {
        return (Boolean) fields.get(index);
    }

    @SuppressWarnings("unchecked")
    public Map<String, Object> map(int index) {
        return (Map<String, Object>) fields.get(index);
    }

    @SuppressWarnings("unchecked")
    public List<Object> list(int index) {
        return (List<Object>) fields.get(index);
    }

    @SuppressWarnings("unchecked")
    public List<String> texts(int index) {
        return (List<String>) fields.get(index);
    }

    @SuppressWarnings("unchecked")
    public List<byte[]> buffers(int index) {
        return (List<byte[]>) fields.get(index);
    }
}
