package kingpost.kernel.document;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads fields of JSON trees that may lack them or hold something else there. */
public final class Trees {

    private Trees() {
    }

    /** The object at {@code key}; empty if there is none. */
    @SuppressWarnings("unchecked")
    public static Map<String, Object> map(Map<String, Object> tree, String key) {
        return tree.get(key) instanceof Map<?, ?> map ? (Map<String, Object>) map : Map.of();
    }

    /** The array at {@code key}; empty if there is none. */
    @SuppressWarnings("unchecked")
    public static List<Object> list(Map<String, Object> tree, String key) {
        return tree.get(key) instanceof List<?> list ? (List<Object>) list : List.of();
    }

    /** The text at {@code key}. */
    public static Optional<String> text(Map<String, Object> tree, String key) {
        return tree.get(key) instanceof String text ? Optional.of(text) : Optional.empty();
    }

    /** Whether {@code true} stands at {@code key}. */
    public static boolean flag(Map<String, Object> tree, String key) {
        return Boolean.TRUE.equals(tree.get(key));
    }

    /** The text at {@code key}, its pieces joined if the file has it in lines; empty text if there is none. */
    public static String joined(Map<String, Object> tree, String key) {
        return join(tree.get(key)) instanceof String text ? text : "";
    }

    /** A copy that keeps order and nulls and cannot be changed. */
    static Map<String, Object> copy(Map<String, Object> tree) {
        return Collections.unmodifiableMap(new LinkedHashMap<>(tree));
    }

    static Map<String, Object> with(Map<String, Object> tree, String key, Object value) {
        Map<String, Object> map = new LinkedHashMap<>(tree);
        map.put(key, value);
        return map;
    }

    static Map<String, Object> without(Map<String, Object> tree, String... keys) {
        Map<String, Object> map = new LinkedHashMap<>(tree);
        for (String key : keys) {
            map.remove(key);
        }
        return map;
    }

    /** A list of texts as one text; anything else as it is. */
    static Object join(Object value) {
        if (value instanceof List<?> lines && lines.stream().allMatch(String.class::isInstance)) {
            return String.join("", lines.stream().map(String.class::cast).toList());
        }
        return value;
    }
}
