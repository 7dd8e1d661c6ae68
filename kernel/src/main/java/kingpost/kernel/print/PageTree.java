package kingpost.kernel.print;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;

/** Makes a page for the screen ready for paper: style sheet, running head and foot, bookmarks, room for what is drawn. */
final class PageTree {


    private final Document page;

    PageTree(Document page) {
        this.page = page;
    }

    void prepare(String styleSheet, PrintedPage.Edges edges, Consumer<Element> formula, Consumer<Element> figure) {
        Element head = all("head").get(0);
        all("style").stream().filter(style -> style.getParentNode() == head).forEach(PageTree::remove);
        all("summary").forEach(PageTree::remove);
        child(head, "style").setTextContent(styleSheet);
        new PageFlow(page).prepare();
        running(edges);
        bookmarks(head);
        all("math").forEach(math -> {
            formula.accept(math);
            math.setAttribute("alt", MathWords.of(math).strip());
        });
        all("svg").stream().filter(svg -> !isInside(svg, "svg")).forEach(svg -> {
            figure.accept(svg);
            svg.setAttribute("alt", words(svg));
        });
    }

    private void running(PrintedPage.Edges edges) {
        Element body = all("body").get(0);
        Element head = page.createElement("div");
        head.setAttribute("class", "running-head");
        Element table = child(head, "table");
        Element row = child(table, "tr");
        child(row, "td").setTextContent(edges.head());
        Element side = child(row, "td");
        side.setAttribute("class", "side");
        side.setTextContent(edges.headside());
        Element foot = page.createElement("div");
        foot.setAttribute("class", "running-foot");
        foot.setTextContent(edges.foot());
        body.insertBefore(foot, body.getFirstChild());
        body.insertBefore(head, body.getFirstChild());
    }

    /** One bookmark for each heading, those of lower levels inside. */
    private void bookmarks(Element head) {
        Element bookmarks = page.createElement("bookmarks");
        List<Element> open = new ArrayList<>();
        List<Integer> levels = new ArrayList<>();
        int number = 0;
        for (Element heading : headings()) {
            int level = heading.getNodeName().charAt(1) - '0';
            while (!levels.isEmpty() && levels.get(levels.size() - 1) >= level) {
                levels.remove(levels.size() - 1);
                open.remove(open.size() - 1);
            }
            String id = heading.getAttribute("id").isEmpty() ? "heading-" + ++number : heading.getAttribute("id");
            heading.setAttribute("id", id);
            Element bookmark = child(open.isEmpty() ? bookmarks : open.get(open.size() - 1), "bookmark");
            bookmark.setAttribute("name", heading.getTextContent().strip());
            bookmark.setAttribute("href", "#" + id);
            open.add(bookmark);
            levels.add(level);
        }
        if (bookmarks.hasChildNodes()) {
            head.appendChild(bookmarks);
        }
    }

    private List<Element> headings() {
        return all("*").stream().filter(element -> element.getNodeName().matches("h[1-6]")).toList();
    }

    private static String words(Element svg) {
        NodeList described = svg.getElementsByTagName("desc");
        NodeList titled = svg.getElementsByTagName("title");
        String title = titled.getLength() == 0 ? "Figure" : titled.item(0).getTextContent();
        return described.getLength() == 0 ? title : title + ": " + described.item(0).getTextContent();
    }

    private static boolean isInside(Element element, String name) {
        for (Node node = element.getParentNode(); node != null; node = node.getParentNode()) {
            if (node.getNodeName().equals(name)) {
                return true;
            }
        }
        return false;
    }

    private List<Element> all(String name) {
        NodeList found = page.getElementsByTagName(name);
        List<Element> elements = new ArrayList<>();
        for (int i = 0; i < found.getLength(); i++) {
            elements.add((Element) found.item(i));
        }
        return elements;
    }

    private Element child(Element parent, String name) {
        Element child = page.createElement(name);
        parent.appendChild(child);
        return child;
    }

    private static void remove(Element element) {
        element.getParentNode().removeChild(element);
    }
}
