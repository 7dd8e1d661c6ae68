package kingpost.notebook;

import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.BiConsumer;

/** Open lines by their id, and who accepts new ones by target; passes on what the front end sends. */
public final class CommRegistry {

    private final Map<String, Comm> open = new ConcurrentHashMap<>();
    private final Map<String, BiConsumer<Comm, CommMessage>> targets = new ConcurrentHashMap<>();

    void add(Comm comm) {
        open.put(comm.id(), comm);
    }

    void remove(String id) {
        open.remove(id);
    }

    void accept(String target, BiConsumer<Comm, CommMessage> opened) {
        targets.put(target, opened);
    }

    /**
     * Takes a message of the front end: {@code type} is comm_open, comm_msg or comm_close. An open for a target that
     * nobody accepts is answered with a close; a message for an unknown line is dropped.
     */
    public void received(String type, Map<String, Object> content, Map<String, Object> metadata,
                         List<byte[]> buffers) {
        String id = String.valueOf(content.get("comm_id"));
        var message = new CommMessage(data(content), metadata, buffers);
        switch (type) {
            case "comm_open" -> opened(id, String.valueOf(content.get("target_name")), message);
            case "comm_msg" -> {
                Comm comm = open.get(id);
                if (comm != null) {
                    comm.received(message);
                }
            }
            default -> {
                Comm comm = open.remove(id);
                if (comm != null) {
                    comm.closed(message);
                }
            }
        }
    }

    private void opened(String id, String target, CommMessage message) {
        var comm = new Comm(id, target);
        var opened = targets.get(target);
        if (opened == null) {
            comm.close();
            return;
        }
        open.put(id, comm);
        try {
            opened.accept(comm, message);
        } catch (RuntimeException | Error failed) {
            comm.close();
            throw failed;
        }
    }

    @SuppressWarnings("unchecked")
    private static Map<String, Object> data(Map<String, Object> content) {
        return content.get("data") instanceof Map<?, ?> data ? (Map<String, Object>) data : Map.of();
    }
}
