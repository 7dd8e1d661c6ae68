package kingpost.kernel.evaluation;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import kingpost.kernel.display.MimeBundle;

/**
 * Where a running cell's output goes, in the order in which it was made. Calls may come from any thread, and, for
 * output of background threads, after the cell's outcome; the receiver keeps them with the cell they belong to.
 */
public interface CellOutput {

    /** Text on {@code "stdout"} or {@code "stderr"}. */
    void stream(String name, String text);

    /** Shows a bundle; {@code displayId} names it so that a later {@link #update} can replace it. */
    void display(MimeBundle bundle, Optional<String> displayId);

    /** Replaces the content of everything shown under {@code displayId}. */
    void update(MimeBundle bundle, String displayId);

    /** Clears the cell's output; {@code wait} postpones that until the next output arrives. */
    void clear(boolean wait);

    /**
     * Asks the user for a line and waits for it.
     *
     * @return the line without its end, or empty at end of input
     * @throws InterruptedException when the cell is interrupted while it waits
     */
    Optional<String> input(String prompt, boolean password) throws InterruptedException;

    /** A comm message from the cell to the front end: {@code type} is comm_open, comm_msg or comm_close. */
    void comm(String type, Map<String, Object> content, Map<String, Object> metadata, List<byte[]> buffers);
}
