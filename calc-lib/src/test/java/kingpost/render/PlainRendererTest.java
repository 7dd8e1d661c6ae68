package kingpost.render;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import kingpost.derivation.Block.Prose;
import kingpost.derivation.Expressions;
import kingpost.derivation.Phrase;
import org.junit.jupiter.api.Test;

class PlainRendererTest extends RendererContract {

    @Override
    Renderer renderer() {
        return new PlainRenderer();
    }

    @Override
    String extension() {
        return "txt";
    }

    /** Plain text has no markup; what would act on a terminal is gone. */
    @Override
    void assertNoMarkupFrom(String text, String rendered) {
        assertTrue(rendered.chars().allMatch(c -> c == '\n' || !Character.isISOControl(c)), rendered);
    }

    @Override
    void assertWellFormed(String rendered) {
        assertEquals(List.of(), rendered.lines().filter(line -> line.endsWith(" ")).toList());
    }

    @Test
    void wrapsAParagraph() {
        String words = "word ".repeat(60).strip();
        assertTrue(new PlainRenderer().render(Prose.of(words)).lines().allMatch(line -> line.length() <= 92));
    }

    @Test
    void putsFractionsOnOneLine() {
        assertEquals("(3/5) F_AB\n", new PlainRenderer().render(new Prose(Phrase.of(
                Expressions.product(Expressions.fraction(3, 5), Expressions.symbol("F", "AB"))))));
    }
}
