package kingpost.kernel.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class MarkdownHtmlTest {

    private static int formulas(String markdown) {
        return MarkdownHtml.of(markdown).split("<math ", -1).length - 1;
    }

    @Test
    void writesTablesAndEmphasis() {
        String html = MarkdownHtml.of("| a | b |\n|---|---:|\n| *x* | **1** |");
        assertTrue(html.contains("<table>"), html);
        assertTrue(html.contains("<td><em>x</em></td>"), html);
    }

    @ParameterizedTest
    @ValueSource(strings = {"force $F_{AB}$ here", "$x$", "($x$)", "$x$.", "$ x $", "**$x$**", "| $a$ | b |\n|---|---|",
        "- $$x = 1$$", "$$x$$", "$$\nx = 1\n$$", "text\n$$\n- a\n+ b\n$$\nmore", "$$ a_1 *b* _c_ $$", "$a \\$ b$",
        "\\begin{align*}\na &= b \\\\\nc &= d\n\\end{align*}", "see $$x$$ within", "> $$\n> x\n> $$"})
    void findsTheFormula(String markdown) {
        assertEquals(1, formulas(markdown), MarkdownHtml.of(markdown));
    }

    @ParameterizedTest
    @ValueSource(strings = {"costs $5 and $10", "a $5 bolt", "from $3, or $ 4", "`$x$`", "    $x$", "\\$x$", "$", "$ $",
        "```\n$$x$$\n```"})
    void leavesMoneyAndCodeAlone(String markdown) {
        assertEquals(0, formulas(markdown), MarkdownHtml.of(markdown));
    }

    @Test
    void readsNoMarkdownInsideAFormula() {
        String html = MarkdownHtml.of("$$\n# x\na * b * c\n$$\nafter");
        assertFalse(html.contains("<h1>") || html.contains("<em>"), html);
        assertTrue(html.contains("<p>after</p>"), html);
    }

    @Test
    void endsAFormulaThatWasNotClosedAtABlankLine() {
        assertTrue(MarkdownHtml.of("$$ x = 1 $\n\nafter").contains("<p>after</p>"));
    }

    @Test
    void setsTwoFormulasInALine() {
        assertEquals(2, formulas("$a$ and $b$"));
    }

    @Test
    void takesLatexWithAndWithoutItsMarks() {
        for (String latex : new String[] {"$$x$$", "x", "\\[x\\]", "$x$", "\\begin{align}x\\end{align}"}) {
            assertTrue(MarkdownHtml.ofLatex(latex).contains("<mi>x</mi>"), latex);
            assertFalse(MarkdownHtml.ofLatex(latex).contains("tex-source"), MarkdownHtml.ofLatex(latex));
        }
    }
}
