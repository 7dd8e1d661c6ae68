package kingpost.render;

/** Text as HTML, in an element's content or in a quoted attribute. */
final class HtmlText {

    private HtmlText() {
    }

    static String of(String text) {
        StringBuilder out = new StringBuilder();
        text.codePoints().forEach(c -> out.append(switch (c) {
            case '&' -> "&amp;";
            case '<' -> "&lt;";
            case '>' -> "&gt;";
            case '"' -> "&quot;";
            case '\'' -> "&#39;";
            default -> Character.toString(c);
        }));
        return out.toString();
    }
}
