package kingpost.kernel.document;

import java.math.BigDecimal;
import java.util.Iterator;
import java.util.Map;
import java.util.TreeMap;

/**
 * JSON laid out for comparing files line by line: sorted keys, one space a level, non-ASCII characters as they are.
 *
 * <p>Source: the layout of Python's {@code json.dumps(indent=1, sort_keys=True, ensure_ascii=False)}, which the
 * reference library of the notebook format uses; RFC 8259.
 */
final class SortedJson {

    private final StringBuilder out = new StringBuilder();

    private SortedJson() {
    }

    static String write(Object tree) {
        SortedJson json = new SortedJson();
        json.value(tree, 0);
        return json.out.toString();
    }

    private void value(Object value, int level) {
        if (value instanceof Map<?, ?> map) {
            object(map, level);
        } else if (value instanceof Iterable<?> items) {
            array(items.iterator(), level);
        } else if (value instanceof CharSequence text) {
            string(text);
        } else if (value instanceof Double || value instanceof Float) {
            out.append(decimal(((Number) value).doubleValue()));
        } else {
            out.append(value);
        }
    }

    private void object(Map<?, ?> map, int level) {
        if (map.isEmpty()) {
            out.append("{}");
            return;
        }
        TreeMap<String, Object> sorted = new TreeMap<>(SortedJson::byCodePoint);
        map.forEach((key, value) -> sorted.put(String.valueOf(key), value));
        String separator = "{";
        for (Map.Entry<String, Object> entry : sorted.entrySet()) {
            out.append(separator);
            newLine(level + 1);
            string(entry.getKey());
            out.append(": ");
            value(entry.getValue(), level + 1);
            separator = ",";
        }
        newLine(level);
        out.append('}');
    }

    private void array(Iterator<?> items, int level) {
        if (!items.hasNext()) {
            out.append("[]");
            return;
        }
        String separator = "[";
        while (items.hasNext()) {
            out.append(separator);
            newLine(level + 1);
            value(items.next(), level + 1);
            separator = ",";
        }
        newLine(level);
        out.append(']');
    }

    private void newLine(int level) {
        out.append('\n').append(" ".repeat(level));
    }

    private void string(CharSequence text) {
        out.append('"');
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            switch (c) {
                case '"' -> out.append("\\\"");
                case '\\' -> out.append("\\\\");
                case '\n' -> out.append("\\n");
                case '\r' -> out.append("\\r");
                case '\t' -> out.append("\\t");
                case '\b' -> out.append("\\b");
                case '\f' -> out.append("\\f");
                default -> character(text, i, c);
            }
        }
        out.append('"');
    }

    private void character(CharSequence text, int i, char c) {
        boolean alone = Character.isHighSurrogate(c) && (i + 1 == text.length() || !Character.isLowSurrogate(text.charAt(i + 1)))
                || Character.isLowSurrogate(c) && (i == 0 || !Character.isHighSurrogate(text.charAt(i - 1)));
        if (c < ' ' || alone) {
            out.append(String.format("\\u%04x", (int) c));
        } else {
            out.append(c);
        }
    }

    /** Shortest digits, plain from 0.0001 up to 1e16 and with an exponent outside; null where JSON has no number. */
    private static String decimal(double value) {
        if (!Double.isFinite(value)) {
            return "null";
        }
        if (value == 0) {
            return 1 / value < 0 ? "-0.0" : "0.0";
        }
        BigDecimal digits = new BigDecimal(Double.toString(value)).stripTrailingZeros();
        int exponent = digits.precision() - digits.scale() - 1;
        if (exponent >= -4 && exponent < 16) {
            String plain = digits.toPlainString();
            return plain.contains(".") ? plain : plain + ".0";
        }
        String mantissa = digits.movePointLeft(exponent).stripTrailingZeros().toPlainString();
        return mantissa + "e" + (exponent < 0 ? "-" : "+") + String.format("%02d", Math.abs(exponent));
    }

    private static int byCodePoint(String a, String b) {
        int common = Math.min(a.length(), b.length());
        for (int i = 0; i < common; i++) {
            if (a.charAt(i) != b.charAt(i)) {
                return Integer.compare(a.codePointAt(i), b.codePointAt(i));
            }
        }
        return Integer.compare(a.length(), b.length());
    }
}
