package kingpost.kernel.page;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Java source with its comments, texts, numbers and keywords marked for the style sheet. */
final class JavaListing {

    private static final Pattern TOKEN = Pattern.compile("(?<comment>//[^\\n]*|/\\*[\\s\\S]*?(?:\\*/|\\z))"
            + "|(?<string>\"\"\"[\\s\\S]*?(?:\"\"\"|\\z)|\"(?:\\\\.|[^\"\\\\\\n])*+\"?|'(?:\\\\.|[^'\\\\\\n])*+'?)"
            + "|(?<number>\\b\\d[\\w.]*)"
            + "|(?<keyword>\\b(?:abstract|assert|boolean|break|byte|case|catch|char|class|continue|default|do|double|else|"
            + "enum|extends|false|final|finally|float|for|if|implements|import|instanceof|int|interface|long|new|null|"
            + "package|private|protected|public|record|return|sealed|short|static|super|switch|this|throw|throws|true|"
            + "try|var|void|while|yield)\\b)");
    private static final String[] KINDS = {"comment", "string", "number", "keyword"};

    private JavaListing() {
    }

    static String html(String source) {
        StringBuilder out = new StringBuilder();
        Matcher token = TOKEN.matcher(source);
        int from = 0;
        while (token.find()) {
            out.append(Markup.text(source.substring(from, token.start())));
            out.append("<span class=\"kp-").append(kind(token)).append("\">").append(Markup.text(token.group()))
                    .append("</span>");
            from = token.end();
        }
        return out.append(Markup.text(source.substring(from))).toString();
    }

    private static String kind(Matcher token) {
        for (String kind : KINDS) {
            if (token.group(kind) != null) {
                return kind;
            }
        }
        throw new IllegalStateException("a token of no kind");
    }
}
