package kingpost.calculation;

/**
 * Something that a calculation takes for granted.
 *
 * @param number    among the sheet's assumptions, from 1
 * @param text      a sentence
 * @param reference where it comes from; may be empty
 */
public record Assumption(int number, String text, String reference) {

    /** The sentence with its reference behind it. */
    public String sentence() {
        return reference.isEmpty() ? text : text.replaceFirst("\\.$", "") + " (" + reference + ").";
    }
}
