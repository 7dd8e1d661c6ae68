package kingpost.render;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

import kingpost.derivation.Block;
import kingpost.derivation.Block.Equation;
import kingpost.derivation.Block.Equations;
import kingpost.derivation.Block.Listing;
import kingpost.derivation.Block.Prose;
import kingpost.derivation.Block.Section;
import kingpost.derivation.Derivation;
import kingpost.derivation.Expression;
import kingpost.derivation.Figure;
import kingpost.derivation.Inline;
import kingpost.derivation.Phrase;
import kingpost.derivation.Table;

/**
 * Writes a fragment of HTML: mathematics as MathML Core, figures as inline SVG, no script, no style sheet, nothing
 * fetched from elsewhere. Colours are left to the page, so it reads on light and dark ones.
 */
public final class HtmlRenderer implements Renderer {

    private static final int DEEPEST = 6;
    private static final String SCROLLS = "overflow-x:auto;overflow-y:hidden;padding:0.3em 0";
    private static final String TIED = "<span style=\"white-space:nowrap\">";
    private static final String HEAD = "padding:0.25em 0.9em;border-bottom:2px solid #888;text-align:%s";
    private static final String CELL = "padding:0.25em 0.9em;border-bottom:1px solid #8886;text-align:%s;"
            + "font-variant-numeric:tabular-nums";

    private final int titleLevel;
    private final Function<Expression, String> inlineMath;

    /** With the derivation's title as a second-level heading. */
    public HtmlRenderer() {
        this(2, MathMlExpression::inline);
    }

    /** With the derivation's title as a heading of that level. */
    HtmlRenderer(int titleLevel) {
        this(titleLevel, MathMlExpression::inline);
    }

    private HtmlRenderer(int titleLevel, Function<Expression, String> inlineMath) {
        this.titleLevel = titleLevel;
        this.inlineMath = inlineMath;
    }

    /**
     * The same with mathematics within a line as plain characters: for a table that must also survive front ends
     * that strip MathML from an output they do not trust.
     */
    static HtmlRenderer withoutInlineMathMl() {
        return new HtmlRenderer(2, expression -> HtmlText.of(LinearExpression.of(expression)));
    }

    @Override
    public String render(Derivation derivation) {
        String heading = "<h" + titleLevel + ">" + HtmlText.of(derivation.title()) + "</h" + titleLevel + ">";
        Figures figures = new Figures(new PlainRenderer().render(derivation));
        return "<section>\n" + heading + "\n" + new Writer(titleLevel + 1, figures).blocks(derivation.blocks())
                + "</section>\n";
    }

    @Override
    public String render(Block block) {
        return block.accept(new Writer(titleLevel + 1, new Figures(new PlainRenderer().render(block))));
    }

    /** Numbers the figures of one rendering, so that the ids within each are its own, on every run the same. */
    private static final class Figures {
        private final String mark;
        private int drawn;

        Figures(String content) {
            this.mark = Integer.toHexString(content.hashCode());
        }

        String nextPrefix() {
            drawn++;
            return "kp-" + mark + "-" + drawn;
        }
    }

    private final class Writer implements Block.Visitor<String> {

        private final int level;
        private final Figures figures;

        Writer(int level, Figures figures) {
            this.level = Math.min(level, DEEPEST);
            this.figures = figures;
        }

        String blocks(List<Block> blocks) {
            StringBuilder out = new StringBuilder();
            blocks.forEach(block -> out.append(block.accept(this)));
            return out.toString();
        }

        @Override
        public String prose(Prose prose) {
            return "<p>" + phrase(prose.phrase()) + "</p>\n";
        }

        @Override
        public String equation(Equation equation) {
            return scrolling(MathMlExpression.display(equation.expression(), equation.remark()));
        }

        @Override
        public String equations(Equations equations) {
            return scrolling(MathMlExpression.aligned(equations.lines()));
        }

        private static String scrolling(String content) {
            return "<div style=\"" + SCROLLS + "\">" + content + "</div>\n";
        }

        @Override
        public String figure(Figure figure) {
            String picture = figure.svg().withIdPrefix(figures.nextPrefix()).toText();
            String caption = figure.caption().isEmpty() ? ""
                    : "<figcaption style=\"margin-top:0.3em\"><small>" + phrase(figure.caption())
                    + "</small></figcaption>\n";
            return "<figure style=\"margin:1em 0;overflow-x:auto;overflow-y:hidden\">\n" + picture + caption + "</figure>\n";
        }

        @Override
        public String table(Table table) {
            StringBuilder out = new StringBuilder("<table style=\"border-collapse:collapse;margin:0.8em 0\">\n");
            if (!table.caption().isEmpty()) {
                out.append("<caption style=\"text-align:left;padding-bottom:0.3em\">")
                        .append(phrase(table.caption())).append("</caption>\n");
            }
            out.append("<thead><tr>");
            for (Table.Column column : table.columns()) {
                out.append("<th scope=\"col\" style=\"").append(HEAD.formatted(css(column.align()))).append("\">")
                        .append(phrase(column.head())).append("</th>");
            }
            out.append("</tr></thead>\n<tbody>\n");
            table.rows().forEach(row -> out.append(row(table, row)));
            return out.append("</tbody>\n</table>\n").toString();
        }

        private String row(Table table, List<Phrase> row) {
            List<String> cells = new ArrayList<>();
            for (int i = 0; i < row.size(); i++) {
                boolean head = i == 0 && table.rowHeads();
                String style = CELL.formatted(css(table.columns().get(i).align()));
                cells.add((head ? "<th scope=\"row\" style=\"" : "<td style=\"") + style + "\">"
                        + phrase(row.get(i)) + (head ? "</th>" : "</td>"));
            }
            return "<tr>" + String.join("", cells) + "</tr>\n";
        }

        private static String css(Table.Align align) {
            return switch (align) {
                case LEFT -> "left";
                case CENTRE -> "center";
                case RIGHT -> "right";
            };
        }

        @Override
        public String listing(Listing listing) {
            String element = listing.numbered() ? "ol" : "ul";
            StringBuilder out = new StringBuilder("<" + element + ">\n");
            listing.items().forEach(item -> out.append("<li>").append(phrase(item)).append("</li>\n"));
            return out.append("</").append(element).append(">\n").toString();
        }

        @Override
        public String section(Section section) {
            String heading = "<h" + level + ">" + phrase(section.title()) + "</h" + level + ">\n";
            return "<section>\n" + heading + new Writer(level + 1, figures).blocks(section.blocks()) + "</section>\n";
        }

        /** A browser may break a line between a formula and the full stop after it, so the two are tied together. */
        private String phrase(Phrase phrase) {
            StringBuilder out = new StringBuilder();
            List<Inline> pieces = phrase.pieces();
            for (int i = 0; i < pieces.size(); i++) {
                String mark = i + 1 < pieces.size() ? closingMark(pieces.get(i), pieces.get(i + 1)) : "";
                String written = pieces.get(i).accept(new Pieces());
                if (mark.isEmpty()) {
                    out.append(written);
                } else {
                    out.append(TIED).append(written).append(mark).append("</span>");
                    String rest = ((Inline.Text) pieces.get(++i)).text().substring(mark.length());
                    out.append(HtmlText.of(rest));
                }
            }
            return out.toString();
        }

        /** The punctuation mark that stands right after a formula, if one does. */
        private static String closingMark(Inline piece, Inline next) {
            boolean closes = piece instanceof Inline.Formula && next instanceof Inline.Text text
                    && !text.text().isEmpty() && ".,;:)".indexOf(text.text().charAt(0)) >= 0;
            return closes ? ((Inline.Text) next).text().substring(0, 1) : "";
        }
    }

    private final class Pieces implements Inline.Visitor<String> {
        @Override
        public String text(Inline.Text text) {
            return HtmlText.of(text.text());
        }

        @Override
        public String emphasis(Inline.Emphasis emphasis) {
            return "<em>" + HtmlText.of(emphasis.text()) + "</em>";
        }

        @Override
        public String strong(Inline.Strong strong) {
            return "<strong>" + HtmlText.of(strong.text()) + "</strong>";
        }

        @Override
        public String formula(Inline.Formula formula) {
            return inlineMath.apply(formula.expression());
        }
    }
}
