package kingpost.kernel.agent;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import kingpost.kernel.display.MimeBundle;
import kingpost.render.Edition;
import kingpost.render.Showable;

/** Every form in which a value is shown: what a {@link Showable} offers, plain text for all others. */
final class ValueForms {

    /** Characters of all forms together at most; a figure beyond that is shown by its plain text alone. */
    private static final long MOST = 20_000_000;

    private static final Edition EDITION = Edition.inForce();

    private ValueForms() {
    }

    /**
     * The forms made for the edition in force, else all of them; a document made for that edition takes only forms that
     * say they are. MIME type to content; empty for {@code null}, which shows nothing. Runs
     * the value's own code.
     */
    static Optional<Map<String, Object>> of(Object value) {
        if (value == null) {
            return Optional.empty();
        }
        if (value instanceof Showable showable) {
            return Optional.of(bounded(value, showable.show(EDITION).orElseGet(showable::show)));
        }
        return Optional.of(Map.of(MimeBundle.PLAIN, PlainText.of(value)));
    }

    private static Map<String, Object> bounded(Object value, Map<String, Object> forms) {
        var all = new LinkedHashMap<>(forms);
        all.computeIfAbsent(MimeBundle.PLAIN, missing -> PlainText.of(value));
        long size = all.values().stream().mapToLong(ValueForms::length).sum();
        if (size <= MOST) {
            return all;
        }
        String plain = PlainText.shortened(String.valueOf(all.get(MimeBundle.PLAIN)));
        return Map.of(MimeBundle.PLAIN, plain + String.format(Locale.ROOT,
                "\n(The figure is left out: %,d characters are more than the %,d that a cell may show.)", size, MOST));
    }

    private static long length(Object content) {
        if (content instanceof CharSequence text) {
            return text.length();
        }
        if (content instanceof Map<?, ?> map) {
            return map.entrySet().stream().mapToLong(e -> length(e.getKey()) + length(e.getValue())).sum();
        }
        if (content instanceof Iterable<?> list) {
            long sum = 0;
            for (Object item : list) {
                sum += length(item);
            }
            return sum;
        }
        return 8;
    }
}
