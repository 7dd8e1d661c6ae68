package kingpost.kernel.page;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Attribute;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jsoup.nodes.TextNode;
import org.jsoup.parser.Parser;
import org.jsoup.safety.Cleaner;

/**
 * HTML, SVG and MathML from a notebook, made inert: only elements and attributes of {@link Vocabulary} remain, style
 * attributes keep harmless properties, nothing refers outside the page but links, and ids are made unique by a
 * prefix.
 */
final class SafeHtml {

    private static final Pattern ID_REFERENCE = Pattern.compile("url\\(\\s*['\"]?#([^)'\"\\s]+)['\"]?\\s*\\)");

    private final String idPrefix;
    private final Images images;

    /**
     * @param idPrefix goes before each id, so that it is the page's only one
     * @param images   finds the content of pictures
     */
    SafeHtml(String idPrefix, Images images) {
        this.idPrefix = idPrefix;
        this.images = images;
    }

    /** The fragment with everything left out that is not certainly harmless. */
    String clean(String html) {
        Document dirty = Jsoup.parseBodyFragment(html);
        dirty.select(Vocabulary.DROPPED_WHOLE).remove();
        dirty.select("title, desc").stream().filter(words -> words.closest("svg") == null).forEach(Element::remove);
        dropForeignContent(dirty);
        Document clean = new Cleaner(Vocabulary.safelist()).clean(dirty);
        clean.outputSettings().prettyPrint(false);
        clean.body().getAllElements().forEach(this::tidy);
        clean.select("img").forEach(this::embed);
        return clean.body().html();
    }

    /** Elements of one language inside another, where a second parser may read them otherwise than the first. */
    private static void dropForeignContent(Document document) {
        for (Element root : document.select("svg, math")) {
            String namespace = root.tag().namespace();
            for (Element inside : List.copyOf(root.getAllElements())) {
                if (!inside.tag().namespace().equals(namespace) && inside.hasParent()) {
                    inside.replaceWith(new TextNode(inside.text()));
                }
            }
        }
        for (Element words : document.select("svg title, svg desc")) {
            words.text(words.text());
        }
    }

    private void tidy(Element element) {
        for (Attribute attribute : element.attributes().asList()) {
            String name = attribute.getKey();
            String value = attribute.getValue();
            switch (name) {
                case "style" -> set(element, name, SafeCss.declarations(value));
                case "class" -> set(element, name, value.matches("(kp|tex)-[a-z-]+") ? value : "");
                case "id" -> set(element, name, id(value));
                case "for", "headers", "aria-labelledby", "aria-describedby" -> set(element, name, ids(value));
                case "href", "xlink:href" -> set(element, name, reference(element, value));
                default -> set(element, name, presentation(value));
            }
        }
    }

    /** Sets it with its letters as they are: SVG tells capitals from small letters. */
    private static void set(Element element, String name, String value) {
        boolean emptied = value != null && value.isEmpty() && List.of("style", "class", "id").contains(name);
        if (value == null || emptied) {
            element.attributes().remove(name);
        } else {
            element.attributes().put(name, value);
        }
    }

    private String id(String id) {
        return idPrefix + id.replaceAll("[^A-Za-z0-9_.-]", "_");
    }

    private String ids(String references) {
        return String.join(" ", List.of(references.strip().split("\\s+")).stream().map(this::id).toList());
    }

    private String reference(Element element, String href) {
        if (href.startsWith("#")) {
            return "#" + id(href.substring(1));
        }
        return element.normalName().equals("a") && href.matches("(?i)(https?|mailto):[^\\s]*") ? href : null;
    }

    /** A presentation attribute; it may refer to a part of the same picture, to nothing else. */
    private String presentation(String value) {
        Matcher reference = ID_REFERENCE.matcher(value);
        String local = reference.replaceAll(match -> "url(#" + Matcher.quoteReplacement(id(match.group(1))) + ")");
        boolean elsewhere = local.replaceAll("url\\(#", "").toLowerCase(java.util.Locale.ROOT).contains("url(");
        return elsewhere ? null : local;
    }

    private void embed(Element image) {
        String source = image.attr("src");
        String alt = image.attr("alt");
        images.find(source).ifPresentOrElse(data -> image.attr("src", data), () -> {
            Element note = new Element("span").addClass("kp-missing");
            note.text("[Picture not included" + (alt.isBlank() ? "" : ": " + alt)
                    + (source.isBlank() ? "" : " (" + shortened(source) + ")") + "]");
            image.replaceWith(note);
        });
    }

    private static String shortened(String source) {
        return source.length() <= 80 ? source : source.substring(0, 77) + "...";
    }

    /**
     * An SVG picture on its own. One that brings a style sheet is put into an image, where it cannot reach the page.
     *
     * @return markup of the picture; empty if there is none in the text
     */
    String picture(String svg) {
        Element root = Jsoup.parseBodyFragment(svg.replaceFirst("(?s)^.*?(?=<svg)", "")).selectFirst("svg");
        if (root == null) {
            return "";
        }
        return root.select("style").isEmpty() ? clean(root.outerHtml()) : isolated(svg, root);
    }

    private String isolated(String svg, Element root) {
        Document xml = Jsoup.parse(svg, Parser.xmlParser());
        xml.outputSettings().prettyPrint(false).syntax(Document.OutputSettings.Syntax.xml);
        xml.select("script, foreignObject, iframe").remove();
        for (Element element : xml.getAllElements()) {
            element.attributes().asList().stream().map(Attribute::getKey)
                    .filter(name -> name.toLowerCase(java.util.Locale.ROOT).startsWith("on"))
                    .forEach(element::removeAttr);
        }
        Element title = root.selectFirst("title");
        Element image = new Element("img").attr("alt", title == null ? "Figure" : title.text())
                .attr("src", Images.dataUri("image/svg+xml", xml.outerHtml()));
        return image.outerHtml();
    }
}
