package kingpost.kernel.client;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.fail;

import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Predicate;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;
import kingpost.kernel.wire.Json;
import org.zeromq.SocketType;
import org.zeromq.ZMQ;

/**
 * A client of the protocol over real sockets, with its own signing and its own judgement of every message: each one
 * that it receives is checked against {@link MessageSchema}. For one thread.
 */
public final class SocketClient implements AutoCloseable {

    private static final byte[] DELIMITER = "<IDS|MSG>".getBytes(StandardCharsets.US_ASCII);
    private static final Duration PATIENCE = Duration.ofSeconds(40);

    /** The sockets of a client by channel. */
    public enum On { SHELL, CONTROL, STDIN, IOPUB }

    private final ZMQ.Context context = ZMQ.context(1);
    private final String algorithm;
    private final String key;
    private final String session;
    private final Map<On, ZMQ.Socket> sockets = new LinkedHashMap<>();
    private final ZMQ.Socket heartbeat;
    private final List<Received> unread = new ArrayList<>();

    /** Connects to a kernel by its connection file's fields. */
    public SocketClient(Map<String, Object> file) {
        this(file, UUID.randomUUID().toString(), 0);
    }

    /** For signing only: nobody listens where it connects. */
    public static SocketClient unconnected() {
        return new SocketClient(Map.of("key", KernelUnderTest.KEY, "ip", "127.0.0.1", "shell_port", 1,
                "control_port", 1, "stdin_port", 1, "iopub_port", 1, "hb_port", 1));
    }

    /** A client that, when it does not read, holds few messages. */
    public static SocketClient withSmallQueue(Map<String, Object> file) {
        return new SocketClient(file, UUID.randomUUID().toString(), 1);
    }

    private SocketClient(Map<String, Object> file, String session, int queue) {
        this.session = session;
        this.key = (String) file.getOrDefault("key", "");
        this.algorithm = "Hmac" + ((String) file.getOrDefault("signature_scheme", "hmac-sha256"))
                .substring("hmac-".length()).toUpperCase(Locale.ROOT);
        byte[] identity = session.getBytes(StandardCharsets.US_ASCII);
        sockets.put(On.SHELL, connect(SocketType.DEALER, file, "shell_port", identity));
        sockets.put(On.CONTROL, connect(SocketType.DEALER, file, "control_port", identity));
        sockets.put(On.STDIN, connect(SocketType.DEALER, file, "stdin_port", identity));
        sockets.put(On.IOPUB, connectIopub(file, queue));
        heartbeat = connect(SocketType.REQ, file, "hb_port", identity);
    }

    public String session() {
        return session;
    }

    /** Subscribes to everything and waits for the kernel's welcome. */
    public SocketClient subscribe() {
        sockets.get(On.IOPUB).subscribe(new byte[0]);
        await(On.IOPUB, message -> message.type().equals("iopub_welcome"));
        return this;
    }

    /** Sends a request and returns its id. */
    public String send(On channel, String type, Map<String, Object> content) {
        return send(channel, type, content, Map.of(), Map.of(), List.of());
    }

    public String send(On channel, String type, Map<String, Object> content, Map<String, Object> parent,
                       Map<String, Object> moreHeader, List<byte[]> buffers) {
        Map<String, Object> header = header(type);
        header.putAll(moreHeader);
        List<byte[]> frames = new ArrayList<>(signed(header, parent, content));
        frames.addAll(buffers);
        sendRaw(channel, frames);
        return (String) header.get("msg_id");
    }

    /** Delimiter, signature and the four parts. */
    public List<byte[]> signed(Map<String, Object> header, Map<String, Object> parent, Map<String, Object> content) {
        List<byte[]> parts = List.of(bytes(header), bytes(parent), bytes(Map.of()), bytes(content));
        return sealed(parts);
    }

    /** Delimiter, signature and these parts, whatever they hold. */
    public List<byte[]> sealed(List<byte[]> parts) {
        List<byte[]> frames = new ArrayList<>(List.of(DELIMITER, sign(parts)));
        frames.addAll(parts);
        return frames;
    }

    public Map<String, Object> header(String type) {
        Map<String, Object> header = new LinkedHashMap<>();
        header.put("msg_id", UUID.randomUUID().toString());
        header.put("session", session);
        header.put("username", "tester");
        header.put("date", Instant.now().truncatedTo(ChronoUnit.MICROS).toString());
        header.put("msg_type", type);
        header.put("version", "5.5");
        return header;
    }

    public void sendRaw(On channel, List<byte[]> frames) {
        ZMQ.Socket socket = sockets.get(channel);
        for (int i = 0; i < frames.size(); i++) {
            socket.send(frames.get(i), i < frames.size() - 1 ? ZMQ.SNDMORE : 0);
        }
    }

    public String execute(String code) {
        return execute(code, Map.of());
    }

    public String execute(String code, Map<String, Object> more) {
        Map<String, Object> content = new LinkedHashMap<>(Map.of("code", code, "silent", false, "store_history", true,
                "user_expressions", Map.of(), "allow_stdin", false, "stop_on_error", true));
        content.putAll(more);
        return send(On.SHELL, "execute_request", content);
    }

    /** Sends a request on shell or control and waits for its reply. */
    public Received ask(On channel, String type, Map<String, Object> content) {
        return reply(channel, send(channel, type, content));
    }

    /** Waits for the reply to a request. */
    public Received reply(On channel, String id) {
        return await(channel, message -> message.parentId().equals(id));
    }

    /** The same for a request that may take a while. */
    public Received await(On channel, String id, int seconds) {
        return await(channel, message -> message.parentId().equals(id), Duration.ofSeconds(seconds))
                .orElseGet(() -> fail("no reply on " + channel + " in " + seconds + " s"));
    }

    /** What is published for a request, from its busy to its first idle after {@code replied}. */
    public List<Received> published(String id) {
        List<Received> found = new ArrayList<>();
        Received next;
        do {
            next = await(On.IOPUB, message -> message.parentId().equals(id));
            found.add(next);
        } while (!next.brief().equals("status idle"));
        return found;
    }

    public List<String> briefs(String id) {
        return published(id).stream().map(Received::brief).toList();
    }

    /** The next message on the channel that fits; others wait for later calls. */
    public Received await(On channel, Predicate<Received> wanted) {
        return await(channel, wanted, PATIENCE).orElseGet(() -> fail("nothing fitting came on " + channel + "; unread: "
                + unread.stream().map(Received::brief).toList()));
    }

    public Optional<Received> await(On channel, Predicate<Received> wanted, Duration patience) {
        Optional<Received> early = unread.stream().filter(wanted).filter(m -> m.channel() == channel).findFirst();
        if (early.isPresent()) {
            unread.remove(early.get());
            return early;
        }
        long end = System.nanoTime() + patience.toNanos();
        while (System.nanoTime() < end) {
            Optional<Received> next = receive(channel, Duration.ofNanos(end - System.nanoTime()));
            if (next.filter(wanted).isPresent()) {
                return next;
            }
            next.ifPresent(unread::add);
        }
        return Optional.empty();
    }

    /** Sends a heartbeat and returns what comes back. */
    public byte[] beat(byte[] bytes) {
        heartbeat.setReceiveTimeOut((int) PATIENCE.toMillis());
        heartbeat.send(bytes);
        return heartbeat.recv();
    }

    @Override
    public void close() {
        sockets.values().forEach(SocketClient::drop);
        drop(heartbeat);
        context.term();
    }

    private static void drop(ZMQ.Socket socket) {
        socket.setLinger(0);
        socket.close();
    }

    private Optional<Received> receive(On channel, Duration patience) {
        ZMQ.Socket socket = sockets.get(channel);
        socket.setReceiveTimeOut((int) Math.max(1, patience.toMillis()));
        byte[] first = socket.recv();
        if (first == null) {
            return Optional.empty();
        }
        List<byte[]> frames = new ArrayList<>(List.of(first));
        while (socket.hasReceiveMore()) {
            frames.add(socket.recv());
        }
        return Optional.of(parse(channel, frames));
    }

    private Received parse(On channel, List<byte[]> frames) {
        int delimiter = 0;
        while (!Arrays.equals(frames.get(delimiter), DELIMITER)) {
            delimiter++;
        }
        List<byte[]> parts = frames.subList(delimiter + 2, delimiter + 6);
        assertArrayEquals(sign(parts), frames.get(delimiter + 1), "the kernel's signature");
        Received message = new Received(channel, object(parts.get(0)), object(parts.get(1)), object(parts.get(2)),
                object(parts.get(3)), frames.subList(delimiter + 6, frames.size()));
        MessageSchema.check(message.header(), message.parent(), message.content());
        return message;
    }

    private byte[] sign(List<byte[]> parts) {
        if (key.isEmpty()) {
            return new byte[0];
        }
        try {
            Mac mac = Mac.getInstance(algorithm);
            mac.init(new SecretKeySpec(key.getBytes(StandardCharsets.UTF_8), algorithm));
            parts.forEach(mac::update);
            return HexFormat.of().formatHex(mac.doFinal()).getBytes(StandardCharsets.US_ASCII);
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException(e);
        }
    }

    private ZMQ.Socket connect(SocketType type, Map<String, Object> file, String port, byte[] identity) {
        ZMQ.Socket socket = context.socket(type);
        if (type == SocketType.DEALER) {
            socket.setIdentity(identity);
        }
        socket.connect("tcp://" + file.get("ip") + ":" + file.get(port));
        return socket;
    }

    private ZMQ.Socket connectIopub(Map<String, Object> file, int queue) {
        ZMQ.Socket socket = context.socket(SocketType.SUB);
        socket.setRcvHWM(queue);
        socket.connect("tcp://" + file.get("ip") + ":" + file.get("iopub_port"));
        return socket;
    }

    private static byte[] bytes(Map<String, Object> tree) {
        return Json.write(tree).getBytes(StandardCharsets.UTF_8);
    }

    private static Map<String, Object> object(byte[] part) {
        return Json.readObject(new String(part, StandardCharsets.UTF_8));
    }
}
