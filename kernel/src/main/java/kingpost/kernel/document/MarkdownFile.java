package kingpost.kernel.document;

import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * A notebook as one Markdown text that stands alone: text as it is, code and printed text fenced, figures as data in
 * the text, formulas in LaTeX between dollar signs.
 *
 * <p>Source: CommonMark 0.31, fenced code blocks; RFC 2397 for figures.
 */
public final class MarkdownFile {

    private MarkdownFile() {
    }

    /**
     * The text.
     *
     * @param foot a line at its end; empty for none
     */
    public static String of(Notebook notebook, String foot) {
        String body = notebook.cells().stream().map(cell -> cell.accept(new CellText()).strip())
                .filter(text -> !text.isEmpty()).collect(Collectors.joining("\n\n"));
        return body + (foot.isEmpty() ? "\n" : "\n\n---\n\n" + foot + "\n");
    }

    private static final class CellText implements Cell.Visitor<String> {

        @Override
        public String markdown(Cell.Markdown markdown) {
            String text = markdown.source();
            Map<String, Object> attachments = Trees.map(markdown.extra(), "attachments");
            for (String file : attachments.keySet()) {
                Map<String, Object> bundle = Trees.map(attachments, file);
                String type = bundle.keySet().stream().filter(name -> name.startsWith("image/")).findFirst().orElse("");
                if (!type.isEmpty()) {
                    String content = Trees.joined(bundle, type);
                    text = text.replace("attachment:" + file, type.equals("image/svg+xml") && content.contains("<")
                            ? data(type, content) : "data:" + type + ";base64," + content.replaceAll("\\s", ""));
                }
            }
            return text;
        }

        @Override
        public String code(Cell.Code code) {
            String source = code.source().isBlank() || code.isSourceHidden() ? ""
                    : fenced("java", code.source().stripTrailing()) + "\n\n";
            return source + (code.isOutputHidden() ? "" : code.outputs().stream().map(CellText::output)
                    .filter(text -> !text.isBlank()).collect(Collectors.joining("\n\n")));
        }

        @Override
        public String raw(Cell.Raw raw) {
            return "";
        }

        private static String output(Map<String, Object> output) {
            return switch (Trees.text(output, "output_type").orElse("")) {
                case "stream" -> fenced("text", plain(Trees.joined(output, "text")));
                case "display_data", "execute_result" -> value(Trees.map(output, "data"));
                case "error" -> fenced("text", plain(Trees.text(output, "ename").orElse("Error") + ": "
                        + Trees.text(output, "evalue").orElse("")));
                default -> "";
            };
        }

        private static String value(Map<String, Object> data) {
            String plain = plain(Trees.joined(data, "text/plain"));
            if (data.containsKey("text/markdown")) {
                return Trees.joined(data, "text/markdown").strip();
            }
            if (data.containsKey("image/svg+xml")) {
                return "![" + alternative(plain) + "](" + data("image/svg+xml", Trees.joined(data, "image/svg+xml")) + ")";
            }
            for (String type : List.of("image/png", "image/jpeg")) {
                if (data.containsKey(type)) {
                    return "![" + alternative(plain) + "](data:" + type + ";base64,"
                            + Trees.joined(data, type).replaceAll("\\s", "") + ")";
                }
            }
            return plain.isEmpty() ? "" : fenced("text", plain);
        }

        private static String alternative(String plain) {
            return plain.replaceAll("\\s+", " ").replaceAll("[\\[\\]\\\\]", "").strip();
        }

        private static String plain(String text) {
            return text.replaceAll("\u001b\\[[0-9;?]*[A-Za-z]", "").stripTrailing();
        }

        private static String data(String type, String text) {
            return "data:" + type + ";base64," + Base64.getEncoder().encodeToString(text.getBytes(StandardCharsets.UTF_8));
        }

        /** Between fences longer than any in the text. */
        private static String fenced(String language, String text) {
            String fence = "```";
            while (text.contains(fence)) {
                fence += "`";
            }
            return fence + language + "\n" + text + "\n" + fence;
        }
    }
}
