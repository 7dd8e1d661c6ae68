package kingpost.notebook;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import java.util.function.BiConsumer;
import java.util.function.Consumer;

/**
 * A two-way line between a cell and a piece of the front end, opened by either side.
 *
 * <p><b>Source:</b> Jupyter messaging protocol 5.4, section "Custom Messages".
 */
public final class Comm {

    private static final CommRegistry OPEN = new CommRegistry();

    private final String id;
    private final String target;
    private volatile Consumer<CommMessage> onMessage = message -> { };
    private volatile Consumer<CommMessage> onClose = message -> { };

    Comm(String id, String target) {
        this.id = Objects.requireNonNull(id, "id");
        this.target = Objects.requireNonNull(target, "target");
    }

    /** Opens a line to the front end's part that is registered as {@code target}. */
    public static Comm open(String target, CommMessage message) {
        var comm = new Comm(UUID.randomUUID().toString().replace("-", ""), target);
        OPEN.add(comm);
        CellDisplay.sink().comm("comm_open", Map.of("comm_id", comm.id, "target_name", target, "data", message.data()),
                message.metadata(), message.buffers());
        return comm;
    }

    /** From now on the front end may open lines to {@code target}; each new one is given to {@code opened}. */
    public static void accept(String target, BiConsumer<Comm, CommMessage> opened) {
        OPEN.accept(target, opened);
    }

    /** Every line that is open, and who accepts new ones; the agent's business. */
    public static CommRegistry registry() {
        return OPEN;
    }

    public String id() {
        return id;
    }

    public String target() {
        return target;
    }

    public void send(CommMessage message) {
        CellDisplay.sink().comm("comm_msg", Map.of("comm_id", id, "data", message.data()), message.metadata(),
                message.buffers());
    }

    public void close() {
        OPEN.remove(id);
        CellDisplay.sink().comm("comm_close", Map.of("comm_id", id, "data", Map.of()), Map.of(), List.of());
    }

    /** What to do with each message from the front end; replaces what was set before. */
    public Comm onMessage(Consumer<CommMessage> action) {
        onMessage = Objects.requireNonNull(action, "action");
        return this;
    }

    /** What to do when the front end closes the line. */
    public Comm onClose(Consumer<CommMessage> action) {
        onClose = Objects.requireNonNull(action, "action");
        return this;
    }

    void received(CommMessage message) {
        onMessage.accept(message);
    }

    void closed(CommMessage message) {
        onClose.accept(message);
    }
}
