package kingpost.notebook;

import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import kingpost.render.HtmlPage;
import kingpost.render.Showable;
import kingpost.truss.Direction;
import kingpost.units.CalculationException;
import kingpost.truss.Measured;

/** Words that stand alone in a cell: directions, and showing things before the cell's end. */
public final class Notebook {

    public static final Direction UP = Direction.UP;
    public static final Direction DOWN = Direction.DOWN;
    public static final Direction LEFT = Direction.LEFT;
    public static final Direction RIGHT = Direction.RIGHT;
    /** Towards the reader, along z. */
    public static final Direction NEAR = Direction.NEAR;
    /** Away from the reader, against z. */
    public static final Direction FAR = Direction.FAR;

    /** On plan: the length on which a roof load is given is the horizontal one. */
    public static final Measured ON_PLAN = Measured.ON_PLAN;
    /** Along the slope: the length on which a roof load is given is that of the chord itself. */
    public static final Measured ALONG_SLOPE = Measured.ALONG_SLOPE;

    private Notebook() {
    }

    /** A direction by its angle in degrees, counter-clockwise from the right: {@code at(225)} is down to the left. */
    public static Direction at(double degrees) {
        return Direction.at(degrees);
    }

    /** A direction by its slope: {@code slope(3, -4)} is 3 to the right and 4 down. */
    public static Direction slope(double run, double rise) {
        return Direction.slope(run, rise);
    }

    /** A direction in space by its slope: parts to the right, upwards and towards the reader. */
    public static Direction slope(double x, double y, double z) {
        return Direction.slope(x, y, z);
    }

    /** Shows a value now, before the cell ends. */
    public static void show(Object value) {
        CellDisplay.sink().display(value, Optional.empty());
    }

    /** Writes what a value shows to a file: one HTML page that stands alone. */
    public static SavedFiles saveAsPage(Showable value, String file) {
        if (value == null) {
            throw new CalculationException("Page: there is nothing to show; give what a cell would show, as in"
                    + " saveAsPage(s.derivation(), \"roof.html\").");
        }
        if (file == null || file.isBlank()) {
            throw new CalculationException("Page: the file has no name; give one, as in saveAsPage(x, \"roof.html\").");
        }
        Path path = Path.of(file);
        return SavedFiles.into(path.toAbsolutePath().getParent(),
                Map.of(path.getFileName().toString(), HtmlPage.of(value, path.getFileName().toString())));
    }

    /** Shows a value under a name, so that {@link #showAgain} can replace it. */
    public static void show(Object value, String name) {
        CellDisplay.sink().display(value, Optional.of(named(name)));
    }

    private static String named(String name) {
        if (name == null || name.isBlank()) {
            throw new CalculationException("Show: the name is missing; give one, as in show(x, \"status\").");
        }
        return name;
    }

    /** Replaces what is shown under {@code name}, wherever it stands in the notebook. */
    public static void showAgain(Object value, String name) {
        CellDisplay.sink().update(value, named(name));
    }

    /** Clears what the cell has shown so far. */
    public static void clearOutput() {
        CellDisplay.sink().clear(false);
    }

    /** Clears what the cell has shown so far, but only when the next output arrives, so that nothing flickers. */
    public static void clearOutputBeforeNext() {
        CellDisplay.sink().clear(true);
    }

    /** Asks the reader for a line; empty at end of input. */
    public static String ask(String prompt) {
        return CellDisplay.sink().input(prompt, false).orElse("");
    }

    /** Asks the reader for a line that is not shown while it is typed. */
    public static String askHidden(String prompt) {
        return CellDisplay.sink().input(prompt, true).orElse("");
    }

    /**
     * Adds a library and all that it needs, by Maven coordinates, for the statements that follow:
     * {@code addLibrary("org.example:shapes:1.2")}. Files come through the reader's own Maven settings and store, and
     * each is checked against the checksum that its repository states. What Kingpost itself uses keeps its version.
     *
     * @throws CalculationException if no repository has it or can be reached
     */
    public static void addLibrary(String coordinates) {
        CellDisplay.sink().addLibrary(coordinates);
    }

    /**
     * Adds a jar, or a folder of classes, for the statements that follow.
     *
     * @throws CalculationException if there is no such file or folder
     */
    public static void addClassPath(String jarOrFolder) {
        CellDisplay.sink().addClassPath(Path.of(jarOrFolder));
    }

    /** Opens a page of text beside the notebook, where the front end can; below the cell where it cannot. */
    public static void page(String text) {
        CellDisplay.sink().payload(Map.of("source", "page", "start", 0, "data", Map.of("text/plain", text)));
    }
}
