package kingpost.explain;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

import kingpost.derivation.Block;
import kingpost.derivation.Block.Listing;
import kingpost.derivation.Block.Prose;
import kingpost.derivation.Expression;
import kingpost.derivation.Expressions;
import kingpost.derivation.Phrase;
import kingpost.derivation.Table;
import kingpost.derivation.Table.Column;
import kingpost.truss.Load;
import kingpost.truss.Measured;
import kingpost.truss.Tributary;
import kingpost.truss.TrussModel;

/** How loads that are spread over members and chords come down to the joints: the rule, and a table of every joint. */
final class GatheredLoads {

    private final Notation notation;
    private final List<Load.Gathered> loads;

    GatheredLoads(Notation notation, TrussModel truss) {
        this.notation = notation;
        this.loads = truss.loads().stream().filter(Load.Gathered.class::isInstance).map(Load.Gathered.class::cast).toList();
    }

    /** Nothing where every load was given at its joint. */
    List<Block> blocks() {
        if (loads.isEmpty()) {
            return List.of();
        }
        Set<Phrase> rules = new LinkedHashSet<>();
        loads.forEach(load -> load.parts().forEach(part -> rules.add(rule(part))));
        List<Block> blocks = new ArrayList<>();
        blocks.add(Prose.of("A truss is loaded at its joints. What is spread along members or a chord comes to the joints as"
                + " simple spans between them would hand it on, half to each end:"));
        blocks.add(new Listing(false, List.copyOf(rules)));
        blocks.add(table());
        return blocks;
    }

    private Phrase rule(Tributary part) {
        Phrase said = Phrase.of(Series.capital(part.load()) + " of ").math(Notation.given(part.intensity()));
        if (part.spacing().isPresent()) {
            said = said.text(", trusses ").math(Notation.given(part.spacing().get())).text(" apart, which is ")
                    .math(perLength(part));
        }
        return said.text(switch (part.load()) {
            case "self weight" -> " along each member: half of every member's weight goes to each of its ends.";
            case "wind load" -> " square to the slope: each joint takes the half panels beside it, measured along the slope.";
            default -> part.measured() == Measured.ON_PLAN
                    ? " on plan: each joint takes the half panels beside it, measured horizontally."
                    : " along the chord: each joint takes the half panels beside it, measured along the slope.";
        });
    }

    private Expression perLength(Tributary part) {
        double force = part.force().getValue() / part.length().getValue();
        return new Expression.Amount(Notation.four(force), notation.forceLabel() + "/" + notation.lengthLabel());
    }

    private Table table() {
        boolean spaced = loads.stream().anyMatch(load -> load.parts().stream().anyMatch(p -> p.spacing().isPresent()));
        boolean factored = loads.stream().anyMatch(load -> load.factor() != 1);
        List<Column> columns = new ArrayList<>(List.of(Column.left("Joint"), Column.left("From"),
                Column.right("Tributary length"), Column.right("Intensity")));
        if (spaced) {
            columns.add(Column.right("Spacing"));
        }
        if (factored) {
            columns.add(Column.right("Factor"));
        }
        columns.add(Column.right("Force (" + notation.forceLabel() + ")"));
        columns.add(Column.left("Acts"));
        List<List<Phrase>> rows = new ArrayList<>();
        loads.forEach(load -> rows.addAll(rows(load, spaced, factored)));
        return new Table(Phrase.of("How the loads on the joints came about"), columns, rows, true);
    }

    private List<List<Phrase>> rows(Load.Gathered load, boolean spaced, boolean factored) {
        List<List<Phrase>> rows = new ArrayList<>();
        for (Tributary part : load.parts()) {
            List<Phrase> row = new ArrayList<>(List.of(Phrase.of(load.joint()), Phrase.of(part.load()),
                    Phrase.of(notation.length(part.length().getValue())), Phrase.of(Notation.given(part.intensity()))));
            if (spaced) {
                row.add(part.spacing().map(s -> Phrase.of(Notation.given(s))).orElse(Phrase.EMPTY));
            }
            if (factored) {
                row.add(Phrase.of(Notation.four(load.factor())));
            }
            row.add(Phrase.of(Notation.four(Math.abs(part.force().getValue() * load.factor()))));
            row.add(Phrase.of(acts(load)));
            rows.add(row);
        }
        if (load.parts().size() > 1) {
            List<Phrase> sum = new ArrayList<>(List.of(Phrase.of(load.joint()), Phrase.of("together"), Phrase.EMPTY,
                    Phrase.EMPTY));
            for (int i = 0; i < (spaced ? 1 : 0) + (factored ? 1 : 0); i++) {
                sum.add(Phrase.EMPTY);
            }
            sum.add(Phrase.of(Notation.four(load.magnitude().in(notation.truss().forceUnit()))));
            sum.add(Phrase.of(acts(load)));
            rows.add(sum);
        }
        return rows;
    }

    private static String acts(Load load) {
        return Heading.isUpright(Heading.vector(load.direction())) ? Heading.words(Heading.vector(load.direction()))
                : load.direction().words();
    }
}
