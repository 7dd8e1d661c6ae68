package kingpost.kernel.cli;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import kingpost.kernel.display.MimeBundle;
import kingpost.kernel.evaluation.CellOutput;
import kingpost.kernel.evaluation.CellRequest;
import kingpost.kernel.evaluation.Evaluator;
import kingpost.kernel.evaluation.Outcome;

/** Shows each cell's text as its value; a cell that begins with "fail" fails. */
final class EchoEvaluator implements Evaluator {

    @Override
    public Outcome run(CellRequest cell, CellOutput output) {
        if (cell.code().startsWith("fail")) {
            return new Outcome.Failed(Outcome.Kind.EXCEPTION, "IllegalStateException", "asked to fail",
                    List.of("\u001b[31mhere\u001b[0m"), 3);
        }
        return new Outcome.Completed(Optional.of(MimeBundle.plain(cell.code())), Map.of(), List.of());
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
