package kingpost.kernel.evaluation;

import java.util.List;

/** A cell's source by lines: where an offset is, and a caret under it. */
record CellText(String text) {

    /** 1-based line of an offset. */
    int lineOf(int offset) {
        int end = Math.max(0, Math.min(offset, text.length()));
        return 1 + (int) text.substring(0, end).chars().filter(c -> c == '\n').count();
    }

    /** Number of lines. */
    int lines() {
        return lineOf(text.length());
    }

    /** The text of a 1-based line, or empty when there is no such line. */
    String line(int number) {
        String[] lines = text.split("\n", -1);
        return number >= 1 && number <= lines.length ? lines[number - 1].stripTrailing() : "";
    }

    private int lineStart(int offset) {
        return text.lastIndexOf('\n', Math.max(0, Math.min(offset, text.length()) - 1)) + 1;
    }

    /** The line with the offset in it, and a second line with a caret under the offset. */
    List<String> withCaret(int offset) {
        int at = Math.max(0, Math.min(offset, text.length()));
        int start = at == 0 ? 0 : lineStart(at);
        var under = new StringBuilder();
        text.substring(start, at).codePoints().forEach(c -> under.append(c == '\t' ? '\t' : ' '));
        return List.of("  " + line(lineOf(at)), "  " + under + "^");
    }
}
