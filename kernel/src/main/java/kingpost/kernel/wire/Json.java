package kingpost.kernel.wire;

import com.google.gson.Gson;
import com.google.gson.GsonBuilder;
import com.google.gson.Strictness;
import com.google.gson.stream.JsonReader;
import com.google.gson.stream.JsonToken;
import com.google.gson.stream.MalformedJsonException;
import java.io.EOFException;
import java.io.IOException;
import java.io.StringReader;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * JSON text to and from plain trees: {@code Map}, {@code List}, {@code String}, {@code Boolean}, {@code null}, and
 * for numbers {@code Long} ({@code BigInteger} where that is too short) or {@code Double}. Keys keep their order.
 *
 * <p>Source: RFC 8259.
 */
public final class Json {

    private static final Gson WRITER = new GsonBuilder().disableHtmlEscaping().serializeNulls().create();

    private Json() {
    }

    /**
     * The tree that a JSON text stands for.
     *
     * @throws IllegalArgumentException the text is not exactly one JSON value; the message says where and why
     */
    public static Object read(String text) {
        try (JsonReader reader = new JsonReader(new StringReader(text))) {
            reader.setStrictness(Strictness.STRICT);
            Object value = value(reader);
            if (reader.peek() != JsonToken.END_DOCUMENT) {
                throw new IllegalArgumentException("text after the end of the value");
            }
            return value;
        } catch (EOFException e) {
            throw new IllegalArgumentException("the text ends too early", e);
        } catch (MalformedJsonException | IllegalStateException e) {
            throw new IllegalArgumentException(firstLine(e.getMessage()), e);
        } catch (IOException e) {
            throw new IllegalArgumentException(e.getMessage(), e);
        }
    }

    /** The tree as one line of JSON. Not-a-number and infinities, which JSON lacks, become {@code null}. */
    public static String write(Object tree) {
        return WRITER.toJson(finite(tree));
    }

    /** As {@link #read}, when an object is wanted. */
    @SuppressWarnings("unchecked")
    public static Map<String, Object> readObject(String text) {
        if (read(text) instanceof Map<?, ?> map) {
            return (Map<String, Object>) map;
        }
        throw new IllegalArgumentException("not a JSON object");
    }

    private static Object value(JsonReader reader) throws IOException {
        return switch (reader.peek()) {
            case BEGIN_OBJECT -> object(reader);
            case BEGIN_ARRAY -> array(reader);
            case STRING -> reader.nextString();
            case NUMBER -> number(reader.nextString());
            case BOOLEAN -> reader.nextBoolean();
            case NULL -> {
                reader.nextNull();
                yield null;
            }
            default -> throw new IllegalArgumentException("unexpected " + reader.peek());
        };
    }

    private static Map<String, Object> object(JsonReader reader) throws IOException {
        Map<String, Object> map = new LinkedHashMap<>();
        reader.beginObject();
        while (reader.hasNext()) {
            map.put(reader.nextName(), value(reader));
        }
        reader.endObject();
        return map;
    }

    private static List<Object> array(JsonReader reader) throws IOException {
        List<Object> list = new ArrayList<>();
        reader.beginArray();
        while (reader.hasNext()) {
            list.add(value(reader));
        }
        reader.endArray();
        return list;
    }

    private static Number number(String literal) {
        boolean whole = literal.chars().allMatch(c -> c == '-' || c >= '0' && c <= '9');
        if (!whole) {
            return Double.valueOf(literal);
        }
        BigInteger integer = new BigInteger(literal);
        if (integer.bitLength() < Long.SIZE) {
            return integer.longValue();
        }
        return integer;
    }

    private static Object finite(Object tree) {
        if (tree instanceof Map<?, ?> map) {
            Map<Object, Object> copy = new LinkedHashMap<>();
            map.forEach((key, value) -> copy.put(key, finite(value)));
            return copy;
        }
        if (tree instanceof Iterable<?> items) {
            List<Object> copy = new ArrayList<>();
            items.forEach(item -> copy.add(finite(item)));
            return copy;
        }
        boolean outside = tree instanceof Double d && !Double.isFinite(d) || tree instanceof Float f && !Float.isFinite(f);
        return outside ? null : tree;
    }

    private static String firstLine(String message) {
        return message == null ? "malformed" : message.lines().findFirst().orElse("malformed");
    }
}
