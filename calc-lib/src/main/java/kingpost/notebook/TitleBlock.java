package kingpost.notebook;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kingpost.derivation.Phrase;
import kingpost.derivation.Table;
import kingpost.derivation.Table.Align;
import kingpost.derivation.Table.Column;
import kingpost.render.Edition;
import kingpost.render.Exhibit;
import kingpost.render.Showable;
import kingpost.units.CalculationException;

/**
 * The head of a calculation: what it belongs to, who made it, who checked it, which state it is. A printed page repeats
 * project, sheet and revision at its edge.
 *
 * @param entries what is filled in, in the order in which it was said
 */
public record TitleBlock(Map<String, String> entries) implements Showable {

    private static final String PROJECT = "Project";
    private static final List<String> ORDER = List.of(PROJECT, "Sheet", "Revision", "Date", "Made by", "Checked by");

    public TitleBlock {
        entries = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(entries));
    }

    static TitleBlock of(String project) {
        return new TitleBlock(Map.of()).with(PROJECT, project);
    }

    public TitleBlock sheet(String number) {
        return with("Sheet", number);
    }

    public TitleBlock revision(String mark) {
        return with("Revision", mark);
    }

    public TitleBlock date(String day) {
        return with("Date", day);
    }

    public TitleBlock author(String name) {
        return with("Made by", name);
    }

    public TitleBlock checker(String name) {
        return with("Checked by", name);
    }

    private TitleBlock with(String entry, String text) {
        if (text == null) {
            throw new CalculationException("Title block: " + entry + " is missing; give its words, or leave it out.");
        }
        Map<String, String> all = new LinkedHashMap<>(entries);
        all.put(entry, text.strip());
        return new TitleBlock(all);
    }

    @Override
    public Map<String, Object> show() {
        return exhibit().show();
    }

    /** Every edition has the same head. */
    @Override
    public Optional<Map<String, Object>> show(Edition edition) {
        return edition == Edition.SOLUTION ? Optional.of(show())
                : Optional.of(exhibit().madeFor(edition, "title-block", true).show());
    }

    private Exhibit exhibit() {
        List<Column> columns = new ArrayList<>();
        List<Phrase> row = new ArrayList<>();
        for (String entry : ORDER) {
            if (entries.containsKey(entry)) {
                columns.add(new Column(Phrase.of(entry), Align.LEFT));
                row.add(Phrase.of(entries.get(entry)));
            }
        }
        return Exhibit.of(new Table(Phrase.EMPTY, columns, List.of(row), false), "title-block",
                Map.of("title-block", entries));
    }

    @Override
    public String toString() {
        return exhibit().toString();
    }
}
