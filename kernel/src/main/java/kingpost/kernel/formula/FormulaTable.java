package kingpost.kernel.formula;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Lines and columns: environments, and formulas of several lines. */
final class FormulaTable {

    private static final Map<String, String> FENCES = Map.of("pmatrix", "()", "bmatrix", "[]", "Bmatrix", "{}",
            "vmatrix", "||", "Vmatrix", "\u2016\u2016", "cases", "{");

    private final FormulaParser parser;
    private final FormulaScanner scanner;

    FormulaTable(FormulaParser parser) {
        this.parser = parser;
        this.scanner = parser.scanner();
    }

    /** Lines of cells up to {@code stop}'s end; at least one line with one cell. */
    List<List<List<Node>>> cells(FormulaParser.Stop stop) {
        List<List<List<Node>>> lines = new ArrayList<>();
        List<List<Node>> line = new ArrayList<>();
        while (true) {
            line.add(parser.row(stop));
            if (scanner.take("&")) {
                continue;
            }
            lines.add(line);
            line = new ArrayList<>();
            String command = scanner.peekCommand();
            if (!command.equals("\\") && !command.equals("cr")) {
                return withoutEmptyEnd(lines);
            }
            scanner.takeCommand();
            scanner.takeOption();
        }
    }

    /** What stands between {@code \begin{name}}, just taken, and its end. */
    Node environment(String name) {
        String plain = name.replace("*", "");
        String columns = plain.equals("array") ? scanner.takeRaw().replaceAll("[^lcr]", "") : "";
        List<List<List<Node>>> lines = cells(FormulaParser.Stop.CELL);
        if (scanner.peekCommand().equals("end")) {
            scanner.takeCommand();
            scanner.takeRaw();
        }
        return switch (plain) {
            case "aligned", "align", "split", "eqnarray", "alignat", "alignedat" -> aligned(lines);
            case "array" -> table(lines, columns, "0.2em 0.5em", false);
            case "cases" -> fenced(table(lines, "l", "0.15em 0.5em", false), FENCES.get("cases"));
            default -> FENCES.containsKey(plain) ? fenced(table(lines, "c", "0.2em 0.4em", false), FENCES.get(plain))
                    : table(lines, "c", "0.2em 0.4em", true);
        };
    }

    /** Lines whose odd columns end, and whose even columns begin, at the signs that stand under each other. */
    Node aligned(List<List<List<Node>>> lines) {
        return table(lines, "rl", "0.25em 0", true).with("class", "tex-aligned");
    }

    private static Node table(List<List<List<Node>>> lines, String columns, String padding, boolean display) {
        List<Node> rows = new ArrayList<>();
        for (List<List<Node>> line : lines) {
            List<Node> cells = new ArrayList<>();
            for (List<Node> cell : line) {
                cells.add(cell(cell, columns, cells.size(), padding));
            }
            rows.add(Node.of("mtr", cells));
        }
        Node table = Node.of("mtable", rows);
        return display ? table.with("displaystyle", "true") : table;
    }

    private static Node cell(List<Node> content, String columns, int column, String padding) {
        char letter = columns.isEmpty() ? 'c' : columns.charAt(column % columns.length());
        String align = letter == 'l' ? "left" : letter == 'r' ? "right" : "center";
        boolean newGroup = columns.equals("rl") && column > 0 && column % 2 == 0;
        // a cell's content is a block, which one family of browsers moves only by its own value of text-align
        String css = "text-align:" + align + ";text-align:-webkit-" + align + ";padding:";
        return Node.of("mtd", content).with(Map.of("columnalign", align, "style",
                css + (newGroup ? "0.25em 0 0.25em 2em" : padding)));
    }

    private static Node fenced(Node table, String fences) {
        List<Node> row = new ArrayList<>();
        row.add(Node.operator(fences.substring(0, 1)).with(Map.of("form", "prefix", "stretchy", "true")));
        row.add(table);
        if (fences.length() > 1) {
            row.add(Node.operator(fences.substring(1)).with(Map.of("form", "postfix", "stretchy", "true")));
        }
        return Node.of("mrow", row);
    }

    private static List<List<List<Node>>> withoutEmptyEnd(List<List<List<Node>>> lines) {
        List<List<Node>> last = lines.get(lines.size() - 1);
        boolean empty = lines.size() > 1 && last.size() == 1 && last.get(0).isEmpty();
        return empty ? lines.subList(0, lines.size() - 1) : lines;
    }
}
