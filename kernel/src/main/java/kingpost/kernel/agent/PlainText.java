package kingpost.kernel.agent;

import java.lang.reflect.Array;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.Iterator;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;

/**
 * A value as plain text of bounded length: arrays and collections element by element, everything else by its own
 * {@code toString}. What is left out is said and counted.
 */
final class PlainText {

    /** Characters of one value at most. */
    static final int LONGEST = 100_000;
    private static final int MOST_ELEMENTS = 200;
    private static final int DEEPEST = 6;

    private final StringBuilder text = new StringBuilder();
    private final Set<Object> open = Collections.newSetFromMap(new IdentityHashMap<>());

    private PlainText() {
    }

    /** The text of a value; runs the value's own {@code toString}, and passes on what that throws. */
    static String of(Object value) {
        if (value instanceof CharSequence chars) {
            return shortened(chars);
        }
        var writer = new PlainText();
        writer.write(value, 0);
        return shortened(writer.text);
    }

    /** The text, or its head with the full length when it is too long. */
    static String shortened(CharSequence chars) {
        if (chars.length() <= LONGEST) {
            return chars.toString();
        }
        return chars.subSequence(0, LONGEST) + String.format(Locale.ROOT,
                "\n... (%,d characters in all; print the part you need)", chars.length());
    }

    private void write(Object value, int depth) {
        if (text.length() > LONGEST) {
            return;
        }
        if (value instanceof CharSequence chars && depth > 0) {
            text.append('"').append(chars, 0, Math.min(chars.length(), LONGEST)).append('"');
        } else if (value != null && value.getClass().isArray()) {
            nested(value, depth, () -> array(value, depth + 1));
        } else if (value instanceof Iterable<?> items && isOfTheLibrary(value) && !isPath(value)) {
            nested(value, depth, () -> elements(items.iterator(), sizeOf(items), depth + 1));
        } else if (value instanceof Map<?, ?> map && isOfTheLibrary(value)) {
            nested(value, depth, () -> entries(map, depth + 1));
        } else {
            text.append(value);
        }
    }

    /** Collections of the JDK are written here, so that huge ones stay short; others have their own form. */
    private static boolean isOfTheLibrary(Object value) {
        return value.getClass().getName().startsWith("java.");
    }

    private static boolean isPath(Object value) {
        return value instanceof java.nio.file.Path;
    }

    private static int sizeOf(Iterable<?> items) {
        return items instanceof java.util.Collection<?> collection ? collection.size() : -1;
    }

    private void nested(Object value, int depth, Runnable content) {
        if (depth >= DEEPEST || !open.add(value)) {
            text.append("...");
            return;
        }
        content.run();
        open.remove(value);
    }

    private void array(Object array, int depth) {
        int length = Array.getLength(array);
        elements(new Iterator<Object>() {
            private int next;

            @Override
            public boolean hasNext() {
                return next < length;
            }

            @Override
            public Object next() {
                return Array.get(array, next++);
            }
        }, length, depth);
    }

    private void elements(Iterator<?> items, int size, int depth) {
        list('[', ']', items, size, item -> write(item, depth));
    }

    private void entries(Map<?, ?> map, int depth) {
        list('{', '}', map.entrySet().iterator(), map.size(), item -> {
            var entry = (Map.Entry<?, ?>) item;
            write(entry.getKey(), depth);
            text.append('=');
            write(entry.getValue(), depth);
        });
    }

    private void list(char before, char after, Iterator<?> items, int size, Consumer<Object> each) {
        text.append(before);
        int written = 0;
        while (items.hasNext() && written < MOST_ELEMENTS && text.length() <= LONGEST) {
            text.append(written++ > 0 ? ", " : "");
            each.accept(items.next());
        }
        if (items.hasNext()) {
            text.append(", ... ").append(size < 0 ? "and more" : String.format(Locale.ROOT, "%,d more", size - written));
        }
        text.append(after);
    }
}
