package kingpost.render;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;

import kingpost.derivation.Block;
import kingpost.derivation.Block.Equation;
import kingpost.derivation.Block.Equations;
import kingpost.derivation.Block.Listing;
import kingpost.derivation.Block.Prose;
import kingpost.derivation.Block.Section;
import kingpost.derivation.Derivation;
import kingpost.derivation.Figure;
import kingpost.derivation.Inline;
import kingpost.derivation.Phrase;
import kingpost.derivation.Table;

/**
 * Writes Markdown with LaTeX mathematics between {@code $} and {@code $$}, the only delimiters that every front end
 * takes. Figures are images whose data stand in the text; their descriptions are the alternative text.
 */
public final class MarkdownRenderer implements Renderer {

    private static final int TITLE_LEVEL = 2;
    private static final int DEEPEST = 6;

    @Override
    public String render(Derivation derivation) {
        Writer writer = new Writer(TITLE_LEVEL + 1);
        return "#".repeat(TITLE_LEVEL) + " " + MarkdownText.of(derivation.title()) + "\n\n"
                + writer.blocks(derivation.blocks()) + "\n";
    }

    @Override
    public String render(Block block) {
        return block.accept(new Writer(TITLE_LEVEL + 1)) + "\n";
    }

    /** @param level of the headings of sections at this depth */
    private record Writer(int level) implements Block.Visitor<String> {

        String blocks(List<Block> blocks) {
            List<String> written = new ArrayList<>();
            for (Block block : blocks) {
                written.add(block.accept(this));
            }
            return String.join("\n\n", written);
        }

        @Override
        public String prose(Prose prose) {
            return phrase(prose.phrase());
        }

        @Override
        public String equation(Equation equation) {
            String remark = equation.remark().isEmpty() ? "" : " \\qquad " + TexText.inMath(equation.remark());
            return "$$\n" + withoutDollars(TexExpression.of(equation.expression()) + remark) + "\n$$";
        }

        @Override
        public String equations(Equations equations) {
            return "$$\n" + withoutDollars(TexExpression.aligned(equations.lines())) + "\n$$";
        }

        @Override
        public String figure(Figure figure) {
            String data = Base64.getEncoder().encodeToString(figure.svg().toText().getBytes(StandardCharsets.UTF_8));
            String image = "<img src=\"data:image/svg+xml;base64," + data + "\" alt=\""
                    + attribute(figure.description()) + "\">";
            return figure.caption().isEmpty() ? image : image + "\n\n" + phrase(figure.caption());
        }

        /** Some front ends look for mathematics before they look for tags, so its signs are hidden here too. */
        private static String attribute(String text) {
            return HtmlText.of(text).replace("$", "&#36;").replace("\\", "&#92;").replace("`", "&#96;");
        }

        @Override
        public String table(Table table) {
            List<String> lines = new ArrayList<>();
            if (!table.caption().isEmpty()) {
                lines.add(phrase(table.caption()));
                lines.add("");
            }
            lines.add(cells(table.columns().stream().map(Table.Column::head).toList()));
            lines.add(table.columns().stream().map(column -> rule(column.align())).reduce("|", String::concat));
            table.rows().forEach(row -> lines.add(cells(row)));
            return String.join("\n", lines);
        }

        private static String rule(Table.Align align) {
            return switch (align) {
                case LEFT -> ":---|";
                case CENTRE -> ":---:|";
                case RIGHT -> "---:|";
            };
        }

        private static String cells(List<Phrase> row) {
            return row.stream().map(cell -> " " + phrase(cell) + " |").reduce("|", String::concat);
        }

        @Override
        public String listing(Listing listing) {
            List<String> lines = new ArrayList<>();
            for (Phrase item : listing.items()) {
                String mark = listing.numbered() ? (lines.size() + 1) + ". " : "- ";
                lines.add(mark + phrase(item));
            }
            return String.join("\n", lines);
        }

        @Override
        public String section(Section section) {
            String heading = "#".repeat(Math.min(level, DEEPEST)) + " " + phrase(section.title());
            String body = new Writer(level + 1).blocks(section.blocks());
            return body.isEmpty() ? heading : heading + "\n\n" + body;
        }

        private static String phrase(Phrase phrase) {
            StringBuilder out = new StringBuilder();
            phrase.pieces().forEach(piece -> out.append(piece.accept(new Pieces())));
            return out.toString().strip();
        }
    }

    private static final class Pieces implements Inline.Visitor<String> {
        @Override
        public String text(Inline.Text text) {
            return MarkdownText.of(text.text());
        }

        @Override
        public String emphasis(Inline.Emphasis emphasis) {
            return stressed(emphasis.text(), "*", "em");
        }

        @Override
        public String strong(Inline.Strong strong) {
            return stressed(strong.text(), "**", "strong");
        }

        /** Stars count only beside a letter or digit; elsewhere an element does the same. */
        private static String stressed(String text, String stars, String element) {
            String safe = MarkdownText.of(text);
            boolean plain = text.matches("[\\p{Alnum}](.*[\\p{Alnum}])?");
            return plain ? stars + safe + stars : "<" + element + ">" + safe + "</" + element + ">";
        }

        @Override
        public String formula(Inline.Formula formula) {
            return "$" + withoutDollars(TexExpression.of(formula.expression())) + "$";
        }
    }

    /** A dollar sign in a name would end the mathematics in some front ends; its wide form reads the same. */
    private static String withoutDollars(String tex) {
        return tex.replace("\\$", "\\text{＄}");
    }
}
