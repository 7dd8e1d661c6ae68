package kingpost.kernel.print;

import java.util.List;
import java.util.stream.Collectors;
import org.w3c.dom.Element;

/** A formula in one line of characters, for those who hear the page or copy from it: (4/5) F_AB, mm^2, \u221a5. */
final class MathWords {

    private static final String INVISIBLE = "[\u2060-\u2064]";

    private MathWords() {
    }

    static String of(Element element) {
        List<Element> parts = MathLayout.children(element);
        return switch (element.getNodeName()) {
            case "mfrac" -> parts.size() == 2 ? grouped(of(parts.get(0))) + "/" + grouped(of(parts.get(1))) : joined(parts);
            case "msqrt" -> "\u221a" + grouped(joined(parts));
            case "mroot" -> parts.size() == 2 ? grouped(of(parts.get(0))) + "^(1/" + of(parts.get(1)).strip() + ")"
                    : joined(parts);
            case "msub", "munder" -> with(parts, "_");
            case "msup", "mover" -> with(parts, "^");
            case "msubsup", "munderover" -> parts.size() == 3 ? of(parts.get(0)) + "_" + grouped(of(parts.get(1))) + "^"
                    + grouped(of(parts.get(2))) : joined(parts);
            case "mtable" -> parts.stream().map(MathWords::of).map(String::strip).collect(Collectors.joining("; "));
            case "mtr" -> line(parts);
            case "mspace" -> " ";
            case "mo" -> operator(element);
            default -> parts.isEmpty() ? element.getTextContent().replaceAll(INVISIBLE, "").replaceAll("\\s+", " ")
                    : joined(parts);
        };
    }

    /** The cells of one line of a table. */
    static String line(List<Element> cells) {
        return cells.stream().map(MathWords::of).map(String::strip).filter(text -> !text.isEmpty())
                .collect(Collectors.joining(" ")).replaceAll(" {2,}", " ");
    }

    private static String operator(Element element) {
        String text = element.getTextContent().strip();
        String sign = text.replaceAll(INVISIBLE, "");
        if (sign.isEmpty()) {
            return text.equals("\u2062") ? " " : "";
        }
        boolean close = "()[]{}|\u2032".contains(sign) || element.getAttribute("form").equals("prefix");
        return close ? sign : sign.equals(",") || sign.equals(":") ? sign + " " : " " + sign + " ";
    }

    private static String with(List<Element> parts, String sign) {
        if (parts.size() != 2) {
            return joined(parts);
        }
        String script = of(parts.get(1)).strip();
        return of(parts.get(0)) + (script.matches("\u2032+") ? script : sign + grouped(script));
    }

    private static String grouped(String text) {
        String inner = text.strip();
        return inner.codePointCount(0, inner.length()) <= 1 || inner.matches("[\\p{L}\\p{Nd}.,\u2032]+") ? inner : "(" + inner + ")";
    }

    private static String joined(List<Element> parts) {
        StringBuilder all = new StringBuilder();
        for (int i = 0; i < parts.size(); i++) {
            boolean bound = isFraction(parts.get(i)) && (i > 0 && binds(parts.get(i - 1))
                    || i + 1 < parts.size() && binds(parts.get(i + 1)));
            all.append(bound ? "(" + of(parts.get(i)).strip() + ")" : of(parts.get(i)));
        }
        return all.toString().replaceAll(" {2,}", " ");
    }

    private static boolean isFraction(Element element) {
        List<Element> parts = MathLayout.children(element);
        return element.getNodeName().equals("mfrac")
                || element.getNodeName().equals("mrow") && parts.size() == 1 && isFraction(parts.get(0));
    }

    /** Whether a fraction beside it would be read with it: all but signs that are seen. */
    private static boolean binds(Element element) {
        return !element.getNodeName().equals("mo") || element.getTextContent().strip().replaceAll(INVISIBLE, "").isEmpty();
    }
}
