package kingpost.truss;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import kingpost.truss.LoadCases.Combination;

/** Reads {@code "1.2 dead + 1.6 snow"}: a factor, or none for 1, and the name of a case; parts joined by plus or minus. */
final class CombinationReader {

    private static final Pattern PART = Pattern.compile(
            "([+\u2212-])\\s*(\\d+(?:\\.\\d*)?|\\.\\d+)?\\s*[*\u00d7\u00b7]?\\s*([^+\u2212-]*)");

    private final List<String> cases;
    private final Problems problems;

    CombinationReader(List<String> cases, Problems problems) {
        this.cases = cases.stream().distinct().toList();
        this.problems = problems;
    }

    /** The combination, or empty and a problem. */
    Optional<Combination> read(String name, String formula) {
        String text = formula == null ? "" : formula.strip();
        String subject = "Combination" + (text.isEmpty() ? "" : " " + text);
        if (text.isEmpty()) {
            problems.add(subject, "it is empty", "write it like 1.2 dead + 1.6 snow");
            return Optional.empty();
        }
        Matcher part = PART.matcher(text.matches("^[+\u2212-].*") ? text : "+ " + text);
        List<Combination.Part> parts = new ArrayList<>();
        while (part.find()) {
            String loadCase = part.group(3).strip();
            double factor = (part.group(2) == null ? 1 : Double.parseDouble(part.group(2)))
                    * (part.group(1).equals("+") ? 1 : -1);
            if (!accept(subject, loadCase, factor, parts)) {
                return Optional.empty();
            }
            parts.add(new Combination.Part(factor, loadCase));
        }
        return Optional.of(new Combination(name.isBlank() ? text : name.strip(), parts));
    }

    private boolean accept(String subject, String loadCase, double factor, List<Combination.Part> before) {
        int known = problems.count();
        if (loadCase.isEmpty()) {
            problems.add(subject, "a factor stands there without a load case", "write it like 1.2 dead + 1.6 snow");
        } else if (!cases.contains(loadCase)) {
            problems.add(subject, "there is no load case " + loadCase, cases.isEmpty()
                    ? "begin one with loadCase(\"" + loadCase + "\") before its loads"
                    : "name one of " + String.join(", ", cases));
        } else if (factor == 0) {
            problems.add(subject, "the factor of " + loadCase + " is zero", "leave the case out");
        } else if (before.stream().anyMatch(p -> p.loadCase().equals(loadCase))) {
            problems.add(subject, "the load case " + loadCase + " comes twice", "add its factors");
        }
        return problems.count() == known;
    }
}
