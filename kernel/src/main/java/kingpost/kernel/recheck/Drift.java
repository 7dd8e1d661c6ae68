package kingpost.kernel.recheck;

/**
 * Something that is not as it was saved.
 *
 * @param cell    the code cell, counted from 1
 * @param message what differs, in a sentence without the cell's number
 */
public record Drift(int cell, String message) {

    @Override
    public String toString() {
        return "Cell " + cell + ": " + message;
    }
}
