package kingpost.kernel.evaluation;

import java.lang.reflect.Modifier;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.locks.LockSupport;
import java.util.regex.Pattern;
import jdk.jshell.SourceCodeAnalysis.QualifiedNames;
import jdk.jshell.SourceCodeAnalysis.Suggestion;
import kingpost.kernel.evaluation.CompileMessage.Missing;
import kingpost.kernel.evaluation.CompileMessage.Sort;

/** What the writer of a name that stands for nothing could have meant. */
final class NearMiss {

    private static final int MOST = 3;
    private static final int TRIES = 30;
    private static final Map<String, String> WORDS = Map.of("None", "null", "NULL", "null", "Null", "null", "nil", "null",
            "True", "true", "TRUE", "true", "False", "false", "FALSE", "false", "pi", "Math.PI", "PI", "Math.PI");
    private static final Map<String, String> FUNCTIONS = Map.of("len", "text has length(), a list has size(), an array length",
            "str", "write String.valueOf(...)", "ln", "write Math.log(...)", "log", "write Math.log(...) or Math.log10(...)",
            "solve", "a truss is solved by t.solve(), where t is its name", "truss", "write Truss.named(...)",
            "range", "write a loop, as in for (int i = 0; i < 10; i++) { ... }");
    private static final Map<String, String> SYNONYMS = Map.of("plus", "add", "minus", "subtract", "times", "multiply",
            "over", "divide", "append", "add", "push", "add", "len", "length", "size", "length", "length", "size");
    /** What a solution tells and a truss does not. */
    private static final Set<String> RESULTS = Set.of("force", "forces", "reaction", "reactions", "axial", "displacement");
    private static final Pattern NAME_OF_JOINTS = Pattern.compile("[A-Z][A-Z0-9]{0,5}");
    private static final Pattern TAKES_JOINTS = Pattern.compile(
            "\\.\\s*(?:joint|member|members|pin|roller|link|load|force|reaction)\\s*\\([^()]*$");
    private static final Set<String> PRINTS = Set.of("print", "println", "printf");

    private final Shell shell;
    private final Completions completions;

    NearMiss(Shell shell) {
        this.shell = shell;
        completions = new Completions(shell);
    }

    /** The continuation of an error message, such as {@code "; did you mean length()?"}; empty when nothing is near. */
    String hint(Missing missing, String beforeName) {
        Optional<String> reason = shell.whyAbsent(missing.name());
        if (reason.isPresent() && !afterDot(beforeName)) {
            return ": " + reason.get();
        }
        if (missing.sort() == Sort.METHOD && PRINTS.contains(missing.name()) && !afterDot(beforeName)) {
            return "; write System.out." + missing.name() + "(...)";
        }
        String known = afterDot(beforeName) ? "" : ofOtherLanguages(missing).orElseGet(() -> quotes(missing, beforeName));
        if (!known.isEmpty()) {
            return known;
        }
        if (RESULTS.contains(missing.name()) && afterDot(beforeName) && near(new Missing(Sort.METHOD, "solve"), beforeName)
                .contains("solve()")) {
            return "; solve it first, as in .solve().force(\"AB\")";
        }
        List<String> near = near(missing, beforeName);
        if (!near.isEmpty()) {
            return "; did you mean " + String.join(" or ", near) + "?";
        }
        return missing.sort() == Sort.TYPE ? importHint(missing.name(), beforeName) : "";
    }

    /** Words of other languages, and what stands in the class Math. */
    private static Optional<String> ofOtherLanguages(Missing missing) {
        String name = missing.name();
        boolean method = missing.sort() == Sort.METHOD;
        if (!method && WORDS.containsKey(name)) {
            return Optional.of("; write " + WORDS.get(name));
        }
        if (method && FUNCTIONS.containsKey(name)) {
            return Optional.of("; " + FUNCTIONS.get(name));
        }
        boolean ofMath = method && Arrays.stream(Math.class.getMethods()).anyMatch(each -> each.getName().equals(name)
                && Modifier.isStatic(each.getModifiers()));
        return ofMath ? Optional.of("; write Math." + name + "(...)") : Optional.empty();
    }

    /** A joint's or member's name without its quotes. */
    private static String quotes(Missing missing, String beforeName) {
        return missing.sort() == Sort.VARIABLE && NAME_OF_JOINTS.matcher(missing.name()).matches()
                && TAKES_JOINTS.matcher(beforeName).find()
                ? "; names of joints and members stand in quotes, \"%s\"".formatted(missing.name()) : "";
    }

    private static boolean afterDot(String text) {
        return text.stripTrailing().endsWith(".");
    }

    private List<String> near(Missing missing, String beforeName) {
        Set<String> names = new LinkedHashSet<>();
        collect(names, beforeName);
        collect(names, beforeName + missing.name().substring(0, 1));
        int limit = limit(missing.name());
        int best = names.stream().mapToInt(n -> distance(plain(n), missing.name())).min().orElse(Integer.MAX_VALUE);
        String meant = SYNONYMS.get(missing.name());
        List<String> same = names.stream().filter(n -> plain(n).equals(meant) && n.contains("(")).map(NearMiss::shown).distinct().toList();
        if (best > 0 && !same.isEmpty()) {
            return same.subList(0, 1);
        }
        if (best > limit || missing.sort() != Sort.METHOD && names.contains(missing.name())) {
            return List.of();
        }
        return names.stream().filter(n -> distance(plain(n), missing.name()) == best && isOfSort(n, missing))
                .map(NearMiss::shown).distinct().sorted(Comparator.comparing(String::length)).limit(MOST).toList();
    }

    private void collect(Set<String> names, String before) {
        for (Suggestion each : completions.suggestions(before, new int[] {0})) {
            names.add(each.continuation());
        }
    }

    private static boolean isOfSort(String name, Missing missing) {
        return switch (missing.sort()) {
            case TYPE -> Character.isUpperCase(name.charAt(0));
            case METHOD -> name.contains("(") || name.equals("length");
            case VARIABLE -> true;
        };
    }

    private static String plain(String continuation) {
        int open = continuation.indexOf('(');
        return open < 0 ? continuation : continuation.substring(0, open);
    }

    private static String shown(String continuation) {
        return continuation.endsWith("(") ? continuation + "...)" : continuation;
    }

    private static int limit(String name) {
        return name.length() <= 2 ? 0 : name.length() <= 5 ? 1 : name.length() <= 9 ? 2 : 3;
    }

    /** Insertions, deletions, substitutions and swaps of neighbours between two words, capitals aside. */
    static int distance(String one, String other) {
        String a = one.toLowerCase(Locale.ROOT);
        String b = other.toLowerCase(Locale.ROOT);
        var d = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            for (int j = 0; j <= b.length(); j++) {
                if (i == 0 || j == 0) {
                    d[i][j] = i + j;
                    continue;
                }
                int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
                d[i][j] = Math.min(Math.min(d[i - 1][j], d[i][j - 1]) + 1, d[i - 1][j - 1] + change);
                boolean swapped = i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
                if (swapped) {
                    d[i][j] = Math.min(d[i][j], d[i - 2][j - 2] + 1);
                }
            }
        }
        return d[a.length()][b.length()];
    }

    /** JShell looks through the class path in the background; it is worth a short wait. */
    private List<String> qualifiedNames(String code) {
        QualifiedNames found = shell.analysis().listQualifiedNames(code, code.length());
        for (int i = 0; i < TRIES && !found.isUpToDate(); i++) {
            LockSupport.parkNanos(50_000_000);
            found = shell.analysis().listQualifiedNames(code, code.length());
        }
        return found.getNames();
    }

    /** A type of the class path that is only not imported. */
    private String importHint(String name, String beforeName) {
        String code = beforeName.substring(Completions.wordStart(beforeName)) + name;
        List<String> known = new ArrayList<>(qualifiedNames(code));
        known.sort(Comparator.comparing((String n) -> !n.startsWith("java.")).thenComparing(String::length));
        return known.isEmpty() ? "" : "; import " + String.join("; or import ", known.subList(0, Math.min(2, known.size())))
                + ";";
    }
}
