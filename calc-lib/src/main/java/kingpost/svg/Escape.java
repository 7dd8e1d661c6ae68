package kingpost.svg;

/** Text made safe to stand between tags and in quoted attributes. */
final class Escape {

    private Escape() {
    }

    /**
     * {@code text} with markup characters written as entities, and without what XML does not allow or what only
     * deceives a reader: control characters, halves of surrogate pairs, marks that turn the reading direction.
     */
    static String text(String text) {
        StringBuilder safe = new StringBuilder(text.length() + 16);
        text.codePoints().filter(Escape::isAllowed).forEach(c -> append(safe, c));
        return safe.toString();
    }

    private static boolean isAllowed(int c) {
        boolean control = Character.isISOControl(c) && c != '\n' && c != '\t';
        boolean half = c >= 0xD800 && c <= 0xDFFF;
        boolean turns = c >= 0x202A && c <= 0x202E || c >= 0x2066 && c <= 0x2069;
        boolean none = (c & 0xFFFE) == 0xFFFE;
        return !control && !half && !turns && !none;
    }

    private static void append(StringBuilder safe, int c) {
        switch (c) {
            case '&' -> safe.append("&amp;");
            case '<' -> safe.append("&lt;");
            case '>' -> safe.append("&gt;");
            case '"' -> safe.append("&quot;");
            case '\'' -> safe.append("&#39;");
            default -> safe.appendCodePoint(c);
        }
    }
}
