package kingpost.explain;

import static kingpost.units.StructuralUnits.kN;
import static kingpost.units.StructuralUnits.m;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.StringReader;
import java.util.List;
import java.util.TreeSet;
import javax.xml.parsers.DocumentBuilderFactory;

import kingpost.derivation.Derivation;
import kingpost.render.Exhibit;
import kingpost.render.HtmlRenderer;
import kingpost.render.LatexRenderer;
import kingpost.render.MarkdownRenderer;
import kingpost.statics.Solver;
import kingpost.truss.Direction;
import kingpost.truss.Joint;
import kingpost.truss.Load;
import kingpost.truss.Member;
import kingpost.truss.Support;
import kingpost.truss.TrussModel;
import kingpost.units.Quantity;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/** Names with markup in them, from the truss to the page: figures, sentences, formulas and tables. */
class HostileNamesTest {

    private static TrussModel named(String mark) {
        String a = "A" + mark;
        String b = "B" + mark;
        String c = "C" + mark;
        return new TrussModel("Truss " + mark, m, kN, List.of(joint(a, 0, 0), joint(b, 4, 0), joint(c, 2, 1.5)),
                List.of(new Member(a + b, a, b), new Member(b + c, b, c), new Member(a + c, a, c)),
                List.of(new Support(a, Support.Kind.PIN, List.of(Direction.RIGHT, Direction.UP)),
                        new Support(b, Support.Kind.ROLLER, List.of(Direction.UP))),
                List.of(new Load.Directed(c, Quantity.of(3, kN), Direction.slope(3, -4))));
    }

    private static Joint joint(String name, double x, double y) {
        return new Joint(name, Quantity.of(x, m), Quantity.of(y, m), Quantity.of(0, m));
    }

    private static Derivation derivation(String mark) {
        return SolutionExplanation.of(Solver.solve(named(mark)));
    }

    private static List<String> elements(String html) throws Exception {
        NodeList all = DocumentBuilderFactory.newInstance().newDocumentBuilder()
                .parse(new InputSource(new StringReader(html))).getElementsByTagName("*");
        return java.util.stream.IntStream.range(0, all.getLength()).mapToObj(i -> all.item(i).getNodeName()).toList();
    }

    @ParameterizedTest
    @ValueSource(strings = {"<b>x</b>", "&lt;", "$x$", "\\input{y}", "_*`", "]](", "\n# h\n", "|", "--><!--"})
    void bringNoElementIntoThePage(String mark) throws Exception {
        String html = new HtmlRenderer().render(derivation(mark));
        TreeSet<String> added = new TreeSet<>(elements(html));
        added.removeAll(elements(new HtmlRenderer().render(derivation("'"))));
        assertEquals(new TreeSet<>(), added);
    }

    @Test
    void bringNoMarkupIntoMarkdown() {
        String markdown = new MarkdownRenderer().render(derivation("<b>$5_*`#"));
        assertFalse(markdown.contains("<b>"), markdown);
        assertFalse(markdown.matches("(?s).*[A-C]`.*"), markdown);
        assertEquals(0, markdown.replace("$$", "").chars().filter(c -> c == '$').count() % 2);
    }

    @Test
    void bringNoCommandIntoLatex() {
        String latex = new LatexRenderer().render(derivation("\\input{secret}%"));
        assertFalse(latex.contains("\\input"), "a command came through");
    }

    @Test
    void doNotEndTheCommentRoundTheLatex() {
        String portable = (String) Exhibit.of(derivation("-->")).show().get("text/latex");
        String latex = portable.substring(portable.indexOf('\n'), portable.indexOf("\\iffalse"));
        assertFalse(latex.contains("--"), "two hyphens came through");
    }
}
