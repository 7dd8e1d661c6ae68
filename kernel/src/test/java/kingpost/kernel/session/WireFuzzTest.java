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
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.locks.LockSupport;
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
 * is accepted is answered between busy and idle. The number of messages is the system property
 * {@code kingpost.fuzz.messages}, the seed {@code kingpost.fuzz.seed}.
 */
class WireFuzzTest {

    private static final int MESSAGES = Integer.getInteger("kingpost.fuzz.messages", 100_000);
    private static final long SEED = Long.getLong("kingpost.fuzz.seed", 20_261_125L);
    private static final List<String> TYPES = List.of("execute", "inspect", "complete", "history", "is_complete",
            "connect", "comm_info", "kernel_info", "interrupt", "debug", "nonsense");
    private static final int FIRST_PART = 3;

    private final Random random = new Random(SEED);
    private final Signer signer = Signer.of("hmac-sha256", "a key");
    private final AtomicInteger evil = new AtomicInteger();
    private final ScriptedEvaluator evaluator = new ScriptedEvaluator().on("evil", (cell, out) -> {
        evil.incrementAndGet();
        return ScriptedEvaluator.nothing();
    });
    private final SessionBench bench = new SessionBench(evaluator);
    private final Logger log = Logger.getLogger("kingpost.session");

    @BeforeEach
    void quietLog() {
        log.setLevel(Level.OFF);
    }

    @AfterEach
    void closeBench() {
        bench.close();
        log.setLevel(null);
    }

    @Test
    void acceptsNoMessageThatWasChangedWithoutTheKey() {
        WireFormat wire = new WireFormat(signer);
        for (int i = 0; i < MESSAGES; i++) {
            List<byte[]> good = wire.write(message("execute_request", Map.of("code", "evil"), i));
            List<byte[]> changed = mutated(good);
            Reading reading = wire.read(changed);
            boolean untouched = sameFromDelimiter(good, changed);
            assertTrue(untouched || reading instanceof Reading.Refused, () -> "seed " + SEED + ": " + changed);
        }
        assertEquals(0, evil.get());
    }

    @Test
    void answersWhateverASignedMessageSays() {
        WireFormat wire = new WireFormat(signer);
        int accepted = 0;
        Message last = message("kernel_info_request", Map.of(), -1);
        for (int i = 0; i < MESSAGES / 10; i++) {
            String type = TYPES.get(random.nextInt(TYPES.size())) + "_request";
            List<byte[]> frames = new ArrayList<>(wire.write(message(type, oddContent(), i)));
            if (random.nextInt(4) == 0) {
                int part = FIRST_PART + random.nextInt(4);
                frames.set(part, flipped(frames.get(part)));
            }
            frames.set(FIRST_PART - 1, signer.sign(frames.subList(FIRST_PART, FIRST_PART + 4)));
            if (wire.read(frames) instanceof Reading.Accepted good) {
                accepted++;
                last = good.message();
                bench.session.received(random.nextInt(5) == 0 ? Channel.CONTROL : Channel.SHELL, last);
                if (i % 500 == 0) {
                    bench.all(last);
                }
            }
        }
        bench.all(last);
        Message alive = bench.send(Channel.CONTROL, "kernel_info_request", Map.of());
        assertEquals(List.of("busy", "kernel_info_reply", "idle"), bench.briefs(alive));
        assertTrue(accepted > MESSAGES / 20, accepted + " accepted");
        assertEveryRequestIsBracketed();
    }

    /** Over all that was sent, for each parent: busy first and idle last. */
    private void assertEveryRequestIsBracketed() {
        bench.all(bench.send(Channel.SHELL, "kernel_info_request", Map.of()));
        // questions about code are answered beside the shell's line, so the last of them may still be at work
        long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(20);
        while (System.nanoTime() < end && !briefsByParent().values().stream()
                .allMatch(briefs -> briefs.get(briefs.size() - 1).equals("idle"))) {
            LockSupport.parkNanos(TimeUnit.MILLISECONDS.toNanos(20));
        }
        briefsByParent().forEach((parent, briefs) -> {
            assertEquals("busy", briefs.get(0), () -> "" + briefs);
            assertEquals("idle", briefs.get(briefs.size() - 1), () -> "" + briefs);
        });
    }

    private Map<Optional<Header>, List<String>> briefsByParent() {
        Map<Optional<Header>, List<String>> byParent = new LinkedHashMap<>();
        bench.everything().forEach(sent -> byParent.computeIfAbsent(sent.message().parent(), p -> new ArrayList<>())
                .add(sent.brief()));
        byParent.remove(Optional.<Header>empty());
        return byParent;
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
                "unique", "target_name", "seq", "command")) {
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
                Header.of("m" + number, "s", "u", "2026-11-25T08:00:00Z", type), Optional.empty(), Map.of(), content,
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
