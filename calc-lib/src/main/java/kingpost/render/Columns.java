package kingpost.render;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

import kingpost.derivation.Table.Align;

/** Lays out characters of one width each: columns that line up, lines that wrap. */
final class Columns {

    private Columns() {
    }

    /** Characters that the text takes, an accent put on a letter not counted. */
    static int width(String text) {
        return (int) text.codePoints().filter(c -> Character.getType(c) != Character.NON_SPACING_MARK).count();
    }

    /**
     * Rows with their cells padded so that columns line up; nothing trails.
     *
     * @param gaps spaces after each column but the last
     */
    static List<String> of(List<List<String>> rows, List<Align> aligns, int[] gaps) {
        int[] widths = new int[aligns.size()];
        for (List<String> row : rows) {
            for (int i = 0; i < widths.length; i++) {
                widths[i] = Math.max(widths[i], width(row.get(i)));
            }
        }
        List<String> lines = new ArrayList<>();
        for (List<String> row : rows) {
            StringBuilder line = new StringBuilder();
            for (int i = 0; i < widths.length; i++) {
                line.append(padded(row.get(i), widths[i], aligns.get(i)));
                line.append(i < gaps.length && widths[i] > 0 ? " ".repeat(gaps[i]) : "");
            }
            lines.add(line.toString().stripTrailing());
        }
        return lines;
    }

    /** The same gap after each of {@code columns} columns but the last. */
    static int[] gaps(int columns, int gap) {
        int[] gaps = new int[columns - 1];
        Arrays.fill(gaps, gap);
        return gaps;
    }

    private static String padded(String cell, int width, Align align) {
        int room = width - width(cell);
        int before = switch (align) {
            case LEFT -> 0;
            case CENTRE -> room / 2;
            case RIGHT -> room;
        };
        return " ".repeat(before) + cell + " ".repeat(room - before);
    }

    /** The text broken at spaces into lines of at most {@code width}; a longer word stands alone. */
    static String wrap(String text, int width, String indent) {
        StringBuilder out = new StringBuilder();
        int used = 0;
        for (String word : text.split(" ")) {
            int room = width(word);
            if (used > 0 && used + 1 + room > width) {
                out.append('\n').append(indent);
                used = indent.length();
            } else if (!out.isEmpty()) {
                out.append(' ');
                used++;
            }
            out.append(word);
            used += room;
        }
        return out.toString();
    }
}
