package kingpost.kernel.formula;

import java.util.List;
import java.util.Map;

/**
 * A formula in LaTeX notation, shown as MathML.
 *
 * <p>A formula is never refused, since it stands in somebody's document: a command that is not known here is shown
 * as it was typed, and a formula that cannot be read at all is shown as its source.
 *
 * <p>Source: MathML Core, W3C Candidate Recommendation (elements and attributes used); the notation is common
 * practice among notebook front ends, no source.
 */
public final class Formula {

    private static final String NAMESPACE = "http://www.w3.org/1998/Math/MathML";

    private Formula() {
    }

    /** The formula within a line of text. */
    public static String inline(String tex) {
        return math(tex, Map.of("xmlns", NAMESPACE));
    }

    /** The formula on a line of its own. */
    public static String display(String tex) {
        return math(tex, Map.of("display", "block", "xmlns", NAMESPACE));
    }

    private static String math(String tex, Map<String, String> attributes) {
        try {
            List<Node> row = new FormulaParser(tex.replaceAll("[\\p{Cntrl}&&[^\\s]]", "")).formula();
            return Node.of("math", row).with(attributes).toString();
        } catch (FormulaTooDeep e) {
            Node source = Node.text("mtext", tex.strip()).with("class", "tex-source");
            return Node.of("math", List.of(source)).with(attributes).toString();
        }
    }
}
