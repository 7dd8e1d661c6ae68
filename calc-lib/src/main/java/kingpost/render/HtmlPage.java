package kingpost.render;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;

import kingpost.derivation.Derivation;

/**
 * A derivation as an HTML page that stands alone: no script, nothing fetched, ready to print. The same derivation is
 * always the same page.
 */
public final class HtmlPage {

    private static final String POLICY = "default-src 'none'; style-src 'unsafe-inline'; img-src data:; "
            + "base-uri 'none'; form-action 'none'";

    private HtmlPage() {
    }

    public static String of(Derivation derivation) {
        return of(derivation.title(), new HtmlRenderer(1).render(derivation));
    }

    /**
     * Whatever is shown: its HTML, its figure, or its plain text.
     *
     * @param title where the value has none of its own
     */
    public static String of(Showable value, String title) {
        Map<String, Object> forms = value.show();
        Map<?, ?> result = forms.get(Exhibit.RESULT) instanceof Map<?, ?> map ? map : Map.of();
        Object body = result.containsKey("html") ? result.get("html") : forms.getOrDefault("text/html",
                forms.getOrDefault("image/svg+xml", "<pre>" + HtmlText.of((String) forms.get("text/plain")) + "</pre>"));
        return of(result.get("title") instanceof String own ? own : title, (String) body);
    }

    private static String of(String title, String body) {
        return """
                <!DOCTYPE html>
                <html lang="en">
                <head>
                <meta charset="utf-8">
                <meta http-equiv="Content-Security-Policy" content="%s">
                <meta name="viewport" content="width=device-width, initial-scale=1">
                <meta name="generator" content="Kingpost">
                <title>%s</title>
                <style>
                %s</style>
                </head>
                <body>
                <main>
                %s</main>
                </body>
                </html>
                """.formatted(POLICY, HtmlText.of(title), styleSheet(), body);
    }

    private static String styleSheet() {
        try (InputStream in = HtmlPage.class.getResourceAsStream("page.css")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
