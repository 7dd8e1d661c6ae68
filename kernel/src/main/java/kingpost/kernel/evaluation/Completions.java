package kingpost.kernel.evaluation;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import javax.lang.model.SourceVersion;
import jdk.jshell.SourceCodeAnalysis;
import jdk.jshell.SourceCodeAnalysis.Suggestion;
import kingpost.kernel.evaluation.Evaluator.Completion;
import kingpost.kernel.evaluation.Evaluator.Proposal;

/** Proposals for the text before a cursor: JShell's, the cell's own words, and names inside quotes. */
final class Completions {

    private static final int MOST = 300;
    /** Methods of a truss under construction whose text argument names joints. */
    private static final Set<String> TAKES_JOINTS = Set.of("pin", "roller", "link", "load", "member", "members");

    private final Shell shell;

    Completions(Shell shell) {
        this.shell = shell;
    }

    /** The proposals; JShell's lock is held. */
    Completion at(String code, int cursor) {
        String before = code.substring(0, cursor);
        Optional<QuotedNames> quoted = QuotedNames.at(before);
        if (quoted.isPresent()) {
            return new Completion(inQuotes(quoted.get(), code), quoted.get().start(), cursor);
        }
        if (endsInText(before)) {
            return new Completion(List.of(), cursor, cursor);
        }
        var anchor = new int[] {wordStart(before)};
        Map<String, Proposal> found = new LinkedHashMap<>();
        for (Suggestion each : suggestions(before, anchor)) {
            add(found, proposal(each.continuation()));
        }
        String typed = before.substring(Math.min(anchor[0], before.length()));
        if (!afterDot(before, anchor[0])) {
            cellWords(code, typed, anchor[0]).forEach(word -> add(found, new Proposal(word, "variable", "")));
        }
        List<Proposal> all = new ArrayList<>(found.values());
        return new Completion(all.subList(0, Math.min(MOST, all.size())), anchor[0], cursor);
    }

    private static void add(Map<String, Proposal> found, Proposal proposal) {
        found.putIfAbsent(proposal.text(), proposal);
    }

    private static boolean endsInText(String before) {
        var tokens = Tokens.of(before);
        if (tokens.isEmpty()) {
            return false;
        }
        var last = tokens.get(tokens.size() - 1);
        return last.open() && last.end() == before.length();
    }

    static int wordStart(String before) {
        int start = before.length();
        while (start > 0 && Character.isJavaIdentifierPart(before.codePointBefore(start))) {
            start -= Character.charCount(before.codePointBefore(start));
        }
        return start;
    }

    private static boolean afterDot(String before, int at) {
        return before.substring(0, Math.min(at, before.length())).stripTrailing().endsWith(".");
    }

    /** JShell's suggestions; {@code anchor[0]} is set to where they are to be put. */
    List<Suggestion> suggestions(String before, int[] anchor) {
        SourceCodeAnalysis analysis = shell.analysis();
        Statements.Current current = Statements.last(analysis, before);
        List<Suggestion> found = suggestions(analysis, "", current, anchor);
        return found.isEmpty() && !current.declarations().isEmpty()
                ? suggestions(analysis, current.declarations() + "\n", current, anchor) : found;
    }

    private static List<Suggestion> suggestions(SourceCodeAnalysis analysis, String lead, Statements.Current current,
                                                int[] anchor) {
        String code = lead + current.code();
        var at = new int[] {-1};
        List<Suggestion> found = analysis.completionSuggestions(code, code.length(), at);
        if (at[0] >= lead.length() && !found.isEmpty()) {
            anchor[0] = current.start() + at[0] - lead.length();
        }
        return found;
    }

    private static Proposal proposal(String text) {
        return new Proposal(text, type(text), "");
    }

    private static String type(String text) {
        if (text.contains("(")) {
            return "function";
        }
        if (SourceVersion.isKeyword(text)) {
            return "keyword";
        }
        if (Character.isUpperCase(text.charAt(0))) {
            return text.equals(text.toUpperCase(java.util.Locale.ROOT)) && text.length() > 1 ? "constant" : "class";
        }
        return "variable";
    }

    /** Words of the cell itself, such as a variable that is declared but has not been run yet. */
    private static List<String> cellWords(String code, String typed, int anchor) {
        if (typed.isEmpty()) {
            return List.of();
        }
        var words = new ArrayList<String>();
        Tokens.Token before = null;
        for (Tokens.Token token : Tokens.withoutComments(code)) {
            boolean member = before != null && before.is('.');
            if (token.isWord() && !member && token.start() != anchor && token.text().startsWith(typed)
                    && !token.text().equals(typed) && !SourceVersion.isKeyword(token.text())) {
                words.add(token.text());
            }
            before = token;
        }
        return words;
    }

    private List<Proposal> inQuotes(QuotedNames quoted, String code) {
        List<String> names = shell.variableNamed(quoted.root())
                .map(variable -> shell.control().names(shell.jshell(), variable, quoted.method())).orElse(List.of());
        if (names.isEmpty() && TAKES_JOINTS.contains(quoted.method())) {
            names = QuotedNames.jointsIn(code);
        }
        return names.stream().filter(name -> name.startsWith(quoted.typed()))
                .map(name -> new Proposal(name, "name", "")).toList();
    }
}
