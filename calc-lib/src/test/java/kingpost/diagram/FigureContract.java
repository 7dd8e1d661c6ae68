package kingpost.diagram;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringReader;
import java.util.List;
import java.util.function.Supplier;
import javax.xml.parsers.DocumentBuilderFactory;
import kingpost.svg.Svg;
import org.xml.sax.InputSource;

/** What holds for every figure. */
final class FigureContract {

    private FigureContract() {
    }

    static void check(Supplier<Svg> figure) {
        Svg svg = figure.get();
        check(svg);
        assertEquals(svg.toText(), figure.get().toText(), "the same figure twice");
    }

    /** All but that it is the same when it is drawn again. */
    static void check(Svg svg) {
        assertEquals(List.of(), Clashes.in(svg), svg.title());
        assertTrue(svg.view().width() <= 760, svg.title() + " is " + svg.view().width() + " px wide");
        assertTrue(svg.view().height() <= 900, svg.title() + " is " + svg.view().height() + " px high");
        assertTrue(Clashes.smallest(svg) >= 11, svg.title() + " has letters of " + Clashes.smallest(svg) + " px");
        assertFalse(svg.title().isBlank());
        assertTrue(svg.description().length() > 20, svg.description());
        assertWellFormed(svg.toText());
    }

    static void assertWellFormed(String text) {
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
            factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
            factory.newDocumentBuilder().parse(new InputSource(new StringReader(text)));
        } catch (Exception e) {
            throw new AssertionError(e.getMessage() + " in\n" + text, e);
        }
    }
}
