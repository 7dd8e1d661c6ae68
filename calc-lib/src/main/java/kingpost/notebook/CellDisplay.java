package kingpost.notebook;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import kingpost.units.CalculationException;

/**
 * The seam between a running cell and whatever runs it: what a cell shows before its last value goes through here.
 * The calc VM's agent connects a sink once, at its start; without one (in a plain program) the plain text is
 * dropped.
 */
public final class CellDisplay {

    /** Receives what a cell shows, in order, on the thread that shows it. */
    public interface Sink {

        /** Shows forms (as in {@link kingpost.render.Showable#show()}), under a name if one is given. */
        void display(Object value, Optional<String> displayId);

        /** Replaces what was shown under {@code displayId}. */
        void update(Object value, String displayId);

        /** Clears the cell's output; {@code wait}: only when the next output arrives. */
        void clear(boolean wait);

        /** Asks the user for a line; empty at end of input. */
        Optional<String> input(String prompt, boolean password);

        /** Adds a library and what it needs by Maven coordinates; refused where nothing runs cells. */
        default void addLibrary(String coordinates) {
            throw new CalculationException("Library " + coordinates + ": only a notebook's cell can add a library.");
        }

        /** Adds a jar or a folder of classes; refused where nothing runs cells. */
        default void addClassPath(Path jarOrFolder) {
            throw new CalculationException("Class path " + jarOrFolder + ": only a notebook's cell can add to it.");
        }

        /** A payload for the execute reply, such as a page of help: protocol form. */
        void payload(Map<String, Object> payload);

        /** Sends a comm message to the front end: {@code type} is comm_open, comm_msg or comm_close. */
        default void comm(String type, Map<String, Object> content, Map<String, Object> metadata,
                          List<byte[]> buffers) {
        }
    }

    private static volatile Sink sink = new Nowhere();
    private static volatile Object shown;

    private CellDisplay() {
    }

    /** Connects the sink; the agent's business. */
    public static void connect(Sink to) {
        sink = Objects.requireNonNull(to, "to");
    }

    /** The sink in force. */
    public static Sink sink() {
        return sink;
    }

    /** A statement begins, and has shown nothing yet. */
    public static void statementBegins() {
        shown = null;
    }

    /** Says that {@code value} has been shown by what made it, so that the end of its statement need not show it. */
    static void shown(Object value) {
        shown = value;
    }

    /** Whether the statement that gave {@code value} has shown it already. */
    public static boolean isShown(Object value) {
        return value != null && shown == value;
    }

    private static final class Nowhere implements Sink {
        @Override
        public void display(Object value, Optional<String> displayId) {
        }

        @Override
        public void update(Object value, String displayId) {
        }

        @Override
        public void clear(boolean wait) {
        }

        @Override
        public Optional<String> input(String prompt, boolean password) {
            return Optional.empty();
        }

        @Override
        public void payload(Map<String, Object> payload) {
        }
    }
}
