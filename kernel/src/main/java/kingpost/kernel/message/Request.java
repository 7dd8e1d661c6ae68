package kingpost.kernel.message;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What clients ask, with the protocol's defaults for fields they leave out. Positions in code are Unicode code
 * points, as on the wire.
 *
 * <p>Source: messaging protocol 5.5, "Messages on the shell (ROUTER/DEALER) channel", "Messages on the Control
 * channel", "Messages on the stdin channel".
 */
public sealed interface Request {

    /** Run a cell. */
    record Execute(String code, boolean silent, boolean storeHistory, Map<String, String> userExpressions,
                   boolean allowStdin, boolean stopOnError) implements Request {
        public Execute {
            userExpressions = Map.copyOf(userExpressions);
            storeHistory = storeHistory && !silent;
        }

        /** A client that says nothing about input cannot answer a prompt. */
        public static Execute of(Fields fields) {
            boolean silent = fields.flag("silent", false);
            return new Execute(fields.text("code"), silent, fields.flag("store_history", !silent),
                    fields.texts("user_expressions"), fields.flag("allow_stdin", false),
                    fields.flag("stop_on_error", true));
        }
    }

    /** Documentation for what stands at the cursor; {@code detail} 0 or 1. */
    record Inspect(String code, int cursor, int detail) implements Request {
        public static Inspect of(Fields fields) {
            String code = fields.text("code");
            return new Inspect(code, position(fields, code), fields.number("detail_level", 0));
        }
    }

    /** Proposals for the text before the cursor. */
    record Complete(String code, int cursor) implements Request {
        public static Complete of(Fields fields) {
            String code = fields.text("code");
            return new Complete(code, position(fields, code));
        }
    }

    /** Whether a console should run this or wait for more. */
    record IsComplete(String code) implements Request {
        public static IsComplete of(Fields fields) {
            return new IsComplete(fields.text("code"));
        }
    }

    /** Which comms are open, of one target or of all. */
    record CommInfo(Optional<String> target) implements Request {
        public static CommInfo of(Fields fields) {
            return new CommInfo(fields.optionalText("target_name"));
        }
    }

    /** A comm message of a client; its fields are the whole content. */
    record Comm(String id, Optional<String> target, Map<String, Object> fields) implements Request {
        public Comm {
            fields = Tree.copy(fields);
        }

        /** Content without data gets an empty one, as front ends may leave it out. */
        public static Comm of(Fields fields) {
            Map<String, Object> all = new LinkedHashMap<>(fields.all());
            all.put("data", fields.object("data"));
            return new Comm(fields.text("comm_id"), fields.optionalText("target_name"), all);
        }

        /** The parts of a widget's state that this message sets anew; none when it is another kind of message. */
        public Set<String> updated() {
            boolean update = fields.get("data") instanceof Map<?, ?> data && "update".equals(data.get("method"))
                    && data.get("state") instanceof Map<?, ?>;
            Set<String> names = new HashSet<>();
            if (update) {
                ((Map<?, ?>) ((Map<?, ?>) fields.get("data")).get("state")).keySet()
                        .forEach(name -> names.add((String) name));
            }
            return names;
        }
    }

    /** End the kernel; with {@code restart} the client will start another on the same ports. */
    record Shutdown(boolean restart) implements Request {
        public static Shutdown of(Fields fields) {
            return new Shutdown(fields.flag("restart", false));
        }
    }

    /** A debugger's request, of which only number and command matter to refuse it. */
    record Debug(int number, String command) implements Request {
        public static Debug of(Fields fields) {
            return new Debug(fields.number("seq", 0), fields.text("command", ""));
        }
    }

    /** The line that a user has typed; the character U+0004 alone is the end of input. */
    record InputReply(String value) implements Request {
        public static final String END_OF_INPUT = "\u0004";

        public static InputReply of(Fields fields) {
            return new InputReply(fields.text("value", END_OF_INPUT));
        }
    }

    /** Cells of the past. */
    record History(boolean output, Access access) implements Request {

        /** Which cells are wanted. */
        public sealed interface Access {
            /** Lines {@code start} to before {@code stop} of a session; 0 is this session, -1 the one before. */
            record Range(int session, int start, Optional<Integer> stop) implements Access { }

            /** The last {@code count} cells of all sessions. */
            record Tail(int count) implements Access { }

            /** The last {@code count} cells whose whole text matches a pattern with {@code *} and {@code ?}. */
            record Search(String pattern, Optional<Integer> count, boolean unique) implements Access { }
        }

        public static History of(Fields fields) {
            return new History(fields.flag("output", false), access(fields));
        }

        private static Access access(Fields fields) {
            String kind = fields.text("hist_access_type", "tail");
            return switch (kind) {
                case "range" -> new Access.Range(fields.number("session", 0), fields.number("start", 1),
                        fields.optionalNumber("stop"));
                case "tail" -> new Access.Tail(Math.max(0, fields.number("n", 10)));
                case "search" -> new Access.Search(fields.text("pattern", "*"),
                        fields.optionalNumber("n").map(n -> Math.max(0, n)), fields.flag("unique", false));
                default -> throw new ContentException("history_request: hist_access_type is none of those known;"
                        + " give range, tail or search.");
            };
        }
    }

    private static int position(Fields fields, String code) {
        int length = code.codePointCount(0, code.length());
        return Math.max(0, Math.min(length, fields.number("cursor_pos", length)));
    }
}
