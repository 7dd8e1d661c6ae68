package kingpost.kernel.message;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * Something a cell (or a comm handler) put out. For {@link Stream}, {@link DisplayData}, {@link ExecuteResult} and
 * {@link Error} the type and the fields are also those of an output in a notebook file, except {@code transient},
 * which files do not store.
 *
 * <p>Source: messaging protocol 5.5, "Messages on the IOPub (PUB/SUB) channel"; notebook format 4.5, "Code cells".
 */
public sealed interface Output extends Publication {

    <R> R accept(Visitor<R> visitor);

    /** One case for each kind of output. */
    interface Visitor<R> {
        R stream(Stream stream);

        R display(DisplayData display);

        R update(UpdateDisplayData update);

        R result(ExecuteResult result);

        R error(Error error);

        R clear(ClearOutput clear);

        R comm(Comm comm);
    }

    /** Text on stdout or stderr. */
    record Stream(String name, String text) implements Output {
        public Stream {
            Objects.requireNonNull(name, "name");
            Objects.requireNonNull(text, "text");
        }

        @Override
        public String type() {
            return "stream";
        }

        @Override
        public Map<String, Object> fields() {
            return Tree.of("name", name, "text", text);
        }

        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.stream(this);
        }
    }

    /** A value shown during the run; {@code displayId} lets a later update replace it. */
    record DisplayData(Map<String, Object> data, Map<String, Object> about, Optional<String> displayId)
            implements Output {
        public DisplayData {
            data = Tree.copy(data);
            about = Tree.copy(about);
        }

        @Override
        public String type() {
            return "display_data";
        }

        @Override
        public Map<String, Object> fields() {
            return displayId.map(id -> Tree.of("data", data, "metadata", about, "transient", Tree.of("display_id", id)))
                    .orElseGet(() -> Tree.of("data", data, "metadata", about));
        }

        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.display(this);
        }
    }

    /** New content for everything shown under {@code displayId}. */
    record UpdateDisplayData(Map<String, Object> data, Map<String, Object> about, String displayId)
            implements Output {
        public UpdateDisplayData {
            data = Tree.copy(data);
            about = Tree.copy(about);
            Objects.requireNonNull(displayId, "displayId");
        }

        @Override
        public String type() {
            return "update_display_data";
        }

        @Override
        public Map<String, Object> fields() {
            return Tree.of("data", data, "metadata", about, "transient", Tree.of("display_id", displayId));
        }

        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.update(this);
        }
    }

    /** The value of a cell's last expression. */
    record ExecuteResult(int executionCount, Map<String, Object> data, Map<String, Object> about) implements Output {
        public ExecuteResult {
            data = Tree.copy(data);
            about = Tree.copy(about);
        }

        @Override
        public String type() {
            return "execute_result";
        }

        @Override
        public Map<String, Object> fields() {
            return Tree.of("execution_count", executionCount, "data", data, "metadata", about);
        }

        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.result(this);
        }
    }

    /** Why a cell failed. */
    record Error(String name, String message, List<String> traceback) implements Output {
        public Error {
            Objects.requireNonNull(name, "name");
            Objects.requireNonNull(message, "message");
            traceback = List.copyOf(traceback);
        }

        @Override
        public String type() {
            return "error";
        }

        @Override
        public Map<String, Object> fields() {
            return Tree.of("ename", name, "evalue", message, "traceback", traceback);
        }

        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.error(this);
        }
    }

    /** Clears what the cell has put out; with {@code waits}, only when the next output arrives. */
    record ClearOutput(boolean waits) implements Output {
        @Override
        public String type() {
            return "clear_output";
        }

        @Override
        public Map<String, Object> fields() {
            return Tree.of("wait", waits);
        }

        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.clear(this);
        }
    }

    /** A comm message from the kernel's side: type is {@code comm_open}, {@code comm_msg} or {@code comm_close}. */
    record Comm(String type, Map<String, Object> fields, Map<String, Object> metadata, List<Frame> buffers)
            implements Output {
        public Comm {
            Objects.requireNonNull(type, "type");
            fields = Tree.copy(fields);
            metadata = Tree.copy(metadata);
            buffers = List.copyOf(buffers);
        }

        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.comm(this);
        }
    }
}
