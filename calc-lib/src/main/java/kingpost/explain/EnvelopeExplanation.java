package kingpost.explain;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

import kingpost.derivation.Block;
import kingpost.derivation.Block.Listing;
import kingpost.derivation.Block.Prose;
import kingpost.derivation.Block.Section;
import kingpost.derivation.Derivation;
import kingpost.derivation.Phrase;
import kingpost.derivation.Table;
import kingpost.derivation.Table.Column;
import kingpost.statics.Envelope;
import kingpost.statics.Envelope.Extreme;
import kingpost.statics.Envelope.Range;
import kingpost.truss.LoadCases.Combination;

/** Load cases, combinations, and each member's largest tension and compression with what governs it. */
public final class EnvelopeExplanation {

    private final Envelope envelope;
    private final Notation notation;

    private EnvelopeExplanation(Envelope envelope) {
        this.envelope = envelope;
        this.notation = new Notation(envelope.truss());
    }

    /** What governs each member and each reaction. */
    public static Derivation of(Envelope envelope) {
        EnvelopeExplanation e = new EnvelopeExplanation(envelope);
        List<Block> blocks = new ArrayList<>();
        blocks.add(Section.of("What is combined", e.combined()));
        List<Block> ranges = new ArrayList<>(Pictures.envelope(envelope));
        ranges.add(e.members());
        ranges.add(e.reactions());
        blocks.add(Section.of("Largest tension and compression", ranges));
        return new Derivation(envelope.truss().name() + ": envelope of the member forces", blocks);
    }

    /** Every force in every case and combination. */
    public static Derivation ofAll(Envelope envelope) {
        EnvelopeExplanation e = new EnvelopeExplanation(envelope);
        List<Block> blocks = new ArrayList<>();
        blocks.add(Section.of("What is combined", e.combined()));
        List<Block> tables = new ArrayList<>();
        tables.add(e.table("Member forces by load case", "Member", envelope.cases(), envelope.members(), m -> Phrase.of(m.name()),
                Range::byCase));
        if (!envelope.combinations().isEmpty()) {
            tables.add(e.table("Member forces by combination", "Member", envelope.columns(), envelope.members(),
                    m -> Phrase.of(m.name()), Range::byColumn));
        }
        tables.add(e.table("Reactions by load case", "Reaction", envelope.cases(), envelope.reactions(),
                r -> Phrase.of(e.notation.symbol(r)), Range::byCase));
        if (!envelope.combinations().isEmpty()) {
            tables.add(e.table("Reactions by combination", "Reaction", envelope.columns(), envelope.reactions(),
                    r -> Phrase.of(e.notation.symbol(r)), Range::byColumn));
        }
        blocks.add(Section.of("Forces", tables));
        return new Derivation(envelope.truss().name() + ": load cases and combinations", blocks);
    }

    private List<Block> combined() {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Prose(Phrase.of(envelope.cases().size() == 1 ? "There is one load case, " : "The load cases are ")
                .then(Series.names(envelope.cases())).text(". The truss is determinate, so its forces add up as its loads do:"
                + " each case is solved once, and a combination is the sum of its cases, each times its factor.")));
        if (envelope.combinations().isEmpty()) {
            blocks.add(Prose.of("No combination is written, so the cases are compared as they are, one at a time."));
        } else {
            blocks.add(new Listing(false, envelope.combinations().stream().map(EnvelopeExplanation::said).toList()));
        }
        blocks.add(new Prose(Phrase.EMPTY.strong("Caution.").text(" Which combinations to look at, and with which factors,"
                + " is laid down in the building code in force where the structure stands. The factors here are the ones"
                + " written in this notebook; have them checked by a person licensed to do so.")));
        return blocks;
    }

    private static Phrase said(Combination combination) {
        StringBuilder sum = new StringBuilder();
        for (Combination.Part part : combination.parts()) {
            double size = Math.abs(part.factor());
            sum.append(sum.length() == 0 ? (part.factor() < 0 ? "\u2212" : "") : part.factor() < 0 ? " \u2212 " : " + ")
                    .append(size == 1 ? "" : java.math.BigDecimal.valueOf(size).stripTrailingZeros().toPlainString() + " ")
                    .append(part.loadCase());
        }
        boolean named = !combination.name().replace(" ", "").equals(sum.toString().replace(" ", ""));
        return named ? Phrase.EMPTY.strong(combination.name()).text(": " + sum) : Phrase.of(sum.toString());
    }

    private Table members() {
        String unit = " (" + notation.forceLabel() + ")";
        List<Column> columns = List.of(Column.left("Member"), Column.right("Tension" + unit), Column.left("Governed by"),
                Column.right("Compression" + unit), Column.left("Governed by"));
        return new Table(Phrase.of("Largest forces in the members; a dash where the member is never so"), columns,
                envelope.members().stream().map(range -> row(Phrase.of(range.of().name()), range)).toList(), true);
    }

    private Table reactions() {
        String unit = " (" + notation.forceLabel() + ")";
        List<Column> columns = List.of(Column.left("Reaction"), Column.right("Highest" + unit), Column.left("Governed by"),
                Column.right("Lowest" + unit), Column.left("Governed by"));
        return new Table(Phrase.of("Largest reactions either way; a dash where the reaction never acts that way"), columns,
                envelope.reactions().stream().map(range -> row(Phrase.of(notation.symbol(range.of())), range)).toList(),
                true);
    }

    private List<Phrase> row(Phrase name, Range<?> range) {
        List<Phrase> cells = new ArrayList<>(List.of(name));
        for (Optional<Extreme> extreme : List.of(range.highest(), range.lowest())) {
            cells.add(extreme.map(e -> Phrase.of(Notation.three(notation.inForceUnit(e.force())))).orElse(Phrase.of("\u2013")));
            cells.add(extreme.map(e -> Phrase.of(e.governs())).orElse(Phrase.EMPTY));
        }
        return cells;
    }

    private <T> Table table(String caption, String head, List<String> names, List<Range<T>> ranges,
                            Function<T, Phrase> name, Function<Range<T>, List<Double>> forces) {
        List<Column> columns = new ArrayList<>(List.of(Column.left(head)));
        names.forEach(column -> columns.add(Column.right(column)));
        List<List<Phrase>> rows = new ArrayList<>();
        for (Range<T> range : ranges) {
            List<Phrase> cells = new ArrayList<>(List.of(name.apply(range.of())));
            forces.apply(range).forEach(force -> cells.add(Phrase.of(Notation.three(notation.inForceUnit(force)))));
            rows.add(cells);
        }
        return new Table(Phrase.of(caption + ", in " + notation.forceLabel()), columns, rows, true);
    }
}
