package kingpost.kernel.wire;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import kingpost.kernel.message.Frame;
import kingpost.kernel.message.Header;
import kingpost.kernel.message.Message;
import kingpost.kernel.wire.Reading.Reason;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class WireFormatTest {

    private static final int SIGNATURE = 3;
    private static final int HEADER = 4;

    private final Signer signer = Signer.of("hmac-sha256", "a key");
    private final WireFormat wire = new WireFormat(signer);

    @Test
    void readsWhatItWrites() {
        Random random = new Random(20261125);
        for (int i = 0; i < 1_000; i++) {
            Message message = message(random, "id" + i);
            assertEquals(new Reading.Accepted(message), wire.read(wire.write(message)));
        }
    }

    @Test
    void putsFramesInTheOrderOfTheProtocol() {
        List<byte[]> frames = valid();
        assertEquals(9, frames.size());
        assertArrayEquals(new byte[] {0, 1, 2}, frames.get(0));
        assertEquals("<IDS|MSG>", text(frames.get(2)));
        assertArrayEquals(signer.sign(frames.subList(HEADER, 8)), frames.get(SIGNATURE));
        assertEquals("{}", text(frames.get(5)));
        assertArrayEquals(new byte[] {9}, frames.get(8));
    }

    @Test
    void leavesTheSignatureEmptyWithoutAKey() {
        WireFormat open = new WireFormat(Signer.of("hmac-sha256", ""));
        List<byte[]> frames = open.write(message("m"));
        assertEquals(0, frames.get(SIGNATURE).length);
        assertTrue(open.read(frames) instanceof Reading.Accepted);
        assertTrue(open.read(frames) instanceof Reading.Accepted);
    }

    @Test
    void checksTheBytesAsTheyCame() {
        List<byte[]> frames = valid();
        frames.set(HEADER, utf8("{ \"msg_type\" : \"x_request\",\n \"msg_id\":\"\\u0031\" }"));
        sign(frames);
        Reading.Accepted accepted = (Reading.Accepted) wire.read(frames);
        assertEquals("1", accepted.message().header().id());
    }

    @Test
    void refusesWhatHasNoDelimiter() {
        List<byte[]> frames = valid();
        frames.remove(2);
        assertRefused(Reason.NO_DELIMITER, frames);
        assertRefused(Reason.NO_DELIMITER, List.of());
    }

    @Test
    void refusesTooFewFrames() {
        List<byte[]> frames = valid();
        for (int size = 7; size > 2; size--) {
            assertRefused(Reason.TOO_FEW_FRAMES, frames.subList(0, size));
        }
    }

    @Test
    void refusesUnsignedForgedAndReplayed() {
        List<byte[]> frames = valid();
        List<byte[]> unsigned = new ArrayList<>(frames);
        unsigned.set(SIGNATURE, new byte[0]);
        assertRefused(Reason.UNSIGNED, unsigned);
        List<byte[]> forged = new ArrayList<>(frames);
        forged.set(7, utf8("{\"code\":\"evil()\"}"));
        assertRefused(Reason.WRONG_SIGNATURE, forged);
        assertTrue(wire.read(frames) instanceof Reading.Accepted);
        assertRefused(Reason.REPLAYED, frames);
    }

    @Test
    void keepsSeenSignaturesWhateverIsForged() {
        WireFormat small = new WireFormat(signer, 2);
        List<byte[]> frames = small.write(message("m"));
        assertTrue(small.read(frames) instanceof Reading.Accepted);
        for (int i = 0; i < 10; i++) {
            List<byte[]> forged = new ArrayList<>(frames);
            forged.set(SIGNATURE, utf8("0".repeat(63) + i));
            small.read(forged);
        }
        assertEquals(new Reading.Refused(Reason.REPLAYED), small.read(frames));
    }

    @ParameterizedTest
    @ValueSource(ints = {4, 5, 6, 7})
    void refusesSignedPartsThatAreNoJsonObject(int part) {
        for (String bad : List.of("", "[]", "null", "{", "{\"a\":NaN}", "{'a':1}", "{} {}", "[".repeat(100_000),
                "{\"a\":".repeat(2_000) + "1" + "}".repeat(2_000))) {
            List<byte[]> frames = valid();
            frames.set(part, utf8(bad));
            sign(frames);
            assertRefused(Reason.NOT_JSON, frames);
        }
        List<byte[]> frames = valid();
        frames.set(part, new byte[] {'{', '"', (byte) 0xc3, '"', ':', '1', '}'});
        sign(frames);
        assertRefused(Reason.NOT_TEXT, frames);
    }

    @Test
    void refusesAHeaderWithoutTypeOrId() {
        for (String header : List.of("{}", "{\"msg_id\":\"1\"}", "{\"msg_id\":1,\"msg_type\":\"a\"}")) {
            List<byte[]> frames = valid();
            frames.set(HEADER, utf8(header));
            sign(frames);
            assertRefused(Reason.NO_TYPE, frames);
        }
    }

    @Test
    void writesTextThatEveryReaderTakes() {
        Map<String, Object> content = new LinkedHashMap<>(Map.of("nan", Double.NaN, "lone", "a\uD835b",
                "pair", "\uD835\uDF0E", "markup", "<b>&'"));
        Message message = new Message(List.of(), header("m"), Optional.empty(), Map.of(), content, List.of());
        Map<String, Object> read = Json.readObject(text(wire.write(message).get(5)));
        assertEquals("a?b", read.get("lone"));
        assertEquals("\uD835\uDF0E", read.get("pair"));
        assertEquals(null, read.get("nan"));
        assertTrue(text(wire.write(message).get(5)).contains("<b>&'"));
    }

    private void assertRefused(Reason reason, List<byte[]> frames) {
        assertEquals(new Reading.Refused(reason), wire.read(frames));
    }

    private List<byte[]> valid() {
        return new ArrayList<>(wire.write(message("m")));
    }

    private void sign(List<byte[]> frames) {
        frames.set(SIGNATURE, signer.sign(frames.subList(HEADER, 8)));
    }

    private static Message message(String id) {
        return new Message(List.of(Frame.of(new byte[] {0, 1, 2}), Frame.of(utf8("second"))), header(id),
                Optional.empty(), Map.of(), Map.of("code", "1 + 1"), List.of(Frame.of(new byte[] {9})));
    }

    private static Message message(Random random, String id) {
        Map<String, Object> content = new LinkedHashMap<>();
        for (int i = random.nextInt(5); i > 0; i--) {
            content.put(text(random), switch (random.nextInt(6)) {
                case 0 -> random.nextLong();
                case 1 -> random.nextDouble() * 1e300;
                case 2 -> random.nextBoolean();
                case 3 -> List.of(text(random), Map.of("deep", text(random)));
                case 4 -> null;
                default -> text(random);
            });
        }
        byte[] buffer = new byte[random.nextInt(100)];
        random.nextBytes(buffer);
        return new Message(List.of(Frame.of(utf8(text(random)))), header(id),
                random.nextBoolean() ? Optional.empty() : Optional.of(header("parent")), Map.of("m", text(random)),
                content, List.of(Frame.of(buffer)));
    }

    private static String text(Random random) {
        int[] codePoints = random.ints(random.nextInt(20), 0, 0x110000)
                .filter(c -> c < Character.MIN_SURROGATE || c > Character.MAX_SURROGATE).toArray();
        return new String(codePoints, 0, codePoints.length);
    }

    private static Header header(String id) {
        return Header.of(id, "s", "u", "2026-11-25T08:00:00Z", "execute_request");
    }

    private static byte[] utf8(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    private static String text(byte[] frame) {
        return new String(frame, StandardCharsets.UTF_8);
    }
}
