package kingpost.kernel.evaluation;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * A signature as JShell writes it: {@code int Math.max(int a, int b)}, {@code Math.PI:double}, {@code s:String} or
 * a class name.
 *
 * @param text   as written, package names included
 * @param owner  the class it belongs to, as written, without type arguments; empty for a variable or a method of a
 *               cell; the class itself for a class
 * @param member name and parameter types, {@code max(int,int)}; a field's name; empty for a class
 */
record Signature(String text, String owner, String member) {

    static Signature of(String text) {
        int open = parenthesis(text);
        if (open >= 0) {
            String head = withoutTypeArguments(text.substring(0, open));
            String name = head.substring(head.lastIndexOf(' ') + 1);
            int dot = name.lastIndexOf('.');
            boolean constructor = dot < 0 && !head.contains(" ");
            String owner = constructor ? name : dot < 0 ? "" : name.substring(0, dot);
            String method = constructor ? "<init>" : name.substring(dot + 1);
            return new Signature(text, owner, method + "(" + types(text.substring(open + 1, text.lastIndexOf(')'))) + ")");
        }
        int colon = text.indexOf(':');
        if (colon >= 0) {
            String name = withoutTypeArguments(text.substring(0, colon));
            int dot = name.lastIndexOf('.');
            return new Signature(text, dot < 0 ? "" : name.substring(0, dot), name.substring(dot + 1));
        }
        return new Signature(text, withoutTypeArguments(text), "");
    }

    /** The opening parenthesis of the parameters: the last at which nothing is open before. */
    private static int parenthesis(String text) {
        return text.indexOf('(');
    }

    private static String withoutTypeArguments(String text) {
        var plain = new StringBuilder();
        int depth = 0;
        for (char c : text.toCharArray()) {
            depth += c == '<' ? 1 : 0;
            if (depth == 0) {
                plain.append(c);
            }
            depth -= c == '>' ? 1 : 0;
        }
        return plain.toString();
    }

    private static String types(String parameters) {
        if (parameters.isBlank()) {
            return "";
        }
        List<String> types = new ArrayList<>();
        for (String parameter : withoutTypeArguments(parameters).split(",")) {
            String[] words = parameter.strip().split("\\s+");
            types.add(SourceComments.simple(words[Math.max(0, words.length - 2)]));
        }
        return types.stream().collect(Collectors.joining(","));
    }

    /** For a reader: package names left out, {@code name: type} for variables. */
    String readable() {
        String plain = text.replaceAll("\\b(?:[a-z_]\\w*\\.)+(?=[A-Z])", "").replace(".<", ".<");
        return member.contains("(") || member.isEmpty() ? plain : plain.replaceFirst(":", ": ");
    }
}
