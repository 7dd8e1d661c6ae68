package kingpost.kernel.client;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.Pattern;

/**
 * What a message of the kernel must look like, written down apart from the code that makes messages: fields that must
 * be there with their kind, fields that may be there, and nothing else.
 *
 * <p>Source: messaging protocol 5.5; the patterns for dates, versions and MIME types are those of common clients.
 */
public final class MessageSchema {

    private static final Pattern DATE =
            Pattern.compile("\\d{4}-\\d\\d-\\d\\dT\\d\\d:\\d\\d(:\\d\\d(\\.\\d{1,6})?)?Z");
    private static final Pattern MIME = Pattern.compile("[\\w\\-+.]+/[\\w\\-+.]+");
    private static final Predicate<Object> TEXT = String.class::isInstance;
    private static final Predicate<Object> FLAG = Boolean.class::isInstance;
    private static final Predicate<Object> WHOLE = value -> value instanceof Integer || value instanceof Long;
    private static final Predicate<Object> NUMBER = Number.class::isInstance;
    private static final Predicate<Object> OBJECT = Map.class::isInstance;
    private static final Predicate<Object> LIST = Collection.class::isInstance;
    private static final Predicate<Object> TEXTS = value -> value instanceof Collection<?> items
            && items.stream().allMatch(TEXT);
    private static final Predicate<Object> BUNDLE = value -> value instanceof Map<?, ?> map
            && map.keySet().stream().allMatch(key -> MIME.matcher((String) key).matches());
    private static final Predicate<Object> SHOWN = BUNDLE.and(value -> ((Map<?, ?>) value).containsKey("text/plain"));

    private static final Map<String, Map<String, Predicate<Object>>> REQUIRED = new HashMap<>();

    static {
        REQUIRED.put("status", Map.of("execution_state", Set.of("starting", "busy", "idle")::contains));
        REQUIRED.put("execute_input", Map.of("code", TEXT, "execution_count", WHOLE));
        REQUIRED.put("stream", Map.of("name", Set.of("stdout", "stderr")::contains, "text", TEXT));
        REQUIRED.put("display_data", Map.of("data", SHOWN, "metadata", OBJECT));
        REQUIRED.put("update_display_data", Map.of("data", SHOWN, "metadata", OBJECT, "transient",
                value -> ((Map<?, ?>) value).get("display_id") instanceof String));
        REQUIRED.put("execute_result", Map.of("execution_count", WHOLE, "data", SHOWN, "metadata", OBJECT));
        REQUIRED.put("error", Map.of("ename", TEXT, "evalue", TEXT, "traceback", TEXTS));
        REQUIRED.put("clear_output", Map.of("wait", FLAG));
        REQUIRED.put("iopub_welcome", Map.of("subscription", TEXT));
        REQUIRED.put("comm_open", Map.of("comm_id", TEXT, "target_name", TEXT, "data", OBJECT));
        REQUIRED.put("comm_msg", Map.of("comm_id", TEXT, "data", OBJECT));
        REQUIRED.put("comm_close", Map.of("comm_id", TEXT, "data", OBJECT));
        REQUIRED.put("input_request", Map.of("prompt", TEXT, "password", FLAG));
        REQUIRED.put("complete_reply", Map.of("status", "ok"::equals, "matches", TEXTS, "cursor_start", WHOLE,
                "cursor_end", WHOLE, "metadata", OBJECT));
        REQUIRED.put("inspect_reply", Map.of("status", "ok"::equals, "found", FLAG, "data", BUNDLE, "metadata", OBJECT));
        REQUIRED.put("history_reply", Map.of("status", "ok"::equals, "history", LIST));
        REQUIRED.put("is_complete_reply",
                Map.of("status", Set.of("complete", "incomplete", "invalid", "unknown")::contains));
        REQUIRED.put("comm_info_reply", Map.of("status", "ok"::equals, "comms", OBJECT));
        REQUIRED.put("connect_reply", Map.of("status", "ok"::equals, "shell_port", WHOLE, "iopub_port", WHOLE,
                "stdin_port", WHOLE, "hb_port", WHOLE, "control_port", WHOLE));
        REQUIRED.put("kernel_info_reply", Map.of("status", "ok"::equals, "protocol_version", TEXT,
                "implementation", TEXT, "implementation_version", TEXT, "language_info", OBJECT, "banner", TEXT,
                "help_links", LIST, "supported_features", TEXTS));
        REQUIRED.put("usage_reply", Map.of("status", "ok"::equals, "hostname", TEXT, "pid", WHOLE, "kernel_cpu", NUMBER,
                "kernel_memory", WHOLE, "cpu_count", WHOLE, "host_cpu_percent", NUMBER, "host_virtual_memory", OBJECT));
        REQUIRED.put("interrupt_reply", Map.of("status", "ok"::equals));
        REQUIRED.put("shutdown_reply", Map.of("status", "ok"::equals, "restart", FLAG));
        REQUIRED.put("debug_reply", Map.of("type", "response"::equals, "seq", WHOLE, "request_seq", WHOLE,
                "success", FLAG, "command", TEXT, "message", TEXT));
        REQUIRED.put("execute_reply", Map.of("status", "ok"::equals, "execution_count", WHOLE, "payload", LIST,
                "user_expressions", OBJECT));
    }

    private MessageSchema() { }

    /** Fails when header, parent or content of a message of the kernel is not as the protocol says. */
    public static void check(Map<String, Object> header, Map<String, Object> parent, Map<String, Object> content) {
        for (String field : List.of("msg_id", "session", "username", "date", "msg_type", "version")) {
            assertTrue(header.get(field) instanceof String, () -> "header." + field + ": " + header);
        }
        assertTrue(DATE.matcher((String) header.get("date")).matches(), () -> "date: " + header);
        assertEquals("5.5", header.get("version"));
        assertNotNull(parent, "parent_header");
        checkContent((String) header.get("msg_type"), content);
    }

    private static void checkContent(String type, Map<String, Object> content) {
        if (type.endsWith("_reply") && "error".equals(content.get("status"))) {
            checkFailure(type, content);
        } else if (type.equals("execute_reply") && "aborted".equals(content.get("status"))) {
            assertEquals(Set.of("status"), content.keySet(), "an aborted reply has no count");
        } else {
            Map<String, Predicate<Object>> required = REQUIRED.get(type);
            assertNotNull(required, () -> "a message type that the protocol lacks: " + type);
            checkFields(type, content, required);
            Set<String> optional = optional(type, content);
            content.keySet().forEach(field -> assertTrue(required.containsKey(field) || optional.contains(field),
                    () -> type + " has a field too many: " + field));
        }
    }

    private static Set<String> optional(String type, Map<String, Object> content) {
        return switch (type) {
            case "display_data" -> Set.of("transient");
            case "is_complete_reply" -> "incomplete".equals(content.get("status")) ? Set.of("indent") : Set.of();
            case "comm_open", "comm_msg", "comm_close" -> content.keySet();
            default -> Set.of();
        };
    }

    private static void checkFailure(String type, Map<String, Object> content) {
        checkFields(type, content, Map.of("ename", TEXT, "evalue", TEXT, "traceback", TEXTS));
        Set<String> allowed = type.equals("execute_reply")
                ? Set.of("status", "ename", "evalue", "traceback", "execution_count")
                : Set.of("status", "ename", "evalue", "traceback");
        assertTrue(allowed.containsAll(content.keySet()), () -> type + " " + content.keySet());
    }

    private static void checkFields(String type, Map<String, Object> content, Map<String, Predicate<Object>> required) {
        required.forEach((field, rule) -> {
            assertTrue(content.containsKey(field), () -> type + " lacks " + field + ": " + content.keySet());
            assertTrue(rule.test(content.get(field)), () -> type + "." + field + " is wrong: " + content.get(field));
        });
    }
}
