package kingpost.kernel.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigInteger;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.logging.Level;
import java.util.logging.Logger;
import kingpost.kernel.message.Channel;
import kingpost.kernel.message.Frame;
import kingpost.kernel.message.Header;
import kingpost.kernel.message.Message;
import kingpost.kernel.wire.Reading;
import kingpost.kernel.wire.Signer;
import kingpost.kernel.wire.WireFormat;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/**
 * Seeded mutations of good messages. Without the key none is accepted; with it, whatever its JSON says, each one that
 * is accepted on shell or control is answered between busy and idle. Three in four messages are of the first kind, one
 * in four of the second. The number of messages is the system property
 * {@code kingpost.fuzz.messages}, the seed {@code kingpost.fuzz.seed}.
 */
class WireFuzzTest {

    private static final int MESSAGES = Integer.getInteger("kingpost.fuzz.messages", 100_000);
    private static final int SIGNED = MESSAGES / 4;
    /** Of one message, before the next is signed. */
    private static final int MUTATIONS = 10;
    /** A session's history is kept in memory and searched. */
    private static final int MESSAGES_A_SESSION = 10_000;
    private static final int UNSIGNED = MESSAGES - SIGNED;
    private static final long SEED = Long.getLong("kingpost.fuzz.seed", 20_261_125L);
    private static final List<String> TYPES = List.of("execute_request", "inspect_request", "complete_request",
            "history_request", "is_complete_request", "connect_request", "comm_info_request", "kernel_info_request",
            "interrupt_request", "debug_request", "create_subshell_request", "comm_open", "comm_msg",
            "comm_close", "input_reply", "nonsense");
    private static final List<Channel> CHANNELS = List.of(Channel.SHELL, Channel.SHELL, Channel.SHELL, Channel.CONTROL,
            Channel.STDIN);
    private static final int FIRST_PART = 3;

    private final Random random = new Random(SEED);
    private final Signer signer = Signer.of("hmac-sha256", "a key");
    private final AtomicInteger evil = new AtomicInteger();
    private final ScriptedEvaluator evaluator = new ScriptedEvaluator().on("evil", (cell, out) -> {
        evil.incrementAndGet();
        return ScriptedEvaluator.nothing();
    });
    private final Brackets brackets = new Brackets(MESSAGES > 500_000 ? 20 : 1);
    private KernelSession session = newSession();
    private final Logger log = Logger.getLogger("kingpost.session");

    private KernelSession newSession() {
        KernelSession fresh = new KernelSession(new KernelDescription("test", Map.of("shell_port", 1,
            "iopub_port", 2, "stdin_port", 3, "control_port", 4, "hb_port", 5)), () -> evaluator, new MemoryHistory(),
            brackets, new OutputLimits(1_000, 10, 100_000));
        fresh.start();
        return fresh;
    }

    @BeforeEach
    void quietLog() {
        log.setLevel(Level.OFF);
    }

    @AfterEach
    void closeBench() {
        closeSession();
        log.setLevel(null);
    }

    private void closeSession() {
        session.end();
        session.close();
    }

    @Test
    void acceptsNoMessageThatWasChangedWithoutTheKey() {
        WireFormat wire = new WireFormat(signer);
        List<byte[]> good = List.of();
        for (int i = 0; i < UNSIGNED; i++) {
            if (i % MUTATIONS == 0) {
                good = wire.write(message("execute_request", Map.of("code", "evil"), i));
            }
            List<byte[]> changed = mutated(good);
            Reading reading = wire.read(changed);
            boolean refused = reading instanceof Reading.Refused;
            assertTrue(refused || sameFromDelimiter(good, changed), () -> "seed " + SEED + ": " + changed);
        }
        assertEquals(0, evil.get());
    }

    @Test
    void answersWhateverASignedMessageSays() throws InterruptedException {
        WireFormat wire = new WireFormat(signer);
        int accepted = 0;
        for (int i = 0; i < SIGNED; i++) {
            String type = TYPES.get(random.nextInt(TYPES.size()));
            List<byte[]> frames = new ArrayList<>(wire.write(message(type, oddContent(), i)));
            if (random.nextInt(4) == 0) {
                int part = FIRST_PART + random.nextInt(4);
                frames.set(part, flipped(frames.get(part)));
            }
            frames.set(FIRST_PART - 1, signer.sign(frames.subList(FIRST_PART, FIRST_PART + 4)));
            if (wire.read(frames) instanceof Reading.Accepted good) {
                accepted++;
                Channel channel = CHANNELS.get(random.nextInt(CHANNELS.size()));
                brackets.expect(channel, good.message());
                session.received(channel, good.message());
            }
            if (i % 500 == 0) {
                brackets.awaitAll("seed " + SEED + ", message " + i);
            }
            if (i % MESSAGES_A_SESSION == MESSAGES_A_SESSION - 1) {
                brackets.awaitAll("seed " + SEED + ", message " + i);
                closeSession();
                session = newSession();
            }
        }
        Message alive = message("kernel_info_request", Map.of(), SIGNED);
        brackets.expect(Channel.CONTROL, alive);
        session.received(Channel.CONTROL, alive);
        brackets.awaitAll("the end");
        assertEquals(List.of(), brackets.faults());
        assertTrue(accepted > SIGNED / 2, accepted + " accepted");
        System.out.println("Fuzzed " + UNSIGNED + " messages without the key and " + SIGNED + " with it, seed " + SEED);
    }

    private List<byte[]> mutated(List<byte[]> frames) {
        List<byte[]> changed = new ArrayList<>(frames);
        int at = random.nextInt(changed.size());
        switch (random.nextInt(8)) {
            case 0 -> changed.remove(at);
            case 1 -> changed.add(at, changed.get(random.nextInt(changed.size())));
            case 2 -> changed.set(at, new byte[0]);
            case 3 -> changed.set(at, randomBytes());
            case 4 -> changed.set(at, Arrays.copyOf(changed.get(at), random.nextInt(changed.get(at).length + 1)));
            case 5 -> Collections.swap(changed, at, random.nextInt(changed.size()));
            case 6 -> changed.subList(at, changed.size()).clear();
            default -> changed.set(at, flipped(changed.get(at)));
        }
        return changed;
    }

    private Map<String, Object> oddContent() {
        Map<String, Object> content = new LinkedHashMap<>();
        for (String field : List.of("code", "cursor_pos", "silent", "store_history", "user_expressions", "allow_stdin",
                "stop_on_error", "detail_level", "hist_access_type", "pattern", "n", "session", "start", "stop",
                "unique", "target_name", "seq", "command", "comm_id", "data", "value", "restart", "subshell_id")) {
            if (random.nextInt(3) > 0) {
                content.put(field, oddValue());
            }
        }
        return content;
    }

    private Object oddValue() {
        return switch (random.nextInt(10)) {
            case 0 -> random.nextInt();
            case 1 -> random.nextGaussian() * 1e300;
            case 2 -> random.nextBoolean();
            case 3 -> null;
            case 4 -> List.of(1, "a");
            case 5 -> Map.of("a", "b");
            case 6 -> new BigInteger(200, random);
            case 7 -> List.of("range", "tail", "search").get(random.nextInt(3));
            case 8 -> "*?".repeat(random.nextInt(20));
            default -> new String(randomBytes(), StandardCharsets.UTF_16BE);
        };
    }

    private byte[] flipped(byte[] bytes) {
        byte[] copy = bytes.length == 0 ? new byte[1] : bytes.clone();
        copy[random.nextInt(copy.length)] ^= (byte) (1 << random.nextInt(8));
        return copy;
    }

    private byte[] randomBytes() {
        byte[] bytes = new byte[random.nextInt(200)];
        random.nextBytes(bytes);
        return bytes;
    }

    private static Message message(String type, Map<String, Object> content, int number) {
        return new Message(List.of(Frame.of("client".getBytes(StandardCharsets.US_ASCII))),
                Header.of(number + "-" + UUID.randomUUID(), "s", "u", "2026-11-25T08:00:00Z", type), Optional.empty(), Map.of(), content,
                List.of(Frame.of(new byte[3])));
    }

    /** Identities in front and buffers behind are not signed, so a change there alone leaves the message good. */
    private static boolean sameFromDelimiter(List<byte[]> good, List<byte[]> changed) {
        int delimiter = -1;
        for (int i = changed.size() - 1; i >= 0; i--) {
            delimiter = Arrays.equals(changed.get(i), good.get(1)) ? i : delimiter;
        }
        return delimiter >= 0 && changed.size() >= delimiter + 6
                && Arrays.deepEquals(changed.subList(delimiter, delimiter + 6).toArray(),
                        good.subList(1, 7).toArray());
    }
}
