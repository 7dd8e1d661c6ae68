package kingpost.kernel.message;

import java.math.BigInteger;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * Reads the fields of a message part. A field may be absent only where a default is given; null counts as absent; a
 * value of the wrong kind is an error that names the message type and the field, never the value.
 */
public final class Fields {

    private final String what;
    private final Map<String, Object> map;

    /**
     * @param what what the fields belong to, for error messages: a message type or {@code header}
     */
    public Fields(String what, Map<String, Object> map) {
        this.what = Objects.requireNonNull(what, "what");
        this.map = Objects.requireNonNull(map, "map");
    }

    public String text(String name) {
        return optionalText(name).orElseThrow(() -> absent(name, "text"));
    }

    public String text(String name, String byDefault) {
        return optionalText(name).orElse(byDefault);
    }

    public Optional<String> optionalText(String name) {
        return get(name, String.class, "text");
    }

    public boolean flag(String name, boolean byDefault) {
        return get(name, Boolean.class, "true or false").orElse(byDefault);
    }

    public int number(String name) {
        return optionalNumber(name).orElseThrow(() -> absent(name, "a whole number"));
    }

    public int number(String name, int byDefault) {
        return optionalNumber(name).orElse(byDefault);
    }

    /** A whole number; one that an int cannot hold becomes the nearest that it can. */
    public Optional<Integer> optionalNumber(String name) {
        return get(name, Number.class, "a whole number").map(number -> whole(name, number));
    }

    public Map<String, Object> object(String name) {
        Optional<?> found = get(name, Map.class, "an object");
        Map<String, Object> copy = new LinkedHashMap<>();
        found.ifPresent(map -> ((Map<?, ?>) map).forEach((key, value) -> copy.put((String) key, value)));
        return copy;
    }

    /** An object whose values are all text. */
    public Map<String, String> texts(String name) {
        Map<String, String> copy = new LinkedHashMap<>();
        object(name).forEach((key, value) -> {
            if (!(value instanceof String text)) {
                throw wrong(name, "an object of texts");
            }
            copy.put(key, text);
        });
        return copy;
    }

    /** Every field, as it came. */
    public Map<String, Object> all() {
        return map;
    }

    private int whole(String name, Number number) {
        if (number instanceof BigInteger big) {
            return big.signum() < 0 ? Integer.MIN_VALUE : Integer.MAX_VALUE;
        }
        if (number.doubleValue() != Math.rint(number.doubleValue())) {
            throw wrong(name, "a whole number");
        }
        return (int) Math.max(Integer.MIN_VALUE, Math.min(Integer.MAX_VALUE, number.longValue()));
    }

    private <T> Optional<T> get(String name, Class<T> kind, String kindName) {
        Object value = map.get(name);
        if (value != null && !kind.isInstance(value)) {
            throw wrong(name, kindName);
        }
        return Optional.ofNullable(kind.cast(value));
    }

    private ContentException absent(String name, String kindName) {
        return new ContentException(what + ": field " + name + " is absent; give " + kindName + ".");
    }

    private ContentException wrong(String name, String kindName) {
        return new ContentException(what + ": field " + name + " is of the wrong kind; give " + kindName + ".");
    }
}
