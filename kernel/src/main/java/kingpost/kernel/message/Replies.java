package kingpost.kernel.message;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Builds the answers that have no rule of their own beyond their fields. */
public final class Replies {

    private Replies() { }

    /** A proposal: the text that replaces the range, its kind, and its signature (may be empty). */
    public record Match(String text, String kind, String signature) { }

    public static Reply complete(List<Match> matches, int start, int end) {
        List<Map<String, Object>> typed = matches.stream().map(match -> Tree.of("start", start, "end", end,
                "text", match.text(), "type", match.kind(), "signature", match.signature())).toList();
        return new Reply.Plain("complete_reply", Tree.of("status", "ok",
                "matches", matches.stream().map(Match::text).toList(), "cursor_start", start, "cursor_end", end,
                "metadata", Tree.of("_jupyter_types_experimental", typed)));
    }

    public static Reply inspect(Map<String, Object> data, Map<String, Object> metadata) {
        return new Reply.Plain("inspect_reply", Tree.of("status", "ok", "found", !data.isEmpty(), "data", data,
                "metadata", metadata));
    }

    /** {@code status} is complete, incomplete, invalid or unknown; the indent goes with incomplete only. */
    public static Reply isComplete(String status, String indent) {
        return new Reply.Plain("is_complete_reply", "incomplete".equals(status)
                ? Tree.of("status", status, "indent", indent) : Tree.of("status", status));
    }

    /** One past cell; {@code output} null when it showed no value. */
    public record PastCell(int session, int line, String input, String output) { }

    public static Reply history(List<PastCell> cells, boolean withOutput) {
        List<Object> rows = new ArrayList<>();
        for (PastCell cell : cells) {
            List<Object> pair = new ArrayList<>();
            pair.add(cell.input());
            pair.add(cell.output());
            rows.add(List.of(cell.session(), cell.line(), withOutput ? pair : cell.input()));
        }
        return new Reply.Plain("history_reply", Tree.of("status", "ok", "history", rows));
    }

    /** Open comms: id to target name. */
    public static Reply commInfo(Map<String, String> comms) {
        Map<String, Object> byId = new LinkedHashMap<>();
        comms.forEach((id, target) -> byId.put(id, Tree.of("target_name", target)));
        return new Reply.Plain("comm_info_reply", Tree.of("status", "ok", "comms", byId));
    }

    public static Reply interrupt() {
        return new Reply.Plain("interrupt_reply", Tree.of("status", "ok"));
    }

    public static Reply shutdown(boolean restart) {
        return new Reply.Plain("shutdown_reply", Tree.of("status", "ok", "restart", restart));
    }

    /** The five ports: shell_port and so on. */
    public static Reply connect(Map<String, Integer> ports) {
        Map<String, Object> fields = new LinkedHashMap<>();
        fields.put("status", "ok");
        fields.putAll(ports);
        return new Reply.Plain("connect_reply", fields);
    }

    /** A debugger's request refused, in the debug adapter protocol's form. */
    public static Reply debugRefused(Request.Debug request, String why) {
        return new Reply.Plain("debug_reply", Tree.of("type", "response", "seq", request.number(),
                "request_seq", request.number(), "success", false, "command", request.command(), "message", why));
    }
}
