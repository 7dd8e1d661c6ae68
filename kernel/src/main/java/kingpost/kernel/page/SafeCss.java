package kingpost.kernel.page;

import java.util.Locale;
import java.util.Set;
import java.util.StringJoiner;
import java.util.regex.Pattern;

/** Keeps those declarations of a style attribute that only change how its own element looks. */
final class SafeCss {

    private static final Set<String> PROPERTIES = Set.of("background", "background-color", "border-collapse",
            "border-radius", "border-spacing", "caption-side", "color", "display", "fill", "fill-opacity", "float",
            "font", "font-family", "font-size", "font-style", "font-variant", "font-variant-numeric", "font-weight",
            "gap", "height", "justify-content", "align-items", "flex", "flex-wrap", "letter-spacing", "line-height",
            "list-style", "list-style-type", "max-height", "max-width", "min-height", "min-width", "opacity",
            "overflow", "overflow-x", "overflow-y", "paint-order", "stroke", "stroke-dasharray", "stroke-width",
            "table-layout", "text-align", "text-anchor", "text-decoration", "text-indent", "text-transform",
            "vertical-align", "visibility", "white-space", "width", "word-break", "word-spacing",
            "break-inside", "break-before", "break-after", "grid-template-columns");
    private static final Pattern FAMILIES = Pattern.compile("(border|margin|padding)(-[a-z-]+)?");
    private static final Pattern VALUE = Pattern.compile("[A-Za-z0-9#%.,/()' +*-]{0,300}");
    private static final Pattern FUNCTION = Pattern.compile(
            "(url|expression|image|image-set|src|attr|element|cross-fade|-moz-[a-z-]+|-webkit-[a-z-]+)\\s*\\(");

    private SafeCss() {
    }

    /** The harmless declarations of a style attribute, in order. */
    static String declarations(String style) {
        StringJoiner kept = new StringJoiner(";");
        for (String declaration : style.split(";")) {
            int colon = declaration.indexOf(':');
            if (colon > 0) {
                String property = declaration.substring(0, colon).strip().toLowerCase(Locale.ROOT);
                String value = declaration.substring(colon + 1).strip().replace('"', '\'');
                if (isHarmless(property, value)) {
                    kept.add(property + ":" + value);
                }
            }
        }
        return kept.toString();
    }

    private static boolean isHarmless(String property, String value) {
        boolean known = PROPERTIES.contains(property) || FAMILIES.matcher(property).matches();
        return known && VALUE.matcher(value).matches() && !FUNCTION.matcher(value.toLowerCase(Locale.ROOT)).find();
    }
}
