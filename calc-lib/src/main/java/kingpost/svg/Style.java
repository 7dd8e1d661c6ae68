package kingpost.svg;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Pattern;

/**
 * How an element is inked, as presentation attributes; what is not set is inherited from the group around it.
 *
 * @param attributes attribute name to value, in the order in which they are written
 */
public record Style(Map<String, String> attributes) {

    private static final Style NONE = new Style(Map.of());
    private static final Pattern COLOUR = Pattern.compile("#[0-9a-fA-F]{3}|#[0-9a-fA-F]{6}|none|[a-z]{3,20}");

    public Style {
        attributes = Collections.unmodifiableMap(new LinkedHashMap<>(attributes));
    }

    /** Everything inherited. */
    public static Style none() {
        return NONE;
    }

    /** A line in {@code colour}, {@code width} user units wide, with nothing inside it. */
    public static Style stroke(String colour, double width) {
        return NONE.stroked(colour, width).filled("none");
    }

    /** An area in {@code colour} without an outline. */
    public static Style fill(String colour) {
        return NONE.filled(colour);
    }

    /** Text in {@code colour}, {@code size} user units high, in the reader's sans-serif font. */
    public static Style text(String colour, double size) {
        return NONE.filled(colour).with("font-family", "sans-serif").with("font-size", Numbers.text(size));
    }

    public Style stroked(String colour, double width) {
        return with("stroke", checked(colour)).with("stroke-width", Numbers.text(width));
    }

    public Style filled(String colour) {
        return with("fill", checked(colour));
    }

    /** Dashes and gaps, in user units, in turn. */
    public Style dashed(double... lengths) {
        StringBuilder list = new StringBuilder();
        for (double length : lengths) {
            list.append(list.length() == 0 ? "" : " ").append(Numbers.text(length));
        }
        return with("stroke-dasharray", list.toString());
    }

    /** Round ends and corners of lines. */
    public Style rounded() {
        return with("stroke-linecap", "round").with("stroke-linejoin", "round");
    }

    public Style bold() {
        return with("font-weight", "bold");
    }

    public Style italic() {
        return with("font-style", "italic");
    }

    /** From 0, invisible, to 1. */
    public Style opacity(double opacity) {
        return with("opacity", Numbers.text(opacity));
    }

    /** For text: an edge of {@code colour} behind the letters, so that a line under them does not disturb. */
    public Style halo(String colour, double width) {
        return stroked(colour, width).with("stroke-linejoin", "round").with("paint-order", "stroke");
    }

    /** This style, with what {@code other} sets set as there. */
    public Style and(Style other) {
        Map<String, String> both = new LinkedHashMap<>(attributes);
        both.putAll(other.attributes);
        return new Style(both);
    }

    private Style with(String name, String value) {
        Map<String, String> more = new LinkedHashMap<>(attributes);
        more.put(name, value);
        return new Style(more);
    }

    private static String checked(String colour) {
        if (!COLOUR.matcher(colour).matches()) {
            throw new IllegalArgumentException("not a colour: " + colour);
        }
        return colour;
    }
}
