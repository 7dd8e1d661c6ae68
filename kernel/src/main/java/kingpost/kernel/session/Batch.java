package kingpost.kernel.session;

import java.util.ArrayList;
import java.util.List;
import kingpost.kernel.message.Output;

/**
 * A cell's output of the last moment, before it is sent: text on one stream joined, and what nobody would see any
 * more (cleared, or replaced by a newer update) left out. Not safe for several threads.
 */
final class Batch {

    private final List<Output> items = new ArrayList<>();
    private final StringBuilder text = new StringBuilder();
    private String streamName = "";
    private int chars;

    void addText(String name, String more) {
        if (!name.equals(streamName)) {
            closeText();
            dropCleared();
            streamName = name;
        }
        text.append(more);
        chars += more.length();
    }

    void add(Output output) {
        closeText();
        if (!(output instanceof Output.Comm)) {
            dropCleared();
        }
        if (output instanceof Output.UpdateDisplayData update) {
            items.removeIf(item -> item instanceof Output.UpdateDisplayData earlier
                    && earlier.displayId().equals(update.displayId()));
        }
        items.add(output);
    }

    void clear(boolean wait) {
        closeText();
        if (wait && endsInWaitingClear()) {
            return;
        }
        if (!wait) {
            items.removeIf(Batch::vanishesWhenCleared);
        }
        items.add(new Output.ClearOutput(wait));
    }

    /** Characters of text that wait. */
    int chars() {
        return chars;
    }

    int size() {
        return items.size() + (text.length() > 0 ? 1 : 0);
    }

    /** Takes everything out, in order; half of a character at the end of the text stays unless this is the end. */
    List<Output> drain(boolean end) {
        String half = "";
        if (!end && text.length() > 0 && Character.isHighSurrogate(text.charAt(text.length() - 1))) {
            half = text.substring(text.length() - 1);
            text.setLength(text.length() - 1);
        }
        String name = streamName;
        closeText();
        List<Output> drained = List.copyOf(items);
        items.clear();
        chars = 0;
        if (!half.isEmpty()) {
            addText(name, half);
        }
        return drained;
    }

    private void closeText() {
        if (text.length() > 0) {
            items.add(new Output.Stream(streamName, text.toString()));
            text.setLength(0);
        }
        streamName = "";
    }

    private void dropCleared() {
        if (endsInWaitingClear()) {
            Output clear = items.remove(items.size() - 1);
            items.removeIf(Batch::vanishesWhenCleared);
            items.add(clear);
        }
    }

    private boolean endsInWaitingClear() {
        return !items.isEmpty() && items.get(items.size() - 1) instanceof Output.ClearOutput clear && clear.waits();
    }

    private static boolean vanishesWhenCleared(Output output) {
        return output instanceof Output.Stream || output instanceof Output.DisplayData
                || output instanceof Output.ClearOutput;
    }
}
