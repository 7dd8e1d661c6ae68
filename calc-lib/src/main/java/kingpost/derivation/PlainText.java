package kingpost.derivation;

import java.util.Objects;

/** Brings text into the one form in which the tree keeps it: a single line without control characters. */
final class PlainText {

    private PlainText() {
    }

    /**
     * The text with each run of control characters and line ends as one space, and without the characters that
     * reverse the direction of the text around them.
     */
    static String line(String text) {
        return Objects.requireNonNull(text, "text")
                .replaceAll("[\\p{Cntrl}\\u2028\\u2029]+", " ")
                .replaceAll("[\\u202A-\\u202E\\u2066-\\u2069\\uFEFF]", "");
    }
}
