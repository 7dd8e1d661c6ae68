package kingpost.render;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.regex.Pattern;

import kingpost.derivation.Block.Prose;
import org.junit.jupiter.api.Test;

class MarkdownRendererTest extends RendererContract {

    private static final Pattern MATH = Pattern.compile("\\$\\$\\n.*?\\n\\$\\$|\\$[^$\\n]*\\$",
            Pattern.DOTALL);
    private static final Pattern OWN_TAGS = Pattern.compile("<span>&#(36|92);</span>|</?(em|strong)>"
            + "|<img src=\"data:image/svg\\+xml;base64,[A-Za-z0-9+/=]*\" alt=\"[^\"<>$`\\\\]*\">");

    @Override
    Renderer renderer() {
        return new MarkdownRenderer();
    }

    @Override
    String extension() {
        return "md";
    }

    /** Outside mathematics and the renderer's own tags, nothing of the text has a meaning in Markdown. */
    @Override
    void assertNoMarkupFrom(String text, String rendered) {
        String outside = OWN_TAGS.matcher(MATH.matcher(rendered).replaceAll("")).replaceAll("");
        assertTrue(outside.lines().noneMatch(line -> line.matches(".*[<>\\[\\]`\\\\$_~{}^].*")), outside);
        String usual = renderer().render(SampleDerivations.saying("harmless"));
        assertEquals(structure(usual), structure(rendered));
    }

    /** How each line begins, as far as that gives it a structure. */
    private static List<String> structure(String markdown) {
        Pattern start = Pattern.compile("^(#+ |- |\\d+[.)] |\\+ |> |\\||\\$\\$|```|)");
        return markdown.lines().map(line -> {
            var matcher = start.matcher(line);
            return matcher.find() ? matcher.group() : "";
        }).toList();
    }

    @Override
    void assertWellFormed(String rendered) {
        assertEquals(0, rendered.lines().filter("$$"::equals).count() % 2);
    }

    @Test
    void keepsEachDollarSignFromPairingWithAnother() {
        String rendered = new MarkdownRenderer().render(Prose.of("costs $5 or $6"));
        assertEquals("costs <span>&#36;</span>5 or <span>&#36;</span>6\n", rendered);
    }

    @Test
    void leavesOrdinaryWordsReadable() {
        String words = "Joint B (3-4-5 slope) carries 12.5 kN, i.e. it's safe: 50% of 25.";
        assertTrue(new MarkdownRenderer().render(Prose.of(words)).contains("Joint B (3-4-5 slope) carries 12.5 kN"));
    }
}
