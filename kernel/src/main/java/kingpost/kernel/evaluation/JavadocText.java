package kingpost.kernel.evaluation;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A documentation comment as Markdown that also reads well as plain text. */
final class JavadocText {

    private static final Pattern CODE_BLOCK = Pattern.compile(
            "<pre>\\s*(?:<code>|\\{@code)?(.*?)(?:</code>|\\})?\\s*</pre>|\\{@snippet\\s*:(.*?)\\n\\s*\\}", Pattern.DOTALL);
    private static final Pattern INLINE = Pattern.compile("\\{@(\\w+)\\s*([^{}]*)\\}");
    private static final Pattern BLOCK_TAG = Pattern.compile("(?m)^\\s*@(\\w+)\\s+");
    private static final Pattern NAMED = Pattern.compile("(<?\\w+>?)\\s+(.*)", Pattern.DOTALL);

    private JavadocText() {
    }

    /** The whole comment. */
    static String markdown(String comment) {
        Matcher tag = BLOCK_TAG.matcher(comment);
        int bodyEnd = tag.find() ? tag.start() : comment.length();
        var parts = new ArrayList<String>();
        parts.add(body(comment.substring(0, bodyEnd)));
        while (bodyEnd < comment.length()) {
            String name = tag.group(1);
            int from = tag.end();
            bodyEnd = tag.find() ? tag.start() : comment.length();
            parts.add(tag(name, comment.substring(from, bodyEnd).strip()));
        }
        return String.join("\n", parts.stream().filter(part -> !part.isBlank()).toList()).strip();
    }

    /** Its first sentence. */
    static String firstSentence(String comment) {
        String all = markdown(comment);
        int paragraph = all.indexOf("\n\n");
        String first = paragraph < 0 ? all : all.substring(0, paragraph);
        Matcher end = Pattern.compile("\\.(\\s|$)").matcher(first);
        return end.find() ? first.substring(0, end.start() + 1) : first;
    }

    private static String tag(String name, String text) {
        return switch (name) {
            case "param" -> "- " + named(text);
            case "return" -> "- returns: " + inline(text);
            case "throws", "exception" -> "- throws " + named(text);
            default -> "";
        };
    }

    private static String named(String text) {
        Matcher parts = NAMED.matcher(text);
        return parts.matches() ? "`" + parts.group(1) + "`: " + inline(parts.group(2)) : inline(text);
    }

    /** Code blocks keep their lines; the rest is running text. */
    private static String body(String text) {
        List<String> parts = new ArrayList<>();
        Matcher block = CODE_BLOCK.matcher(text);
        int at = 0;
        while (block.find()) {
            parts.add(paragraphs(text.substring(at, block.start())));
            String code = block.group(1) != null ? block.group(1) : block.group(2);
            parts.add("```java\n" + entities(code.stripTrailing()).stripIndent().strip() + "\n```");
            at = block.end();
        }
        parts.add(paragraphs(text.substring(at)));
        return String.join("\n\n", parts.stream().filter(part -> !part.isBlank()).toList()) + "\n";
    }

    private static String paragraphs(String text) {
        String marked = text.replaceAll("(?i)<p>|</p>", "\n\n").replaceAll("(?i)\\s*<li>\\s*", "\n- ")
                .replaceAll("(?i)</?[uo]l>|</li>", "\n");
        var paragraphs = new ArrayList<String>();
        for (String paragraph : marked.split("\n\\s*\n")) {
            String flowing = paragraph.strip().replaceAll("\\s*\n\\s*(?!- )", " ").replaceAll("\\s+- ", "\n- ");
            paragraphs.add(inline(flowing));
        }
        return String.join("\n\n", paragraphs.stream().filter(part -> !part.isBlank()).toList());
    }

    private static String inline(String text) {
        String flowing = text.strip().replaceAll("[ \\t]*\n[ \\t]*(?!- )", " ");
        String replaced = INLINE.matcher(flowing).replaceAll(match -> Matcher.quoteReplacement(
                reference(match.group(1), match.group(2).strip())));
        return entities(replaced.replaceAll("(?i)</?code>", "`").replaceAll("(?i)</?(b|strong)>", "**")
                .replaceAll("(?i)</?(i|em|var)>", "*").replaceAll("(?i)</?(a|h\\d|dl|dt|dd|table|tr|td|th|br|blockquote|sup|sub)(\\s[^>]*)?/?>", ""));
    }

    private static String reference(String tag, String text) {
        if (tag.equals("link") || tag.equals("linkplain")) {
            int label = text.indexOf(' ');
            boolean labelled = label >= 0 && !text.substring(0, label).contains("(");
            String shown = labelled ? text.substring(label + 1) : text.replaceFirst("^#", "").replace('#', '.');
            return labelled ? shown : "`" + shown + "`";
        }
        return tag.equals("code") || tag.equals("value") ? "`" + text + "`" : text;
    }

    private static String entities(String text) {
        return text.replace("&lt;", "<").replace("&gt;", ">").replace("&nbsp;", " ").replace("{@literal @}", "@")
                .replace("&amp;", "&");
    }
}
