package kingpost.kernel.message;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/** Ordered maps for message content; unlike {@code Map.of} they keep their order and may hold null. */
final class Tree {

    private Tree() { }

    /** A map of alternating names and values, in the order given. */
    static Map<String, Object> of(Object... namesAndValues) {
        Map<String, Object> map = new LinkedHashMap<>();
        for (int i = 0; i < namesAndValues.length; i += 2) {
            map.put((String) namesAndValues[i], namesAndValues[i + 1]);
        }
        return Collections.unmodifiableMap(map);
    }

    /** An unmodifiable copy that keeps order and nulls. */
    static Map<String, Object> copy(Map<String, ?> map) {
        return Collections.unmodifiableMap(new LinkedHashMap<>(map));
    }
}
