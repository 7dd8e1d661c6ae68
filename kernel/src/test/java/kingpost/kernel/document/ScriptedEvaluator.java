package kingpost.kernel.document;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kingpost.kernel.display.MimeBundle;
import kingpost.kernel.evaluation.CellOutput;
import kingpost.kernel.evaluation.CellRequest;
import kingpost.kernel.evaluation.Evaluator;
import kingpost.kernel.evaluation.Outcome;

/** An evaluator that does what the test says for each cell, and shows any other cell's text as its value. */
final class ScriptedEvaluator implements Evaluator {

    /** What a cell does. */
    interface Script {
        Outcome run(CellOutput output);
    }

    final List<String> ran = new ArrayList<>();
    private final Map<String, Script> scripts = new HashMap<>();

    ScriptedEvaluator on(String code, Script script) {
        scripts.put(code, script);
        return this;
    }

    static Outcome value(String plain) {
        return new Outcome.Completed(Optional.of(MimeBundle.plain(plain)), Map.of(), List.of());
    }

    static Outcome failure(String name, String message, int line) {
        return new Outcome.Failed(Outcome.Kind.EXCEPTION, name, message, List.of("line " + line), line);
    }

    @Override
    public Outcome run(CellRequest cell, CellOutput output) {
        ran.add(cell.code());
        return scripts.getOrDefault(cell.code(), ignored -> value(cell.code())).run(output);
    }

    @Override
    public void interrupt() {
    }

    @Override
    public Completion complete(String code, int cursor) {
        return new Completion(List.of(), cursor, cursor);
    }

    @Override
    public Optional<MimeBundle> inspect(String code, int cursor, int detail) {
        return Optional.empty();
    }

    @Override
    public Completeness completeness(String code) {
        return new Completeness(Completeness.Status.UNKNOWN, "");
    }

    @Override
    public void comm(String type, Map<String, Object> content, Map<String, Object> metadata, List<byte[]> buffers,
                     CellOutput output) {
    }

    @Override
    public Map<String, String> comms() {
        return Map.of();
    }

    @Override
    public void close() {
    }
}
