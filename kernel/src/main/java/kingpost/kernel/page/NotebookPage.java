package kingpost.kernel.page;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import kingpost.kernel.document.Cell;
import kingpost.kernel.document.Notebook;
import kingpost.kernel.document.Trees;
import org.jsoup.Jsoup;
import org.jsoup.helper.W3CDom;

/**
 * A notebook as an HTML page that stands alone. The same notebook is always the same page.
 *
 * <pre>{@code
 * String html = new NotebookPage(notebook, "tie.ipynb").html();
 * }</pre>
 */
public final class NotebookPage {

    /** Whatever slipped in, the browser runs no script and asks no other machine for anything. */
    private static final String POLICY = "default-src 'none'; style-src 'unsafe-inline'; img-src data:; "
            + "base-uri 'none'; form-action 'none'";

    private final Notebook notebook;
    private final String fileName;
    private final Optional<Path> folder;
    private String footer = "";

    /** A page of a notebook that lies nowhere. */
    public NotebookPage(Notebook notebook, String fileName) {
        this(notebook, fileName, Optional.empty());
    }

    /**
     * @param fileName what the page calls the notebook, if it has no title
     * @param folder   where pictures that the notebook names by a relative path are looked for
     */
    public NotebookPage(Notebook notebook, String fileName, Optional<Path> folder) {
        this.notebook = notebook;
        this.fileName = fileName;
        this.folder = folder;
    }

    /** The same page with a line of text at its foot. */
    public NotebookPage withFooter(String text) {
        NotebookPage page = new NotebookPage(notebook, fileName, folder);
        page.footer = text;
        return page;
    }

    /** The whole page. */
    public String html() {
        StringBuilder cells = new StringBuilder();
        for (int i = 0; i < notebook.cells().size(); i++) {
            cells.append(notebook.cells().get(i).accept(new CellHtml(i + 1)));
        }
        String title = Markup.text(notebook.title().orElse(fileName));
        return """
                <!DOCTYPE html>
                <html lang="en">
                <head>
                <meta charset="utf-8">
                <meta http-equiv="Content-Security-Policy" content="%s">
                <meta name="viewport" content="width=device-width, initial-scale=1">
                <meta name="color-scheme" content="light dark">
                <meta name="generator" content="Kingpost">
                %s<title>%s</title>
                <style>
                %s</style>
                </head>
                <body>
                <main>
                %s</main>
                %s</body>
                </html>
                """.formatted(POLICY, facts(), title, styleSheet(), cells, foot());
    }

    /** The whole page as a tree, for other media than the screen. */
    public org.w3c.dom.Document tree() {
        return new W3CDom().namespaceAware(false).fromJsoup(Jsoup.parse(html()));
    }

    /** What went into the run, as the notebook's metadata has it. */
    private String facts() {
        StringBuilder facts = new StringBuilder();
        Trees.map(notebook.metadata(), "kingpost").forEach((name, value) -> facts.append("<meta name=\"kingpost-")
                .append(Markup.text(name)).append("\" content=\"").append(Markup.text(said(value))).append("\">\n"));
        return facts.toString();
    }

    private static String said(Object value) {
        return value instanceof Map<?, ?> map ? map.entrySet().stream().map(each -> each.getKey() + " = " + each.getValue())
                .collect(Collectors.joining("; ")) : String.valueOf(value);
    }

    private String foot() {
        return footer.isEmpty() ? "" : "<footer>" + Markup.text(footer) + "</footer>\n";
    }

    private static String styleSheet() {
        try (InputStream in = NotebookPage.class.getResourceAsStream("page.css")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private final class CellHtml implements Cell.Visitor<String> {

        private final int number;

        CellHtml(int number) {
            this.number = number;
        }

        @Override
        public String markdown(Cell.Markdown markdown) {
            Images images = new Images(folder, Trees.map(markdown.extra(), "attachments"));
            String html = new SafeHtml("c" + number + "-", images).clean(MarkdownHtml.of(markdown.source()));
            return "<section class=\"kp-prose\">\n" + html + "</section>\n";
        }

        @Override
        public String code(Cell.Code code) {
            StringBuilder out = new StringBuilder();
            if (!code.source().isBlank()) {
                out.append(source(code));
            }
            if (!code.isOutputHidden()) {
                for (int i = 0; i < code.outputs().size(); i++) {
                    SafeHtml safe = new SafeHtml("c" + number + "-" + (i + 1) + "-", Images.none());
                    String html = new OutputHtml(safe).of(code.outputs().get(i));
                    out.append(html.isEmpty() ? "" : "<div class=\"kp-output\">" + html + "</div>\n");
                }
            }
            return out.length() == 0 ? "" : "<section class=\"kp-cell\">\n" + out + "</section>\n";
        }

        private String source(Cell.Code code) {
            String count = code.executionCount().isPresent() ? "[" + code.executionCount().getAsLong() + "]" : "[ ]";
            String listing = "<pre><code>" + JavaListing.html(code.source().stripTrailing()) + "</code></pre>";
            return code.isSourceHidden()
                    ? "<details class=\"kp-source\"><summary>Code " + count + "</summary>" + listing + "</details>\n"
                    : "<div class=\"kp-source\"><span class=\"kp-count\" aria-hidden=\"true\">" + count + "</span>"
                            + listing + "</div>\n";
        }

        @Override
        public String raw(Cell.Raw raw) {
            boolean meant = Trees.text(raw.metadata(), "format").or(() -> Trees.text(raw.metadata(), "raw_mimetype"))
                    .isPresent();
            return meant || raw.source().isBlank() ? "" : "<pre class=\"kp-plain\">" + Markup.text(raw.source())
                    + "</pre>\n";
        }
    }
}
