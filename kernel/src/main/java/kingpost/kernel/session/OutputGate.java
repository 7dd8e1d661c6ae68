package kingpost.kernel.session;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import kingpost.kernel.display.MimeBundle;
import kingpost.kernel.evaluation.CellOutput;
import kingpost.kernel.message.Frame;
import kingpost.kernel.message.Output;

/**
 * One cell's output on its way to the clients: joined into few messages, capped, in order. Stays open after the
 * cell's end, for what its background threads put out later.
 */
final class OutputGate implements CellOutput {

    private static final int FLUSH_CHARS = 16_384;
    private static final int FLUSH_ITEMS = 200;

    private final Consumer<? super Output> sink;
    private final InputPrompt prompt;
    private final OutputLimits limits;
    private final Pace pace;
    private final Batch batch = new Batch();
    private final StreamCap cap;
    private int displays;
    private boolean flushPlanned;

    /** When a small batch is sent. */
    @FunctionalInterface
    interface Pace {
        /** Every output at once: for a receiver that joins them itself. */
        Pace AT_ONCE = Runnable::run;

        void plan(Runnable flush);
    }

    OutputGate(Consumer<? super Output> sink, InputPrompt prompt, OutputLimits limits, Pace pace) {
        this.sink = sink;
        this.prompt = prompt;
        this.limits = limits;
        this.pace = pace;
        this.cap = new StreamCap(limits.streamChars());
    }

    @Override
    public synchronized void stream(String name, String text) {
        boolean wasClosed = cap.closed();
        String admitted = cap.admit(text);
        if (!admitted.isEmpty()) {
            batch.addText(name, admitted);
            sendSoon();
        }
        if (cap.closed() && !wasClosed) {
            batch.add(cap.notice());
            sendSoon();
        }
    }

    @Override
    public synchronized void display(MimeBundle bundle, Optional<String> displayId) {
        displays++;
        if (displays <= limits.displays()) {
            MimeBundle shown = BundleCap.within(limits, bundle);
            put(new Output.DisplayData(shown.data(), shown.metadata(), displayId));
        } else if (displays == limits.displays() + 1) {
            put(new Output.Stream("stderr", "[This cell has shown " + limits.displays()
                    + " values; the rest is left out. The limit is the system property "
                    + OutputLimits.DISPLAYS_PROPERTY + ".]\n"));
        }
    }

    @Override
    public synchronized void update(MimeBundle bundle, String displayId) {
        MimeBundle shown = BundleCap.within(limits, bundle);
        put(new Output.UpdateDisplayData(shown.data(), shown.metadata(), displayId));
    }

    @Override
    public synchronized void clear(boolean wait) {
        batch.clear(wait);
        sendSoon();
    }

    @Override
    public synchronized void comm(String type, Map<String, Object> content, Map<String, Object> metadata,
                                  List<byte[]> buffers) {
        put(new Output.Comm(type, content, metadata, Frame.listOf(buffers)));
    }

    /** Flushes, so that the user sees everything before the question, then asks; other threads may go on. */
    @Override
    public Optional<String> input(String question, boolean password) throws InterruptedException {
        flush();
        return prompt.ask(question, password);
    }

    /** Sends what waits; with it the end of text that was left out. */
    synchronized void finish() {
        cap.summary().ifPresent(batch::add);
        send(true);
    }

    /** Sends what waits, then this last word of the cell. */
    synchronized void finish(Output last) {
        finish();
        sink.accept(last);
    }

    private void put(Output output) {
        batch.add(output);
        sendSoon();
    }

    private void sendSoon() {
        if (batch.chars() >= FLUSH_CHARS || batch.size() >= FLUSH_ITEMS) {
            send(false);
        } else if (!flushPlanned) {
            flushPlanned = true;
            pace.plan(this::flush);
        }
    }

    private synchronized void flush() {
        flushPlanned = false;
        send(false);
    }

    private void send(boolean end) {
        batch.drain(end).forEach(sink);
    }
}
