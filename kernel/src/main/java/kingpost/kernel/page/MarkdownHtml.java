package kingpost.kernel.page;

import java.util.List;
import java.util.Set;
import kingpost.kernel.formula.Formula;
import org.commonmark.Extension;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.node.Node;
import org.commonmark.parser.Parser;
import org.commonmark.renderer.NodeRenderer;
import org.commonmark.renderer.html.HtmlNodeRendererContext;
import org.commonmark.renderer.html.HtmlRenderer;
import org.commonmark.renderer.html.HtmlWriter;

/**
 * Markdown with tables and mathematics to HTML. HTML in the text passes through and is not safe yet.
 *
 * <p>Source: CommonMark 0.31, tables as in GitHub Flavored Markdown.
 */
final class MarkdownHtml {

    private static final List<Extension> EXTENSIONS = List.of(TablesExtension.create());
    private static final Parser PARSER = FormulaSyntax.addTo(Parser.builder().extensions(EXTENSIONS)).build();
    private static final HtmlRenderer RENDERER = HtmlRenderer.builder().extensions(EXTENSIONS)
            .nodeRendererFactory(FormulaRenderer::new).build();

    private MarkdownHtml() {
    }

    static String of(String markdown) {
        return RENDERER.render(PARSER.parse(markdown));
    }

    /** LaTeX as an output brings it: text with formulas in it, or a formula alone. */
    static String ofLatex(String latex) {
        String text = latex.strip();
        boolean marked = text.contains("$") || text.startsWith("\\begin{");
        String brackets = text.replaceAll("^\\\\\\[|\\\\]$", "");
        return marked ? of(text) : "<p>" + Formula.display(brackets) + "</p>";
    }

    private static final class FormulaRenderer implements NodeRenderer {

        private final HtmlWriter html;

        FormulaRenderer(HtmlNodeRendererContext context) {
            this.html = context.getWriter();
        }

        @Override
        public Set<Class<? extends Node>> getNodeTypes() {
            return Set.of(FormulaSyntax.InlineFormula.class, FormulaSyntax.FormulaBlock.class);
        }

        @Override
        public void render(Node node) {
            if (node instanceof FormulaSyntax.FormulaBlock block) {
                html.line();
                html.raw("<div class=\"kp-equation\">" + Formula.display(block.tex) + "</div>");
                html.line();
            } else if (node instanceof FormulaSyntax.InlineFormula formula) {
                html.raw(formula.display ? Formula.display(formula.tex) : Formula.inline(formula.tex));
            }
        }
    }
}
