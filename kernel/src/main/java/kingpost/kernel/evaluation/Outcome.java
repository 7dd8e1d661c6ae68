package kingpost.kernel.evaluation;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import kingpost.kernel.display.MimeBundle;

/** How a cell ended. */
public sealed interface Outcome {

    /**
     * Every statement ran.
     *
     * @param result      what the last expression shows; empty for a declaration, a void call, {@code null}, or a
     *                    cell that ends with {@code ;}
     * @param expressions each user expression's name with what came of it
     * @param payload     payloads for the execute reply, protocol form
     */
    record Completed(Optional<MimeBundle> result, Map<String, ExpressionValue> expressions,
                     List<Map<String, Object>> payload) implements Outcome {
        public Completed {
            expressions = Map.copyOf(expressions);
            payload = List.copyOf(payload);
        }
    }

    /**
     * A statement failed: it did not compile, it threw, it was interrupted, or the calc VM was lost.
     *
     * @param kind      what sort of failure
     * @param name      the error's name: a simple class name, or {@code CompilationError}, {@code Interrupted},
     *                  {@code CalcProcessLost}
     * @param message   the useful sentence, without a stack trace
     * @param traceback lines for the reader: where in the cell (line and caret), the cell's frames first
     * @param line      1-based line of the cell, or 0 when it is not known
     */
    record Failed(Kind kind, String name, String message, List<String> traceback, int line) implements Outcome {
        public Failed {
            traceback = List.copyOf(traceback);
        }
    }

    /** The sorts of failure. */
    enum Kind { COMPILATION, EXCEPTION, INTERRUPTED, CALC_PROCESS_LOST }

    /** What came of a user expression. */
    sealed interface ExpressionValue {
        record Shown(MimeBundle bundle) implements ExpressionValue { }

        record Failed(String name, String message, List<String> traceback) implements ExpressionValue {
            public Failed {
                traceback = List.copyOf(traceback);
            }
        }
    }
}
