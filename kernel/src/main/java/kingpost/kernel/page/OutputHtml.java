package kingpost.kernel.page;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import kingpost.kernel.document.Trees;

/**
 * A saved output as HTML. Of a value's forms the page takes the first it finds: our own HTML with MathML and inline
 * figures, SVG, HTML, Markdown, LaTeX, a bitmap, plain text.
 */
final class OutputHtml {

    private static final String RESULT = "application/vnd.kingpost.result+json";
    private static final List<String> BITMAPS = List.of("image/png", "image/jpeg", "image/gif", "image/webp");

    private final SafeHtml safe;

    OutputHtml(SafeHtml safe) {
        this.safe = safe;
    }

    /** Markup of an output as a notebook file stores it; empty for one that shows nothing here. */
    String of(Map<String, Object> output) {
        return switch (Trees.text(output, "output_type").orElse("")) {
            case "stream" -> stream(output);
            case "display_data", "execute_result" -> value(Trees.map(output, "data"));
            case "error" -> error(output);
            default -> "";
        };
    }

    private static String stream(Map<String, Object> output) {
        boolean error = Trees.text(output, "name").orElse("").equals("stderr");
        String text = AnsiText.html(Trees.joined(output, "text").stripTrailing());
        return text.isEmpty() ? "" : "<pre class=\"kp-stream" + (error ? " kp-stderr" : "") + "\">" + text + "</pre>";
    }

    private String error(Map<String, Object> output) {
        String name = Trees.text(output, "ename").orElse("Error");
        String message = Trees.text(output, "evalue").orElse("");
        String lines = Trees.list(output, "traceback").stream().map(String::valueOf).collect(Collectors.joining("\n"));
        String heading = "<p><strong>" + Markup.text(AnsiText.plain(name)) + "</strong> "
                + Markup.text(AnsiText.plain(message)) + "</p>";
        String trace = lines.isBlank() ? "" : "<pre>" + AnsiText.html(lines.stripTrailing()) + "</pre>";
        return "<div class=\"kp-error\">" + heading + trace + "</div>";
    }

    private String value(Map<String, Object> data) {
        return ours(data).or(() -> picture(data)).or(() -> html(data)).or(() -> text(data)).or(() -> bitmap(data))
                .orElseGet(() -> plain(data));
    }

    private Optional<String> ours(Map<String, Object> data) {
        return Trees.text(Trees.map(data, RESULT), "html").map(safe::clean).map(html -> "<div class=\"kp-value\">" + html
                + "</div>");
    }

    private Optional<String> picture(Map<String, Object> data) {
        return form(data, "image/svg+xml").map(safe::picture).filter(svg -> !svg.isBlank())
                .map(svg -> "<figure class=\"kp-figure\">" + svg + "</figure>");
    }

    private Optional<String> html(Map<String, Object> data) {
        return form(data, "text/html").map(safe::clean).map(html -> "<div class=\"kp-value\">" + html + "</div>");
    }

    private Optional<String> text(Map<String, Object> data) {
        return form(data, "text/markdown").map(MarkdownHtml::of)
                .or(() -> form(data, "text/latex").map(MarkdownHtml::ofLatex))
                .map(safe::clean).map(html -> "<div class=\"kp-value\">" + html + "</div>");
    }

    private Optional<String> bitmap(Map<String, Object> data) {
        String alt = Markup.text(Trees.joined(data, "text/plain"));
        return BITMAPS.stream().flatMap(type -> form(data, type).stream().map(base64 ->
                safe.clean("<img alt=\"" + alt + "\" src=\"data:" + type + ";base64," + base64.replaceAll("[^A-Za-z0-9+/=]", "")
                        + "\">"))).findFirst().map(image -> "<figure class=\"kp-figure\">" + image + "</figure>");
    }

    private static String plain(Map<String, Object> data) {
        String text = Trees.joined(data, "text/plain").stripTrailing();
        return text.isEmpty() ? "" : "<pre class=\"kp-plain\">" + AnsiText.html(text) + "</pre>";
    }

    private static Optional<String> form(Map<String, Object> data, String type) {
        return Optional.of(Trees.joined(data, type)).filter(text -> !text.isBlank());
    }
}
