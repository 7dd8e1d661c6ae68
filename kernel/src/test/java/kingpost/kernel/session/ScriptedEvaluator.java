package kingpost.kernel.session;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import kingpost.kernel.display.MimeBundle;
import kingpost.kernel.evaluation.CellOutput;
import kingpost.kernel.evaluation.CellRequest;
import kingpost.kernel.evaluation.Evaluator;
import kingpost.kernel.evaluation.Outcome;

/** An evaluator whose cells do what a test has written down for their code; unknown code completes with nothing. */
public class ScriptedEvaluator implements Evaluator {

    /** What a cell does. */
    @FunctionalInterface
    public interface Script {
        Outcome run(CellRequest cell, CellOutput output) throws InterruptedException;
    }

    private final Map<String, Script> scripts = new HashMap<>();
    private volatile Thread running;
    public volatile boolean closed;
    public volatile CellOutput lastOutput;

    public ScriptedEvaluator on(String code, Script script) {
        scripts.put(code, script);
        return this;
    }

    /** The cells that most tests need. */
    public static ScriptedEvaluator withUsualCells() {
        return new ScriptedEvaluator()
                .on("1 + 1", (cell, out) -> value("2"))
                .on("hello", (cell, out) -> {
                    out.stream("stdout", "hello, world");
                    out.stream("stdout", "\n");
                    return nothing();
                })
                .on("fail", (cell, out) -> failed("ArithmeticException", "/ by zero"))
                .on("sleep", (cell, out) -> {
                    new CountDownLatch(1).await();
                    return nothing();
                })
                .on("ask", (cell, out) -> value(out.input("name? ", false).orElse("<end>")));
    }

    public static Outcome nothing() {
        return new Outcome.Completed(Optional.empty(), Map.of(), List.of());
    }

    public static Outcome value(String text) {
        return new Outcome.Completed(Optional.of(MimeBundle.plain(text)), Map.of(), List.of());
    }

    public static Outcome failed(String name, String message) {
        return new Outcome.Failed(Outcome.Kind.EXCEPTION, name, message, List.of(name + ": " + message), 1);
    }

    @Override
    public Outcome run(CellRequest cell, CellOutput output) {
        running = Thread.currentThread();
        lastOutput = output;
        try {
            return scripts.getOrDefault(cell.code(), (c, o) -> nothing()).run(cell, output);
        } catch (InterruptedException e) {
            return new Outcome.Failed(Outcome.Kind.INTERRUPTED, "Interrupted", "the cell was interrupted", List.of(), 0);
        } finally {
            running = null;
            Thread.interrupted();
        }
    }

    @Override
    public void interrupt() {
        Thread thread = running;
        if (thread != null) {
            thread.interrupt();
        }
    }

    @Override
    public Completion complete(String code, int cursor) {
        int start = code.lastIndexOf(' ', Math.max(0, cursor - 1)) + 1;
        return new Completion(List.of(new Proposal("alpha", "variable", "int"), new Proposal("beta", "function", "beta()")),
                start, cursor);
    }

    @Override
    public Optional<MimeBundle> inspect(String code, int cursor, int detail) {
        return code.startsWith("known") ? Optional.of(MimeBundle.plain("known at " + cursor + ", detail " + detail))
                : Optional.empty();
    }

    @Override
    public Completeness completeness(String code) {
        return code.endsWith("{") ? new Completeness(Completeness.Status.INCOMPLETE, "    ")
                : new Completeness(Completeness.Status.COMPLETE, "");
    }

    @Override
    public void comm(String type, Map<String, Object> content, Map<String, Object> metadata, List<byte[]> buffers,
                     CellOutput output) {
        if ("comm_msg".equals(type)) {
            output.stream("stdout", "heard " + content.get("comm_id"));
            output.comm("comm_msg", content, metadata, buffers);
        }
    }

    @Override
    public Map<String, String> comms() {
        return Map.of("c1", "slider", "c2", "table");
    }

    @Override
    public void close() {
        closed = true;
        interrupt();
    }
}
