package kingpost.kernel.page;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Terminal text as HTML: colours and bold as classes, other control sequences left out, a carriage return taking back
 * its line.
 *
 * <p>Source: ECMA-48, "Select graphic rendition".
 */
final class AnsiText {

    private static final Pattern SEQUENCE = Pattern.compile(
            "\u001b\\[([0-9;]*)m|\u001b\\[[0-9;?]*[A-Za-ln-z]|\u001b\\][^\u0007\u001b]*(?:\u0007|\u001b\\\\)|\u001b.?");
    private static final List<String> COLOURS = List.of("black", "red", "green", "yellow", "blue", "magenta", "cyan",
            "white");

    private final StringBuilder out = new StringBuilder();
    private String colour = "";
    private boolean bold;

    private AnsiText() {
    }

    /** Markup of the text; it needs a preformatted element around it. */
    static String html(String text) {
        return new AnsiText().write(overwritten(text));
    }

    /** The text without its control sequences. */
    static String plain(String text) {
        return SEQUENCE.matcher(overwritten(text)).replaceAll("").replaceAll("[\\p{Cntrl}&&[^\\n\\t]]", "");
    }

    private String write(String text) {
        Matcher sequence = SEQUENCE.matcher(text);
        int from = 0;
        while (sequence.find()) {
            piece(text.substring(from, sequence.start()));
            if (sequence.group(1) != null) {
                select(sequence.group(1));
            }
            from = sequence.end();
        }
        piece(text.substring(from));
        return out.toString();
    }

    private void piece(String raw) {
        String piece = raw.replaceAll("[\\p{Cntrl}&&[^\\n\\t]]", "");
        if (piece.isEmpty()) {
            return;
        }
        List<String> classes = new ArrayList<>();
        if (!colour.isEmpty()) {
            classes.add("kp-ansi-" + colour);
        }
        if (bold) {
            classes.add("kp-ansi-bold");
        }
        String text = Markup.text(piece);
        out.append(classes.isEmpty() ? text : "<span class=\"" + String.join(" ", classes) + "\">" + text + "</span>");
    }

    private void select(String parameters) {
        String[] codes = parameters.isEmpty() ? new String[] {"0"} : parameters.split(";");
        for (int i = 0; i < codes.length; i++) {
            int code = codes[i].isEmpty() || codes[i].length() > 3 ? 0 : Integer.parseInt(codes[i]);
            if (code == 0) {
                colour = "";
                bold = false;
            } else if (code == 1 || code == 22) {
                bold = code == 1;
            } else if (code == 39) {
                colour = "";
            } else if (code >= 30 && code <= 37 || code >= 90 && code <= 97) {
                colour = COLOURS.get(code % 10);
            } else if (code == 38 || code == 48) {
                i += i + 1 < codes.length && codes[i + 1].equals("5") ? 2 : 4;
            }
        }
    }

    private static String overwritten(String text) {
        if (text.indexOf('\r') < 0) {
            return text;
        }
        return text.replace("\r\n", "\n").replaceAll("(?m)^[^\n]*\r(?=[^\n])", "").replace("\r", "");
    }
}
