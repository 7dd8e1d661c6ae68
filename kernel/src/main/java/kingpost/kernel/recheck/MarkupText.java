package kingpost.kernel.recheck;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What a reader sees of HTML or SVG: its words, its shapes, without the ids that differ from page to page. */
final class MarkupText {

    private static final Pattern TAG = Pattern.compile("<[^>]*>");
    private static final Pattern SHAPE = Pattern.compile(
            "<(line|path|polyline|polygon|rect|circle|ellipse|use|img|image|table|tr|td|th|math)\\b[^>]*>");
    private static final Pattern ATTRIBUTE = Pattern.compile("\\b(?:x|y|x1|y1|x2|y2|cx|cy|r|d|points|width|height|transform)"
            + "\\s*=\\s*[\"']([^\"']*)[\"']");

    private MarkupText() {
    }

    /** The words, in order. */
    static String words(String markup) {
        return TAG.matcher(markup).replaceAll(" ").replace("&lt;", "<").replace("&gt;", ">").replace("&quot;", "\"")
                .replace("&#39;", "'").replace("&nbsp;", " ").replace("&amp;", "&");
    }

    /** The kinds of shapes, in order, with rounded places: a figure drawn the same gives the same text. */
    static String shapes(String markup) {
        StringBuilder all = new StringBuilder();
        Matcher shape = SHAPE.matcher(markup);
        while (shape.find()) {
            all.append(shape.group(1)).append(' ');
            Matcher place = ATTRIBUTE.matcher(shape.group());
            while (place.find()) {
                all.append(place.group(1).replace(',', ' ')).append(' ');
            }
            all.append('\n');
        }
        return all.toString();
    }
}
