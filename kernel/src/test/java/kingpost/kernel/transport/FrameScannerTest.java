package kingpost.kernel.transport;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import kingpost.kernel.client.RawPeer;
import org.junit.jupiter.api.Test;

class FrameScannerTest {

    private static final TransportRules RULES = TransportRules.ofMessages(1_000_000, 100);

    private final List<String> refusals = new ArrayList<>();
    private final PartialBudget budget = new PartialBudget(1_000_000);
    private final Intake intake = new Intake(RULES, budget, 500_000, refusals::add);
    private final FrameScanner scanner = new FrameScanner(intake);

    private static byte[] frame(int flags, long length, int bodyBytes) {
        return ByteBuffer.allocate(9 + bodyBytes).put((byte) (flags | 2)).putLong(length).array();
    }

    private static byte[] join(byte[]... parts) {
        ByteArrayOutputStream all = new ByteArrayOutputStream();
        for (byte[] part : parts) {
            all.writeBytes(part);
        }
        return all.toByteArray();
    }

    private static byte[] hello() {
        return join(RawPeer.greeting(), RawPeer.ready("DEALER", "me"));
    }

    private static byte[] command(String name, int dataBytes) {
        byte[] command = new byte[3 + name.length() + dataBytes];
        command[0] = 4;
        command[1] = (byte) (1 + name.length() + dataBytes);
        command[2] = (byte) name.length();
        for (int i = 0; i < name.length(); i++) {
            command[3 + i] = (byte) name.charAt(i);
        }
        return command;
    }

    private Optional<String> scan(byte[] bytes) {
        return scanner.scan(ByteBuffer.wrap(bytes));
    }

    @Test
    void passesAConversationHoweverItIsCutIntoPieces() {
        byte[] all = join(hello(), frame(1, 3, 3), frame(0, 70_000, 70_000), command("PING", 2), new byte[] {0, 0},
                new byte[] {1, 2, 7, 7, 0, 1, 9});
        Random random = new Random(5);
        for (int run = 0; run < 200; run++) {
            FrameScanner each = new FrameScanner(intake);
            for (int at = 0; at < all.length; ) {
                int step = Math.min(all.length - at, 1 + random.nextInt(run < 100 ? 20 : 50_000));
                assertEquals(Optional.empty(), each.scan(ByteBuffer.wrap(all, at, step)));
                at += step;
            }
            assertTrue(each.isReady());
        }
        assertTrue(budget.take(1_000_000), "what large messages took is given back");
    }

    @Test
    void findsTheFirstWrongByteOfAGreeting() {
        for (int at : new int[] {0, 10, 12, 15, 16, 31}) {
            byte[] greeting = RawPeer.greeting();
            greeting[at] = 1;
            assertTrue(new FrameScanner(intake).scan(ByteBuffer.wrap(greeting)).isPresent(), "byte " + at);
        }
        assertTrue(scan("GET / HTTP/1.1".getBytes()).isPresent());
    }

    @Test
    void refusesLengthsThatCannotBe() {
        for (long length : new long[] {-1, Long.MIN_VALUE, Long.MIN_VALUE + 100, 1_000_001, Long.MAX_VALUE}) {
            FrameScanner each = new FrameScanner(intake);
            assertEquals(Optional.empty(), each.scan(ByteBuffer.wrap(hello())));
            assertTrue(each.scan(ByteBuffer.wrap(frame(0, length, 0))).isPresent(), "" + length);
            FrameScanner early = new FrameScanner(intake);
            early.scan(ByteBuffer.wrap(RawPeer.greeting()));
            assertTrue(early.scan(ByteBuffer.wrap(frame(4, length, 0))).isPresent(), "" + length);
        }
    }

    @Test
    void refusesWhatDoesNotBelong() {
        List<byte[]> wrong = List.of(new byte[] {8}, new byte[] {5}, command("PING", 1), command("PING", 30),
                command("ERROR", 3), command("READY", 0), command("x", 0), new byte[] {4, 0},
                frame(4, 3_000, 0), new byte[] {4, 3, 9, 'a', 'b'});
        for (byte[] bytes : wrong) {
            FrameScanner each = new FrameScanner(intake);
            assertEquals(Optional.empty(), each.scan(ByteBuffer.wrap(hello())));
            assertTrue(each.scan(ByteBuffer.wrap(bytes)).isPresent(), java.util.Arrays.toString(bytes));
        }
        assertTrue(scan(join(RawPeer.greeting(), new byte[] {0, 1, 1})).isPresent(), "a message before READY");
    }

    @Test
    void countsTheFramesOfAMessageThatNeverEnds() {
        assertEquals(Optional.empty(), scan(hello()));
        assertEquals(Optional.empty(), scan(join(IntStream.range(0, 100).mapToObj(i -> new byte[] {1, 0})
                .toArray(byte[][]::new))));
        assertTrue(scan(new byte[] {1, 0}).isPresent());
    }

    @Test
    void sharesTheBudgetOfUnfinishedMessagesAndGivesItBack() {
        FrameScanner other = new FrameScanner(intake);
        assertEquals(Optional.empty(), scan(join(hello(), frame(0, 900_000, 10))));
        assertEquals(Optional.of("too many large messages begun at once"),
                other.scan(ByteBuffer.wrap(join(hello(), frame(0, 300_000, 0)))));
        scanner.end();
        assertEquals(Optional.empty(), new FrameScanner(intake).scan(ByteBuffer.wrap(join(hello(), frame(0, 900_000, 0)))));
    }

    @Test
    void pausesWhileTooMuchWaitsAndWakesWhenItIsTaken() {
        int[] woken = {0};
        intake.whenRoom(() -> woken[0]++);
        assertEquals(Optional.empty(), scan(join(hello(), frame(0, 600_000, 600_000))));
        assertFalse(intake.hasRoom());
        intake.taken(10);
        assertFalse(intake.hasRoom());
        intake.taken(600_000 + Intake.FRAME_OVERHEAD);
        assertTrue(intake.hasRoom());
        assertEquals(1, woken[0]);
        assertEquals(0, intake.waiting());
    }

    /** Whatever comes, the scanner says yes or no. */
    @Test
    void judgesAnyBytes() {
        Random random = new Random(20_261_125);
        byte[] good = join(hello(), frame(1, 3, 3), command("PING", 4), frame(0, 40, 40));
        int refused = 0;
        for (int i = 0; i < 100_000; i++) {
            byte[] bytes = good.clone();
            for (int flips = random.nextInt(4); flips >= 0; flips--) {
                bytes[random.nextInt(bytes.length)] = (byte) random.nextInt();
            }
            FrameScanner each = new FrameScanner(intake);
            refused += each.scan(ByteBuffer.wrap(bytes)).isPresent() ? 1 : 0;
            each.end();
        }
        assertTrue(refused > 10_000 && refused < 100_000, refused + " refused");
        assertTrue(budget.take(1_000_000), "nothing is held of what was refused");
    }
}
