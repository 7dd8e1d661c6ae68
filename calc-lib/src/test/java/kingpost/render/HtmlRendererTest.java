package kingpost.render;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringReader;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import javax.xml.parsers.DocumentBuilderFactory;

import kingpost.derivation.Block;
import kingpost.derivation.Derivation;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

class HtmlRendererTest extends RendererContract {

    private static final Set<String> KNOWN = Set.of("section", "h2", "h3", "h4", "p", "div", "em", "strong", "span", "ul", "ol",
            "li", "figure", "figcaption", "small", "table", "caption", "thead", "tbody", "tr", "th", "td",
            "math", "mrow", "mi", "mn", "mo", "mtext", "mspace", "mfrac", "msqrt", "msup", "msub", "msubsup",
            "mtable", "mtr", "mtd",
            "svg", "title", "desc", "g", "line", "polyline", "polygon", "circle", "rect", "path", "text", "tspan");

    @Override
    Renderer renderer() {
        return new HtmlRenderer();
    }

    @Override
    String extension() {
        return "html";
    }

    @Override
    void assertNoMarkupFrom(String text, String rendered) {
        assertEquals(shape(renderer().render(SampleDerivations.saying("harmless"))), shape(rendered));
    }

    @Override
    void assertWellFormed(String rendered) {
        Set<String> unknown = new TreeSet<>(shape(rendered));
        unknown.removeAll(KNOWN);
        assertEquals(Set.of(), unknown);
    }

    /** The names of all elements in order of the document; parsing fails where the text is not well formed. */
    private static List<String> shape(String rendered) {
        NodeList all = parsed(rendered).getElementsByTagName("*");
        return java.util.stream.IntStream.range(0, all.getLength()).mapToObj(i -> all.item(i).getNodeName()).toList();
    }

    private static Document parsed(String rendered) {
        try {
            return DocumentBuilderFactory.newInstance().newDocumentBuilder()
                    .parse(new InputSource(new StringReader(rendered)));
        } catch (Exception e) {
            throw new AssertionError("not well formed: " + rendered, e);
        }
    }

    @Test
    void givesEachFigureItsOwnIds() {
        Block figure = SampleDerivations.everyNode().blocks().stream()
                .filter(kingpost.derivation.Figure.class::isInstance).findFirst().orElseThrow();
        NodeList all = parsed(new HtmlRenderer().render(Derivation.of("Twice", figure, figure)))
                .getElementsByTagName("*");
        Set<String> ids = new HashSet<>();
        int count = 0;
        for (int i = 0; i < all.getLength(); i++) {
            String id = ((Element) all.item(i)).getAttribute("id");
            if (!id.isEmpty()) {
                ids.add(id);
                count++;
            }
        }
        assertTrue(count > 0);
        assertEquals(count, ids.size());
    }

    @Test
    void fetchesNothingAndRunsNothing() {
        String rendered = new HtmlRenderer().render(SampleDerivations.everyNode());
        String outside = rendered.replace("http://www.w3.org/2000/svg", "");
        for (String word : List.of("http", "src=", "href", "<script", "<style", "url(")) {
            assertTrue(!outside.contains(word), word);
        }
    }

    @Test
    void headsRowsAndColumns() {
        String rendered = new HtmlRenderer().render(SampleDerivations.everyNode());
        assertTrue(rendered.contains("<th scope=\"col\""));
        assertTrue(rendered.contains("<th scope=\"row\""));
    }
}
