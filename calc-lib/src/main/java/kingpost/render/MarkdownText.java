package kingpost.render;

/**
 * Text as Markdown that no front end takes for markup or mathematics.
 *
 * <p>Only letters, digits, spaces and harmless punctuation stand as they are. The others become numeric character
 * references, which Markdown never reads as structure. A dollar sign and a backslash also get an element of their
 * own, because some front ends look for mathematics in the page that Markdown has become, and two of them in one run
 * of text would be taken for its delimiters.
 */
final class MarkdownText {

    private static final String HARMLESS = " .,;:()'/%?’‘“”–—−·°²³⁴→≤≈√×′½+";

    private MarkdownText() {
    }

    static String of(String text) {
        StringBuilder out = new StringBuilder();
        int[] points = text.codePoints().toArray();
        for (int i = 0; i < points.length; i++) {
            out.append(character(points, i));
        }
        return out.toString();
    }

    private static String character(int[] text, int i) {
        int c = text[i];
        if (c == '$' || c == '\\') {
            return "<span>&#" + c + ";</span>";
        }
        boolean hyphenInWord = c == '-' && i > 0 && Character.isLetterOrDigit(text[i - 1]);
        boolean startsLink = c == ':' && i + 1 < text.length && text[i + 1] == '/'
                || c == '.' && i + 1 < text.length && Character.isLetter(text[i + 1]);
        boolean startsItem = i == 0 && c == '+';
        boolean numbersItem = (c == '.' || c == ')') && i > 0 && digitsBefore(text, i);
        boolean plain = Character.isLetterOrDigit(c) || hyphenInWord
                || HARMLESS.indexOf(c) >= 0 && !startsLink && !startsItem && !numbersItem;
        return plain ? Character.toString(c) : "&#" + c + ";";
    }

    private static boolean digitsBefore(int[] text, int end) {
        for (int i = 0; i < end; i++) {
            if (!Character.isDigit(text[i])) {
                return false;
            }
        }
        return true;
    }
}
