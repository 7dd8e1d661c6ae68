package kingpost.kernel.evaluation;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import kingpost.kernel.display.MimeBundle;

/**
 * Runs Java cells one at a time, in a calc VM apart from this one, and answers questions about code.
 *
 * <p>All offsets here are UTF-16 units of the given text; the protocol's code points are converted in
 * {@code session}. {@link #run} is called from one thread at a time; every other method may be called from another
 * thread while a cell runs.
 */
public interface Evaluator extends AutoCloseable {

    /** Runs a cell; returns when it has ended and all output of its own thread has reached {@code output}. */
    Outcome run(CellRequest cell, CellOutput output);

    /** Stops the running cell, if there is one; returns at once. */
    void interrupt();

    /** Proposals for the text before {@code cursor}. */
    Completion complete(String code, int cursor);

    /**
     * Signature and documentation of what stands at {@code cursor}, or empty.
     *
     * @param detail 0: signature and short documentation; 1: all there is
     */
    Optional<MimeBundle> inspect(String code, int cursor, int detail);

    /** Whether a console should run this text or wait for more. */
    Completeness completeness(String code);

    /** A comm message from the front end; output that it causes goes to {@code output}. */
    void comm(String type, Map<String, Object> content, Map<String, Object> metadata, List<byte[]> buffers,
              CellOutput output);

    /** Open comms: id to target name. */
    Map<String, String> comms();

    /** Ends the calc VM and frees everything. */
    @Override
    void close();

    /** Proposals that replace the text from {@code start} to {@code end}. */
    record Completion(List<Proposal> proposals, int start, int end) {
        public Completion {
            proposals = List.copyOf(proposals);
        }
    }

    /** One proposal: its text and its type (class, function, variable, keyword, joint, member ...). */
    record Proposal(String text, String type, String signature) { }

    /** The protocol's four answers; {@code indent} goes with INCOMPLETE. */
    record Completeness(Status status, String indent) {
        public enum Status { COMPLETE, INCOMPLETE, INVALID, UNKNOWN }
    }
}
