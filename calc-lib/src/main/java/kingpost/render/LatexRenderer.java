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
import kingpost.derivation.Figure;
import kingpost.derivation.Inline;
import kingpost.derivation.Phrase;
import kingpost.derivation.Table;

/**
 * Writes LaTeX to stand in the body of a document that loads amsmath and amssymb. Figures are drawn with the commands
 * of pgf, which the usual preamble of a converted notebook loads; where it is absent the description is printed
 * instead.
 */
public final class LatexRenderer implements Renderer {

    /** Rows that surely fit on a page; a longer table is one that breaks across pages (package longtable). */
    private static final int LONGEST_IN_ONE_PIECE = 30;
    private static final String[] HEADINGS = {"\\subsection*", "\\subsubsection*", "\\paragraph*", "\\subparagraph*"};

    @Override
    public String render(Derivation derivation) {
        return heading(0, TexText.paragraph(derivation.title())) + "\n\n"
                + new Writer(1).blocks(derivation.blocks()) + "\n";
    }

    @Override
    public String render(Block block) {
        return block.accept(new Writer(1)) + "\n";
    }

    private static String heading(int depth, String title) {
        return HEADINGS[Math.min(depth, HEADINGS.length - 1)] + "{" + title + "}";
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
            return "\\noindent " + phrase(prose.phrase());
        }

        @Override
        public String equation(Equation equation) {
            String remark = equation.remark().isEmpty() ? "" : " \\qquad " + TexText.inMath(equation.remark());
            return "\\[\n" + TexExpression.of(equation.expression()) + remark + "\n\\]";
        }

        @Override
        public String equations(Equations equations) {
            return "\\[\n" + TexExpression.aligned(equations.lines()) + "\n\\]";
        }

        @Override
        public String figure(Figure figure) {
            String caption = figure.caption().isEmpty() ? "" : "\\par\\smallskip{\\small " + phrase(figure.caption()) + "}";
            return "\\begin{center}\n\\ifdefined\\pgfpicture\n" + PgfPicture.of(figure.svg())
                    + "\\else\n\\emph{" + TexText.paragraph(figure.description()) + "}\n\\fi\n"
                    + caption + "\n\\end{center}";
        }

        @Override
        public String table(Table table) {
            StringBuilder columns = new StringBuilder();
            table.columns().forEach(column -> columns.append(column(column.align())));
            StringBuilder out = new StringBuilder("\\begin{center}\n");
            if (!table.caption().isEmpty()) {
                out.append("{\\small ").append(phrase(table.caption())).append("}\\par\\smallskip\n");
            }
            String environment = table.rows().size() > LONGEST_IN_ONE_PIECE ? "longtable" : "tabular";
            out.append("\\begin{" + environment + "}{").append(columns).append("}\n\\hline\n");
            out.append(row(table.columns().stream().map(Table.Column::head).toList())).append("\\hline\n");
            table.rows().forEach(row -> out.append(row(row)));
            return out.append("\\hline\n\\end{" + environment + "}\n\\end{center}").toString();
        }

        private static char column(Table.Align align) {
            return switch (align) {
                case LEFT -> 'l';
                case CENTRE -> 'c';
                case RIGHT -> 'r';
            };
        }

        /** An empty group comes first, so that a cell that begins with a bracket or a star is not an option. */
        private static String row(List<Phrase> cells) {
            return "{}" + String.join(" & ", cells.stream().map(Writer::phrase).toList()) + " \\\\\n";
        }

        @Override
        public String listing(Listing listing) {
            String environment = listing.numbered() ? "enumerate" : "itemize";
            StringBuilder out = new StringBuilder("\\begin{" + environment + "}\n");
            listing.items().forEach(item -> out.append("\\item {}").append(phrase(item)).append('\n'));
            return out.append("\\end{").append(environment).append('}').toString();
        }

        @Override
        public String section(Section section) {
            String body = new Writer(depth + 1).blocks(section.blocks());
            return heading(depth, phrase(section.title())) + "\n\n" + body;
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
            return TexText.paragraph(text.text());
        }

        @Override
        public String emphasis(Inline.Emphasis emphasis) {
            return "\\emph{" + TexText.paragraph(emphasis.text()) + "}";
        }

        @Override
        public String strong(Inline.Strong strong) {
            return "\\textbf{" + TexText.paragraph(strong.text()) + "}";
        }

        @Override
        public String formula(Inline.Formula formula) {
            return "\\(" + TexExpression.of(formula.expression()) + "\\)";
        }
    }
}
