package kingpost.render;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import kingpost.GoldenFile;
import kingpost.derivation.Block;
import kingpost.derivation.Derivation;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;

/** What every renderer keeps to. */
abstract class RendererContract {

    static final java.util.List<String> HOSTILE = SampleDerivations.HOSTILE;

    /** The renderer under test. */
    abstract Renderer renderer();

    /** The golden file's ending. */
    abstract String extension();

    /** Fails if {@code rendered}, which was made of {@code text} alone, holds markup that came from the text. */
    abstract void assertNoMarkupFrom(String text, String rendered);

    /** Fails if the format's own rules are broken. */
    abstract void assertWellFormed(String rendered);

    @Test
    void writesEveryKindOfNodeAsTheGoldenFileHasIt() {
        GoldenFile.check("kingpost/render/every-node." + extension(),
                renderer().render(SampleDerivations.everyNode()));
    }

    @Test
    void keepsTheFormatsRules() {
        assertWellFormed(renderer().render(SampleDerivations.everyNode()));
    }

    @Test
    void givesTheSameTextForEqualTrees() {
        assertEquals(renderer().render(SampleDerivations.everyNode()),
                renderer().render(SampleDerivations.everyNode()));
    }

    @Test
    void rendersEachBlockAlone() {
        Derivation derivation = SampleDerivations.everyNode();
        String whole = renderer().render(derivation);
        assertAll(derivation.blocks().stream().map(block -> () -> assertFalse(render(block).isBlank())));
        assertTrue(whole.contains("A paragraph with"));
    }

    @Test
    void leavesNoTraceOfJava() {
        String rendered = renderer().render(SampleDerivations.everyNode());
        assertFalse(rendered.contains("null"), rendered);
        assertFalse(rendered.contains("kingpost.derivation"), rendered);
    }

    @ParameterizedTest
    @FieldSource("HOSTILE")
    void letsNoTextBringMarkup(String text) {
        String rendered = renderer().render(SampleDerivations.saying(text));
        assertNoMarkupFrom(text, rendered);
        assertWellFormed(rendered);
    }

    private String render(Block block) {
        return renderer().render(block);
    }
}
