package kingpost.kernel.message;

import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * What the kernel answers to one client. Positions in code are Unicode code points, as on the wire.
 *
 * <p>Source: messaging protocol 5.5, "Request-Reply" and the sections of the single messages.
 */
public sealed interface Reply extends Content permits Reply.ExecuteOk, Reply.ExecuteError, Reply.Aborted,
        Reply.Failure, Reply.Plain, Reply.InputRequest {

    /** A cell has run. */
    record ExecuteOk(int executionCount, List<Map<String, Object>> payload, Map<String, Object> userExpressions)
            implements Reply {
        public ExecuteOk {
            payload = List.copyOf(payload);
            userExpressions = Tree.copy(userExpressions);
        }

        @Override
        public String type() {
            return "execute_reply";
        }

        @Override
        public Map<String, Object> fields() {
            return Tree.of("status", "ok", "execution_count", executionCount, "payload", payload,
                    "user_expressions", userExpressions);
        }
    }

    /** A cell has failed, with the same three fields as on iopub. */
    record ExecuteError(int executionCount, Output.Error error) implements Reply {
        public ExecuteError {
            Objects.requireNonNull(error, "error");
        }

        @Override
        public String type() {
            return "execute_reply";
        }

        @Override
        public Map<String, Object> fields() {
            return Tree.of("status", "error", "execution_count", executionCount, "ename", error.name(),
                    "evalue", error.message(), "traceback", error.traceback());
        }
    }

    /**
     * A cell was never run, because one before it failed. Carries no count: front ends would show it as the number
     * of a cell that ran.
     */
    record Aborted() implements Reply {
        @Override
        public String type() {
            return "execute_reply";
        }

        @Override
        public Map<String, Object> fields() {
            return Tree.of("status", "aborted");
        }
    }

    /** A request that could not be answered. */
    record Failure(String type, String name, String message) implements Reply {
        @Override
        public Map<String, Object> fields() {
            return Tree.of("status", "error", "ename", name, "evalue", message,
                    "traceback", List.of(name + ": " + message));
        }
    }

    /** Any other answer: built by {@link Replies}. */
    record Plain(String type, Map<String, Object> fields) implements Reply {
        public Plain {
            Objects.requireNonNull(type, "type");
            fields = Tree.copy(fields);
        }
    }

    /** The kernel asks for a line. */
    record InputRequest(String prompt, boolean password) implements Reply {
        @Override
        public String type() {
            return "input_request";
        }

        @Override
        public Map<String, Object> fields() {
            return Tree.of("prompt", prompt, "password", password);
        }
    }
}
