package kingpost.kernel.print;

import java.util.List;
import java.util.function.Function;
import org.w3c.dom.Element;

/**
 * Lines of a formula under each other, in columns.
 *
 * @param lines the cells of each line
 */
record MathTable(List<List<Element>> lines) {

    /** The table, its middle on the {@code axis} above the baseline; each line says its own words. */
    MathBox box(Function<Element, MathBox> content, double axis) {
        List<List<MathBox>> boxes = lines.stream()
                .map(line -> line.stream().map(cell -> padded(cell, content.apply(cell))).toList()).toList();
        int columns = boxes.stream().mapToInt(List::size).max().orElse(0);
        double[] widths = new double[columns];
        boxes.forEach(line -> {
            for (int i = 0; i < line.size(); i++) {
                widths[i] = Math.max(widths[i], line.get(i).width());
            }
        });
        MathBox table = MathBox.EMPTY;
        double down = 0;
        for (int i = 0; i < boxes.size(); i++) {
            MathBox line = line(lines.get(i), boxes.get(i), widths).saying(MathWords.line(lines.get(i)));
            table = table.with(line, 0, down + line.ascent());
            down += line.height();
        }
        double up = down / 2 + axis;
        MathBox moved = MathBox.EMPTY.with(table, 0, -up);
        return new MathBox(moved.width(), up, down - up, moved.marks());
    }

    private static MathBox line(List<Element> cells, List<MathBox> boxes, double[] widths) {
        MathBox line = new MathBox(0, 0.7, 0.24, List.of());
        double left = 0;
        for (int i = 0; i < boxes.size(); i++) {
            double rest = widths[i] - boxes.get(i).width();
            String align = align(cells.get(i));
            double right = align.equals("left") ? 0 : align.equals("right") ? rest : rest / 2;
            line = line.with(boxes.get(i), left + right, 0);
            left += widths[i];
        }
        return line;
    }

    private static String align(Element cell) {
        String style = cell.getAttribute("style");
        java.util.regex.Matcher align = java.util.regex.Pattern.compile("text-align:\\s*(left|right|center)").matcher(style);
        return align.find() ? align.group(1) : cell.hasAttribute("columnalign") ? cell.getAttribute("columnalign") : "center";
    }

    /** With the room that the cell's style gives it: above, right, below, left. */
    private static MathBox padded(Element cell, MathBox content) {
        java.util.regex.Matcher padding = java.util.regex.Pattern.compile("padding:\\s*([^;]+)")
                .matcher(cell.getAttribute("style"));
        if (!padding.find()) {
            return content.padded(0.35, 0.35, 0.12, 0.12);
        }
        List<Double> sides = List.of(padding.group(1).strip().split("\\s+")).stream().map(MathLayout::length).toList();
        double above = sides.get(0);
        double right = sides.size() > 1 ? sides.get(1) : above;
        double below = sides.size() > 2 ? sides.get(2) : above;
        double left = sides.size() > 3 ? sides.get(3) : right;
        return content.padded(left, right, above + 0.03, below + 0.03);
    }
}
