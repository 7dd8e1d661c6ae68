package kingpost.kernel.message;

import java.util.Map;
import java.util.Objects;

/**
 * What the kernel tells every client about itself.
 *
 * <p>Source: messaging protocol 5.5, "Messages on the IOPub (PUB/SUB) channel".
 */
public sealed interface Announcement extends Publication {

    /** The kernel is starting, works on a request, or has finished it: {@code starting}, {@code busy}, {@code idle}. */
    enum Status implements Announcement {
        STARTING("starting"), BUSY("busy"), IDLE("idle");

        private final String state;

        Status(String state) {
            this.state = state;
        }

        @Override
        public String type() {
            return "status";
        }

        @Override
        public Map<String, Object> fields() {
            return Tree.of("execution_state", state);
        }
    }

    /** The code that is about to run, unchanged, with its number. */
    record ExecuteInput(String code, int executionCount) implements Announcement {
        public ExecuteInput {
            Objects.requireNonNull(code, "code");
        }

        @Override
        public String type() {
            return "execute_input";
        }

        @Override
        public Map<String, Object> fields() {
            return Tree.of("code", code, "execution_count", executionCount);
        }
    }

    /** Answer to a subscription: from now on this subscriber misses nothing. */
    record Welcome(String subscription) implements Announcement {
        public Welcome {
            Objects.requireNonNull(subscription, "subscription");
        }

        @Override
        public String type() {
            return "iopub_welcome";
        }

        @Override
        public Map<String, Object> fields() {
            return Tree.of("subscription", subscription);
        }
    }

    /** Tells the other clients that one of them has shut the kernel down. */
    record ShuttingDown(boolean restart) implements Announcement {
        @Override
        public String type() {
            return "shutdown_reply";
        }

        @Override
        public Map<String, Object> fields() {
            return Tree.of("status", "ok", "restart", restart);
        }
    }
}
