package kingpost.kernel.formula;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * One MathML element: either children or text.
 *
 * @param name       element name
 * @param attributes in the order of their names, so that the same formula is always the same text
 * @param children   elements inside; empty for a token element
 * @param text       characters inside a token element; empty for the others
 */
record Node(String name, Map<String, String> attributes, List<Node> children, String text) {

    Node {
        attributes = new TreeMap<>(attributes);
        children = List.copyOf(children);
    }

    static Node of(String name, List<Node> children) {
        return new Node(name, Map.of(), children, "");
    }

    static Node of(String name, Node... children) {
        return of(name, List.of(children));
    }

    static Node text(String name, String text) {
        return new Node(name, Map.of(), List.of(), text);
    }

    static Node operator(String text) {
        return text("mo", text);
    }

    static Node space(String width) {
        return of("mspace").with("width", width);
    }

    /** The nodes as one: themselves if they are one, else in an {@code mrow}. */
    static Node row(List<Node> nodes) {
        return nodes.size() == 1 ? nodes.get(0) : of("mrow", nodes);
    }

    Node with(String attribute, String value) {
        return with(Map.of(attribute, value));
    }

    Node with(Map<String, String> more) {
        Map<String, String> all = new TreeMap<>(attributes);
        all.putAll(more);
        return new Node(name, all, children, text);
    }

    boolean isOperator() {
        return name.equals("mo");
    }

    /** The nodes with the signs among them that have nothing on their left marked as signs, not as sums. */
    static List<Node> signed(List<Node> row) {
        List<Node> out = new ArrayList<>();
        boolean operandBefore = false;
        for (Node node : row) {
            boolean sign = node.isOperator() && FormulaSymbols.SIGNS.contains(node.text());
            out.add(sign && !operandBefore ? node.with("form", "prefix") : node);
            if (!node.name().equals("mspace")) {
                operandBefore = !node.isOperator() || FormulaSymbols.CLOSERS.contains(node.text());
            }
        }
        return out;
    }

    @Override
    public String toString() {
        StringBuilder out = new StringBuilder();
        write(out);
        return out.toString();
    }

    private void write(StringBuilder out) {
        out.append('<').append(name);
        attributes.forEach((key, value) -> out.append(' ').append(key).append("=\"").append(escape(value)).append('"'));
        out.append('>').append(escape(text));
        children.forEach(child -> child.write(out));
        out.append("</").append(name).append('>');
    }

    private static String escape(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;").replace("\"", "&quot;");
    }
}
