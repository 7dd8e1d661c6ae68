package kingpost.kernel.evaluation;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What people bring along from other languages, from calculators and from the command lines of other programs, or leave
 * out of a statement, and how Java says it. Each is known by the line on which the compiler stumbles.
 */
final class Habits {

    /**
     * @param said what the compiler says, in our words, as a pattern
     * @param line what the line holds, as a pattern; the caret stands under its first group
     * @param java how Java says it
     */
    private record Habit(Pattern said, Pattern line, Function<MatchResult, String> java) { }

    /** Longer lines are not written by hand, and could take the patterns long. */
    private static final int MOST = 1_000;
    private static final String COMMAND = "a cell holds Java only; commands of other programs are not known here";
    private static final String SYNTAX = "(?:illegal start of|this does nothing|.*expected|.*missing here).*";

    private static final List<Habit> HABITS = List.of(
            habit("^\\s*([%!]\\w.*)", COMMAND),
            habit(SYNTAX, "^\\s*(/[a-z]+)\\b", m -> COMMAND),
            habit("^\\s*(\\?)\\s*\\w+", "for help put the cursor behind a name and press Shift and Tab"),
            habit("^\\s*[\\w.]+(\\?)\\s*$", "for help put the cursor behind a name and press Shift and Tab"),
            habit("^\\s*(package)\\s+[\\w.]+\\s*;", "a cell belongs to no package; leave this line out"),
            habit("^\\s*(def|function|fun)\\s+\\w+\\s*\\(", "a method begins with the type of its result and has one for"
                    + " each value that it takes, as in double twice(double x) { return 2 * x; }"),
            habit(".*", "^\\s*(let|const|auto|val|dim|local)\\s+(\\w+)\\s*=", m -> "Java has no word %s; write var %s = ..."
                    .formatted(m.group(1), m.group(2))),
            habit(SYNTAX, "(\\w+)\\s*:=", m -> "a value is given with = alone; write var %s = ...".formatted(m.group(1))),
            habit(".*", "^\\s*(print|echo|puts)\\s+[\\w\"']", m -> "text is printed with System.out.println(...)"),
            habit("^\\s*(from)\\s+[\\w.]+\\s+import\\b", "an import names classes of Java, as in import java.util.*;"),
            habit("^\\s*import\\s+\\w+(\\s+as\\b|\\s*;?\\s*$)", "an import names classes of Java, as in import java.util.*;"),
            habit("\\b(for)\\s+\\w+\\s+in\\b", "a loop is written for (int i = 0; i < 10; i++) { ... } or for (var each : list) { ... }"),
            habit("\\bfor\\s*\\([^;)]*(,)[^;)]*,[^;)]*\\)", "the three parts of a for are divided by semicolons, as in"
                    + " for (int i = 0; i < 10; i++)"),
            habit("\\( is missing here", "\\b((?:if|while|switch))\\b\\s*(?!\\()", m -> "what %s asks stands in parentheses; write %s (...)"
                    .formatted(m.group(1), m.group(1))),
            habit(".*(?:illegal start|'else' without|reached end of file|orphaned).*", "^\\s*(else)\\b",
                    m -> "else belongs to the if before it; write both in one cell, with { } around what if does"),
            habit(SYNTAX, "\\b(and|or|not)\\b", m -> "%s is written %s".formatted(m.group(1), m.group(1).equals("and") ? "&&"
                    : m.group(1).equals("or") ? "||" : "!")),
            habit("illegal start of expression", "(\\*\\*)", m -> "Java has no operator **; write Math.pow(a, b)"),
            habit("illegal start of expression", "(?:^|[=(,])\\s*(\\[)", m -> "a list is written List.of(1, 2, 3), and an array"
                    + " new double[] {1, 2, 3}"),
            habit(".*\\] is missing here", "\\w+\\s*(?:\\w*)(\\[)\\s*\\d+\\s*\\]", m -> "the length of an array stands behind new, as in"
                    + " int[] a = new int[3];"),
            habit("'\\.class' expected", "^\\s*(\\w+)\\s*\\([^)]*\\)\\s*\\{", m -> ("the method %s needs the type of its result in"
                    + " front, or void when it has none").formatted(m.group(1))),
            habit("<identifier> expected", "\\w+\\s*\\([^)]*?(?<=[(,])\\s*(\\w+)\\s*[,)]", m -> "%s needs a type, as in double %s"
                    .formatted(m.group(1), m.group(1))),
            habit(".*; is missing here", "^\\s*[\\w<>\\[\\]]+\\s+\\w+\\s*\\([^)]*\\)\\s*(return|[\\w.]+\\s*=)", m -> "what a method does stands"
                    + " between { and }"),
            habit(".*; is missing here", "^\\s*(?:int|long|double|float|boolean|char|var|[A-Z]\\w*)\\s+(\\w+-\\w+)\\s*=", m -> "a name is"
                    + " made of letters, digits and _; write %s".formatted(m.group(1).replace('-', '_'))),
            habit(".*; is missing here", "^\\s*(?:int|long|double|float|boolean|char|var|[A-Z]\\w*)\\s+(\\w+\\s+\\w+)\\s*=", m -> "a name is"
                    + " one word; write %s".formatted(m.group(1).replaceAll("\\s+", "_"))),
            habit("illegal start of expression", "^\\s*(\\.\\w+)\\s*\\(", m -> "this line goes on with a statement that a semicolon"
                    + " has ended; take the semicolon from the line above"),
            habit("illegal start of expression", ",\\s*(\\))", m -> "a value is missing between the comma and this )"),
            habit("illegal start of expression", "([-+*/%]|[^=]=)\\s*;", m -> "a value is missing behind %s".formatted(
                    m.group(1).substring(m.group(1).length() - 1))),
            habit("(?:.*cannot be converted to boolean|a boolean is true or false.*)", "\\b(?:if|while)\\s*\\([^=]*[^=!<>](=)[^=]", m ->
                    "one = gives a value; two compare, so write =="));

    private final String cell;

    Habits(String cell) {
        this.cell = cell;
    }

    private static Habit habit(String line, String java) {
        return habit(".*", line, m -> java);
    }

    private static Habit habit(String said, String line, Function<MatchResult, String> java) {
        return new Habit(Pattern.compile(said, Pattern.DOTALL), Pattern.compile(line), java);
    }

    /** The habit behind an error at this offset, if it is one of these. */
    Optional<Slips.Slip> at(int offset, String said) {
        int at = Math.max(0, Math.min(offset, cell.length()));
        int start = cell.lastIndexOf('\n', at - 1) + 1;
        int end = cell.indexOf('\n', at);
        String line = cell.substring(start, end < 0 ? cell.length() : end);
        for (Habit habit : HABITS) {
            Matcher found = habit.line.matcher(line);
            if (line.length() < MOST && habit.said.matcher(said).matches() && found.find()) {
                return Optional.of(new Slips.Slip(start + found.start(1), habit.java.apply(found)));
            }
        }
        return Optional.empty();
    }
}
