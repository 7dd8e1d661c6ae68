package kingpost.kernel.page;

/** Text as HTML, in an element or in a quoted attribute. */
final class Markup {

    private Markup() {
    }

    static String text(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;").replace("\"", "&quot;")
                .replace("'", "&#39;");
    }
}
