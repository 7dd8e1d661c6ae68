package kingpost.render;

import java.util.ArrayList;
import java.util.List;

import kingpost.derivation.Block;
import kingpost.derivation.Block.Equation;
import kingpost.derivation.Block.Equations;
import kingpost.derivation.Block.Listing;
import kingpost.derivation.Block.Prose;
import kingpost.derivation.Block.Section;
import kingpost.derivation.Derivation;
import kingpost.derivation.EquationLine;
import kingpost.derivation.Figure;
import kingpost.derivation.Inline;
import kingpost.derivation.Phrase;
import kingpost.derivation.Table;

/** Writes plain text for a terminal: mathematics on one line each, figures as their descriptions. */
public final class PlainRenderer implements Renderer {

    private static final int WIDTH = 92;
    private static final String INDENT = "    ";
    private static final String[] RULES = {"=", "-", "", ""};

    @Override
    public String render(Derivation derivation) {
        return clean(heading(derivation.title(), 0) + "\n\n" + new Writer(1).blocks(derivation.blocks()));
    }

    @Override
    public String render(Block block) {
        return clean(block.accept(new Writer(1)));
    }

    /** The text with one line end after it, and no spaces before any line end. */
    private static String clean(String text) {
        return text.stripTrailing().replaceAll("[ \u00a0]+\n", "\n") + "\n";
    }

    /** The words of a phrase on one line. */
    static String line(Phrase phrase) {
        StringBuilder out = new StringBuilder();
        phrase.pieces().forEach(piece -> out.append(piece.accept(new Pieces())));
        return out.toString();
    }

    private static String heading(String title, int depth) {
        String rule = RULES[Math.min(depth, RULES.length - 1)];
        return rule.isEmpty() ? title : title + "\n" + rule.repeat(Columns.width(title));
    }

    private record Writer(int depth) implements Block.Visitor<String> {

        String blocks(List<Block> blocks) {
            List<String> written = new ArrayList<>();
            for (Block block : blocks) {
                written.add(block.accept(this));
            }
            return String.join("\n\n", written);
        }

        @Override
        public String prose(Prose prose) {
            return Columns.wrap(line(prose.phrase()), WIDTH, "");
        }

        @Override
        public String equation(Equation equation) {
            String remark = equation.remark().isEmpty() ? "" : INDENT + equation.remark();
            return INDENT + LinearExpression.of(equation.expression()) + remark;
        }

        @Override
        public String equations(Equations equations) {
            List<List<String>> rows = new ArrayList<>();
            for (EquationLine each : equations.lines()) {
                String lead = each.lead().map(which -> LinearExpression.of(which) + ":").orElse("");
                String right = LinearExpression.relator(each.relator()) + " " + LinearExpression.of(each.right());
                rows.add(List.of(lead, LinearExpression.of(each.left()), right, each.remark()));
            }
            List<Table.Align> aligns = List.of(Table.Align.LEFT, Table.Align.RIGHT, Table.Align.LEFT,
                    Table.Align.LEFT);
            List<String> lines = Columns.of(rows, aligns, new int[] {2, 1, 3});
            return INDENT + String.join("\n" + INDENT, lines);
        }

        @Override
        public String figure(Figure figure) {
            String caption = line(figure.caption());
            String words = caption.isEmpty() ? figure.description() : caption + " " + figure.description();
            return Columns.wrap("[Figure: " + words + "]", WIDTH, "");
        }

        @Override
        public String table(Table table) {
            List<List<String>> rows = new ArrayList<>();
            rows.add(table.columns().stream().map(column -> line(column.head())).toList());
            table.rows().forEach(row -> rows.add(row.stream().map(PlainRenderer::line).toList()));
            List<Table.Align> aligns = table.columns().stream().map(Table.Column::align).toList();
            List<String> lines = new ArrayList<>(Columns.of(rows, aligns, Columns.gaps(aligns.size(), 3)));
            int width = lines.stream().mapToInt(Columns::width).max().orElse(0);
            lines.add(1, "-".repeat(width));
            String caption = table.caption().isEmpty() ? "" : line(table.caption()) + "\n";
            return caption + String.join("\n", lines);
        }

        @Override
        public String listing(Listing listing) {
            List<String> lines = new ArrayList<>();
            for (Phrase item : listing.items()) {
                String mark = listing.numbered() ? (lines.size() + 1) + ". " : "- ";
                lines.add(Columns.wrap(mark + line(item), WIDTH, " ".repeat(mark.length())));
            }
            return String.join("\n", lines);
        }

        @Override
        public String section(Section section) {
            String body = new Writer(depth + 1).blocks(section.blocks());
            String title = heading(line(section.title()), depth);
            return body.isEmpty() ? title : title + "\n\n" + body;
        }
    }

    private static final class Pieces implements Inline.Visitor<String> {
        @Override
        public String text(Inline.Text text) {
            return text.text();
        }

        @Override
        public String emphasis(Inline.Emphasis emphasis) {
            return emphasis.text();
        }

        @Override
        public String strong(Inline.Strong strong) {
            return strong.text();
        }

        @Override
        public String formula(Inline.Formula formula) {
            return LinearExpression.of(formula.expression());
        }
    }
}
