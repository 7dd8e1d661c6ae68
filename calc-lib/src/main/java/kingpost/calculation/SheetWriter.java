package kingpost.calculation;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import kingpost.calculation.Line.Checked;
import kingpost.calculation.Line.Computed;
import kingpost.calculation.Line.Given;
import kingpost.calculation.Line.Tabulated;
import kingpost.derivation.Block;
import kingpost.derivation.Block.Equations;
import kingpost.derivation.EquationLine;
import kingpost.derivation.Expression.Relator;
import kingpost.derivation.Expressions;

/**
 * Puts lines on the page: equations under each other, lined up, with a few words beside them; longer words, and what
 * has become of names used again, below.
 */
final class SheetWriter {

    private static final int LONGEST_REMARK = 48;
    private static final int MOST_ROWS = 12;

    private final Lettering lettering;
    private final LineHistory history;
    private final List<Block> blocks = new ArrayList<>();
    private final List<EquationLine> rows = new ArrayList<>();
    private final Map<String, List<Integer>> notes = new LinkedHashMap<>();

    private SheetWriter(Lettering lettering, LineHistory history) {
        this.lettering = lettering;
        this.history = history;
    }

    /** One line by itself, without its number. */
    static List<Block> line(Line line, Lettering lettering, LineHistory history) {
        SheetWriter writer = new SheetWriter(lettering, history);
        writer.add(line, false);
        return writer.finished();
    }

    /** What a line answers, without how. */
    static List<Block> answers(Line line, Lettering lettering, LineHistory history) {
        if (line instanceof Computed computed) {
            EquationLine answer = EquationLine.of(SymbolName.symbol(computed.name()), Relator.EQUAL,
                    lettering.answer(computed.value()));
            return List.of(new Equations(List.of(answer.remarked(computed.description()))));
        }
        return line instanceof Given ? List.of() : line(line, lettering, history);
    }

    /** Lines in order, numbered. */
    static List<Block> lines(List<Line> lines, Lettering lettering, LineHistory history) {
        SheetWriter writer = new SheetWriter(lettering, history);
        lines.forEach(line -> writer.add(line, true));
        return writer.finished();
    }

    private List<Block> finished() {
        closeGroup();
        return List.copyOf(blocks);
    }

    private void add(Line line, boolean numbered) {
        if (line instanceof Tabulated tabulated) {
            closeGroup();
            blocks.add(new TableWriter(lettering).table(tabulated, numbered ? "Line " + line.number() + ". " : ""));
            note(line, "", numbered);
            closeGroup();
            return;
        }
        List<EquationLine> written = new LineWriter(lettering).rows(line);
        if (rows.size() + written.size() > MOST_ROWS) {
            closeGroup();
        }
        String about = about(line);
        String outcome = line instanceof Checked checked ? checked.verdict().outcome() : "";
        String all = Stream.of(about, outcome).filter(part -> !part.isEmpty()).collect(Collectors.joining(": "));
        boolean fits = all.length() <= LONGEST_REMARK;
        for (int i = 0; i < written.size(); i++) {
            EquationLine row = written.get(i);
            row = i == 0 && numbered ? row.ledBy(Expressions.number(line.number())) : row;
            rows.add(i == written.size() - 1 ? row.remarked(fits ? all : outcome) : row);
        }
        note(line, fits ? "" : about, numbered);
    }

    private void note(Line line, String remark, boolean numbered) {
        List<String> parts = new ArrayList<>();
        if (!remark.isEmpty()) {
            parts.add(remark);
        }
        parts.addAll(changes(line));
        if (!parts.isEmpty()) {
            notes.computeIfAbsent(String.join("; ", parts) + ".", words -> new ArrayList<>())
                    .add(numbered ? line.number() : 0);
        }
    }

    private void closeGroup() {
        if (!rows.isEmpty()) {
            blocks.add(new Equations(rows));
            rows.clear();
        }
        notes.forEach((words, numbers) -> blocks.add(Block.Prose.of(about(numbers, words))));
        notes.clear();
    }

    /** What is said of several lines is said once. */
    private static String about(List<Integer> numbers, String words) {
        if (numbers.get(0) == 0) {
            boolean nameFirst = words.matches("[\\p{L}\\p{Nd}_]+ is (set to|replaced in) .*");
            return nameFirst ? words : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
        }
        List<String> all = numbers.stream().map(String::valueOf).toList();
        int last = all.size() - 1;
        return last == 0 ? "Line " + all.get(0) + ": " + words
                : "Lines " + String.join(", ", all.subList(0, last)) + " and " + all.get(last) + ": " + words;
    }

    private static String about(Line line) {
        String about = line.description();
        String reference = line.reference();
        return reference.isEmpty() ? about : about.isEmpty() ? reference : about + " (" + reference + ")";
    }

    /** What a reader must know of names used again, and of values set for this run. */
    private List<String> changes(Line line) {
        List<String> changes = new ArrayList<>();
        if (line instanceof Given given) {
            given.inSource().ifPresent(says -> changes.add(given.name() + " is set to "
                    + lettering.givenWords(given.value()) + " for this run; the notebook says "
                    + lettering.givenWords(says)));
        }
        history.before(line).ifPresent(before -> changes.add("replaces " + name(line) + " = " + value(before)
                + " of line " + before.number()));
        history.now(line).ifPresent(now -> changes.add(name(line) + " is replaced in line " + now.number()));
        Set<String> outdated = history.outdatedNames(line);
        if (!outdated.isEmpty()) {
            changes.add("still with the earlier " + String.join(", ", outdated) + ", not the present one");
        }
        return changes;
    }

    private static String name(Line line) {
        return LineHistory.nameOf(line).orElse("");
    }

    private String value(Line line) {
        return line instanceof Given given ? lettering.givenWords(given.value())
                : line instanceof Computed computed ? lettering.words(computed.value()) : "";
    }
}
