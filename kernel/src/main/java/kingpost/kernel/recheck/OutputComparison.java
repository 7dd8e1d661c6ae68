package kingpost.kernel.recheck;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Collectors;
import kingpost.kernel.document.Trees;

/** Compares what a cell showed when it was saved with what it shows now. */
final class OutputComparison {

    private static final Map<String, String> NAMES = Map.of("text/plain", "text", "text/html", "table or text",
            "text/markdown", "text", "text/latex", "text for print", "image/svg+xml", "figure", "image/png", "picture");

    /** What changed in the plain text changed in the other texts as well, and is told once. */
    private static final Comparator<String> PLAINEST_FIRST = Comparator.comparing((String type) -> !type.equals("text/plain"))
            .thenComparing(Comparator.naturalOrder());

    private final Tolerance tolerance;

    OutputComparison(Tolerance tolerance) {
        this.tolerance = tolerance;
    }

    /** What differs; each sentence once. */
    List<String> differences(List<Map<String, Object>> saved, List<Map<String, Object>> now) {
        List<String> found = new ArrayList<>();
        Optional<String> error = errors(error(saved), error(now));
        error.ifPresent(found::add);
        for (String stream : List.of("stdout", "stderr")) {
            text(streamed(saved, stream), streamed(now, stream)).ifPresent(difference ->
                    found.add("its printed text (" + stream + ") changed: " + difference));
        }
        if (error.isEmpty()) {
            values(shown(saved), shown(now), found);
        }
        return found.stream().distinct().toList();
    }

    private static Optional<Map<String, Object>> error(List<Map<String, Object>> outputs) {
        return outputs.stream().filter(output -> "error".equals(output.get("output_type"))).findFirst();
    }

    private Optional<String> errors(Optional<Map<String, Object>> saved, Optional<Map<String, Object>> now) {
        if (saved.isEmpty() || now.isEmpty()) {
            return now.map(error -> "it ran when it was saved, now it fails (" + said(error) + ")")
                    .or(() -> saved.map(error -> "it failed when it was saved (" + said(error) + "), now it runs"));
        }
        return text(said(saved.get()), said(now.get())).map(difference -> "its error changed: " + difference);
    }

    private static String said(Map<String, Object> error) {
        return Trees.text(error, "ename").orElse("Error") + ": " + Trees.text(error, "evalue").orElse("").lines().findFirst()
                .orElse("");
    }

    private void values(List<Map<String, Object>> saved, List<Map<String, Object>> now, List<String> found) {
        if (saved.size() != now.size()) {
            found.add(counted(saved) + " was saved, now it shows " + counted(now));
            return;
        }
        for (int i = 0; i < saved.size(); i++) {
            found.addAll(bundle(Trees.map(saved.get(i), "data"), Trees.map(now.get(i), "data")));
        }
    }

    private static String counted(List<Map<String, Object>> outputs) {
        Map<String, Long> kinds = outputs.stream().collect(Collectors.groupingBy(
                output -> Trees.map(output, "data").containsKey("image/svg+xml") ? "figure" : "value", LinkedHashMap::new,
                Collectors.counting()));
        String all = kinds.entrySet().stream().map(kind -> kind.getValue() + " " + kind.getKey()
                + (kind.getValue() == 1 ? "" : "s")).collect(Collectors.joining(" and "));
        return all.isEmpty() ? "nothing" : all;
    }

    private List<String> bundle(Map<String, Object> saved, Map<String, Object> now) {
        List<String> found = new ArrayList<>();
        TreeSet<String> types = new TreeSet<>(PLAINEST_FIRST);
        types.addAll(saved.keySet());
        types.addAll(now.keySet());
        boolean told = false;
        boolean drawn = saved.containsKey("image/svg+xml") && now.containsKey("image/svg+xml");
        for (String type : types) {
            String name = NAMES.getOrDefault(type, type.endsWith("+json") ? "result" : type);
            if (!now.containsKey(type)) {
                found.add("its " + name + " is gone");
            } else if (!saved.containsKey(type)) {
                found.add("it shows a " + name + " that was not saved");
            } else if (!(told && type.startsWith("text/"))) {
                Optional<String> difference = form(type, saved.get(type), now.get(type), drawn);
                told |= difference.isPresent() && type.startsWith("text/");
                difference.ifPresent(sentence -> found.add("its " + name + " changed: " + sentence));
            }
        }
        return found;
    }

    private Optional<String> form(String type, Object saved, Object now, boolean drawn) {
        if (type.endsWith("json")) {
            return tree("", saved, now);
        }
        String before = String.valueOf(saved);
        String after = String.valueOf(now);
        if (type.startsWith("image/") && !type.equals("image/svg+xml")) {
            return PictureComparison.difference(before, after, drawn);
        }
        return type.equals("image/svg+xml") || type.equals("text/html") ? markup(before, after) : text(before, after);
    }

    private Optional<String> markup(String saved, String now) {
        return text(MarkupText.words(saved), MarkupText.words(now)).or(() ->
                NumberedText.difference(MarkupText.shapes(saved), MarkupText.shapes(now), Tolerance.DRAWING)
                        .map(ignored -> "it is drawn in another way"));
    }

    private Optional<String> text(String saved, String now) {
        return saved.equals(now) ? Optional.empty() : NumberedText.difference(saved, now, tolerance);
    }

    private Optional<String> tree(String path, Object saved, Object now) {
        if (saved instanceof Map<?, ?> before && now instanceof Map<?, ?> after) {
            return before.keySet().equals(after.keySet())
                    ? before.keySet().stream().flatMap(key ->
                            tree(path + (path.isEmpty() ? "" : ".") + key, before.get(key), after.get(key)).stream()).findFirst()
                    : Optional.of("it has other parts");
        }
        if (saved instanceof List<?> before && now instanceof List<?> after && before.size() == after.size()) {
            for (int i = 0; i < before.size(); i++) {
                Optional<String> difference = tree(path + "[" + i + "]", before.get(i), after.get(i));
                if (difference.isPresent()) {
                    return difference;
                }
            }
            return Optional.empty();
        }
        if (saved instanceof String before && now instanceof String after) {
            return before.contains("<") ? markup(before, after) : text(before, after);
        }
        if (saved instanceof Number before && now instanceof Number after) {
            return tolerance.same(before.doubleValue(), after.doubleValue(), 1)
                    ? Optional.empty() : Optional.of(path + ": " + before + " was saved, now it is " + after);
        }
        return String.valueOf(saved).equals(String.valueOf(now)) ? Optional.empty()
                : Optional.of(path + ": " + saved + " was saved, now it is " + now);
    }

    private static String streamed(List<Map<String, Object>> outputs, String stream) {
        return outputs.stream().filter(output -> stream.equals(output.get("name")))
                .map(output -> Trees.joined(output, "text")).collect(Collectors.joining());
    }

    private static List<Map<String, Object>> shown(List<Map<String, Object>> outputs) {
        return outputs.stream().filter(output -> output.containsKey("data")).toList();
    }
}
