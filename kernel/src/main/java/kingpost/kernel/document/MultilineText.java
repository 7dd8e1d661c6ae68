package kingpost.kernel.document;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Texts of a notebook file, which lie in the file as lists of lines and here in one piece.
 *
 * <p>Source: notebook format 4.5; which texts are split, and at which characters, as its reference library does.
 */
final class MultilineText {

    private static final Pattern LINE = Pattern.compile(
            "[^\n\r\u000b\f\u001c-\u001e\u0085\u2028\u2029]*(?:\r\n|[\n\r\u000b\f\u001c-\u001e\u0085\u2028\u2029])"
                    + "|[^\n\r\u000b\f\u001c-\u001e\u0085\u2028\u2029]+");

    private MultilineText() {
    }

    /** Lines, each with the break that ends it. */
    static List<String> lines(String text) {
        List<String> lines = new ArrayList<>();
        Matcher line = LINE.matcher(text);
        while (line.find()) {
            lines.add(line.group());
        }
        return lines;
    }

    /** An output with its texts in one piece. */
    static Map<String, Object> joinedOutput(Map<String, Object> output) {
        return output(output, Trees::join, type -> true);
    }

    /** An output with its texts in lines. */
    static Map<String, Object> splitOutput(Map<String, Object> output) {
        return output(output, MultilineText::split, type -> type.startsWith("text/") || type.equals("image/svg+xml")
                || type.equals("application/javascript"));
    }

    /** Attachments (file name to bundle) with their texts in one piece. */
    static Map<String, Object> joinedAttachments(Map<String, Object> attachments) {
        return attachments(attachments, Trees::join);
    }

    /** Attachments (file name to bundle) with their texts in lines. */
    static Map<String, Object> splitAttachments(Map<String, Object> attachments) {
        return attachments(attachments, MultilineText::split);
    }

    private interface Types {
        boolean include(String type);
    }

    private static Object split(Object value) {
        return value instanceof String text ? lines(text) : value;
    }

    private static Map<String, Object> output(Map<String, Object> output, UnaryOperator<Object> change, Types types) {
        Map<String, Object> copy = new LinkedHashMap<>(output);
        if (output.get("data") instanceof Map<?, ?>) {
            copy.put("data", bundle(Trees.map(output, "data"), change, types));
        } else if (output.containsKey("text")) {
            copy.put("text", change.apply(output.get("text")));
        }
        return copy;
    }

    private static Map<String, Object> attachments(Map<String, Object> attachments, UnaryOperator<Object> change) {
        Map<String, Object> copy = new LinkedHashMap<>();
        for (String file : attachments.keySet()) {
            copy.put(file, bundle(Trees.map(attachments, file), change, type -> type.startsWith("text/")));
        }
        return copy;
    }

    private static Map<String, Object> bundle(Map<String, Object> data, UnaryOperator<Object> change, Types types) {
        Map<String, Object> copy = new LinkedHashMap<>();
        data.forEach((type, value) ->
                copy.put(type, types.include(type) && !isJson(type) ? change.apply(value) : value));
        return copy;
    }

    private static boolean isJson(String type) {
        return type.equals("application/json") || type.startsWith("application/") && type.endsWith("+json");
    }
}
