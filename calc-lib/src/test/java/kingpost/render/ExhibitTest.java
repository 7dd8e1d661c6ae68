package kingpost.render;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;

import kingpost.derivation.Block;
import kingpost.derivation.Figure;
import kingpost.derivation.Table;
import org.junit.jupiter.api.Test;

class ExhibitTest {

    private static <T extends Block> T first(Class<T> kind) {
        return SampleDerivations.everyNode().blocks().stream().filter(kind::isInstance).map(kind::cast)
                .findFirst().orElseThrow();
    }

    @Test
    void keepsTheHtmlOfADerivationFromTheFormsThatFrontEndsChooseFrom() {
        Map<String, Object> forms = Exhibit.of(SampleDerivations.everyNode()).show();
        assertEquals(List.of("text/plain", "text/markdown", "text/latex", Exhibit.RESULT), List.copyOf(forms.keySet()));
        Map<?, ?> result = (Map<?, ?>) forms.get(Exhibit.RESULT);
        assertEquals(1, result.get("version"));
        assertEquals("derivation", result.get("kind"));
        assertEquals("Every kind of node", result.get("title"));
        assertTrue(((String) result.get("html")).contains("<math"));
    }

    @Test
    void showsATableAsHtmlThatNeedsNoTrust() {
        Map<String, Object> forms = Exhibit.of(first(Table.class), "members", Map.of("forces", List.of(-12.5))).show();
        String html = (String) forms.get("text/html");
        assertFalse(html.contains("<math"), html);
        assertTrue(html.contains("200 √2"), html);
        assertEquals(List.of(-12.5), ((Map<?, ?>) forms.get(Exhibit.RESULT)).get("forces"));
    }

    @Test
    void describesAFigureInWords() {
        Map<String, Object> forms = Exhibit.of(first(Figure.class)).show();
        assertEquals("A beam. A line with an arrow at its end.\n", forms.get("text/plain"));
        assertTrue(((String) forms.get("image/svg+xml")).startsWith("<svg"));
        assertTrue(forms.containsKey("image/png"));
    }

    @Test
    void letsNoTextEndTheCommentAroundTheLatex() {
        for (String text : SampleDerivations.HOSTILE) {
            String portable = (String) Exhibit.of(SampleDerivations.saying(text)).show().get("text/latex");
            String latex = portable.substring(portable.indexOf("\n"), portable.indexOf("\\iffalse"));
            assertFalse(latex.contains("--"), latex);
            assertFalse(latex.contains("\n\n"), latex);
            assertEquals(2, portable.split("\\\\fi\\n% -->", -1).length, portable);
        }
    }
}
