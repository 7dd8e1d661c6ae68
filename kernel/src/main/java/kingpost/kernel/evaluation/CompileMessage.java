package kingpost.kernel.evaluation;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * A compiler message as one sentence.
 *
 * @param sentence package names and the compiler's own class names left out
 * @param missing  the name that was not found, if that is what it says
 */
record CompileMessage(String sentence, Optional<Missing> missing) {

    /** The sorts of thing that can be missing. */
    enum Sort {
        VARIABLE, METHOD, TYPE;

        String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /** A name that stands for nothing. */
    record Missing(Sort sort, String name) {

        /** Reads JShell's form: {@code "method foo(int)"}, {@code "variable x"}, {@code "class Foo"}. */
        static Missing of(String dependency) {
            String[] words = dependency.split(" ", 2);
            Sort sort = words[0].equals("variable") ? Sort.VARIABLE : words[0].equals("method") ? Sort.METHOD : Sort.TYPE;
            return new Missing(sort, words[words.length - 1].replaceFirst("\\(.*", ""));
        }
    }

    private static final Pattern SYMBOL = Pattern.compile("symbol:\\s*(variable|method|class|interface|enum|record|\\S+) (\\w+)(.*)");
    private static final Pattern LOCATION = Pattern.compile("location:\\s*(.*)");
    private static final Pattern VARIABLE_OF_TYPE = Pattern.compile("variable (\\w+) of type (.+)");
    private static final Pattern CANNOT_APPLY = Pattern.compile("(method|constructor) (\\w+) in .*cannot be applied to given types;?");
    private static final Pattern NONE_SUITABLE = Pattern.compile("no suitable (method|constructor) found for (\\w+)\\((.*)\\)");
    private static final Pattern CANDIDATE = Pattern.compile("(?:method|constructor) (?:.*\\.)?(?:<.*>)?(\\w+)\\((.*)\\) is not applicable");
    private static final Pattern PACKAGE = Pattern.compile("\\b(?:[a-z_]\\w*\\.)+(?=[A-Z])");
    private static final Pattern CELL_CLASS = Pattern.compile("\\b(?:REPL\\.)?\\$JShell\\$\\w+\\.?");
    private static final int MOST_CANDIDATES = 6;

    /** Rewrites the JDK's English text. */
    static CompileMessage of(String text) {
        String own = PACKAGE.matcher(CELL_CLASS.matcher(text).replaceAll("")).replaceAll("");
        List<String> lines = own.lines().map(line -> line.strip().replaceAll("\\s+", " ")).filter(line -> !line.isEmpty())
                .toList();
        if (lines.isEmpty()) {
            return new CompileMessage("the compiler gives no reason", Optional.empty());
        }
        String head = lines.get(0);
        if (head.equals("cannot find symbol")) {
            return notFound(lines);
        }
        Matcher apply = CANNOT_APPLY.matcher(head);
        if (apply.matches()) {
            return simple("%s takes %s, not %s".formatted(apply.group(2), arguments(after(lines, "required:")),
                    arguments(after(lines, "found:"))));
        }
        Matcher none = NONE_SUITABLE.matcher(head);
        if (none.matches()) {
            String quotes = none.group(3).matches("char(?:,.*)?") && lines.stream().anyMatch(line -> line.contains("(String"))
                    ? "; text stands in double quotes, also a single letter" : "";
            return simple("%s cannot take %s; it takes %s%s".formatted(none.group(2), arguments(none.group(3)),
                    candidates(lines), quotes));
        }
        return simple(PlainWords.ofCompiler(lines.size() == 1 ? head
                : (head + ": " + String.join(", ", lines.subList(1, lines.size()))).replace("::", ":")));
    }

    private static CompileMessage simple(String sentence) {
        return new CompileMessage(sentence, Optional.empty());
    }

    private static CompileMessage notFound(List<String> lines) {
        for (String line : lines) {
            Matcher symbol = SYMBOL.matcher(line);
            if (symbol.matches()) {
                Sort sort = switch (symbol.group(1)) {
                    case "variable" -> Sort.VARIABLE;
                    case "method" -> Sort.METHOD;
                    default -> Sort.TYPE;
                };
                String sentence = "cannot find %s %s%s%s".formatted(sort.word(), symbol.group(2), symbol.group(3), place(lines));
                return new CompileMessage(sentence, Optional.of(new Missing(sort, symbol.group(2))));
            }
        }
        return simple(String.join(" ", lines));
    }

    private static String place(List<String> lines) {
        for (String line : lines) {
            Matcher location = LOCATION.matcher(line);
            if (location.matches()) {
                Matcher variable = VARIABLE_OF_TYPE.matcher(location.group(1));
                if (variable.matches()) {
                    return " in " + variable.group(1) + ", which is " + withArticle(variable.group(2));
                }
                String owner = location.group(1).replaceFirst("^(class|interface|enum|record|package)\\b", "").strip();
                return owner.isEmpty() ? "" : " in " + owner;
            }
        }
        return "";
    }

    private static String withArticle(String type) {
        return ("AEIOUaeiou".indexOf(type.charAt(0)) >= 0 ? "an " : "a ") + type;
    }

    private static String after(List<String> lines, String label) {
        return lines.stream().filter(line -> line.startsWith(label)).map(line -> line.substring(label.length()).strip())
                .findFirst().orElse("");
    }

    private static String arguments(String types) {
        return types.isEmpty() || types.equals("no arguments") ? "no arguments" : "(" + types.replace(",", ", ") + ")";
    }

    private static String candidates(List<String> lines) {
        var found = new ArrayList<String>();
        for (String line : lines) {
            Matcher candidate = CANDIDATE.matcher(line);
            if (candidate.find()) {
                found.add(arguments(candidate.group(2).replaceAll("#\\d+", "")));
            }
        }
        List<String> distinct = found.stream().distinct().toList();
        String shown = distinct.stream().limit(MOST_CANDIDATES).collect(Collectors.joining(" or "));
        return distinct.size() > MOST_CANDIDATES ? shown + " and others" : shown;
    }
}
