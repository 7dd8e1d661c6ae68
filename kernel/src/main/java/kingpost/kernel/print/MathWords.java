package kingpost.kernel.print;

import java.util.List;
import java.util.stream.Collectors;
import org.w3c.dom.Element;

/** A formula in one line of characters, for those who hear the page. */
final class MathWords {

    private MathWords() {
    }

    static String of(Element element) {
        List<Element> parts = MathLayout.children(element);
        return switch (element.getNodeName()) {
            case "mfrac" -> parts.size() == 2 ? grouped(of(parts.get(0))) + "/" + grouped(of(parts.get(1))) : joined(parts);
            case "msqrt" -> "\u221a" + grouped(joined(parts));
            case "msub" -> with(parts, "_");
            case "msup" -> with(parts, "^");
            case "msubsup" -> parts.size() == 3 ? of(parts.get(0)) + "_" + grouped(of(parts.get(1))) + "^"
                    + grouped(of(parts.get(2))) : joined(parts);
            case "mtable" -> parts.stream().map(MathWords::of).map(String::strip).collect(Collectors.joining("; "));
            case "mspace" -> " ";
            case "mo" -> operator(element.getTextContent().strip().replaceAll("[\u2060-\u2064]", ""));
            default -> parts.isEmpty() ? element.getTextContent() : joined(parts);
        };
    }

    private static String operator(String sign) {
        return sign.isEmpty() || "()[]{}|\u2032".contains(sign) ? sign : sign.equals(",") || sign.equals(":") ? sign + " "
                : " " + sign + " ";
    }

    private static String with(List<Element> parts, String sign) {
        return parts.size() == 2 ? of(parts.get(0)) + sign + grouped(of(parts.get(1))) : joined(parts);
    }

    private static String grouped(String text) {
        String inner = text.strip();
        return inner.codePointCount(0, inner.length()) <= 1 || inner.matches("[\\p{L}\\p{Nd}.,]+") ? inner : "(" + inner + ")";
    }

    private static String joined(List<Element> parts) {
        return parts.stream().map(MathWords::of).collect(Collectors.joining()).replaceAll(" {2,}", " ");
    }
}
