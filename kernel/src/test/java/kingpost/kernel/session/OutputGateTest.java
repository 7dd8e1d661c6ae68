package kingpost.kernel.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import kingpost.kernel.display.MimeBundle;
import kingpost.kernel.message.Output;
import org.junit.jupiter.api.Test;

class OutputGateTest {

    private final List<Output> sent = new ArrayList<>();
    private final Deque<Runnable> planned = new ArrayDeque<>();
    private final OutputGate gate = new OutputGate(sent::add, InputPrompt.NONE, new OutputLimits(100_000, 100, 1_000),
            planned::add);

    @Test
    void joinsAMillionLinesIntoFewMessagesAndSaysThatItCutThem() {
        for (int i = 0; i < 1_000_000; i++) {
            gate.stream("stdout", "line " + i + "\n");
        }
        gate.finish();
        assertTrue(sent.size() < 12, sent.size() + " messages");
        String text = sent.stream().map(output -> ((Output.Stream) output).text()).collect(Collectors.joining());
        assertTrue(text.length() < 103_000 && text.contains("longer than 100000 characters")
                && text.endsWith("line 999999\n"));
    }

    @Test
    void sendsSmallOutputWhenTheTimeHasCome() {
        gate.stream("stdout", "a");
        gate.stream("stdout", "b");
        assertEquals(List.of(), sent);
        assertEquals(1, planned.size());
        planned.remove().run();
        assertEquals(List.of(new Output.Stream("stdout", "ab")), sent);
    }

    @Test
    void keepsTheOrderOfTwoStreams() {
        gate.stream("stdout", "a");
        gate.stream("stderr", "b");
        gate.stream("stdout", "c");
        gate.finish();
        assertEquals("abc", sent.stream().map(output -> ((Output.Stream) output).text()).collect(Collectors.joining()));
        assertEquals(3, sent.size());
    }

    @Test
    void leavesOutWhatIsClearedBeforeAnyoneCouldSeeIt() {
        for (int i = 0; i < 1_000; i++) {
            gate.clear(true);
            gate.stream("stdout", i + " %");
        }
        gate.finish();
        assertEquals(List.of(new Output.ClearOutput(true), new Output.Stream("stdout", "999 %")), sent);
    }

    @Test
    void keepsTextBeforeAClearThatStillWaits() {
        gate.stream("stdout", "stays");
        gate.clear(true);
        gate.finish();
        assertEquals(List.of(new Output.Stream("stdout", "stays"), new Output.ClearOutput(true)), sent);
    }

    @Test
    void sendsTheNewestOfManyUpdates() {
        gate.display(MimeBundle.plain("0"), Optional.of("d"));
        for (int i = 1; i <= 50; i++) {
            gate.update(MimeBundle.plain("" + i), "d");
        }
        gate.finish();
        assertEquals(List.of("display_data", "update_display_data"), sent.stream().map(Output::type).toList());
        assertEquals("50", ((Output.UpdateDisplayData) sent.get(1)).data().get("text/plain"));
    }

    @Test
    void neverSplitsACharacter() {
        String sigma = "\uD835\uDF0E";
        gate.stream("stdout", sigma.substring(0, 1));
        planned.remove().run();
        assertEquals(List.of(), sent);
        gate.stream("stdout", sigma.substring(1));
        gate.finish();
        assertEquals(List.of(new Output.Stream("stdout", sigma)), sent);
    }
}
