package kingpost.kernel.print;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;

/**
 * Says where a page may end. The library keeps only neighbours together, so the boxes around cells and sections go, and
 * what leads to something is a neighbour of it: a heading, a listing and the words above it, a line that ends in a colon. Short tables stay
 * whole; of longer ones the first rows stay with the head, the last with each other.
 */
final class PageFlow {

    private static final int MOST_ROWS_WHOLE = 8;
    private static final int ROWS_KEPT = 3;
    private static final int SHORT = 400;
    private static final int MOST_LETTERS_ON_A_LINE = 10;
    private static final Set<String> AROUND_CELLS = Set.of("kp-output", "kp-value");
    private static final Set<String> BLOCKS = Set.of("section", "div", "p", "table", "figure", "ul", "ol", "pre",
            "blockquote", "hr", "h1", "h2", "h3", "h4", "h5", "h6");

    private final Document page;

    PageFlow(Document page) {
        this.page = page;
    }

    void prepare() {
        all("div").stream().filter(PageFlow::isEquation).forEach(div -> {
            div.removeAttribute("style");
            div.setAttribute("class", "kp-equation");
        });
        all("div").stream().filter(div -> AROUND_CELLS.contains(div.getAttribute("class"))).filter(PageFlow::holdsBlocksOnly)
                .forEach(PageFlow::unwrap);
        all("section").forEach(PageFlow::unwrap);
        all("main").forEach(PageFlow::unwrap);
        all("p").stream().filter(PageFlow::leads).forEach(p -> p.setAttribute("class", "leads"));
        all("table").forEach(this::table);
        all("td").stream().filter(cell -> cell.getTextContent().strip().length() <= MOST_LETTERS_ON_A_LINE)
                .forEach(cell -> cell.setAttribute("class", "short"));
    }

    /** A line that ends in a colon, or a short paragraph above a listing. */
    private static boolean leads(Element paragraph) {
        String text = paragraph.getTextContent().strip();
        return text.endsWith(":") || text.length() <= SHORT && next(paragraph).getAttribute("class").equals("kp-source");
    }

    /** The element that follows, or the paragraph itself where none does. */
    private static Element next(Element paragraph) {
        Node node = paragraph.getNextSibling();
        while (node != null && !(node instanceof Element)) {
            node = node.getNextSibling();
        }
        return node instanceof Element element ? element : paragraph;
    }

    private static boolean isEquation(Element div) {
        List<Element> parts = MathLayout.children(div);
        return parts.size() == 1 && parts.get(0).getNodeName().equals("math")
                && parts.get(0).getAttribute("display").equals("block");
    }

    private static boolean holdsBlocksOnly(Element box) {
        NodeList parts = box.getChildNodes();
        return IntStream.range(0, parts.getLength()).mapToObj(parts::item).allMatch(part ->
                part instanceof Element ? BLOCKS.contains(part.getNodeName()) : part.getTextContent().isBlank());
    }

    private static void unwrap(Element box) {
        Node parent = box.getParentNode();
        while (box.getFirstChild() != null) {
            parent.insertBefore(box.getFirstChild(), box);
        }
        parent.removeChild(box);
    }

    private void table(Element table) {
        List<Element> bodies = MathLayout.children(table).stream().filter(part -> part.getNodeName().equals("tbody")).toList();
        int rows = table.getElementsByTagName("tr").getLength();
        if (rows <= MOST_ROWS_WHOLE) {
            table.setAttribute("class", "whole");
        } else if (bodies.size() == 1) {
            List<Element> lines = MathLayout.children(bodies.get(0));
            keep(table, bodies.get(0), lines.subList(0, ROWS_KEPT));
            Element last = page.createElement("tbody");
            table.insertBefore(last, bodies.get(0).getNextSibling());
            keepIn(last, lines.subList(lines.size() - ROWS_KEPT, lines.size()));
        }
    }

    private void keep(Element table, Element before, List<Element> lines) {
        Element first = page.createElement("tbody");
        table.insertBefore(first, before);
        keepIn(first, lines);
    }

    private static void keepIn(Element body, List<Element> lines) {
        body.setAttribute("class", "whole");
        lines.forEach(body::appendChild);
    }

    private List<Element> all(String name) {
        NodeList found = page.getElementsByTagName(name);
        List<Element> elements = new ArrayList<>();
        for (int i = 0; i < found.getLength(); i++) {
            elements.add((Element) found.item(i));
        }
        return elements;
    }
}
